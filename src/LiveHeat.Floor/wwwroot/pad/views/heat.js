// The heat: who, where and when above; the target below; undo, "lane is here" and the head judge at the foot.

import { capMs, following, heatMs } from '../lane.js';
import { clockText, h, put, refill } from '../dom.js';
import { phrase } from '../facts.js';
import { say } from '../words.js';
import { strip } from '../strip.js';
import { Target } from '../touch.js';
import { phaseNow } from '../view.js';
import { settings } from './entry.js';
import { targetView } from './target.js';

export const UNDO_HOLD_MS = 600, STOP_HOLD_MS = 800;

/** Undo, "lane is here" and the call: also under the finish. */
export function bar(pad, withHere = true) {
  const undoWhat = h('span'), undo = h('button.undo', { act: 'undo' }, h('span', {}, say('undo')), undoWhat, h('i.held'));
  const press = new Target(undo, {
    carried: () => pad.model.last?.fact, holdMs: () => UNDO_HOLD_MS, onIgnored: why => pad.ignored(why),
    onAct: (fact, stamp) => pad.record(stamp, { fact: 'undone', target: fact.id }),
  });
  const here = h('button.here', { act: 'here', on: () => pad.set({ panel: 'here' }) }, say('here'));
  const call = h('button.call', { act: 'call' });
  call.addEventListener('click', event => pad.callHeadJudge(event.timeStamp));
  const root = h('nav.bar', {}, undo, withHere && here, call);
  return {
    root,
    update() {
      const { last } = pad.model;
      put(undoWhat, last ? phrase(last.fact, pad.model) : say('undo.nothing'));
      press.relabel(last?.fact.id ?? 'none', 0);
      undo.disabled = !last;
    },
    tick() {
      put(call, pad.callText());
      call.classList.toggle('called', pad.calling);
    },
  };
}

/** One notice at a time in the place of "after this": what matters most first. */
export function notices(pad) {
  const { model } = pad;
  const say1 = (id, text, act, on) => [h('p', { role: 'status' }, text), on && h('button', { act, on }, say('ok'))];
  const [refused] = pad.outbox.refused;
  if (refused) {
    const what = phrase(refused.fact, model);
    return { key: `refused ${refused.order}`, tone: 'bad', build: () => say1('refused', say('note.refused', { what, detail: refused.detail ?? refused.code ?? '' }), 'dismiss', () => pad.outbox.dismiss(refused)) };
  }
  const ruled = pad.nextRuling();
  if (ruled) return { key: `ruling ${ruled.sequence}`, tone: 'ruling', build: () => say1('ruling', ruled.text, 'dismiss', () => pad.session.keep({ ruling: ruled.sequence })) };
  const line = pad.standingNote();
  return line ? { key: line, tone: 'note', build: () => say1('note', line) } : null;
}

export function heat(pad) {
  const team = h('h2'), who = h('span.who'), clock = h('b'), cap = h('small');
  const head = h('header', {}, h('div.lane', {}, String(pad.model.lane)), h('div.team', {}, team, who), h('div.clock', {}, clock, cap));
  const tape = strip(), then = h('div.then-line'), work = targetView(pad), foot = bar(pad), capPanel = capView(pad);
  const panel = h('div.panel'), root = h('div.body.heat', {}, head, tape.root, then, capPanel.root, work.root, foot.root, panel);

  function whoText({ step, athlete, line, rounds }) {
    const round = step?.round === null ? say('heat.after') : step?.round === 0 ? say('heat.before') : step ? say('heat.round', { n: step.round, of: rounds }) : '';
    return [athlete ? say('heat.works', { name: line.athletes[athlete - 1] }) : say('heat.works-all'), round].filter(Boolean).join(' · ');
  }

  function thenLine() {
    const notice = notices(pad);
    then.dataset.tone = notice?.tone ?? '';
    if (notice) { refill(then, notice.key, notice.build); return; }
    if (pad.faultsFor) {
      refill(then, `faults ${pad.faultsFor.id}`, () => [h('p', {}, say('fault.why')), h('div.faults', {},
        ...pad.faultsFor.faults.map((fault, i) => h('button', { act: `fault-${i + 1}`, on: () => pad.giveFault(fault) }, fault)),
        h('button', { act: 'fault-none', on: () => pad.set({ faultsFor: null }) }, say('fault.skip')))]);
      return;
    }
    const next = following(pad.model);
    refill(then, JSON.stringify(next.map(step => step.label)), () => [h('p', {}, `${say('heat.then')} `,
      h('strong', {}, next[0]?.label ?? say('heat.last')), ...next.slice(1).map(step => say('heat.then-list') + step.label))]);
  }

  const tick = () => {
    const { frame, model } = pad, at = heatMs(frame, pad.now());
    put(clock, at === null ? '–:––' : clockText(Math.max(0, at)));
    const limit = capMs(model, frame), phase = phaseNow(frame, pad.now());
    put(cap, at === null ? say('heat.no-start') : phase === 'halted' ? say('heat.halted') : pad.capped ? say('heat.capped') : limit ? say('heat.cap', { time: clockText(limit) }) : '');
    foot.tick();
  };

  return {
    root, tick,
    update() {
      const { model } = pad;
      put(team, model.line.name);
      put(who, whoText(model));
      tape.update(model);
      const ended = pad.frame?.phase === 'ended';
      root.classList.toggle('capped', pad.capped);
      capPanel.root.hidden = !pad.capped;
      if (pad.capped) capPanel.update();
      work.root.hidden = ended;
      if (!ended) work.update();
      thenLine();
      foot.update();
      const open = pad.away ? 'away' : pad.panel;
      panel.hidden = !open;
      panel.dataset.panel = open ?? '';
      if (open) refill(panel, `${open} ${model.open} ${model.athlete} ${pad.session.kept.hand} ${pad.look}`, () => (open === 'away' ? awayPanel(pad) : herePanel(pad)));
      tick();
    },
  };
}

/** At the cap: how many of the open set counted. It can be changed until the heat is read back. */
function capView(pad) {
  const ask = h('p.lead'), number = h('output'), record = h('button.big', { act: 'cap-record' });
  const minus = h('button', { act: 'cap-minus', 'aria-label': '−1', on: () => step(-1) }, '−'), plus = h('button', { act: 'cap-plus', 'aria-label': '+1', on: () => step(1) }, '+');
  const row = h('div.number', {}, minus, number, plus);
  const root = h('section.cap', {}, ask, row, record);
  let count = 0, of = 0, changing = false;
  const settled = () => pad.model.atCap && !changing;
  const step = by => { count = Math.max(0, Math.min(pad.model.step.quantity, count + by)); pad.changeNow(); };
  record.addEventListener('click', event => {
    const { atCap, open } = pad.model;
    changing = !!settled();
    if (changing) { pad.changeNow(); return; }
    pad.record(event.timeStamp, ...(atCap ? [{ fact: 'undone', target: atCap.fact.id }] : []), { fact: 'reps-at-cap', step: open, count });
  });
  return {
    root,
    update() {
      const { model } = pad, isSet = model.step?.kind === 'set';
      if (of !== model.open) { of = model.open; count = model.atCap?.fact.count ?? model.count; changing = false; }
      put(ask, !isSet ? say('cap.nothing') : settled() ? say('cap.wait') : say('cap.ask', { label: model.step.label }));
      row.hidden = record.hidden = !isSet;
      minus.disabled = plus.disabled = !!settled();
      put(number, String(count));
      put(record, settled() ? `${say('cap.recorded', { n: count })} · ${say('cap.change')}` : say('cap.record', { n: count }));
    },
  };
}

function awayPanel(pad) {
  return [
    h('p.lead', {}, say('away.ask', { label: pad.model.step?.label ?? '' })),
    h('button.big', { act: 'away-yes', on: () => pad.set({ away: false }) }, say('away.yes')),
    h('button.wide', { act: 'away-no', on: () => pad.set({ away: false, panel: 'here' }) }, say('away.no')),
  ];
}

/** Where the lane is: a jump forward only. And what else happens seldom: another athlete works, the team stops. */
function herePanel(pad) {
  const { model } = pad, { steps, open, line } = model;
  const close = () => pad.set({ panel: null });
  const jump = ({ step }) => event => {
    close();
    const before = steps[step - 2];
    pad.record(event.timeStamp, { fact: before.kind === 'tag' ? 'tag-made' : 'step-done', step: before.step, timeKnown: false });
  };
  const stop = reason => {
    const button = h('button.hold', { act: `stop-${reason}` }, say(`here.${reason}`));
    new Target(button, { carried: () => reason, holdMs: () => STOP_HOLD_MS, onIgnored: why => pad.ignored(why), onAct: (_, stamp) => { close(); pad.record(stamp, { fact: 'lane-stopped', reason }); } });
    return button;
  };
  const rows = steps.flatMap((one, i) => [
    one.round !== steps[i - 1]?.round && one.round ? h('h3', {}, say('heat.round', { n: one.round, of: model.rounds })) : null,
    h('button', { act: 'here-step', 'data-step': String(one.step), disabled: one.step <= open, 'aria-current': one.step === open ? 'step' : undefined, on: jump(one) },
      one.label, one.step === open ? h('small', {}, say('here.now')) : h('small', {}, line.athletes[one.athlete - 1] ?? '')),
  ]).filter(Boolean);
  queueMicrotask(() => requestAnimationFrame(() => pad.root.querySelector('[aria-current=step]')?.scrollIntoView({ block: 'center' })));
  return [
    h('div.row', {}, h('h2', {}, say('here.title')), h('button', { act: 'close', on: close }, say('here.close'))),
    h('p.quiet', {}, say('here.how')), h('div.steps', {}, ...rows), h('p.quiet', {}, say('here.back')),
    model.athlete ? h('div.pair.who-works', {}, h('p', {}, say('here.who')), ...line.athletes.map((name, i) => h('button', {
      act: 'athlete', 'data-athlete': String(i + 1), disabled: i + 1 === model.athlete,
      on: event => { close(); pad.record(event.timeStamp, { fact: 'athlete-working', step: open, athlete: i + 1 }); },
    }, name))) : null,
    h('div.pair', {}, h('p', {}, say('here.stop')), stop('withdrew'), stop('medical')),
    h('div.pair', {}, ...settings(pad)),
  ];
}
