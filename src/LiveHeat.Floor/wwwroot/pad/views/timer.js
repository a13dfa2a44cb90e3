// What a timekeeper has in the heat. Fetched when the pad has time; phone.js keeps it for when there is no network.

import { heatMs } from '../lane.js';
import { say } from '../words.js';
import { DEAD_MS, head, lastTap } from './heat.js';
import { LONG_HOLD_MS, Target, button, dutyMark, fit, foot, h, notice, put } from './parts.js';

/** One target that records the finish, once. */
export function timer(pad) {
  const top = head(pad, dutyMark(pad)), note = h('div.then-line'), bar = foot(pad, false);
  const lines = [h('b'), h('strong'), h('em')], words = h('div.words', {}, ...lines), target = h('button.target', { act: 'done' }, words);
  const next = button('next', say('finish.next'), () => pad.session.goOn(), '.wide'), soonest = () => pad.model.steps.reduce((sum, { earliestMs }) => sum + earliestMs, 0);
  const press = new Target(pad, target, {
    carried: () => !target.disabled && { fact: 'finish-timed' }, holdMs: (_, stamp) => ((heatMs(pad.frame, pad.clock.instantOf(stamp)) ?? Infinity) < soonest() ? LONG_HOLD_MS : 0),
    onHold: ms => pad.note('early', ms), onAct: (fact, stamp) => pad.record(stamp, fact),
  });
  return {
    root: h('div.body.heat.timer', {}, top.root, note, h('section.work', {}, h('div.main', {}, target, next)), bar.root),
    tick() { top.tick(); bar.tick(); },
    update() {
      const { model: { steps, last }, frame } = pad, over = /ended|frozen|certified/.test(frame?.phase), [where, time] = lastTap(pad);
      const shown = last ? [time, say('timer'), where] : over ? ['', say('timer.over'), ''] : ['', say('timer'), say('timer.when', steps.at(-1))];
      lines.forEach((line, i) => put(line, shown[i]));
      target.disabled = last || over;
      press.relabel(`${!last}`, DEAD_MS);
      next.hidden = !over && !(last && pad.session.next);
      note.hidden = !notice(pad, note);
      bar.update();
      fit(words, 110);
    },
  };
}
