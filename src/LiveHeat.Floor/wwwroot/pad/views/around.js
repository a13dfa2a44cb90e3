// The screens around the heat.

import { calledAgain } from '../lane.js';
import { checks as checksOf } from '../phone.js';
import { readCode } from '../session.js';
import { say, timeOfDay } from '../words.js';
import { button, dutyMark, h, holdButton, laneTag, lead, put, quiet, refill, settings, trouble } from './parts.js';

/** Built anew whenever what it is made of changes. */
const page = (name, made, build) => pad => {
  const root = h(`div.body.${name}`);
  return { root, update: () => refill(root, made(pad), () => build(pad)) };
};

const sentence = problem => problem && (problem.code === 'not-yours' ? '' : problem.message)
  || problem && say(/offline|not-yours/.test(problem.code) ? `problem.${problem.code}` : 'problem.else', problem);
const heading = pad => h('h1', {}, [pad.competition, pad.sheet?.title].filter(Boolean).join(' · '));
const beginner = ({ athlete, line, step }) => lead(say(athlete ? 'ready.first' : 'ready.all', { name: line.athletes[athlete - 1], label: step?.label }));

export function join(pad) {
  const { session, outbox } = pad;
  const field = (act, props) => h('input', { act, 'aria-label': say(`join.${act}`), spellcheck: false, ...props });
  const code = field('code', { autocomplete: 'off', autocapitalize: 'characters', maxlength: 12 }), name = field('name', { autocomplete: 'name', maxlength: 40 });
  const word = h('p.problem', { role: 'alert' }), hint = quiet(''), title = h('h1'), go = h('button.big', { act: 'join' }, say('join.go'));
  name.value = session.kept.joined?.judge ?? '';
  code.value = pad.pendingCode;   // a slow browser grants the lock late: the view was left, and comes back
  go.type = 'submit';
  const root = h('form.body', {}, title, lead(say('join.ask')), hint, h('label', {}, say('join.code'), code), h('label', {}, say('join.name'), name), word, go);
  root.onsubmit = async event => {
    event.preventDefault();
    const typed = readCode(code.value), judge = name.value.trim(), unsent = session.signedOut ? 0 : outbox.waiting;
    put(word, !typed ? say('join.no-code') : !judge ? say('join.no-name') : unsent ? say('join.unsent', { n: unsent }) : '');
    if (word.textContent) return;
    go.disabled = true;
    await pad.join(typed, judge).catch(problem => put(word, sentence(problem)));
    go.disabled = false;
  };
  return {
    root,
    update() {
      if (pad.freshCode) { code.value = pad.pendingCode; pad.freshCode = false; }
      put(title, pad.competition);
      put(hint, session.signedOut && session.kept.joined ? say('join.signed-out') : '');
    },
  };
}

function nextHeat({ session: { program, kept } }) {
  const own = ({ lanes }) => lanes.find(({ lane }) => lane === kept.joined.lane), mine = program?.heats.filter(own) ?? [];
  const next = mine.slice(mine.findIndex(({ heat }) => heat === kept.heat) + 1).find(({ phase }) => /planned|called/.test(phase));
  return next && { ...next, team: own(next).name };
}

export const waiting = page('waiting', pad => [pad.competition, pad.session.kept, pad.session.program, pad.session.next, pad.sheet?.sheet], pad => {
  const { kept, next } = pad.session, later = nextHeat(pad), reading = kept.heat && kept.left !== kept.heat && !pad.sheet;
  const time = later?.plannedAt ? timeOfDay(later.plannedAt) : '';
  return [
    h('h1', {}, pad.competition), laneTag(kept.joined.lane, '.huge'), lead(say(reading ? 'waiting.loading' : 'waiting.none')),
    !reading && h('p.next', {}, later ? say('waiting.next', { ...later, time }).replace(/ ·$/, '') : say('waiting.end')),
    quiet(say('waiting.how')), next && button('next', say('finish.next'), () => pad.session.goOn(), '.big'),
  ];
});

const isAgain = pad => calledAgain(pad.session.kept, pad.model, pad.frame);

const other = pad => button('choose', say('confirm.choose'), () => pad.set({ choosing: true }));
const choice = (pad, duty) => {
  const over = duty === 'primary' && pad.judge, name = pad.judge || say('choose.judge');
  return h(`button.big${over ? '.dispute' : ''}`, { act: `duty-${duty}`, on: () => pad.confirm(duty), disabled: pad.asking },
    say(`choose.${duty}`, { name }), h('small', {}, say(over ? 'choose.over' : `choose.${duty}.how`, { name })));
};

const chooser = pad => [
  h('div.row', {}, laneTag(pad.model.lane), h('h2', {}, pad.model.line.name)), lead(say(pad.judge ? 'choose.taken' : 'choose', { name: pad.judge, lane: pad.model.lane })), trouble(sentence(pad.problem)),
  ...['primary', 'witness', 'timekeeper'].map(duty => choice(pad, duty)), button('close', say('here.close'), () => pad.set({ choosing: false, problem: null }), '.wide'),
];

export const confirm = page('confirm', pad => [pad.model.line, pad.problem, pad.notMine, pad.asking, pad.frame?.phase, isAgain(pad), pad.choosing, pad.judge, pad.session.kept.duty], pad => {
  const { line, lane } = pad.model, late = /running|halted/.test(pad.frame?.phase), { duty } = pad.session.kept;
  return pad.choosing ? chooser(pad) : [
    heading(pad), laneTag(lane, '.huge'), h('h2', {}, line.name), quiet(line.divisionName), h('ol.names', {}, ...line.athletes.map(name => h('li', {}, name))),
    lead(say('confirm.ask')), (late || isAgain(pad)) && h('p.note', {}, say(late ? 'confirm.late' : 'confirm.again')),
    trouble(pad.notMine ? say('confirm.not-mine', { lane, team: line.name }) : sentence(pad.problem)),
    button('confirm', say(`confirm.${duty}`), () => pad.confirm(), '.big', { disabled: pad.asking }),
    h('div.pair.wide', {}, button('not-mine', say('confirm.no'), () => pad.set({ notMine: true })), other(pad)),
  ];
});

export const checks = page('checks', pad => [checksOf(pad), pad.sounds?.ready, pad.session.kept.hand, pad.look], pad => [
  heading(pad), lead(say('checks')),
  h('ul.list', {}, ...checksOf(pad).map(({ id, state, values }) => h(`li.${state}`, { 'data-check': id, 'data-state': state }, say(`check.${id}.${state}`, values),
    id === 'sound' && state === 'ask' && h('span.pair', {}, button('sound-test', say('checks.sound'), () => pad.testSound()),
      button('sound-heard', say('checks.heard'), () => pad.set({ soundHeard: true }), '', { disabled: !pad.sounds?.ready }))))),
  settings(pad, other(pad)),
  h('button.big', { act: 'ready', on: () => pad.ready() }, say('checks.ready'), h('small', {}, say('lane', { lane: pad.model.lane, team: pad.model.line.name }))),
]);

export const ready = page('ready', pad => [pad.model.line, pad.session.kept, pad.offline], pad => {
  const { session, model } = pad, { noStart, readyHeard, heat, duty } = session.kept;
  return [
    heading(pad), laneTag(model.lane, '.huge'), h('h2', {}, model.line.name), dutyMark(pad), trouble(noStart && say(`ready.${noStart}`)), h('p', {}, say('ready')), duty === 'timekeeper' ? lead(say('choose.timekeeper.how')) : beginner(model),
    readyHeard === null && duty === 'primary' && pad.offline && h('p.note', {}, say('ready.unheard')),
    h('div.pair.wide', {}, holdButton(pad, 'begin', say('ready.begin'), () => session.keep({ begun: heat })), other(pad)),
  ];
});

export function countdown(pad) {
  const digits = h('div.digits', { role: 'timer' });
  return {
    root: h('div.body.countdown', {}, h('div.row', {}, laneTag(pad.model.lane), h('h2', {}, pad.model.line.name)), digits, dutyMark(pad) || beginner(pad.model)),
    update() {},
    tick() {
      const ms = pad.clock.msUntil(pad.frame.start.goAt);
      put(digits, ms > 0 ? String(Math.ceil(ms / 1_000)) : say('go'));
    },
  };
}

export const taken = page('taken', pad => [pad.judge, pad.problem, pad.asking], pad => {
  const { judge: name, model: { lane }, session: { kept: { duty } } } = pad;
  return [
    laneTag(lane, '.huge'), lead(say(name && duty === 'primary' ? 'taken' : 'taken.unknown', { name, lane })), h('p', {}, say('taken.how')), trouble(sentence(pad.problem)),
    h('div.pair.wide', {}, button('take-back', say('taken.back'), () => pad.takeSeat(duty), '', { disabled: pad.asking }), other(pad)),
  ];
});

export const tab = page('tab', () => 0, pad => [lead(say('tab')), button('use-here', say('tab.here'), () => pad.useHere(), '.big')]);
