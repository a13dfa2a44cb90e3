// The pad: puts the parts together, decides which screen is shown, and draws it when something changed.

import { Clock, keepInStep } from '/floor/clock.js';
import { Hub } from '/floor/hub.js';
import { askForStorage, battery } from './checks.js';
import { openDatabase } from './database.js';
import { phrase, ruling } from './facts.js';
import { heatMs, laneModel } from './lane.js';
import { Outbox } from './outbox.js';
import { Recorder } from './recorder.js';
import { call, readCode } from './server.js';
import { Session } from './session.js';
import { Sound } from './sound.js';
import { beTheOnlyTab } from './tab.js';
import { Updates } from './updates.js';
import { isCapped, viewOf } from './view.js';
import * as entry from './views/entry.js';
import { finish } from './views/finish.js';
import { heat } from './views/heat.js';
import { status } from './views/status.js';
import { Wake } from './wake.js';
import { clockText } from './dom.js';
import { say } from './words.js';

const VIEWS = { tab: entry.tab, join: entry.join, waiting: entry.waiting, confirm: entry.confirm, checks: entry.checksView, ready: entry.ready,
  countdown: entry.countdown, taken: entry.taken, heat, finish };
const LANE_COLOURS = ['#f0e442', '#56b4e9', '#e69f00', '#e8e4da', '#cc79a7', '#2fc092'];
const TICK_MS = 100, REPORT_MS = 5_000, POLL_MS = 15_000, AWAY_MS = 15_000, CALL_MS = 3_000, NOTE_MS = 2_500, FAULTS_MS = 8_000;

export class Pad {
  constructor(root, database, loaded) {
    Object.assign(this, { root, database });
    const onChange = () => this.change();
    this.clock = new Clock({ bridge: loaded.kept.bridge ?? null, onBridge: bridge => database.keep('bridge', bridge).catch(() => {}) });
    this.outbox = new Outbox(database, { post: call, onChange, onRestored: () => this.session.forgetFacts(), onConflict: () => this.note('note.conflict') });
    this.hub = new Hub('/hub', { onFrame: frame => this.session.take(frame), onProgram: () => { this.session.refresh(); this.session.readProgram(); }, onState: state => this.linked(state) });
    this.session = new Session({ database, outbox: this.outbox, hub: this.hub, onChange });
    this.recorder = new Recorder({ clock: this.clock, outbox: this.outbox, onChange: () => this.changeNow(), context: () => this.context() });
    this.sound = new Sound();
    this.wake = new Wake(onChange);
    this.updates = new Updates(onChange);
    this.session.restore(loaded);
    this.outbox.load(loaded.taps, this.session.kept.epoch);
    this.status = status(this);
    /** what only this page knows: an open panel, a question, a note */
    Object.assign(this, { alone: true, panel: null, away: this.wasAway(loaded), faultsFor: null, problem: null, asking: false, notMine: false,
      soundHeard: false, storage: 'at-risk', battery: null, pendingCode: '', transient: null, callAt: 0, callStamp: 0, touches: loaded.kept.touches ?? 0 });
  }

  start() {
    this.readCode();
    addEventListener('hashchange', () => { this.readCode(); this.change(); });
    document.addEventListener('visibilitychange', () => this.seen());
    addEventListener('pagehide', () => this.session.keep({ hiddenAt: Date.now() }));
    this.useHere = beTheOnlyTab({
      onGranted: () => { this.set({ alone: true }); this.hub.start(); this.outbox.kick(); },
      onRefused: () => this.set({ alone: false }), onLost: () => { this.hub.stop(); this.set({ alone: false }); },
    });
    this.changeNow();
    if (this.view !== 'heat') this.away = false;               // asked only of a judge who comes back into a heat
    this.session.follow();
    if (this.session.kept.joined || !this.pendingCode) this.session.refresh();
    this.session.readProgram();
    this.updates.start();
    setInterval(() => this.tick(), TICK_MS);
    setInterval(() => this.report(), REPORT_MS);
    setInterval(() => { if (this.view !== 'heat') this.session.refresh(); }, POLL_MS);
    askForStorage(this.database.durable).then(storage => this.set({ storage }));
    battery().then(found => this.set({ battery: found }));
  }

  /** A code in the address is taken out of it at once: not for history, not for a screenshot. */
  readCode() {
    const code = readCode(location.hash);
    if (location.hash) history.replaceState(null, '', location.pathname);
    if (code) Object.assign(this, { pendingCode: code, freshCode: true });
  }

  // ---- what the views ask ----

  now() { return this.clock.now(); }
  get frame() { return this.session.frame; }
  get sheet() { return this.session.sheet; }
  get look() { return this.session.kept.look ?? (matchMedia('(prefers-color-scheme: light)').matches ? 'light' : 'dark'); }
  get competition() { return this.sheet?.competition ?? this.session.kept.joined?.competition ?? this.session.program?.competition ?? say('title'); }
  get calling() { return !!this.frame?.calls?.includes(this.model?.lane); }

  context() {
    const { kept } = this.session, start = this.frame?.start?.id ?? null;
    return { heat: kept.heat, lane: kept.joined.lane, start, plan: this.model.line.plan, seat: kept.seat };
  }

  phone() {
    return { durable: this.database.durable && this.outbox.storing, storage: this.storage, online: this.hub.state === 'online', clock: this.clock.quality(),
      soundHeard: this.soundHeard, wake: this.wake.state, battery: this.battery };
  }

  nextHeat() {
    const { program, kept } = this.session;
    const mine = (program?.heats ?? []).filter(one => one.lanes.some(({ lane }) => lane === kept.joined?.lane));
    const at = mine.findIndex(one => one.heat === kept.heat);
    const next = mine.slice(at + 1).find(one => one.phase === 'planned' || one.phase === 'called');
    return next ? { ...next, team: next.lanes.find(({ lane }) => lane === kept.joined.lane).name } : null;
  }

  /** "safe 6:58.1": the last tap, and how far it has come. */
  lastState() {
    const last = this.model.last;
    if (!last) return '';
    const at = heatMs({ ...this.frame, haltedAt: null }, last.fact.instant);
    const time = last.fact.timeKnown === false ? say('tap.here') : at === null ? '' : clockText(at, true);
    return last.fact.id.startsWith('new-') ? say('tap.storing') : say(last.sequence ? 'tap.safe' : 'tap.phone', { time });
  }

  nextRuling() {
    const entry = this.model.rulings.find(({ sequence }) => sequence > this.session.kept.ruling);
    return entry ? { sequence: entry.sequence, text: ruling(entry.fact, this.model) } : null;
  }

  /** The note that stands in the place of "after this", if any. */
  standingNote() {
    if (this.transient) return this.transient;
    if (!this.outbox.storing) return say('note.not-stored');
    if (this.frame?.haltedAt) return say('note.halted');
    if (this.session.signedOut) return say('note.signed-out');
    const held = this.recorder.entriesOf(this.session.kept.heat).find(({ flags }) => flags?.includes('quarantined') && !flags.includes('early'));
    return held ? say('note.held', { what: phrase(held.fact, this.model) }) : this.wake.state === 'off' && this.session.kept.ready ? say('note.asleep') : null;
  }

  callText() {
    if (this.callAt) return say('call.soon', { n: Math.max(1, Math.ceil((this.callAt - performance.now()) / 1_000)) });
    if (this.calling) return say('call.called');
    const mine = this.recorder.entriesOf(this.session.kept.heat).some(({ fact, sequence }) => fact.fact === 'head-judge-called' && !sequence);
    return say(mine ? 'call.waits' : 'call');
  }

  // ---- what the judge does ----

  record(stamp, ...facts) {
    this.faultsFor = this.transient = null;
    navigator.vibrate?.(25);
    return this.recorder.record(stamp, ...facts);
  }

  /** A no-rep is recorded at once; its reason, if any, is a second tap that replaces it at the same moment. */
  recordNoRep(stamp, fact) {
    const { step } = this.model;
    this.record(stamp, fact);
    const { id } = this.recorder.storing.at(-1).fact;
    if (step.faults?.length) this.set({ faultsFor: { id, stamp, fact, faults: step.faults, until: performance.now() + FAULTS_MS } });
  }

  giveFault(fault) {
    const { id, stamp, fact } = this.faultsFor;
    this.record(stamp, { fact: 'undone', target: id }, { ...fact, fault });
  }

  ignored(why) {
    this.touches += 1;
    this.database.keep('touches', this.touches).catch(() => {});
    this.note(`note.${why}`);
  }

  note(key, ms = NOTE_MS) {
    this.transient = say(key);
    clearTimeout(this.noteTimer);
    this.noteTimer = setTimeout(() => this.set({ transient: null }), ms);
    this.changeNow();
  }

  callHeadJudge(stamp) {
    this.callAt = this.callAt ? 0 : performance.now() + CALL_MS;
    this.callStamp = stamp;
    this.tick();
  }

  async join(code, name) {
    await this.session.join(code, name);
    this.set({ pendingCode: '' });
  }

  async takeSeat() {
    this.set({ asking: true, problem: null });
    try { await this.session.takeSeat(); } catch (problem) { this.set({ problem }); }
    this.set({ asking: false });
  }

  async confirm() {
    this.set({ notMine: false });
    if (this.session.kept.seat) { this.session.keep({ ready: null, readyHeard: null }); return; }
    await this.takeSeat();
    const running = ['running', 'halted', 'counting-down'].includes(this.frame?.phase);
    if (running && this.session.kept.seat) { this.session.keep({ ready: this.session.kept.heat }); this.set({ panel: 'here' }); this.wake.keepOn(); }
  }

  async testSound() {
    await this.sound.unlock();
    this.sound.test();
    this.change();
  }

  ready() {
    this.sound.unlock();
    this.wake.keepOn();
    this.session.sayReady();
  }

  // ---- what happens by itself ----

  linked(state) {
    this.stopClock?.();
    if (state === 'online') {
      this.stopClock = keepInStep(this.clock, this.hub, { onStep: () => { if (this.view === 'checks') this.change(); } });
      this.session.reconnected();
    }
    this.report();
    this.change();
  }

  wasAway({ kept, taps }) {
    const alive = Math.max(kept.pad?.hiddenAt ?? 0, kept.bridge?.wall ?? 0, taps.at(-1)?.fact.phone?.wallMs ?? 0);
    return Date.now() - alive > AWAY_MS;
  }

  seen() {
    if (document.visibilityState === 'hidden') { this.session.keep({ hiddenAt: Date.now() }); return; }
    const { hiddenAt } = this.session.kept;
    if (hiddenAt && Date.now() - hiddenAt > AWAY_MS && this.view === 'heat') this.set({ away: true });
    this.outbox.kick();
    this.change();
  }

  report() {
    const { kept } = this.session, { word, ms } = this.clock.quality();
    if (!kept.joined) return;
    this.hub.reportPhone({ lane: kept.joined.lane, heat: kept.heat, unsent: this.outbox.waiting, onPhone: this.outbox.taps.length, clock: word,
      uncertaintyMs: ms, storage: this.storage, awake: this.wake.state === 'on', build: this.updates.build ?? this.session.serverBuild });
    this.reported = this.outbox.waiting;
  }

  tick() {
    if (this.callAt && performance.now() >= this.callAt) {
      this.callAt = 0;
      this.record(this.callStamp, { fact: 'head-judge-called', note: null });
    }
    if (this.faultsFor && performance.now() > this.faultsFor.until) this.set({ faultsFor: null });
    if (this.known && (this.viewName() !== this.view || this.capped !== isCapped(this.model, this.frame, this.now()))) this.changeNow();
    this.drawn?.tick?.(this);
    this.status.tick();
  }

  // ---- drawing ----

  set(changes) {
    Object.assign(this, changes);
    this.change();
  }

  change() {
    if (this.due) return;
    this.due = true;
    requestAnimationFrame(() => this.due && this.changeNow());
    setTimeout(() => this.due && this.changeNow(), 200);                     // a hidden page has no animation frames
  }

  viewName() {
    return viewOf({ alone: this.alone, asksToJoin: !!this.pendingCode || this.session.signedOut && this.view !== 'heat' && this.view !== 'finish',
      kept: this.session.kept, model: this.model, frame: this.frame, now: this.now() });
  }

  changeNow() {
    this.due = false;
    const { kept } = this.session, { sheet, frame } = this;
    const known = kept.joined && sheet?.lanes.some(line => line.lane === kept.joined.lane);
    this.model = known ? laneModel({ sheet, frame, lane: kept.joined.lane, seat: kept.seat, entries: [...this.recorder.entriesOf(kept.heat), ...this.session.heat.entries] }) : null;
    this.known = !!this.model;
    this.capped = known ? isCapped(this.model, frame, this.now()) : false;
    const view = this.viewName();
    if (view !== this.view) this.show(view);
    this.drawn.update(this);
    this.status.update();
    if (this.reported !== this.outbox.waiting) this.report();
    this.updates.saw(this.session.serverBuild);
    this.followStart();
  }

  show(view) {
    this.view = view;
    this.panel = view === 'heat' ? this.panel : null;
    this.drawn = VIEWS[view](this);
    this.root.dataset.view = view;
    this.root.replaceChildren(this.drawn.root, this.status.root);
  }

  followStart() {
    const { kept } = this.session, { start } = this.frame ?? {};
    const html = document.documentElement;
    html.dataset.look = this.look;
    html.dataset.hand = kept.hand;
    html.style.setProperty('--tape', LANE_COLOURS[this.model?.line.colour ?? 3]);
    document.title = this.competition;
    const key = start ? `${start.id}@${start.goAt}` : '';
    if (key === this.followed) return;
    this.followed = key;
    const msUntil = instant => this.clock.msUntil(instant);
    this.sound.follow(start && msUntil(start.goAt) > 0 ? { goAt: start.goAt, msUntil } : null);
    if (kept.seat) this.wake.keepOn();
  }
}

const database = await openDatabase();
const pad = new Pad(document.getElementById('pad'), database, await database.load());
pad.start();
export { pad };
