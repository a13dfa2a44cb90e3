// "cap pace" above the chalk lines. Lanes with the same cap have one line and one label; labels never stand on each other.
import { make, say } from './nodes.js';
import { words } from './words.js';

export class PaceLabels {
  constructor() {
    this.element = make('div', 'pace-labels');
    /** @type {HTMLElement[]} */ this.labels = [];
    /** @type {number[]} */ this.widths = [];
    /** @type {number[]} */ this.xs = [];           // where they are drawn now
    this.key = '';
  }

  /** @param {import('./lane-row.js').LaneRow[]} rows on this page, with their lines @param {boolean} mixed @param {number} room CSS pixels from the left that labels may have */
  place(rows, mixed, room) {
    const lines = linesOf(rows, mixed);
    const key = lines.map(line => line.text).join('|');
    if (key !== this.key) {
      this.key = key;
      while (this.labels.length < lines.length) this.labels.push(this.element.appendChild(make('span', 'pace-label')));
      for (const [at, label] of this.labels.entries()) {
        label.hidden = at >= lines.length;
        if (lines[at]) say(label, lines[at].text);
      }
      this.widths = this.labels.map(label => label.offsetWidth);
      this.xs = [];
    }
    if (!lines.length) return;
    const xs = lines.map(line => line.x());
    for (const [at, x] of placesOf(xs, this.widths, room).entries()) {
      if (Math.abs((this.xs[at] ?? -1e9) - x) < 0.25) continue;
      this.xs[at] = x;
      this.labels[at].style.transform = `translateX(${x}px)`;
    }
  }
}

const APART = 16, OVER = 8;                          // CSS pixels between two labels; how far a pushed label reaches over its line

/** Where labels begin so that each stands at its line and none on another. Pure. @param {number[]} xs of the lines, from left to right @param {number[]} widths @param {number} room */
export function placesOf(xs, widths, room) {
  const centred = xs.map((x, at) => x - widths[at] / 2);
  const crowded = centred.some((x, at) => at > 0 && x < centred[at - 1] + widths[at - 1] + APART);
  const begin = crowded && xs.length === 2 ? [Math.min(xs[0] + OVER, (xs[0] + xs[1] - APART) / 2) - widths[0], Math.max(xs[1] - OVER, (xs[0] + xs[1] + APART) / 2)] : centred;
  let free = -Infinity;
  return begin.map((x, at) => {
    const least = Math.max(free, Math.min(x, room - widths[at]));
    free = least + widths[at] + APART;
    return least;
  });
}

/** One line for each group of lanes, where most of them have it; groups whose lines are one share it. From left to right. */
function linesOf(rows, mixed) {
  const spots = new Map();
  for (const row of rows) {
    if (row.strip.paceX === null) continue;
    const column = Math.round(row.stripLeft), at = Math.round((row.stripLeft + row.strip.paceX) / SPOT);
    const key = `${row.sheet.group} ${column} ${at}`;
    const spot = spots.get(key) ?? { of: `${row.sheet.group} ${column}`, at, names: [row.sheet.divisionName], count: 0, x: () => row.stripLeft + (row.strip.paceX ?? 0) };
    spot.count++;
    spots.set(key, spot);
  }
  const lines = [];
  for (const of of new Set([...spots.values()].map(spot => spot.of))) {
    const most = [...spots.values()].filter(spot => spot.of === of).reduce((best, spot) => (spot.count > best.count ? spot : best));
    const shared = lines.find(line => Math.abs(line.at - most.at) <= 1);
    if (shared) shared.names.push(...most.names); else lines.push(most);
  }
  lines.sort((one, other) => one.at - other.at);
  return lines.map(line => ({ ...line, text: mixed && new Set(lines.map(other => other.names.join())).size > 1 ? words.capPaceOf(line.names.join(', ')) : words.capPace }));
}

const SPOT = 24;                                     // CSS pixels: lines nearer than this are taken for one
