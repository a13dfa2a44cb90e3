// One lane on the board: number, team, who works and who is next, strip, place. Made once a sheet; a frame changes only what differs.
import { Strip, whereIs } from '../strip.js';
import { drawn, make, mark, nameOf, say } from './nodes.js';
import { fitBlock, fitLine, fitWords, isReadable } from './fit.js';
import { standingOf } from './standing.js';
import { doneOf, tagOf, workOf } from './work.js';
import { words } from './words.js';

const MORE = '\u2026';
const HINT_ROOM = 7;                  // letters' sizes that a note on the strip needs
const NAME_TURNS_MS = 2_000;
const ROUNDS_GO_ON = new Set(['working', 'held']);      // a lane that stopped for good does not rest

export class LaneRow {
  /** @param {any} lane as in the sheet @param {{mixed: boolean}} heat mixed: several divisions on the floor */
  constructor(lane, { mixed }) {
    this.sheet = lane;
    /** @type {any} */ this.lane = null;
    this.scene = '';
    /** @type {{who?: string, what?: string, round?: string, next?: string, crew?: string[]}|null} */ this.pieces = null;
    this.workKey = this.standingKey = this.besideText = '';
    this.toldNext = '';
    this.short = false;               // no line tells who works
    /** @type {() => number|null} */ this.clock = () => null;
    this.room = this.stripLeft = 0;   // CSS pixels: for the team's text; from the list's left edge to the strip
    this.least = 0;                   // size of text, CSS pixels
    this.nameText = nameOf(lane.name);
    this.name = make('span', 'lane-name', this.nameText);
    this.work = make('span', 'lane-work');
    this.next = make('span', 'lane-next');
    this.team = make('div', 'lane-team', this.name, this.work, this.next);
    this.crewText = make('span', '', ...crewOf(lane.athletes));
    this.crew = make('div', 'lane-crew', this.crewText);
    this.host = make('div', 'lane-strip');
    this.readyText = make('span', 'lane-ready-text');
    this.ready = make('div', 'lane-ready', make('i', 'ready-mark', drawn('tick')), this.readyText);
    this.place = make('span', 'place');
    this.beside = make('span', 'beside');
    this.division = make('span', 'division', nameOf(mixed ? lane.divisionName : ''));
    this.label = make('div', 'lane-label', this.place, ...(mixed ? [this.division] : []), this.beside);
    this.standing = make('div', 'lane-standing', this.label);
    this.rank = make('div', 'lane-rank');
    this.element = make('li', 'lane', this.rank, make('span', 'lane-number', make('b', '', String(lane.lane))), this.team, make('div', 'lane-middle', this.crew, this.host), this.ready, this.standing);
    mark(this.element, { lane: lane.lane, mixed: mixed ? 'yes' : null });
    this.element.style.setProperty('--tape', `var(--tape-${lane.colour})`);
    this.strip = new Strip(this.host, { steps: lane.steps.slice(0, lane.expectedSteps ?? undefined), lane: lane.lane, colour: lane.colour, capMs: lane.capMs, windows: lane.windows, decorative: true });
  }

  /** @param {any} lane as in the frame @param {{scene: string, paced: boolean, certified: boolean, clock: () => number|null}} heat */
  update(lane, { scene, paced, certified, clock }) {
    this.lane = lane;
    this.scene = scene;
    mark(this.element, { status: lane.status, ready: lane.ready ? 'yes' : null });
    say(this.readyText, lane.status === 'withdrawn' ? words.withdrawn : lane.ready ? words.laneReady : words.laneNotReady);
    this.strip.showPace = paced;
    this.strip.certified = certified;
    this.clock = clock;
    this.strip.update(lane, clock);
    this.tellWork();
    this.tellTag();
    this.tellStanding();
  }

  /** What time alone changes. */
  turn() {
    if (this.sheet.windows && this.scene === 'running') this.tellWork();
    this.tellTag();
  }

  /** Who is about to tag: on tape when the tag is what is open, in an outline when it is only expected. */
  tellTag() {
    const tag = this.scene === 'running' ? tagOf(this.sheet, this.lane, this.clock()) : null;
    mark(this.element, { tag: tag?.sure === undefined ? null : tag.sure ? 'now' : 'soon' });
    const onStrip = this.short && this.strip.span.width > this.least * HINT_ROOM;
    this.strip.hint = onStrip && tag ? words.tagTo(tag.next) : '';
    this.tellNext(this.short && !onStrip && tag && Math.floor(performance.now() / NAME_TURNS_MS) % 2 === 0 ? tag.next : '');
  }

  /** Where neither a line nor the strip has room for who is next, the name stands in the team's place every other moment. */
  tellNext(next) {
    if (next === this.toldNext) return;
    this.toldNext = next;
    this.name.replaceChildren(next ? make('span', 'then', drawn('arrow'), nameOf(next)) : this.nameText);
    this.fitName();
  }

  fitName() {
    if (!this.room) return;
    const next = this.name.querySelector('.then bdi');
    if (next) fitWords(this.name, next, this.toldNext, this.room, this.least);
    else fitWords(this.name, this.nameText, this.sheet.name, this.room, this.least);
  }

  /** Fits all text again, after the room for it changed. @param {number} least size of text, CSS pixels */
  refit(least) {
    this.least = least;
    this.short = getComputedStyle(this.work).display === 'none';
    this.room = this.team.clientWidth;
    if (!this.room) return;                                           // turned away
    this.stripLeft = this.host.getBoundingClientRect().left - (this.element.parentElement?.getBoundingClientRect().left ?? 0);
    this.fitName();
    this.fitCrew();
    this.fitWork();
    this.fitStanding();
  }

  /** All athletes before the heat; where there is no room for all, those who begin. */
  fitCrew() {
    const { athletes } = this.sheet, { clientWidth, clientHeight } = this.crew;
    if (!clientWidth) return;
    for (let count = athletes.length; count >= 0; count--) {
      this.crewText.replaceChildren(...crewOf(athletes.slice(0, count)), ...(count && count < athletes.length ? [MORE] : []));
      if (fitBlock(this.crewText, clientWidth, clientHeight, this.least)) return;
    }
  }

  dispose() {
    this.strip.dispose();
    this.element.remove();
  }

  // ---- below: the two texts that change ----

  tellWork() {
    const ms = this.clock(), { open, resting, turnsMs } = whereIs(this.sheet, this.lane, ms);
    const { who, what, round, next } = workOf(this.sheet, open, resting && ROUNDS_GO_ON.has(this.lane.status) && this.scene === 'running' ? Math.max(0, (turnsMs ?? 0) - (ms ?? 0)) : null);
    const far = round || doneOf(this.lane), key = [this.scene === 'result', who, what, far, next].join('|');
    if (key === this.workKey) return;
    this.workKey = key;
    const after = this.scene === 'result';
    this.pieces = after ? { crew: this.sheet.athletes } : { who, what, round: far, next };
    this.fitWork();
  }

  /** Tells all there is; where it does not fit, details go: first the round, then what is done, then who is next. */
  fitWork() {
    if (!this.pieces || !this.room) return;
    const { who, what, round, next, crew } = this.pieces;
    this.next.replaceChildren();
    if (crew) {
      this.work.replaceChildren(...crewOf(crew));
      if (!this.fits(this.work)) this.work.replaceChildren();
      return;
    }
    const two = this.roomy();
    const tries = two ? [[who, what, ''], [who, '', '']] : [[who, what, round, next], [who, what, '', next], [who, '', '', next], [who, '', '', '']];
    for (const [nth, [name, task, lap, then = '']] of tries.entries()) {
      this.work.replaceChildren(...line(name, task, lap, then));
      if (this.fits(this.work)) break;
      if (nth === tries.length - 1) this.work.replaceChildren();
    }
    if (!two) return;
    for (const lap of [round, '']) {
      this.next.replaceChildren(...line('', '', lap, next));
      if (this.fits(this.next)) return;
    }
    this.next.replaceChildren();
  }

  fits(line) { fitLine(line, this.room); return isReadable(line, this.least); }

  roomy() { return getComputedStyle(this.next).display !== 'none'; }

  tellStanding() {
    if (this.scene !== 'running' && this.scene !== 'result') return;
    const { place, rank, beside } = standingOf(this.lane, this.scene, this.sheet);
    const key = [this.scene, place?.tie, place?.number, beside].join('|');
    mark(this.element, { place: place?.number ?? null, rank: rank || null });
    if (key === this.standingKey) return;
    this.standingKey = key;
    const after = this.scene === 'result';
    this.rank.replaceChildren(...(after ? ordinalOf(place) : []));
    this.place.replaceChildren(...(after ? [] : ordinalOf(place)));
    this.besideText = beside;
    say(this.beside, beside);
    this.fitStanding();
  }

  fitStanding() {
    if (!this.standing.clientWidth) return;
    say(this.beside, this.besideText);
    const { paddingLeft, paddingRight, columnGap } = getComputedStyle(this.label);
    const inner = this.label.clientWidth - parseFloat(paddingLeft) - parseFloat(paddingRight), gap = parseFloat(columnGap) || 0;
    const ending = this.place.querySelector('small'), beside = () => fitLine(this.beside, inner - this.place.offsetWidth - gap, 'right');
    if (ending) ending.hidden = false;
    beside();
    if (ending && !isReadable(this.beside, this.least)) { ending.hidden = true; beside(); }
    this.division.hidden = false;
    if (!this.division.isConnected) return;
    const left = inner - this.place.offsetWidth - this.beside.offsetWidth - 2 * gap;
    if (left > 0) fitLine(this.division, left);
    this.division.hidden = left <= 0 || !isReadable(this.division, this.least);
    this.tellDivision(inner - this.place.offsetWidth - gap);
  }

  /** Two that are first and lead, and nothing that says of what: where there is no room for the division beside it, it stands in the place of the word. */
  tellDivision(room) {
    if (this.besideText !== words.leads || (!this.division.hidden && getComputedStyle(this.division).display !== 'none')) return;
    say(this.beside, this.sheet.divisionName);
    fitLine(this.beside, room, 'right');
    if (isReadable(this.beside, this.least)) return;
    say(this.beside, words.leads);
    fitLine(this.beside, room, 'right');
  }
}

function ordinalOf(place) { return place ? [make('b', '', place.tie + place.number), make('small', '', place.suffix)] : []; }

function crewOf(athletes) { return athletes.flatMap((name, at) => (at ? [make('i', 'then', drawn('arrow')), ' ', nameOf(name), ' '] : [nameOf(name), ' '])); }

function line(who, what, round, next) {
  const pieces = [];
  if (who) pieces.push(nameOf(who, 'b'));
  if (what) pieces.push(make('span', 'task', what));
  if (round) pieces.push(make('span', 'round', round));
  if (next) pieces.push(make('span', 'then', drawn('arrow'), nameOf(next)));
  return pieces.flatMap((piece, at) => (at ? [' ', piece] : [piece]));
}
