// The board itself: takes frames, keeps the sheet they belong to, and draws the scene they are in.
import { everyPicture, heatMs } from '../strip.js';
import { Between, messageOf } from './between.js';
import { ageOf, freshnessOf } from './freshness.js';
import { fitWords } from './fit.js';
import { Heading } from './heading.js';
import { Lanes } from './lanes.js';
import { make, mark, say } from './nodes.js';
import { showProgramme } from './programme.js';
import { countOf, isLive, isRecalled, sceneOf } from './scene.js';
import { leadersOf } from './standing.js';
import { Summary, summaryOf } from './summary.js';
import { words } from './words.js';
import { ownLanguage } from '../words/words.js';

const ASK_AGAIN_MS = 2_000;
const LOOK_EVERY_MS = 250;          // age and summary need no more
const PROGRAMME_EVERY_MS = 10_000;  // "in 12 minutes"

export class Board {
  /**
   * @param {HTMLElement} main @param {{program?: any, sheet?: any, frame?: any}} state @param {{now(): number|null}} clock
   * @param {{seat?: {width: number, seat: number}|null, between?: {briefing?: boolean|null, standings?: boolean, look?: string}|null}} [wishes]
   *   seat: what the organiser measured; between: what takes turns with the lanes, null for nothing
   */
  constructor(main, { program = null, sheet = null, frame = null }, clock, { seat = null, between = {} } = {}) {
    this.main = main;
    this.clock = clock;
    this.program = program;
    /** @type {any} */ this.sheet = null;
    /** @type {any} */ this.frame = null;
    /** @type {any} */ this.ahead = null;          // a sheet whose first frame is on the way
    /** @type {any} */ this.waiting = null;        // a frame whose sheet is on the way
    /** @type {string|null} */ this.scene = null;
    this.recalled = this.reading = false;
    this.heading = new Heading();
    this.lanes = new Lanes(main, () => clock.now(), () => this.rearranged(), seat);
    this.between = between ? new Between(main, between) : null;
    addEventListener('resize', () => { if (!this.frame) this.draw(); });
    this.noticeText = make('span', 'notice-text');
    this.age = make('span', 'age');
    this.countNumber = make('span', 'count-number');
    this.count = make('div', 'count', this.countNumber);
    this.idle = make('div', 'idle');
    this.summary = new Summary();
    this.lanes.band.append(this.age, make('div', 'notice', this.noticeText));
    this.stage = make('div', 'stage', this.lanes.band, this.lanes.list, this.count);
    main.replaceChildren(this.summary.element, this.heading.element, this.stage, this.idle, ...(this.between ? [this.between.element] : []));
    this.noticed = '';
    this.programmeAt = 0;
    this.frameAt = this.heardAt = performance.now();
    this.online = true;                                   // the page itself has just been heard
    if (sheet && frame) this.show(sheet, frame); else this.draw();
    everyPicture(at => this.turn(at));
  }

  /** A frame came. One of another heat, or of another sheet, waits until its sheet is here. @param {any} frame */
  hear(frame) {
    this.frameAt = performance.now();
    const sheet = [this.sheet, this.ahead].find(known => known && fits(known, frame));
    if (sheet) { this.waiting = null; this.show(sheet, frame); return; }
    this.waiting = frame;
    this.readSheet();
  }

  /** @param {'online'|'connecting'|'offline'} state of the link to the hub */
  link(state) {
    if (this.online && state !== 'online') this.heardAt = performance.now();
    this.online = state === 'online';
    if (this.online) this.readProgramme();
  }

  async readProgramme() {
    this.program = await read('/api/program') ?? this.program;
    if (!this.frame || this.scene === 'before') this.draw();
  }

  /** When the heat on the screen is planned; null where nobody said. @returns {number|null} */
  get plannedAt() { return this.program?.heats.find(heat => heat.heat === this.frame?.heat)?.plannedAt ?? null; }

  /** After colours changed. */
  repaint() { for (const row of this.lanes.rows.values()) row.strip.repaint(); }

  // ---- below ----

  async readSheet() {
    if (this.reading) return;
    this.reading = true;
    while (this.waiting) {
      const sheet = await read(`/api/heats/${encodeURIComponent(this.waiting.heat)}/sheet`);
      this.ahead = sheet;                                 // it may be newer than the frame: then its frame is on the way
      if (this.waiting && sheet && fits(sheet, this.waiting)) this.hear(this.waiting);
      else if (this.waiting) await new Promise(done => setTimeout(done, ASK_AGAIN_MS));
    }
    this.reading = false;
  }

  show(sheet, frame) {
    if (isRecalled(this.frame, frame)) this.recalled = true;
    if (frame.start || frame.heat !== this.frame?.heat) this.recalled = Boolean(frame.start) && sceneOf(frame, null) === 'before';
    if (sheet !== this.sheet) {
      this.sheet = sheet;
      this.lanes.take(sheet);
      document.title = words.title(sheet.competition, sheet.title);
    }
    this.frame = frame;
    this.scene = null;
    this.draw();
  }

  draw() {
    const { frame, sheet, main } = this;
    const scene = sceneOf(frame, this.clock.now());
    mark(main, { scene, phase: frame?.phase, heat: frame?.heat, sequence: frame?.sequence });
    this.scene = scene;
    if (!frame) { this.lanes.arrange(); showProgramme(this.idle, this.program, main, this.clock.now(), this.lanes.text); this.programmeAt = performance.now(); return; }
    this.idle.replaceChildren();
    this.heading.update(sheet, frame, scene, this.leaders(), this.plannedAt);
    this.lanes.update(frame, scene);
  }

  /** Where lanes turn through pages, who is in front is always named. */
  leaders() { return this.scene === 'running' && this.main.dataset.paged ? leadersOf(this.sheet.lanes, this.frame.lanes) : []; }

  turn(at) {
    const now = this.clock.now();
    if (sceneOf(this.frame, now) !== this.scene) this.draw();
    this.heading.turn(now);
    this.lanes.turn(at);
    this.countDown(now);
    if (at - (this.lookedAt ?? -LOOK_EVERY_MS) < LOOK_EVERY_MS) return;
    this.lookedAt = at;
    this.look(at, now);
  }

  countDown(now) {
    const count = countOf(this.frame, now);
    mark(this.main, { count: count === null ? null : count === 0 ? 'go' : 'yes' });
    const text = count === 0 ? words.go : String(count);
    if (count !== null && say(this.countNumber, text)) this.countNumber.style.setProperty('--letters', String(text.length));
  }

  /** After sizes and pages changed. */
  rearranged() {
    this.heading.refit(this.lanes.text);
    if (this.frame) this.heading.tellLeaders(this.leaders());
    if (this.noticed) this.fitNotice();
  }

  fitNotice() {
    const room = this.noticeText.parentElement?.clientWidth ?? 0;
    mark(this.main, { notice: this.noticed ? 'yes' : null });
    fitWords(this.noticeText, this.noticeText, this.noticed, room || innerWidth, this.lanes.text, 'center');
  }

  /** Age, notices and the summary. */
  look(at, now) {
    const age = ageOf({ live: isLive(this.frame?.phase), online: this.online, frameAt: this.frameAt, heardAt: this.heardAt, at });
    const { level, text } = freshnessOf(age);
    mark(this.main, { freshness: level });
    say(this.age, level === 'old' ? text : '');
    this.between?.look({ scene: this.scene ?? 'idle', frame: this.frame, program: this.program, now, at, lanePages: this.lanes.plan.pages, least: this.lanes.text });
    if (!this.frame && at - this.programmeAt > PROGRAMME_EVERY_MS) this.draw();
    const notice = level === 'not-live' ? text : this.frame?.phase === 'halted' ? words.halted : this.recalled ? words.recalled : this.between?.notice ?? '';
    if (notice !== this.noticed) { this.noticed = notice; this.fitNotice(); }
    const signs = { notLive: level === 'not-live' ? text : '', recalled: this.recalled, message: this.between ? messageOf(this.program, now)?.text : '' };
    this.summary.tell(summaryOf(this.sheet, this.frame, this.scene ?? 'idle', now === null ? null : heatMs(this.frame, now), signs), at);
  }
}

/** Whether a frame's steps and lanes are those of this sheet. After a restore numbers may come a second time, in another epoch. */
function fits(sheet, frame) { return sheet.heat === frame.heat && sheet.sheet === frame.sheet && sheet.epoch === frame.epoch; }

/** Reads JSON from the server; null when it cannot be had now: whoever asked asks again. */
async function read(address) {
  try {
    const answer = await fetch(address, { headers: { accept: 'application/json', ...ownLanguage() }, cache: 'no-cache' });
    return answer.ok ? await answer.json() : null;
  } catch { return null; }
}
