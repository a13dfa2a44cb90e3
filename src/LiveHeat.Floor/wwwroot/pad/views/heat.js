// The heat. The target says what it will record and carries that fact.

import { capMs, checkpoint, following, heatMs, sharesOf, tooEarly } from '../lane.js';
import { listed, point, say, write } from '../words.js';
import { LONG_HOLD_MS, Target, button, clockText, dutyMark, fit, foot, h, holdButton, keys, laneTag, lead, notice, put, quiet, refill, settings } from './parts.js';

export const DEAD_MS = 1_000;
const NO_REP_DEAD_MS = 500, DIGIT_DEAD_MS = 300;

/** A new label is dead for a second; less where taps follow as fast as reps. */
export function deadMs({ step, count }, { fact, count: next }, rate) {
  if (fact === 'value-entered') return DIGIT_DEAD_MS;
  if (fact !== 'count-reached' && !count) return DEAD_MS;
  return Math.min(DEAD_MS, step.earliestMs / step.quantity * ((next ?? step.quantity) - count) / rate / 2);
}

/** Times round up, as hand times do. */
export function lastTap({ model: { last, lastSafe }, frame, outbox }) {
  if (!last) return [];
  const at = last.timeKnown === false ? null : heatMs(frame, last.instant);
  return [say(`tap.${last.id.startsWith('new.') ? 'new' : lastSafe ? 'safe' : outbox.stores ? 'phone' : 'memory'}`), at === null ? '' : clockText(Math.ceil(at / 100) * 100, 1)];
}

function targetView(pad) {
  const state = h('span.state'), big = h('b'), name = h('strong'), verb = h('em'), words = h('div.words', {}, big, name, verb), then = h('span.then');
  const target = h('button.target', { act: 'done' }, state, words, then), keypad = h('div.keypad');
  const fault = h('b'), effect = h('span'), soFar = h('span'), noRep = h('button.no-rep', { act: 'no-rep' }, fault, effect, soFar);
  const receiver = h('b'), already = h('button.already', { act: 'already' }, receiver, say('already'));
  const worker = h('b'), change = h('button.already', { act: 'shares', on: () => pad.open('shares') }, worker, say('shares'));
  const side = h('div.side', {}, noRep, already, change), root = h('section.work', {}, h('div.main', {}, keypad, target), side);
  let carried = null, digits = '', digitsOf = 0, short = [];

  const press = (element, parts) => new Target(pad, element, { onAct: (fact, stamp) => pad.record(stamp, fact), ...parts });
  const done = press(target, {
    carried: () => carried,
    holdMs: (fact, stamp) => (fact.fact === 'step-done' && short.length || tooEarly(pad.model, fact, pad.clock.instantOf(stamp)) ? LONG_HOLD_MS : 0),
    onHold: ms => pad.note('early', ms),
  });
  const wrong = press(noRep, { carried: () => noRep.carried, onAct: (fact, stamp) => pad.recordNoRep(stamp, fact) });
  const late = press(already, { carried: () => ({ ...carried, timeKnown: false }) });
  const type = key => () => {
    digits = key === '⌫' ? digits.slice(0, -1) : key === '.' && digits.includes('.') ? digits : (digits + key).slice(0, 6);
    pad.draw();
  };

  function label({ step, owed, line }) {
    const { kind, quantity, movement } = step, unit = /^(cal|m|kg|lb)$/.test(step.unit) ? ` ${step.unit}` : '';
    if (kind === 'tag') return [line.athletes[step.athlete - 1], line.athletes[step.to - 1], say('target.tag')];
    if (kind === 'finish') return ['', step.label, say('target.finish')];
    if (kind === 'value') return [say('target.value', { value: `${digits.replace('.', point) || '–'}${unit}` }), step.label, ''];
    const counts = carried.fact === 'count-reached', debt = owed ? say('target.owed', { n: owed }) : '';
    return [`${carried.count ?? quantity}${unit}`, counts ? say('target.of', { quantity, name: movement }) : movement || step.label,
      [debt, counts ? '' : say('target.done')].filter(Boolean).join(', ')];
  }

  return {
    root,
    update() {
      const { model, capped } = pad, { step, count, noReps } = model;
      if (!step) return;
      if (digitsOf !== step.step) { digits = ''; digitsOf = step.step; }
      const { kind } = step, isTag = kind === 'tag', isValue = kind === 'value', value = parseFloat(digits);
      carried = !isValue ? model.carried : value >= 0 ? { ...model.carried, value } : null;
      const shown = label(model), [next] = following(model), shares = model.shares && sharesOf(model);
      short = shares?.short ?? [];
      change.hidden = !shares;
      put(worker, shares?.who ? model.line.athletes[shares.who - 1] : '–');
      fit(worker, 22);
      [big, name, verb].forEach((element, i) => put(element, shown[i]));
      put(then, capped ? say('target.capped') : short.length && carried.fact === 'step-done' ? say('shares.short', { names: listed(short) }) : carried?.count ? say('target.togo', { n: step.quantity - carried.count }) : say('target.then', { label: next?.label ?? say('then.last') }));
      put(state, lastTap(pad).join(' '));
      root.dataset.kind = kind;
      target.dataset.fact = JSON.stringify(carried);
      target.disabled = !carried;
      done.relabel(JSON.stringify([step.step, shown, !!pad.panel]), deadMs(model, model.carried, pad.clock.rate));

      noRep.hidden = isValue || kind === 'finish';
      noRep.carried = { fact: isTag ? 'tag-fault' : 'no-rep', step: step.step, fault: null };
      put(fault, say(noRep.carried.fact));
      put(effect, isTag ? say('tag-fault.open') : checkpoint(step, pad.sheet) ? say('no-rep.count', { n: count }) : say('no-rep.open'));
      put(soFar, say('no-rep.so-far', { n: noReps }));
      wrong.relabel(`${step.step} ${noReps} ${!pad.panel}`, NO_REP_DEAD_MS);
      already.hidden = !isTag;
      put(receiver, isTag ? shown[1] : '');
      fit(receiver, 22);
      late.relabel(String(step.step), DEAD_MS);
      side.hidden = noRep.hidden && already.hidden && change.hidden;
      keypad.hidden = !isValue;
      if (isValue) refill(keypad, 0, () => keys(type));
      name.classList.toggle('short', shown[1].length < 14);
      fit(words, 130);
    },
  };
}

export function head(pad, under, tag = laneTag(pad.model.lane)) {
  const team = h('h2'), clock = h('b'), cap = h('small');
  return {
    root: h('header', {}, tag, h('div.team', {}, team, under), h('div.clock', {}, clock, cap)),
    tick() {
      const { frame, model, capped } = pad, at = heatMs(frame, frame?.haltedAt ?? pad.clock.now()), limit = capMs(model);
      put(team, model.line.name);
      put(clock, at === null ? '–:––' : clockText(at));
      put(cap, at === null ? say('no-start') : frame.haltedAt ? say('halted') 
        : model.round ? say(model.waits ? 'rest.until' : 'round.until', { time: clockText(model.round.turnMs) }) : capped ? say('cap.over') : limit ? say('cap', { time: clockText(limit) }) : '');
    },
  };
}

export function heat(pad) {
  const who = h('span'), top = head(pad, h('div.who', {}, dutyMark(pad), ' ', who), h('button.lane', { act: 'standard', on: () => pad.open('standard') }, String(pad.model.lane), h('small', {}, say('standard'))));
  const tape = strip(), then = h('div.then-line'), work = targetView(pad), bar = foot(pad, true), atCap = capView(pad), panel = h('div.panel');
  const root = h('div.body.heat', {}, top.root, tape.root, then, atCap.root, work.root, bar.root, panel);

  let shown = work, lift = null;

  function whoText({ step, athlete, line, rounds }) {
    const round = !rounds ? '' : step?.round ? say('round', { n: step.round, of: rounds }) : say(step?.round === 0 ? 'round.before' : 'round.after');
    const names = [athlete, ...athlete === step?.athlete && step.with || []].map(one => line.athletes[one - 1]);
    return [athlete ? say('works', { name: listed(names, ' + ') }) : say('works.all'), round].filter(Boolean).join(' · ');
  }

  function thenLine() {
    const { faultsFor } = pad;
    if (notice(pad, then)) { /* it has the place */ } else if (faultsFor) {
      refill(then, faultsFor, () => [button('why', say('fault.why'), () => pad.open('standard'), '.why'), ...faultsFor.faults.map((fault, i) => button(`fault-${i + 1}`, pad.model.faultSaid(fault), () => pad.giveFault(fault)))]);
    } else {
      const [next, ...more] = following(pad.model).map(({ label }) => label);
      refill(then, [next, more], () => h('p', {}, say('then'), ' ', h('strong', {}, next ?? say('then.last')), ...more.map(label => `${say('then.more')} ${label}`)));
    }
    then.classList.toggle('faults', !!faultsFor && !then.dataset.tone);
    const [text] = then.children;
    fit(text, 20);
  }

  return {
    root, tick() { top.tick(); bar.tick(); },
    update() {
      const { model, frame, capped, session: { kept }, look } = pad, ended = frame?.phase === 'ended';
      put(who, whoText(model));
      tape.update(model);
      root.classList.toggle('tight', capped || /value|attempt/.test(model.step?.kind));
      atCap.root.hidden = !capped;
      if (capped) atCap.update();
      thenLine();
      const lifts = model.step?.kind === 'attempt';
      if (lifts) lift ??= pad.attempt?.(pad);
      const now = lifts && lift || work;
      if (now !== shown) { shown.root.replaceWith(now.root); shown = now; }
      shown.root.hidden = ended || !!model.waits || lifts && !lift;
      // Both: what comes to the screen next has a new label, dead for a moment.
      if (!ended) for (const view of [work, lift]) view?.update();
      bar.update();
      const open = pad.away ? 'away' : pad.panel;
      panel.hidden = !open;
      panel.classList.toggle('standard', open === 'standard');
      panel.classList.toggle('shares', open === 'shares');
      if (open) refill(panel, [open, model.open, model.athlete, kept.hand, look], () => (pad.away ? awayPanel(pad) : open === 'here' ? herePanel(pad) : pad.later.panel(pad)));
    },
  };
}

function capView(pad) {
  const ask = lead(''), number = h('output');
  let count = 0, of = 0, changing = false;
  const settled = () => !!pad.model.atCap && !changing;
  const step = by => () => { count = Math.max(0, Math.min(pad.model.step.quantity, count + by)); pad.draw(); };
  const minus = button('cap-minus', '−', step(-1)), plus = button('cap-plus', '+', step(1)), row = h('div.number', {}, minus, number, plus);
  const record = button('cap-record', '', event => {
    const { atCap, open } = pad.model;
    changing = settled();
    if (changing) pad.draw(); else pad.record(event.timeStamp, ...(atCap ? [{ fact: 'undone', target: atCap.id }] : []), { fact: 'reps-at-cap', step: open, count });
  }, '.big');
  const root = h('section.cap', {}, ask, row, record);
  return {
    root,
    update() {
      const { atCap, open, count: counted, waits, over, steps, line, step: { kind, label } } = pad.model, asks = kind === 'set' && !waits;
      if (of !== open) [of, count, changing] = [open, atCap?.count ?? counted, false];
      put(ask, waits ? say('rest', { name: line.athletes[steps[waits.first - 1].athlete - 1], label: steps[waits.first - 1].label, time: clockText(waits.fromMs) })
        : !asks ? say(kind === 'value' ? 'cap.read' : 'cap.nothing') : settled() ? say('cap.wait') : say(over ? 'over.ask' : 'cap.ask', { label }));
      row.hidden = record.hidden = !asks;
      root.classList.toggle('rest', !!waits);
      minus.disabled = plus.disabled = settled();
      put(number, write(count));
      put(record, say(settled() ? 'cap.change' : 'cap.record', { n: count }));
    },
  };
}

function awayPanel(pad) {
  return h('div.body.away', {}, lead(say('away', { label: pad.model.step?.label })), button('away-yes', say('away.yes'), () => pad.set({ away: false }), '.big'),
    button('away-no', say('away.no'), () => pad.set({ away: false, panel: 'here' }), '.wide'));
}

function herePanel(pad) {
  const { steps, open, line, athlete, rounds } = pad.model, judges = pad.session.kept.duty === 'primary';
  const close = () => pad.set({ panel: null });
  const tell = fact => event => { close(); pad.record(event.timeStamp ?? event, fact); };
  const jump = (one, before) => button('here-step', one.label, tell({ fact: before?.kind === 'tag' ? 'tag-made' : 'step-done', step: one.step - 1, timeKnown: false }), '',
    { 'data-step': one.step, disabled: one.step <= open, 'aria-current': one.step === open ? 'step' : undefined });
  const rows = steps.flatMap((one, i) => [
    one.round && one.round !== steps[i - 1]?.round && h('h3', {}, say('round', { n: one.round, of: rounds }), ' · ', line.athletes[one.athlete - 1] ?? ''),
    jump(one, steps[i - 1])]).filter(Boolean);
  const list = h('div.steps', {}, ...rows);
  requestAnimationFrame(() => { list.scrollTop = rows.find(row => row.ariaCurrent)?.offsetTop - list.clientHeight / 2; });
  return [
    h('div.row', {}, h('h2', {}, say('here.title')), button('close', say('here.close'), close)), quiet(say('here.how')), list,
    judges && athlete && h('div.pair', {}, h('p', {}, say('here.who')), ...line.athletes.map((name, i) =>
      button('athlete', name, tell({ fact: 'athlete-working', step: open, athlete: i + 1 }), '', { disabled: i + 1 === athlete, 'data-athlete': i + 1 }))),
    judges && h('div.pair', {}, h('p', {}, say('here.stop')), ...['withdrew', 'medical'].map(reason => holdButton(pad, `stop-${reason}`, say(`here.${reason}`), tell({ fact: 'lane-stopped', reason })))),
    settings(pad),
  ].filter(Boolean);
}

/** The lane as tape: sets as wide as their expected time, joints at the tags, the roll at the end. */
function strip() {
  const root = h('div.strip', { 'aria-hidden': 'true' });
  return {
    root,
    update({ steps, open, count, step }) {
      const sum = some => some.reduce((all, { expectedMs }) => all + expectedMs, 0), percent = ms => ms / sum(steps) * 100;
      const at = percent(sum(steps.slice(0, open - 1)) + (step?.quantity ? step.expectedMs * count / step.quantity : 0));
      refill(root, [at, steps.length], () => [
        h('div.tape', { style: `width:${at}%` }),
        ...steps.map(({ kind }, i) => kind === 'tag' && h('i', { style: `left:${percent(sum(steps.slice(0, i + 1)))}%` })),
        step && h('div.roll', { style: `--at:${at}` }),
      ]);
    },
  };
}
