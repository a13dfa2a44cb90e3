// What a board shows between and around heats, by turns with its lanes: the organiser's message, the briefing, what comes next, the standings.
import { BriefingView } from './briefing-view.js';
import { make, mark, say } from './nodes.js';
import { hasNext, showProgramme } from './programme.js';
import { StandingsView } from './standings-view.js';
import { words } from './words.js';

const LANES_FOR_MS = 20_000, SLIDE_FOR_MS = 9_000, STANDINGS_FOR_MS = 12_000;
const PROGRAMME_FOR_MS = 10_000, PROGRAMME_TIMES = 2;      // made anew each time: lanes for which there is no room take turns
const BRIEFING_UNTIL_MS = 120_000;          // before the planned time: from then on people look for their lane
const CALM = new Set(['idle', 'before', 'result']);

/** @typedef {{what: 'lanes'|'message'|'briefing'|'programme'|'standings', nth: number}} Turn nth: the slide or page, from 0 */

/**
 * What the board shows now. Pure.
 * @param {{scene: string, sinceMs: number, message: boolean, slides: number, pages: number, lanePages: number, next?: boolean}} signs
 *   sinceMs: since the scene began; slides of the briefing and pages of the standings, 0 where they are not wanted; pages of the lanes; next: a heat is to come
 * @returns {Turn}
 */
export function turnOf({ scene, sinceMs, message, slides, pages, lanePages, next = false }) {
  if (!CALM.has(scene)) return { what: 'lanes', nth: 0 };
  if (message) return { what: 'message', nth: 0 };
  const turns = /** @type {[Turn['what'], number, number][]} */ ([
    ['lanes', 1, LANES_FOR_MS * Math.max(1, lanePages / 2)],
    ...(scene === 'before' ? [['briefing', slides, SLIDE_FOR_MS]] : [['programme', scene === 'result' && next ? PROGRAMME_TIMES : 0, PROGRAMME_FOR_MS], ['standings', pages, STANDINGS_FOR_MS]]),
  ]);
  let at = Math.max(0, sinceMs) % turns.reduce((all, [, count, each]) => all + count * each, 0);
  for (const [what, count, each] of turns) {
    if (at < count * each) return { what, nth: Math.floor(at / each) };
    at -= count * each;
  }
  return { what: 'lanes', nth: 0 };
}

/**
 * Whether there is time for the briefing. Pure.
 * @param {boolean|null} wish the organiser's; null: whenever it is known that there is time @param {number|null} plannedAt @param {number|null} now
 */
export function wantsBriefing(wish, plannedAt, now) {
  if (wish !== null) return wish;
  return plannedAt !== null && now !== null && now < plannedAt - BRIEFING_UNTIL_MS;
}

/** The message that stands now. Pure. @param {any} program @param {number|null} now @returns {{text: string, until?: number}|null} */
export function messageOf(program, now) {
  const message = program?.message;
  return message?.text && !(message.until && now !== null && now >= message.until) ? message : null;
}

export class Between {
  /** @param {HTMLElement} board @param {{briefing?: boolean|null, standings?: boolean, look?: string}} wishes look: what the slides take over from this board */
  constructor(board, { briefing = null, standings = true, look = '' }) {
    this.board = board;
    this.wishes = { briefing, standings };
    this.briefing = new BriefingView(look);
    this.standings = new StandingsView();
    this.text = make('p', 'message-text');
    this.until = make('p', 'message-until');
    this.message = make('section', 'message', this.text, this.until);
    this.next = make('section', 'to-come');
    this.element = make('div', 'between', this.message, this.briefing.element, this.next, this.standings.element);
    this.scene = '';
    this.since = 0;
    this.shown = '';
  }

  /**
   * Looks what is to be shown. @param {{scene: string, frame: any, program: any, now: number|null, at: number, lanePages: number, least: number}} signs
   *   now: the server's instant; at: performance.now(); least: size of text, CSS pixels
   */
  look({ scene, frame, program, now, at, lanePages, least }) {
    const key = `${scene} ${frame?.heat}`;
    if (key !== this.scene) { this.scene = key; this.since = at; }
    const message = messageOf(program, now);
    const planned = program?.heats.find(heat => heat.heat === frame?.heat)?.plannedAt ?? null;
    const briefed = scene === 'before' && wantsBriefing(this.wishes.briefing, planned, now);
    this.briefing.load(briefed ? frame.heat : null);
    const ranked = this.wishes.standings && (scene === 'result' || scene === 'idle');
    if (ranked) this.standings.refresh(at);
    const slides = briefed ? this.briefing.count : 0, pages = ranked ? this.standings.pagesFor(least) : 0;
    const turn = turnOf({ scene, sinceMs: at - this.since, message: Boolean(message), slides, pages, lanePages, next: hasNext(program) });
    this.show(turn, message, () => showProgramme(this.next, program, this.board, now, least));
    this.notice = message && turn.what === 'lanes' ? message.text : '';
  }

  show({ what, nth }, message, tellNext) {
    mark(this.board, { shows: what });
    if (what === 'message') {
      say(this.text, message.text);
      say(this.until, message.until ? words.until(message.until) : '');
    }
    const shown = `${what} ${nth}`;
    if (shown === this.shown) return;
    this.shown = shown;
    if (what === 'briefing') this.briefing.show(nth);
    if (what === 'programme') tellNext();
    if (what === 'standings') this.standings.show(nth);
  }
}
