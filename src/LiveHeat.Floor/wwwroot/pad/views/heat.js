// The heat: who, where and when above; the target below; undo, "lane is here" and the head judge at the foot.

import { button, clockText, fit, h, put, refill, strip } from '../dom.js';
import { capMs, following, heatMs } from '../lane.js';
import { say } from '../words.js';
import { foot, holdButton, laneTag, lead, notice, quiet, settings } from './parts.js';
import { targetView } from './target.js';

export function heat(pad) {
  const team = h('h2'), who = h('span.who'), clock = h('b'), cap = h('small');
  const tape = strip(), then = h('div.then-line'), work = targetView(pad), bar = foot(pad, true), atCap = capView(pad), panel = h('div.panel');
  const root = h('div.body.heat', {}, h('header', {}, laneTag(pad.model.lane), h('div.team', {}, team, who), h('div.clock', {}, clock, cap)),
    tape.root, then, atCap.root, work.root, bar.root, panel);

  function whoText({ step, athlete, line, rounds }) {
    const round = !step ? '' : step.round ? say('round', { n: step.round, of: rounds }) : say(step.round === 0 ? 'round.before' : 'round.after');
    return `${athlete ? say('works', { name: line.athletes[athlete - 1] }) : say('works.all')} · ${round}`;
  }

  function thenLine() {
    const { faultsFor } = pad;
    if (notice(pad, then)) { /* it has the place */ } else if (faultsFor) {
      refill(then, faultsFor, () => [h('p.why', {}, say('fault.why')), ...faultsFor.faults.map((fault, i) => button(`fault-${i + 1}`, fault, () => pad.giveFault(fault)))]);
    } else {
      const [next, ...more] = following(pad.model).map(({ label }) => label);
      refill(then, [next, more], () => h('p', {}, say('then'), ' ', h('strong', {}, next ?? say('then.last')), ...more.map(label => `${say('then.more')} ${label}`)));
    }
    then.classList.toggle('faults', !!faultsFor && !then.dataset.tone);
    const [text] = then.children;
    fit(text, 20);
  }

  function tick() {
    const { frame, model, capped } = pad, at = heatMs(frame, frame?.haltedAt ?? pad.now()), limit = capMs(model);
    put(clock, at === null ? '–:––' : clockText(at));
    put(cap, at === null ? say('no-start') : frame.haltedAt ? say('halted') : capped ? say('cap.over') : limit ? say('cap', { time: clockText(limit) }) : '');
    bar.tick();
  }

  return {
    root, tick,
    update() {
      const { model, frame, capped, session: { kept }, look } = pad, ended = frame?.phase === 'ended';
      put(team, model.line.name);
      put(who, whoText(model));
      tape.update(model);
      root.classList.toggle('capped', capped);
      atCap.root.hidden = !capped;
      if (capped) atCap.update();
      thenLine();
      work.root.hidden = ended;
      if (!ended) work.update();
      bar.update();
      const open = pad.away ? 'away' : pad.panel;
      panel.hidden = !open;
      if (open) refill(panel, [open, model.open, model.athlete, kept.hand, look], () => (pad.away ? awayPanel(pad) : herePanel(pad)));
    },
  };
}

/** At the cap: how many of the open set counted. It can be changed until the heat is ended. */
function capView(pad) {
  const ask = lead(''), number = h('output');
  let count = 0, of = 0, changing = false;
  const settled = () => !!pad.model.atCap && !changing;
  const step = by => () => { count = Math.max(0, Math.min(pad.model.step.quantity, count + by)); pad.changeNow(); };
  const minus = button('cap-minus', '−', step(-1)), plus = button('cap-plus', '+', step(1)), row = h('div.number', {}, minus, number, plus);
  const record = button('cap-record', '', event => {
    const { atCap, open } = pad.model;
    changing = settled();
    if (changing) pad.changeNow(); else pad.record(event.timeStamp, ...(atCap ? [{ fact: 'undone', target: atCap.id }] : []), { fact: 'reps-at-cap', step: open, count });
  }, '.big');
  return {
    root: h('section.cap', {}, ask, row, record),
    update() {
      const { atCap, open, count: counted, step: { kind, label } } = pad.model;
      if (of !== open) [of, count, changing] = [open, atCap?.count ?? counted, false];
      put(ask, kind !== 'set' ? say('cap.nothing') : settled() ? say('cap.wait') : say('cap.ask', { label }));
      row.hidden = record.hidden = kind !== 'set';
      minus.disabled = plus.disabled = settled();
      put(number, String(count));
      put(record, say(settled() ? 'cap.change' : 'cap.record', { n: count }));
    },
  };
}

function awayPanel(pad) {
  return h('div.body.away', {}, lead(say('away', { label: pad.model.step?.label })), button('away-yes', say('away.yes'), () => pad.set({ away: false }), '.big'),
    button('away-no', say('away.no'), () => pad.set({ away: false, panel: 'here' }), '.wide'));
}

/** Where the lane is: a jump forward only. And what else happens seldom: another athlete works, the team stops. */
function herePanel(pad) {
  const { steps, open, line, athlete, rounds } = pad.model;
  const close = () => pad.set({ panel: null });
  const tell = fact => event => { close(); pad.record(event.timeStamp ?? event, fact); };
  const jump = (one, before) => button('here-step', one.label, tell({ fact: before?.kind === 'tag' ? 'tag-made' : 'step-done', step: one.step - 1, timeKnown: false }), '',
    { 'data-step': one.step, disabled: one.step <= open, 'aria-current': one.step === open ? 'step' : undefined });
  const rows = steps.flatMap((one, i) => [
    one.round && one.round !== steps[i - 1]?.round && h('h3', {}, say('round', { n: one.round, of: rounds }), ' · ', line.athletes[one.athlete - 1] ?? ''),
    jump(one, steps[i - 1])]).filter(Boolean);
  requestAnimationFrame(() => rows.find(row => row.ariaCurrent)?.scrollIntoView({ block: 'center' }));
  return [
    h('div.row', {}, h('h2', {}, say('here.title')), button('close', say('here.close'), close)), quiet(say('here.how')), h('div.steps', {}, ...rows),
    athlete && h('div.pair', {}, h('p', {}, say('here.who')), ...line.athletes.map((name, i) =>
      button('athlete', name, tell({ fact: 'athlete-working', step: open, athlete: i + 1 }), '', { disabled: i + 1 === athlete, 'data-athlete': i + 1 }))),
    h('div.pair', {}, h('p', {}, say('here.stop')), ...['withdrew', 'medical'].map(reason => holdButton(pad, `stop-${reason}`, say(`here.${reason}`), tell({ fact: 'lane-stopped', reason })))),
    settings(pad),
  ];
}
