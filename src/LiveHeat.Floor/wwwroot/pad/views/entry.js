// The screens before GO: join, wait, confirm lane and team, checks, ready, count-down; and the two that say this phone is not the pad.

import { checks } from '../checks.js';
import { h, put, refill } from '../dom.js';
import { readCode } from '../server.js';
import { Target } from '../touch.js';
import { knows, say } from '../words.js';
import { calledAgain } from '../view.js';

const GO_SHOWN_MS = 1_500;

/** A screen that is built anew whenever what it is made of changes. @param {(pad: any) => any[]} made @param {(pad: any) => Node[]} build */
function page(name, made, build) {
  return pad => {
    const body = h(`div.body.${name}`);
    return { root: body, update: () => refill(body, JSON.stringify(made(pad)), () => build(pad)), tick() {} };
  };
}

const problemText = problem => (problem
  ? [problem.message, say(knows(`problem.${problem.code}`) ? `problem.${problem.code}` : problem.message ? '' : 'problem.other', { code: problem.code })]
    .filter(Boolean).join(' ')
  : '');

const laneTag = (pad, lane) => h('div.lane.huge', {}, String(lane));
const teamOf = pad => pad.model.line.name;

export function join(pad) {
  const code = h('input', { act: 'code', autocomplete: 'off', autocapitalize: 'characters', spellcheck: 'false', maxlength: '12', 'aria-label': say('join.code') });
  const name = h('input', { act: 'name', autocomplete: 'name', maxlength: '40', 'aria-label': say('join.name') });
  const go = h('button.big', { act: 'join' });
  const word = h('p.problem', { role: 'alert' });
  const hint = h('p.quiet'), title = h('h1');
  code.value = pad.pendingCode;
  name.value = pad.session.kept.joined?.judge ?? '';
  const form = h('form.body.join', {}, title, h('p.lead', {}, say('join.ask')), hint,
    h('label', {}, say('join.code'), code), h('label', {}, say('join.name'), name), word, go);
  form.addEventListener('submit', async event => {
    event.preventDefault();
    const typed = readCode(code.value), judge = name.value.trim();
    const unsent = pad.session.kept.joined && !pad.session.signedOut ? pad.outbox.waiting : 0;
    put(word, !typed ? say('join.no-code') : !judge ? say('join.no-name') : unsent ? say('join.unsent', { n: unsent }) : '');
    if (word.textContent) return;
    go.disabled = true;
    put(go, say('join.going'));
    try {
      await pad.join(typed, judge);
    } catch (problem) {
      put(word, problem.code === 'not-yours' ? say('join.not-a-judge') : problemText(problem));
    }
    go.disabled = false;
    put(go, say('join.go'));
  });
  go.type = 'submit';
  put(go, say('join.go'));
  return {
    root: form, tick() {},
    update() {
      if (pad.pendingCode && code.value !== pad.pendingCode && pad.freshCode) { code.value = pad.pendingCode; pad.freshCode = false; }
      put(title, pad.competition);
      put(hint, pad.session.signedOut && pad.session.kept.joined ? say('join.signed-out') : pad.pendingCode ? say('join.have') : '');
    },
  };
}

export const waiting = page('waiting', pad => [pad.competition, pad.session.kept, pad.session.program, pad.session.next, !!pad.session.sheet], pad => {
  const { joined, heat, left } = pad.session.kept;
  const next = pad.nextHeat();
  const at = next?.plannedAt ? new Date(next.plannedAt).toLocaleTimeString([], { hour: 'numeric', minute: '2-digit' }) : '';
  const reading = heat && left !== heat && !pad.session.sheet;
  return [
    h('h1', {}, pad.competition), laneTag(pad, joined.lane),
    h('p.lead', {}, say(reading ? 'waiting.loading' : 'waiting.none')),
    !reading && h('p', { act: 'next-heat' }, next ? [say('waiting.next', next), next.team, at && say('waiting.at', { time: at })].filter(Boolean).join(' · ') : say('waiting.nothing-planned')),
    h('p.quiet', {}, say('waiting.how')),
    pad.session.next && h('button.big', { act: 'next', on: () => pad.session.goOn() }, say('finish.next')),
  ];
});

export const confirm = page('confirm', pad => [pad.model.line, pad.problem, pad.notMine, pad.asking, pad.frame?.phase, calledAgain(pad.session.kept, pad.model, pad.frame)], pad => {
  const { line, lane } = pad.model;
  const late = ['running', 'halted'].includes(pad.frame?.phase);
  const again = calledAgain(pad.session.kept, pad.model, pad.frame);
  return [
    h('h1', {}, `${pad.competition} · ${pad.sheet.title}`), laneTag(pad, lane), h('h2', {}, line.name),
    h('p.quiet', {}, `${line.divisionName} · ${say('confirm.order')}`),
    h('ol.names', {}, ...line.athletes.map(name => h('li', {}, name))),
    h('p.lead', {}, say('confirm.ask')),
    (late || again) && h('p.note', {}, say(again ? 'confirm.again' : 'confirm.late')),
    (pad.problem || pad.notMine) && h('p.problem', { role: 'alert' }, pad.notMine ? say('confirm.not-mine', { lane, team: line.name }) : problemText(pad.problem)),
    h('button.big', { act: 'confirm', disabled: pad.asking, on: () => pad.confirm() }, say('confirm.yes')),
    h('button.wide', { act: 'not-mine', on: () => pad.set({ notMine: true }) }, say('confirm.no')),
  ];
});

export const ready = pad => {
  const begin = h('button.wide.hold', { act: 'begin' }, say('ready.begin'));
  new Target(begin, { carried: () => 'begin', holdMs: () => 800, onAct: () => pad.session.keep({ begun: pad.session.kept.heat }) });
  const top = h('div.body.ready'), body = h('div.body.ready', {}, top, begin);
  return {
    root: body, tick() {},
    update() {
      const { readyHeard, noStart } = pad.session.kept;
      refill(top, JSON.stringify([pad.model.line, readyHeard, noStart]), () => {
        const { step, athlete, line, lane } = pad.model;
        return [
          h('h1', {}, `${pad.competition} · ${pad.sheet.title}`), laneTag(pad, lane), h('h2', {}, line.name),
          noStart ? h('p.problem', { role: 'alert' }, say(`ready.${noStart}`)) : null,
          h('p.lead', {}, say('ready.title')), h('p', {}, say('ready.wait')),
          h('p.big-line', {}, `${athlete ? say('ready.first', { name: line.athletes[athlete - 1] }) : say('ready.first-all')}: ${step?.label ?? ''}`),
          readyHeard === null && h('p.note', {}, say('ready.unheard')),
        ];
      });
    },
  };
};

export const checksView = page('checks', pad => [pad.phone(), pad.session.kept.hand, pad.look], pad => [
  h('h1', {}, say('checks.title')),
  h('ul.checks', {}, ...checks(pad.phone()).map(({ id, state, values }) => h(`li.${state}`, { 'data-check': id, 'data-state': state },
    say(`check.${id}.${state}`, values),
    id === 'sound' && state === 'ask' && h('span.pair', {},
      h('button', { act: 'sound-test', on: () => pad.testSound() }, say('checks.sound')),
      h('button', { act: 'sound-heard', disabled: !pad.sound.ready, on: () => pad.set({ soundHeard: true }) }, say('checks.heard')))))),
  h('div.pair', {}, ...settings(pad)),
  h('button.big', { act: 'ready', on: () => pad.ready() }, say('checks.ready'), h('small', {}, say('checks.ready-how', { lane: pad.model.lane, team: teamOf(pad) }))),
]);

/** Hand and light: kept on this phone. */
export function settings(pad) {
  const { hand } = pad.session.kept;
  const other = hand === 'right' ? 'left' : 'right', look = pad.look === 'dark' ? 'light' : 'dark';
  return [
    h('button', { act: 'hand', on: () => pad.session.keep({ hand: other }) }, say(`settings.${other}`)),
    h('button', { act: 'look', on: () => pad.session.keep({ look }) }, say(`settings.${look}`)),
  ];
}

export const countdown = pad => {
  const digits = h('div.digits', { role: 'timer' }), word = h('p.lead');
  const who = h('p.big-line');
  const body = h('div.body.countdown', {}, h('div.row', {}, laneTag(pad, pad.model.lane), h('h2', {}, teamOf(pad))), word, digits, who);
  const tick = () => {
    const ms = pad.clock.msUntil(pad.frame?.start?.goAt ?? 0);
    put(digits, ms > 0 ? String(Math.ceil(ms / 1_000)) : say('countdown.go'));
    put(word, ms > -GO_SHOWN_MS && ms > 0 ? say('countdown.in') : '');
  };
  return {
    root: body, tick,
    update() {
      const { step, athlete, line } = pad.model;
      put(who, `${athlete ? say('ready.first', { name: line.athletes[athlete - 1] }) : say('ready.first-all')}: ${step?.label ?? ''}`);
      tick();
    },
  };
};

export const taken = page('taken', pad => [pad.model.takenBy, pad.problem, pad.asking], pad => {
  const { takenBy, lane } = pad.model;
  return [
    laneTag(pad, lane),
    h('p.lead', {}, say(takenBy ? 'taken.title' : 'taken.unknown', { name: takenBy?.by?.name, lane })),
    h('p', {}, say('taken.how')),
    pad.problem && h('p.problem', { role: 'alert' }, problemText(pad.problem)),
    h('button.wide', { act: 'take-back', disabled: pad.asking, on: () => pad.takeSeat() }, say('taken.back')),
  ];
});

export const tab = page('tab', () => [], pad => [
  h('p.lead', {}, say('tab.title')), h('p', {}, say('tab.how')),
  h('button.big', { act: 'use-here', on: () => pad.useHere() }, say('tab.here')),
]);
