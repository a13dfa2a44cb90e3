// The pad: puts the parts together, decides which screen is shown, and draws it when something changed.

import { Clock, keepInStep } from '/floor/clock.js';
import { Hub } from '/floor/hub.js';
import { askForStorage, battery } from './checks.js';
import { openDatabase } from './database.js';
import { clockText } from './dom.js';
import { heatMs, isCapped, laneModel, viewOf } from './lane.js';
import { Outbox } from './outbox.js';
import { Updates, beTheOnlyTab } from './page.js';
import { Recorder } from './recorder.js';
import { call, readCode } from './server.js';
import { Session } from './session.js';
import { Sound } from './sound.js';
import * as entry from './views/entry.js';
import { finish } from './views/finish.js';
import { heat } from './views/heat.js';
import { status } from './views/parts.js';
import { Wake } from './wake.js';
import { phrase, ruling, say } from './words.js';

const VIEWS = { ...entry, checks: entry.checking, heat, finish };
const TICK_MS = 100, REPORT_MS = 5_000, POLL_MS = 15_000, AWAY_MS = 15_000, OFFLINE_MS = 3_000, CALL_MS = 3_000, NOTE_MS = 2_500, FAULTS_MS = 8_000;

class Pad {
  // What only this page knows: an open panel, a question, a note.
  alone = true; panel = null; faultsFor = null; problem = null; asking = false; notMine = false; soundHeard = false; storage = 'at-risk'; battery = null;
  pendingCode = ''; transient = ''; callAt = 0; offlineSince = performance.now(); view = '';

  constructor(root, database, loaded) {
    const onChange = () => this.change(), clock = new Clock({ bridge: loaded.kept.bridge, onBridge: bridge => database.keep('bridge', bridge) });
    const outbox = new Outbox(database, { post: call, onChange, onRestored: () => this.session.forgetFacts(), onConflict: () => this.note('conflict') });
    const hub = new Hub('/hub', { onFrame: frame => this.session.take(frame), onProgram: () => this.session.reconnected(), onState: state => this.linked(state) });
    Object.assign(this, { root, database, clock, outbox, hub, sound: new Sound(), wake: new Wake(onChange), updates: new Updates(), touches: loaded.kept.touches ?? 0 });
    this.session = new Session({ database, outbox, hub, onChange });
    this.recorder = new Recorder({ clock, outbox, onChange: () => this.changeNow(), context: () => this.context() });
    this.status = status(this);
    this.session.restore(loaded);
    outbox.load(loaded.taps, this.session.kept.epoch);
    const alive = Math.max(this.session.kept.hiddenAt, loaded.kept.bridge?.wall ?? 0, loaded.taps.at(-1)?.fact.phone.wallMs ?? 0);
    this.away = Date.now() - alive > AWAY_MS;
  }

  start() {
    const { session, outbox, hub } = this;
    this.readCode();
    addEventListener('hashchange', () => { this.readCode(); this.change(); });
    addEventListener('pagehide', () => session.keep({ hiddenAt: Date.now() }));
    document.addEventListener('visibilitychange', () => this.seen());
    this.useHere = beTheOnlyTab({
      onGranted: () => { this.set({ alone: true }); hub.start(); outbox.kick(); },
      onRefused: () => this.set({ alone: false }), onLost: () => { hub.stop(); this.set({ alone: false }); },
    });
    this.changeNow();
    this.away &&= this.view === 'heat';                      // asked only of a judge who comes back into a heat
    session.follow();
    session.refresh();
    session.readProgram();
    this.updates.start(() => this.change());
    setInterval(() => this.tick(), TICK_MS);
    setInterval(() => this.report(), REPORT_MS);
    setInterval(() => { if (this.view !== 'heat') session.refresh(); }, POLL_MS);
    askForStorage().then(storage => this.set({ storage }));
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
  offline() { return this.hub.state !== 'online' && performance.now() - this.offlineSince > OFFLINE_MS; }
  get frame() { return this.session.heat?.frame ?? null; }
  get sheet() { return this.session.heat?.sheet ?? null; }
  get look() { return this.session.kept.look ?? (matchMedia('(prefers-color-scheme: light)').matches ? 'light' : 'dark'); }
  get competition() { return (this.sheet ?? this.session.kept.joined ?? this.session.program)?.competition ?? say('title'); }
  get calling() { return !!this.frame?.calls.includes(this.model?.lane); }

  context() {
    const { heat: id, joined: { lane }, seat } = this.session.kept;
    return { heat: id, lane, start: this.frame?.start?.id ?? null, plan: this.model.line.plan, ...(seat && { seat }) };
  }

  phone() {
    const { database, outbox, storage, hub, clock, soundHeard, wake, battery: power } = this;
    return { durable: database.durable && outbox.storing, storage, online: hub.state === 'online', clock: clock.quality(), soundHeard, wake: wake.state, battery: power };
  }

  nextHeat() {
    const { program, kept } = this.session, own = one => one.lanes.find(({ lane }) => lane === kept.joined.lane);
    const mine = program?.heats.filter(own) ?? [], next = mine.slice(mine.findIndex(one => one.heat === kept.heat) + 1).find(({ phase }) => /planned|called/.test(phase));
    return next && { ...next, team: own(next).name };
  }

  /** "safe 6:58.1": the last tap, and how far it has come. */
  lastState() {
    const { last, lastSafe } = this.model, at = last && heatMs(this.frame, last.instant);
    const time = !last || at === null || last.timeKnown === false ? '' : clockText(at, 1);
    return last ? say(`tap.${last.id.startsWith('new-') ? 'new' : lastSafe ? 'safe' : 'phone'}`, { time }) : '';
  }

  nextRuling() {
    const { known } = this.model, { ruling: read } = this.session.kept;
    return known.filter(({ sequence }) => sequence > read).map(({ sequence, fact }) => ({ sequence, text: ruling(fact, this.model) })).find(({ text }) => text);
  }

  /** The note that stands in the place of "after this", if any. */
  standingNote() {
    const { transient, outbox, frame, session, wake, model } = this;
    const held = model.known.find(({ fact, flags }) => flags?.includes('quarantined') && !flags.includes('early') && !model.known.some(other => other.fact.target === fact.id));
    return transient || !outbox.storing && say('note.not-stored') || frame?.haltedAt && say('note.halted') || session.signedOut && say('note.signed-out')
      || held && say('note.held', { what: phrase(held.fact, model) }) || wake.wanted && wake.state === 'off' && say('note.asleep') || '';
  }

  callText() {
    if (this.callAt) return say('call.soon', { n: Math.ceil((this.callAt - performance.now()) / 1_000) });
    const waits = this.model.known.some(({ fact, sequence }) => fact.fact === 'head-judge-called' && !sequence);
    return say(this.calling ? 'call.called' : waits ? 'call.waits' : 'call');
  }

  // ---- what the judge does ----

  record(stamp, ...facts) {
    Object.assign(this, { faultsFor: null, transient: '' });
    navigator.vibrate?.(25);
    return this.recorder.record(stamp, ...facts);
  }

  /** A no-rep is recorded at once; its reason, if any, is a second tap that replaces it at the same moment. */
  recordNoRep(stamp, fact) {
    const { faults } = this.model.step;
    this.record(stamp, fact);
    const { id } = this.recorder.storing.at(-1).fact;
    if (faults.length) this.set({ faultsFor: { id, stamp, fact, faults, until: performance.now() + FAULTS_MS } });
  }

  giveFault(fault) {
    const { id, stamp, fact } = this.faultsFor;
    this.record(stamp, { fact: 'undone', target: id }, { ...fact, fault });
  }

  ignored(why) {
    this.database.keep('touches', ++this.touches);
    this.note(why);
  }

  note(key, ms = NOTE_MS) {
    this.transient = say(`note.${key}`);
    clearTimeout(this.noteTimer);
    this.noteTimer = setTimeout(() => this.set({ transient: '' }), ms);
    this.changeNow();
  }

  /** Three seconds to take it back. */
  callHeadJudge(stamp) { Object.assign(this, { callStamp: stamp, callAt: this.callAt ? 0 : performance.now() + CALL_MS }); }

  async join(code, name) {
    await this.session.join(code, name);
    this.set({ pendingCode: '' });
  }

  async takeSeat() {
    this.set({ asking: true, problem: null });
    await this.session.takeSeat().catch(problem => this.set({ problem }));
    this.set({ asking: false });
  }

  async confirm() {
    const { session } = this, { heat: id } = session.kept;
    this.set({ notMine: false });
    if (session.kept.seat) { session.keep({ ready: null, readyHeard: null }); return; }
    await this.takeSeat();
    if (!session.kept.seat || !/running|halted/.test(this.frame?.phase)) return;
    session.keep({ ready: id });                             // takes over in mid-heat: no checks, but where is the lane?
    this.set({ panel: 'here' });
  }

  async testSound() {
    await this.sound.unlock();
    this.sound.beep();
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
    if (state === 'offline') this.offlineSince ||= performance.now();
    if (state === 'online') {
      this.offlineSince = 0;
      this.stopClock = keepInStep(this.clock, this.hub, { onStep: () => this.view === 'checks' && this.change() });
      this.session.reconnected();
      this.report();
    }
    this.change();
  }

  seen() {
    const { kept } = this.session;
    if (document.visibilityState === 'hidden') { this.session.keep({ hiddenAt: Date.now() }); return; }
    if (kept.hiddenAt && Date.now() - kept.hiddenAt > AWAY_MS && this.view === 'heat') this.away = true;
    this.outbox.kick();
    this.change();
  }

  report() {
    const { session: { kept, serverBuild }, outbox, storage, wake, updates } = this, { word: clock, ms: uncertaintyMs } = this.clock.quality();
    this.reported = outbox.waiting;
    if (kept.joined) this.hub.reportPhone({ lane: kept.joined.lane, heat: kept.heat, unsent: outbox.waiting, onPhone: outbox.taps.length, clock, uncertaintyMs, storage, awake: wake.state === 'on', build: updates.build ?? serverBuild });
  }

  tick() {
    const now = performance.now();
    if (this.callAt && now >= this.callAt) {
      this.callAt = 0;
      this.record(this.callStamp, { fact: 'head-judge-called', note: null });
    }
    if (this.faultsFor && now > this.faultsFor.until) this.set({ faultsFor: null });
    if (this.viewName() !== this.view || this.isCapped() !== this.capped) this.changeNow();
    this.drawn.tick?.();
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
    setTimeout(() => this.due && this.changeNow(), 200);     // a hidden page has no animation frames
  }

  isCapped() { return !!this.model && isCapped(this.model, this.frame, this.now()); }

  viewName() {
    const { alone, session: { kept, signedOut }, model, frame, view } = this;
    return viewOf({ alone, kept, model, frame, now: this.now(), asksToJoin: !!this.pendingCode || signedOut && !/heat|finish/.test(view) });
  }

  changeNow() {
    const { session, frame, sheet } = this, { kept } = session, lane = kept.joined?.lane;
    this.due = false;
    this.model = sheet?.lanes.some(line => line.lane === lane) ? laneModel({ sheet, frame, lane, entries: [...this.recorder.entriesOf(kept.heat), ...session.heat.entries] }) : null;
    this.capped = this.isCapped();
    const view = this.viewName();
    if (view !== this.view) {
      if (view !== 'heat') this.panel = null;
      this.view = this.root.dataset.view = view;
      this.drawn = VIEWS[view](this);
      this.root.replaceChildren(this.drawn.root, this.status.root);
    }
    this.drawn.update();
    this.status.update();
    this.dress();
    if (this.reported !== this.outbox.waiting) this.report();
    this.updates.saw(session.serverBuild);
    this.followStart(frame?.start);
  }

  dress() {
    const { dataset } = document.documentElement;
    Object.assign(dataset, { look: this.look, hand: this.session.kept.hand, colour: this.model?.line.colour ?? 3 });
    if (document.title !== this.competition) document.title = this.competition;
  }

  followStart(start) {
    const key = `${start?.id} ${start?.goAt}`;
    if (key === this.followed) return;
    this.followed = key;
    this.sound.follow(start?.goAt ?? null, instant => this.clock.msUntil(instant));
    if (start) this.wake.keepOn();
  }
}

const database = await openDatabase();
export const pad = new Pad(document.getElementById('pad'), database, await database.load());
pad.start();
