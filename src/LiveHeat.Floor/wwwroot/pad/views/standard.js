// What a good rep of the open set is, and what every no-rep means. Fetched when first wanted; phone.js keeps it for when there is no network.

import { say } from '../words.js';
import { button, h, lead, quiet } from './parts.js';

const STYLE = `
.panel.standard { padding-bottom: 8px; cursor: pointer; }
.standard h2 { padding-top: 4px; }
.standard dl { display: grid; gap: 8px; font-size: 20px; line-height: 1.2; }
.standard dt { color: var(--dust); font-size: 17px; }
.standard dd { margin: 0 0 2px; overflow-wrap: anywhere; }
.standard dd b { display: block; }
.standard .caution { border-left: 8px double #ee8a1d; padding-left: 10px; }
.standard .body > * { grid-column: 1 / -1; }
.standard .wide { position: sticky; top: 0; flex: none; margin-top: 0; }
`;

/** The movements that the open step is judged by: its own, and at a tag that of the work after it. */
function movementsOf({ step, steps }, { movements = [] }) {
  const next = step.kind === 'tag' ? steps.slice(step.step).find(({ kind }) => kind !== 'tag') : null;
  return [step, next].filter(Boolean).map(one => [one, movements.find(({ id }) => id === one.movementId)]).filter(([one, found]) => found || one.kind === 'set' || one.kind === 'value');
}

const part = (name, ...lines) => {
  const said = lines.flat().filter(Boolean);
  return said.length ? [h('dt', {}, say(`standard.${name}`)), ...said.map(line => h(`dd${name === 'caution' ? '.caution' : ''}`, { act: `standard-${name}` }, line))] : [];
};

function movement([step, found]) {
  const full = found?.fullStandard, faults = found?.faults ?? [];
  return [
    h('h2', {}, found?.name ?? step.movement ?? step.label),
    !full && !found?.standard && quiet(say('standard.none')),
    h('dl', {},
      ...(full ? [...part('start', full.start), ...part('finish', full.finish), ...part('between', full.between), ...part('allowed', full.allowed)] : part('whole', found?.standard)),
      ...part(step.kind === 'tag' ? 'tag-fault' : 'no-rep', faults.map(({ name, how }) => h('span', { act: 'standard-fault' }, h('b', {}, name), how ?? say('standard.no-how')))),
      ...part('caution', full?.caution)),
  ];
}

/** One tap anywhere closes it; scrolling does not. */
export function panel(pad) {
  const close = () => pad.close(), all = movementsOf(pad.model, pad.sheet);
  const root = h('div.body', { act: 'standard-panel', on: close }, h('style', {}, STYLE), button('standard-close', say('shares.close'), close, '.wide'),
    ...(all.length ? all.flatMap(movement) : [lead(say('standard.nothing'))]).filter(Boolean));
  return [root];
}
