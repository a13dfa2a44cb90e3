// The lane as a small strip of tape: each set as wide as its expected time, joints at the tags, the roll at the end.

import { h, refill } from './dom.js';

export function strip() {
  const tape = h('div.tape'), joints = h('div.joints'), roll = h('div.roll');
  const root = h('div.strip', { 'aria-hidden': 'true' }, tape, joints, roll);
  return {
    root,
    update({ steps, open, count, step }) {
      const whole = steps.reduce((sum, { expectedMs }) => sum + expectedMs, 0) || 1;
      const until = number => steps.slice(0, number).reduce((sum, { expectedMs }) => sum + expectedMs, 0) / whole * 100;
      const part = step?.quantity ? step.expectedMs / whole * 100 * count / step.quantity : 0;
      const at = until(open - 1) + part;
      tape.style.width = roll.style.left = `${at}%`;
      roll.hidden = !step;
      refill(joints, `${steps.length} ${steps.at(-1)?.label}`, () => steps.flatMap((one, i) => (one.kind === 'tag' ? [h('i', { style: `left:${until(i + 1)}%` })] : [])));
    },
  };
}
