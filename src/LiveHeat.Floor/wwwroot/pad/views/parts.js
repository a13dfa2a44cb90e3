// What several screens share: the lane's tag, the foot with undo and the call, notices, the status line, hand and light.

import { button, h, put, refill } from '../dom.js';
import { Target } from '../touch.js';
import { phrase, say } from '../words.js';

export const UNDO_HOLD_MS = 600, LONG_HOLD_MS = 800;

export const laneTag = (lane, classes = '') => h(`div.lane${classes}`, {}, String(lane));
export const lead = (text, act) => h('p.lead', { act }, text);
export const quiet = text => h('p.quiet', {}, text);
export const trouble = text => text && h('p.problem', { role: 'alert' }, text);

/** A button that is held. */
export function holdButton(pad, act, text, onAct, classes = '') {
  const element = button(act, text, null, `.hold${classes}`);
  new Target(element, { carried: () => act, holdMs: () => LONG_HOLD_MS, onAct: (_, stamp) => onAct(stamp), onIgnored: why => pad.ignored(why) });
  return element;
}

/** Hand and light: kept on this phone. */
export function settings(pad) {
  const hand = pad.session.kept.hand === 'right' ? 'left' : 'right', look = pad.look === 'dark' ? 'light' : 'dark';
  return h('div.pair', {}, button('hand', say(hand), () => pad.session.keep({ hand })), button('look', say(look), () => pad.session.keep({ look })));
}

/** Undo, far from the target and held; "lane is here"; the head judge. */
export function foot(pad, withHere) {
  const what = h('span'), undo = h('button.undo', { act: 'undo' }, say('undo'), what);
  const press = new Target(undo, {
    carried: () => pad.model.last, holdMs: () => UNDO_HOLD_MS, onIgnored: why => pad.ignored(why),
    onAct: ({ id }, stamp) => pad.record(stamp, { fact: 'undone', target: id }),
  });
  const call = button('call', '', event => pad.callHeadJudge(event.timeStamp), '.call');
  return {
    root: h('nav.bar', {}, undo, withHere && button('here', say('here'), () => pad.set({ panel: 'here' })), call),
    update() {
      const { last } = pad.model;
      put(what, last ? phrase(last, pad.model) : say('undo.nothing'));
      press.relabel(last?.id ?? '', 0);
      undo.disabled = !last;
    },
    tick() {
      put(call, pad.callText());
      call.classList.toggle('called', pad.calling);
    },
  };
}

/** Shows the one notice that matters most; false when there is none. */
export function notice(pad, element) {
  const [refused] = pad.outbox.refused, ruled = pad.nextRuling();
  const [tone, text, dismiss] = refused ? ['bad', say('note.refused', { what: phrase(refused.fact, pad.model), detail: refused.detail ?? refused.code }), () => pad.outbox.dismiss(refused)]
    : ruled ? ['ruling', ruled.text, () => pad.session.keep({ ruling: ruled.sequence })] : ['note', pad.standingNote()];
  element.dataset.tone = text ? tone : '';
  if (text) refill(element, [tone, text], () => [h('p', { role: 'status' }, text), dismiss && button('dismiss', say('ok'), dismiss)]);
  return !!text;
}

/** The line under every screen: what is safe, how good the clock is, the link, the build. */
export function status(pad) {
  const safe = h('span.safe', { role: 'status' }), link = h('span.link'), clock = h('span'), build = h('small');
  const update = button('update', say('update'), () => pad.updates.tell('apply'), '.wide');
  const root = h('footer', {}, update, safe, clock, link, build);
  return {
    root,
    update() {
      const { outbox: { waiting: n, storing }, updates, view, touches } = pad;
      put(safe, n ? say(storing ? 'status.waiting' : 'status.memory', { n }) : say('status.safe'));
      root.dataset.unsent = String(n);
      update.hidden = !updates.waiting || n > 0 || !/join|waiting|confirm|checks/.test(view);
      const id = updates.build ?? pad.session.serverBuild;
      put(build, [id && say('status.build', { id }), touches && say('status.ignored', { n: touches })].filter(Boolean).join(' · '));
    },
    tick() {
      const quality = pad.clock.quality();
      put(link, pad.offline() ? say('status.offline') : '');
      put(clock, say(`status.${quality.word}`, quality));
      root.dataset.clock = quality.word;
    },
  };
}
