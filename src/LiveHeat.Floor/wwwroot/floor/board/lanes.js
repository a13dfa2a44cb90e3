// All lanes of a heat: in floor order before and during it, in the order of places after it; in pages where they do not all fit.
import { laneMs, pacedGroups } from '../strip.js';
import { LaneRow } from './lane-row.js';
import { make, mark } from './nodes.js';
import { pageAt, pagesOf } from './pages.js';
import { PaceLabels } from './pace-labels.js';
import { resultOrder } from './standing.js';
import { nameRoom, standingRoom } from './room.js';
import { words } from './words.js';

/** A screen narrower than this, or upright, gets a list to scroll. */
const LIST_BELOW = 900;
const LABEL_EVERY_MS = 100;            // the cap pace runs a pixel or two a second

export class Lanes {
  /** @param {HTMLElement} board @param {() => number|null} now @param {() => void} onArranged told when sizes changed */
  constructor(board, now, onArranged) {
    this.board = board;
    this.onArranged = onArranged;
    this.now = now;
    this.page = make('span', 'page');
    this.pace = new PaceLabels();
    this.band = make('div', 'band', this.page, this.pace.element);
    this.list = make('ol', 'lanes');
    /** @type {Map<number, LaneRow>} */ this.rows = new Map();
    /** @type {number[]} */ this.order = [];
    this.plan = { columns: 1, rows: 1, perPage: 1, pages: 1 };
    /** @type {any} */ this.sheet = null;
    /** @type {any} */ this.frame = null;
    this.scene = '';
    this.mixed = this.arranging = false;
    this.shownPage = this.turnedAt = this.labelledAt = this.labelRoom = 0;
    new ResizeObserver(() => this.arrange()).observe(this.list);
    addEventListener('resize', () => this.arrange());
    document.fonts?.addEventListener('loadingdone', () => this.arrange());
  }

  /** Makes the rows of a sheet. @param {any} sheet */
  take(sheet) {
    for (const row of this.rows.values()) row.dispose();
    this.rows.clear();
    this.sheet = sheet;
    this.mixed = new Set(sheet.lanes.map(lane => lane.group)).size > 1;
    for (const lane of sheet.lanes) this.rows.set(lane.lane, new LaneRow(lane, { mixed: this.mixed }));
    this.order = [];
    mark(this.board, { mixed: this.mixed ? 'yes' : null });
  }

  /** @param {any} frame @param {string} scene */
  update(frame, scene) {
    this.frame = frame;
    const states = new Map(frame.lanes.map(lane => [lane.lane, lane]));
    const turn = scene !== this.scene;
    this.scene = scene;
    const paced = pacedGroups(this.sheet, frame);
    for (const [number, row] of this.rows) {
      const lane = states.get(number);
      if (!lane) continue;
      row.update(lane, { scene, paced: scene === 'running' && paced.has(row.sheet.group), certified: frame.phase === 'certified', clock: () => this.laneMs(lane) });
    }
    const order = scene === 'result' ? resultOrder(this.sheet.lanes, states) : this.sheet.lanes.map(lane => lane.lane);
    if (order.join() !== this.order.join()) {
      this.order = order;
      this.list.append(...order.map(number => /** @type {LaneRow} */ (this.rows.get(number)).element));
      this.arrange();
    } else if (turn) this.arrange();
  }

  laneMs(lane) {
    const now = this.now();
    return now === null ? null : laneMs(this.frame, lane, now);
  }

  /** One picture: turns the page when it is time, and moves the labels of the cap pace. @param {number} at */
  turn(at) {
    if (!this.rows.size) return;
    this.turnedAt ||= at;
    const page = pageAt(this.plan.pages, at - this.turnedAt);
    if (page !== this.shownPage) this.show(page);
    if (at - this.labelledAt < LABEL_EVERY_MS) return;
    this.labelledAt = at;
    this.pace.place(this.scene === 'running' ? this.onPage() : [], this.mixed, this.labelRoom);
  }

  // ---- below: room and pages ----

  /** Decides columns, pages and sizes for the room there is, and fits all text to them. */
  arrange() {
    const upright = innerWidth < LIST_BELOW || innerHeight > innerWidth;
    mark(this.board, { layout: upright ? 'list' : 'board' });
    if (!this.sheet || !this.list.isConnected || this.arranging) return;
    this.arranging = true;
    mark(this.board, { size: 'many' });
    const count = this.rows.size;
    const room = { count, width: this.list.clientWidth, height: this.list.clientHeight, screen: innerHeight };
    this.plan = upright ? { columns: 1, rows: count, perPage: count, pages: 1 } : pagesOf(room);
    mark(this.board, { size: sizeOf(this.plan.rows), paged: this.plan.pages > 1 ? 'yes' : null });
    const { style } = this.list;
    style.setProperty('--columns', String(this.plan.columns));
    style.setProperty('--rows', String(this.plan.rows));
    const row = Math.min(this.list.clientHeight / this.plan.rows, innerHeight * 0.2);
    this.board.style.setProperty('--row', `${row}px`);
    this.board.style.setProperty('--name', `${nameRoom(this.sheet, this.board, this.scene, this.list.clientWidth / this.plan.columns)}px`);
    const standing = upright ? null : standingRoom(this.sheet, this.board, this.list.clientWidth / this.plan.columns);
    this.board.style.setProperty('--standing', standing ? `${standing}px` : '');
    this.show(this.shownPage);
    this.arranging = false;
    this.onArranged();
  }

  show(page) {
    const { perPage, pages } = this.plan;
    this.shownPage = Math.min(page, pages - 1);
    const first = this.shownPage * perPage;
    for (const [at, number] of this.order.entries()) {
      const row = /** @type {LaneRow} */ (this.rows.get(number));
      row.element.hidden = at < first || at >= first + perPage;
    }
    for (const row of this.onPage()) row.refit();
    this.tellPage(this.order.slice(first, first + perPage));
    this.labelRoom = this.band.clientWidth - (pages > 1 ? this.page.offsetWidth + 24 : 0);
  }

  /** Which lanes these are, and a dot a page. @param {number[]} shown */
  tellPage(shown) {
    const { pages } = this.plan, here = this.shownPage;
    if (pages < 2) { this.page.replaceChildren(); return; }
    const text = this.scene === 'result' ? words.resultPage(here + 1, pages) : words.lanePage(shown[0], shown[shown.length - 1]);
    this.page.replaceChildren(text, ...Array.from({ length: pages }, (_, at) => make('i', at === here ? 'here' : '')));
  }

  onPage() {
    const first = (this.shownPage) * this.plan.perPage;
    return this.order.slice(first, first + this.plan.perPage).map(number => /** @type {LaneRow} */ (this.rows.get(number)));
  }
}

function sizeOf(rows) { return rows <= 5 ? 'few' : rows <= 8 ? 'some' : 'many'; }
