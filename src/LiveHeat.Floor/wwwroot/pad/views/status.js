// The line at the foot of every screen: what is safe, how good the clock is, the link, the build.

import { h, put } from '../dom.js';
import { say } from '../words.js';

const OFFLINE_SHOWN_MS = 3_000;

export function status(pad) {
  const safe = h('span.safe', { role: 'status' }), link = h('span.link'), clock = h('span.clock-word'), build = h('small');
  const update = h('button.wide', { act: 'update', on: () => pad.updates.apply() }, say('status.update'));
  const root = h('footer', {}, update, safe, link, clock, build);
  let offlineSince = 0;
  return {
    root,
    update() {
      const { outbox, updates, view } = pad, n = outbox.waiting;
      put(safe, n ? say(outbox.storing ? 'status.waiting' : 'status.memory', { n }) : say('status.safe'));
      root.dataset.unsent = String(n);
      update.hidden = !updates.waiting || n > 0 || !['join', 'waiting', 'confirm', 'checks'].includes(view);
      const id = updates.build ?? pad.session.serverBuild;
      put(build, [id && say('status.build', { id }), pad.touches && view !== 'heat' && say('status.ignored', { n: pad.touches })].filter(Boolean).join(' · '));
      this.tick();
    },
    tick() {
      const now = performance.now();
      if (pad.hub.state === 'online') offlineSince = 0; else offlineSince ||= now;
      put(link, offlineSince && now - offlineSince > OFFLINE_SHOWN_MS ? say('status.offline') : '');
      const { word, ms } = pad.clock.quality();
      put(clock, word === 'none' ? say('status.clock-none') : say('status.clock', { word: say(`status.${word}`), ms }));
      root.dataset.clock = word;
    },
  };
}
