// The overall standings on the board: a division at a time, in pages of as many teams as can be read.
import { fitLine, fitWords, isReadable } from './fit.js';
import { make, mark, nameOf } from './nodes.js';
import { ordinal, words } from './words.js';
import { ownLanguage } from '../words/words.js';

const READ_EVERY_MS = 20_000;
const ROW = 1.5;                       // height of a row in least text
const PART = 0.97;                     // of the screen's height between its margins
const HEAD = 2.6;                      // height of the head in least text
const LEAST_ROW = 0.072;               // of the screen's height: rows get no closer, however near people sit
const MOST_ROW = 0.13;                 // nor further apart
const STANDS_OUT = 3;

/**
 * Divisions cut into pages. Pure. A division in which nothing counts yet has none.
 * @param {any} table as of /api/standings @param {number} rows that fit on a page
 * @returns {{division: string, provisional: boolean, lines: any[], page: number, of: number}[]}
 */
export function standingsPages(table, rows) {
  return (table?.divisions ?? []).flatMap(division => {
    const lines = division.lines.filter(line => line.place !== null && line.place !== undefined);
    const of = Math.ceil(lines.length / rows), each = Math.ceil(lines.length / Math.max(1, of));
    return Array.from({ length: of }, (_, at) => ({ division: division.name, provisional: division.provisional, lines: lines.slice(at * each, (at + 1) * each), page: at + 1, of }));
  });
}

/** CSS pixels. */
function roomHigh() { return innerHeight * (PART - 2 * Number(getComputedStyle(document.documentElement).getPropertyValue('--edge'))); }

export class StandingsView {
  constructor() {
    this.division = make('h2', 'standings-division');
    this.label = make('span', 'standings-label');
    this.worth = make('span', 'standings-worth');
    this.page = make('span', 'standings-page');
    this.list = make('ol', 'standings-lines');
    this.element = make('section', 'standings', make('header', 'standings-head', make('div', 'standings-left', this.division, this.label), make('div', 'standings-right', this.worth, this.page)), this.list);
    this.table = null;
    this.readAt = -Infinity;
    this.least = 0;
    /** @type {ReturnType<typeof standingsPages>} */ this.pages = [];
  }

  /** Asks for the newest, now and then. @param {number} at */
  refresh(at) {
    if (at - this.readAt < READ_EVERY_MS) return;
    this.readAt = at;
    fetch('/api/standings', { cache: 'no-cache', headers: ownLanguage() }).then(answer => (answer.ok ? answer.json() : null)).then(table => { this.table = table ?? this.table; }, () => {});
  }

  /** How many pages there are. @param {number} least size of text, CSS pixels */
  pagesFor(least) {
    this.least = least || 16;
    this.row = Math.max(this.least * ROW, innerHeight * LEAST_ROW);
    this.pages = standingsPages(this.table, Math.max(1, Math.floor((roomHigh() - this.least * HEAD) / this.row)));
    return this.pages.length;
  }

  /** @param {number} nth */
  show(nth) {
    const page = this.pages[nth];
    if (!page) return;
    const row = Math.max(this.row, Math.min(innerHeight * MOST_ROW, (roomHigh() - this.least * HEAD) / page.lines.length));
    this.list.style.setProperty('--standing-row', `${row}px`);
    const rows = page.lines.map(line => this.rowOf(line));
    this.list.replaceChildren(...rows.map(({ row }) => row));
    mark(this.element, { provisional: page.provisional ? 'yes' : null });
    this.label.textContent = words.standings;
    this.worth.textContent = page.provisional ? words.provisional : words.afterCertified;
    this.page.textContent = page.of > 1 ? words.resultPage(page.page, page.of) : '';
    const { left, right } = { left: this.division.parentElement?.clientWidth ?? 0, right: this.worth.parentElement?.clientWidth ?? 0 };
    fitWords(this.division, this.division, page.division, left, this.least);
    for (const [line, room, side] of /** @type {[HTMLElement, number, 'left'|'right'][]} */ ([[this.label, left, 'left'], [this.worth, right, 'right'], [this.page, right, 'right']])) {
      line.hidden = false;
      fitLine(line, room, side);
      line.hidden = !isReadable(line, this.least);
    }
    for (const { name, text, line } of rows) fitWords(name, text, line.name, name.parentElement?.clientWidth ?? 0, this.least);
  }

  rowOf(line) {
    const { number, suffix } = ordinal(line.place), text = nameOf(line.name), name = make('span', 'standings-name', text);
    const row = make('li', 'standings-line', make('span', 'standings-place', make('b', '', (line.tied ? words.tied : '') + number), make('small', '', suffix)), make('div', 'standings-team', name), make('span', 'standings-points', words.points(line.total)));
    mark(row, { rank: line.place <= STANDS_OUT ? line.place : null });
    return { row, name, text, line };
  }
}
