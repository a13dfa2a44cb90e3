// Who works at a set that the team shares: the count at every change, and the next one's name. Fetched when first wanted; phone.js keeps it for when there is no network.

import { sharesOf } from '../lane.js';
import { say } from '../words.js';
import { button, h, lead, quiet } from './parts.js';

const STYLE = `
.shares .count { display: grid; grid-template-columns: 88px 1fr 88px; gap: 8px; align-items: center; }
.shares .count button { min-height: 72px; font-size: 32px; }
.shares .count input { min-height: 72px; font: inherit; font-size: 40px; text-align: center; inline-size: 100%; box-sizing: border-box; }
.shares .who { display: grid; gap: 8px; }
.shares .who button { min-height: 72px; display: flex; justify-content: space-between; align-items: center; gap: 12px; font-size: 24px; padding-inline: 16px; }
`;

export function panel(pad) {
  const { model } = pad, { step, line } = model, { units, who, at } = sharesOf(model);
  const count = h('input', { inputmode: 'numeric', 'data-act': 'shares-count', 'aria-label': say('shares.count', step) });
  count.value = at;
  const counted = () => Math.max(0, Math.min(step.quantity, parseInt(count.value, 10) || 0));
  const by = more => () => { count.value = Math.max(0, Math.min(step.quantity, counted() + more)); };
  const takes = athlete => event => {
    pad.close();
    pad.record(event.timeStamp, ...(counted() !== at ? [{ fact: 'count-reached', step: step.step, count: counted() }] : []), { fact: 'athlete-working', step: step.step, athlete });
  };
  return [
    h('style', {}, STYLE),
    button('shares-close', say('shares.close'), () => pad.close(), '.wide'),
    lead(say('shares.count', step)),
    h('div.count', {}, button('shares-minus', '−', by(-1)), count, button('shares-plus', '+', by(1))),
    h('h2', {}, say('here.who')), quiet(step.minimumEach ? say('shares.least', { n: step.minimumEach }) : ''),
    h('div.who', {}, ...line.athletes.map((name, i) => {
      const one = button('shares-who', '', takes(i + 1), '', { 'data-athlete': i + 1, disabled: i + 1 === who });
      one.replaceChildren(h('b', {}, name), h('span', {}, say('shares.units', { n: units[i + 1] ?? 0 })));
      return one;
    })),
  ];
}
