// A short sentence for screen readers, told politely: when the picture changes, when the lead changes, and now and then.
import { behindOf, scoreOf } from './standing.js';
import { words } from './words.js';

const EVERY_MS = 20_000;

/** @typedef {{key: string, text: string}} Told key: what must change for it to be told at once */

/**
 * What is told now. A board that is not live says so and nothing else: it would tell as true what was true then.
 * @param {any} sheet @param {any} frame @param {string} scene @param {number|null} heatMs
 * @param {{notLive?: string, recalled?: boolean, message?: string}} [signs] notLive and message: as the board writes them, empty while there is none @returns {Told}
 */
export function summaryOf(sheet, frame, scene, heatMs, { notLive = '', recalled = false, message = '' } = {}) {
  if (notLive) return { key: 'not-live', text: notLive };
  const told = recalled && scene === 'before' ? { key: 'recalled', text: words.recalled } : pictureOf(sheet, frame, scene, heatMs);
  return message ? { key: `${told.key} ${message}`, text: `${message} · ${told.text}` } : told;
}

/** @returns {Told} */
function pictureOf(sheet, frame, scene, heatMs) {
  if (scene === 'idle') return { key: scene, text: words.noHeat };
  if (scene === 'before') return { key: scene, text: words.spoken.before(sheet.title, sheet.lanes.length) };
  if (scene === 'count-down') return { key: scene, text: words.spoken.countDown(Math.max(0, Math.ceil(-(heatMs ?? 0) / 1000))) };
  const names = new Map(sheet.lanes.map(lane => [lane.lane, lane]));
  const at = place => frame.lanes.filter(lane => lane.place === place && (lane.worth > 0 || lane.open > 1));
  const first = at(1), second = at(2);
  const told = lanes => lanes.map(lane => names.get(lane.lane)?.name ?? words.lane(lane.lane));
  const groups = new Set(sheet.lanes.map(lane => lane.group)).size;
  const divisions = groups > 1 ? [...new Set(sheet.lanes.map(lane => lane.divisionName))].map(division => ({ division, leading: first.filter(lane => names.get(lane.lane)?.divisionName === division) })) : [];
  if (scene === 'result') {
    const best = lane => words.spoken.first(told([lane])[0], scoreOf(lane));
    const text = groups > 1 ? divisions.flatMap(({ division, leading }) => leading.map(lane => words.spoken.of(division, best(lane)))).join(' ') : first.map(best).join(' ');
    return { key: `${frame.phase}${frame.revision}`, text: words.spoken.result(words.status[frame.phase], text) };
  }
  if (frame.phase === 'halted') return { key: 'halted', text: words.halted };
  const few = leading => leading.length > 0 && leading.length < 4;
  const parts = groups > 1 ? divisions.filter(({ leading }) => few(leading)).map(({ division, leading }) => words.spoken.of(division, words.spoken.leads(told(leading))))
    : few(first) ? [words.spoken.leads(told(first))] : [];
  const gap = groups === 1 && first.length === 1 && second.length === 1 ? behindOf(second[0], names.get(second[0].lane)) : '';
  if (gap) parts.push(words.spoken.second(told(second)[0], gap));
  if (heatMs !== null) parts.push(words.spoken.left(Math.max(0, Math.floor((frame.capMs - heatMs) / 60_000))));
  return { key: `${scene}${first.map(lane => lane.lane)}`, text: parts.join(' ') };
}

export class Summary {
  constructor() {
    this.element = document.createElement('p');
    this.element.className = 'summary';
    this.element.setAttribute('role', 'status');
    this.toldAt = -Infinity;
    this.key = '';
  }

  tell({ key, text }, at) {
    if (key === this.key && at - this.toldAt < EVERY_MS) return;
    this.key = key;
    this.toldAt = at;
    if (this.element.textContent !== text) this.element.textContent = text;
  }
}
