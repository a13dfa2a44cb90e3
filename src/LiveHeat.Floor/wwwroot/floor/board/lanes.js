// All lanes of a heat: in floor order before and during it, in the order of places after it; in pages where they do not all fit.
import { laneMs, pacedGroups } from '../strip.js';
import { LaneRow } from './lane-row.js';
import { make, mark } from './nodes.js';
import { MANY_OVER_VIDEO, pageAt, pagesOf } from './pages.js';
import { PaceLabels } from './pace-labels.js';
import { leastText } from './sight.js';
import { resultOrder } from './standing.js';
import { nameRoom, standingRoom } from './room.js';
import { words } from './words.js';

/** A screen narrower than this, or upright, gets a list to scroll. */
const LIST_BELOW = 900;
const FEW = 5;                        // rows on a page, up to which they have room for more
const THREE_LINES = 3.2;              // of text, with what is between them
const CROWDED_ABOVE = 0.06;           // of the screen's height: larger text leaves the head one line
const LABEL_EVERY_MS = 100;            // the cap pace runs a pixel or two a second

export class Lanes {
  /**
   * @param {HTMLElement} board @param {() => number|null} now @param {() => void} onArranged told when sizes changed
   * @param {{width: number, seat: number}|null} seat the screen's width and the farthest seat in metres, where somebody measured them
   */
  constructor(board, now, onArranged, seat = null) {
    this.seat = seat;
    this.text = 0;                        // least size of text, CSS pixels
    this.board = board;
    this.onArranged = onArranged;
    this.now = now;
    this.page = make('span', 'page');
    this.pace = new PaceLabels();
    this.band = make('div', 'band', this.page, this.pace.element);
    this.list = make('ol', 'lanes');
    /** @type {Map<number, LaneRow>} */ this.rows = new Map();
    /** @type {number[]} */ this.order = [];
    this.plan = { columns: 1, rows: 1, perPage: 1, pages: 1, fitting: 1, short: false };
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
    for (const row of this.onPage()) if (row.lane) row.turn();
    this.pace.place(this.scene === 'running' ? this.onPage() : [], this.mixed, this.labelRoom);
  }

  // ---- below: room and pages ----

  /** Decides columns, pages and sizes for the room there is, and fits all text to them. */
  arrange() {
    const { board, list } = this, side = board.dataset.side !== undefined;
    const upright = !side && (innerWidth < LIST_BELOW || innerHeight > innerWidth);
    mark(board, { layout: upright ? 'list' : 'board' });
    this.text = upright ? 0 : leastText(this.seat, screenWidth(side), innerHeight);
    board.style.setProperty('--text', upright ? '' : `${this.text}px`);
    mark(board, { crowded: this.text > innerHeight * CROWDED_ABOVE ? 'yes' : null });
    if (!this.sheet || !list.isConnected || this.arranging) return;
    this.arranging = true;
    this.plan = upright ? { columns: 1, rows: this.rows.size, perPage: this.rows.size, pages: 1, fitting: this.rows.size, short: false } : this.planned();
    const row = Math.min(list.clientHeight / this.plan.rows, innerHeight * 0.2);
    const lines = this.plan.short ? 1 : this.plan.rows <= FEW && row >= this.text * THREE_LINES ? 3 : 2;
    mark(board, { paged: this.plan.pages > 1 ? 'yes' : null, lines });
    list.style.setProperty('--columns', String(this.plan.columns));
    list.style.setProperty('--rows', String(this.plan.rows));
    board.style.setProperty('--row', `${row}px`);
    board.style.setProperty('--name', `${nameRoom(this.sheet, board, this.scene, list.clientWidth / this.plan.columns)}px`);
    const standing = upright ? null : standingRoom(this.sheet, board, list.clientWidth / this.plan.columns);
    board.style.setProperty('--standing', standing ? `${standing}px` : '');
    this.show(this.shownPage);
    this.arranging = false;
    this.onArranged();
  }

  /** Pages, rows and what they tell, with the head as high as it is with so many rows. */
  planned() {
    const { board, list } = this;
    const room = () => ({ count: this.rows.size, width: list.clientWidth, height: list.clientHeight, screen: innerHeight, text: this.text, side: board.dataset.side !== undefined, ...(board.dataset.overlay && { manyPages: MANY_OVER_VIDEO }) });
    mark(board, { size: 'many', short: null });
    let plan = pagesOf(room());
    mark(board, { size: sizeOf(plan.rows), short: plan.short ? 'yes' : null });
    if (plan.short) plan = pagesOf(room(), true);
    return plan;
  }

  show(page) {
    const { perPage, pages } = this.plan;
    this.shownPage = Math.min(page, pages - 1);
    const first = this.shownPage * perPage;
    for (const [at, number] of this.order.entries()) {
      const row = /** @type {LaneRow} */ (this.rows.get(number));
      row.element.hidden = at < first || at >= first + perPage;
    }
    for (const row of this.onPage()) row.refit(this.text);
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

/** CSS pixels of the whole screen: one of two boards side by side has half of it. @param {boolean} side */
function screenWidth(side) { return side ? parent.innerWidth : innerWidth; }

function sizeOf(rows) { return rows <= FEW ? 'few' : rows <= 8 ? 'some' : 'many'; }
