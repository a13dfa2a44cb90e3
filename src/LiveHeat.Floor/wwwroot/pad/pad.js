// The pad: puts the parts together, does what the judge does, draws what changed.

import { Clock, keepInStep } from '/floor/clock.js';
import { Hub } from '/floor/hub.js';
import { openDatabase } from './database.js';
import { heardFrame, isCapped, laneModel, viewOf } from './lane.js';
import { Outbox } from './outbox.js';
import { Updates, Wake, askForStorage, battery, beTheOnlyTab } from './phone.js';
import { Recorder } from './recorder.js';
import { Session, call, readCode } from './session.js';
import * as around from './views/around.js';
import { heat } from './views/heat.js';
import { fitAll, status } from './views/parts.js';
import { say } from './words.js';

const LIGHT = matchMedia('(prefers-color-scheme: light)');
const VIEWS = { ...around, heat };   // finish and timer come later
const TICK_MS = 100, REPORT_MS = 5_000, POLL_MS = 15_000, AWAY_MS = 15_000, OFFLINE_MS = 3_000, CALL_MS = 3_000, NOTE_MS = 2_500, FAULTS_MS = 8_000, LATER_MS = 2_000;

class Pad {
  alone = true; view = ''; panel = null; faultsFor = null; problem = null; asking = false; notMine = false; choosing = false; soundHeard = false; sounds = null;
  storage = 'at-risk'; power = null; pendingCode = ''; transient = ''; callAt = 0; offlineSince = performance.now();

  constructor(root, database, { kept, heats, taps }) {
    const onChange = () => this.change(), clock = new Clock({ bridge: kept.bridge, onBridge: bridge => database.keep('bridge', bridge) });
    const outbox = new Outbox(database, { post: call, onChange, onRestored: () => this.session.forgetFacts(), onConflict: () => this.note('conflict') });
    const hub = new Hub('/hub', { onFrame: frame => this.session.take(frame), onProgram: () => this.session.reconnected(), onState: state => this.linked(state) });
    const session = new Session({ database, outbox, hub, onChange });
    Object.assign(this, {
      root, database, clock, outbox, hub, session, recorder: new Recorder({ clock, outbox, onChange: () => this.draw(), context: () => this.context() }),
      wake: new Wake(onChange), updates: new Updates(onChange), touches: kept.touches ?? 0,
    });
    session.restore(kept.pad, heats);
    outbox.load(taps, session.kept.epoch);
    this.status = status(this);
    this.away = Date.now() - Math.max(session.kept.hiddenAt, kept.bridge?.wall ?? 0, taps.at(-1)?.fact.phone.wallMs ?? 0) > AWAY_MS;
  }

  start() {
    const { session, outbox, hub } = this;
    this.readCode();
    addEventListener('hashchange', () => this.readCode());
    addEventListener('resize', () => this.change());
    addEventListener('pagehide', () => session.keep({ hiddenAt: Date.now() }));
    document.addEventListener('visibilitychange', () => this.seen());
    this.useHere = beTheOnlyTab({
      onGranted: () => { this.set({ alone: true }); hub.start(); outbox.kick(); },
      onRefused: () => this.set({ alone: false }), onLost: () => { hub.stop(); this.set({ alone: false }); },
    });
    this.draw();
    this.away &&= this.view === 'heat';  // asked of a judge who comes back into a heat
    session.follow();
    session.refresh();
    session.readProgram();
    setTimeout(() => this.updates.start(), LATER_MS);
    setInterval(() => this.tick(performance.now()), TICK_MS);
    setInterval(() => this.report(), REPORT_MS);
    setInterval(() => { if (this.view !== 'heat') session.refresh(); }, POLL_MS);
    askForStorage().then(storage => this.set({ storage }));
    battery().then(power => this.set({ power }));
  }

  /** Out of the address at once: not for history or a screenshot. */
  readCode() {
    const code = readCode(location.hash);
    if (location.hash) history.replaceState(null, '', location.pathname + location.search);
    if (code) this.set({ pendingCode: code, freshCode: true });
  }

  get frame() { return this.session.heat?.frame ?? null; }
  get sheet() { return this.session.heat?.sheet ?? null; }
  get look() { return this.session.kept.look ?? (LIGHT.matches ? 'light' : 'dark'); }
  get competition() { return (this.sheet ?? this.session.kept.joined ?? this.session.program)?.competition ?? say('title'); }
  get offline() { return this.hub.state !== 'online' && performance.now() - this.offlineSince > OFFLINE_MS; }

  context() {
    const { heat, joined: { lane }, seat } = this.session.kept;
    return { heat, lane, start: this.frame?.start?.id ?? null, plan: this.model.line.plan, ...(seat && { seat }) };
  }

  record(stamp, ...facts) {
    Object.assign(this, { faultsFor: null, transient: '' });
    navigator.vibrate?.(25);
    return this.recorder.record(stamp, ...facts);
  }

  /** Recorded at once; a reason is a second tap that replaces it. */
  recordNoRep(stamp, fact) {
    const { known, step } = this.model, used = name => new Set(known.filter(({ fact: one }) => one.fault === name).map(({ fact: { id } }) => id)).size;
    const faults = [...step.faults].sort((one, other) => used(other) - used(one));   // those of this heat first; the workout's order among equals
    this.record(stamp, fact);
    const { id, instant, uncertaintyMs } = this.recorder.storing.at(-1).fact;
    if (faults.length) this.set({ faultsFor: { id, stamp, fact: { ...fact, instant, uncertaintyMs }, faults, until: performance.now() + FAULTS_MS } });
  }

  giveFault(fault) {
    const { id, stamp, fact } = this.faultsFor;
    this.record(stamp, { fact: 'undone', target: id }, { ...fact, fault });
  }

  /** A panel that is fetched when it is first wanted; it goes with the step it was opened on. */
  async open(name) {
    const later = await import(`./views/${name}.js`).catch(() => null);
    if (later && this.view === 'heat') this.set({ later, panel: name, panelOf: this.model.open }); else this.note('later');
  }

  close() {
    if (this.faultsFor) this.faultsFor.until = performance.now() + FAULTS_MS;
    this.set({ panel: null });
  }

  ignored(why) {
    this.database.keep('touches', ++this.touches);
    this.note(why);
  }

  note(key, ms = NOTE_MS) {
    this.transient = say(`note.${key}`);
    clearTimeout(this.noteTimer);
    this.noteTimer = setTimeout(() => this.set({ transient: '' }), ms);
    this.draw();
  }

  /** A second tap takes it back. */
  callHeadJudge(stamp) { Object.assign(this, { callStamp: stamp, callAt: this.callAt ? 0 : performance.now() + CALL_MS }); }

  async join(code, name) {
    await this.session.join(code, name);
    this.set({ pendingCode: '' });
  }

  /** On another phone; '' when there is none. */
  get judge() {
    const { told } = this.model, { kept: { duty, seat } } = this.session;
    return told?.seat && (duty !== 'primary' || told.seat !== seat) ? told.judge : '';
  }

  async takeSeat(duty) {
    const { session: { kept }, session } = this, { seat } = kept;
    this.set({ asking: true, problem: null });
    await session.takeSeat(duty).catch(problem => this.set({ problem }));
    this.set({ asking: false });
    return kept.seat !== seat;
  }

  async confirm(duty = this.session.kept.duty) {
    const { session, choosing } = this, { kept } = session;
    this.set({ notMine: false });
    if (!choosing && duty === 'primary' && this.judge) { this.set({ choosing: true }); return; }
    if (kept.seat && kept.duty === duty && (duty !== 'primary' || !this.judge)) { this.set({ choosing: false }); session.keep({ ready: null, readyHeard: null }); return; }
    if (!await this.takeSeat(duty)) return;
    const late = /running|halted/.test(this.frame?.phase);   // no checks, but where is the lane?
    session.keep({ ready: late ? kept.heat : null, readyHeard: null });
    this.set({ choosing: false, panel: late ? 'here' : null });
  }

  async testSound() {
    await this.sounds?.sample();
    this.change();
  }

  ready() {
    this.wake.keepOn();
    this.session.sayReady();
  }

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
    const { hiddenAt } = this.session.kept, now = Date.now();
    if (document.visibilityState === 'hidden') { this.session.keep({ hiddenAt: now }); return; }
    if (hiddenAt && now - hiddenAt > AWAY_MS && this.view === 'heat') this.away = true;
    this.outbox.kick();
    this.change();
  }

  report() {
    const { session: { kept: { joined, heat, seat, duty }, serverBuild }, outbox: { waiting: unsent, taps }, storage, wake, updates } = this, { word: clock, ms: uncertaintyMs } = this.clock.quality();
    this.reported = unsent;
    if (joined) this.hub.reportPhone({ lane: joined.lane, heat, unsent, onPhone: taps.length, clock, uncertaintyMs, storage, awake: wake.state === 'on', ...(seat && { duty }), build: updates.build ?? serverBuild });
  }

  tick(now) {
    if (this.callAt && now >= this.callAt) {
      this.callAt = 0;
      this.record(this.callStamp, { fact: 'head-judge-called', note: null });
    }
    if (this.faultsFor?.until < now && !this.panel) this.set({ faultsFor: null });
    if (this.viewName() !== this.view || this.isCapped() !== this.capped || this.model?.turnAt < this.clock.now()) this.draw();
    this.beat();
  }

  beat() {
    this.drawn.tick?.();
    this.sounds?.turn(heardFrame(this.model, this.frame));
    this.status.tick();
  }

  set(changes) {
    Object.assign(this, changes);
    this.change();
  }

  /** Draws soon; a hidden page has no animation frames. */
  change() {
    if (this.due) return;
    this.due = true;
    const draw = () => this.due && this.draw();
    requestAnimationFrame(draw);
    setTimeout(draw, 200);
  }

  isCapped() { return !!this.model && isCapped(this.model, this.frame, this.clock.now()); }

  viewName() {
    const { alone, session: { kept, signedOut }, model, frame, view, pendingCode, choosing } = this;
    const found = viewOf({ alone, kept, model, frame, now: this.clock.now(), asksToJoin: pendingCode || signedOut && !/heat|timer|finish/.test(view) });
    return choosing && /checks|ready|taken/.test(found) ? 'confirm' : found;
  }

  draw() {
    const { session, frame, sheet } = this, { kept } = session, lane = kept.joined?.lane;
    this.due = false;
    this.model = sheet?.lanes.some(line => line.lane === lane) ? laneModel({ sheet, frame, lane, kept, now: this.clock.now(), entries: [...this.recorder.entriesOf(kept.heat), ...session.heat.entries] }) : null;
    this.capped = this.isCapped();
    if (this.model?.steps.some(({ kind }) => kind === 'attempt')) this.fetching ??= import('./views/attempt.js').then(({ attempt }) => this.set({ attempt }), () => { this.fetching = null; });
    const name = this.viewName(), view = VIEWS[name] ? name : 'waiting';
    if (this.model && !/confirm|waiting/.test(name)) this.fetchSounds();
    if (view !== name || this.model?.last) this.fetchViews();
    if (view !== name && this.drawn) return;   // what is on the screen stays until the view is had
    if (view !== this.view) {
      if (view !== 'heat') this.panel = null;
      if (view !== 'confirm') this.choosing = false;
      this.view = this.root.dataset.view = view;
      this.drawn = VIEWS[view](this);
      this.root.replaceChildren(this.drawn.root, this.status.root);
    }
    if (this.panel !== 'here' && this.panelOf !== this.model?.open) this.panel = null;
    this.drawn.update();
    this.status.update();
    this.beat();
    fitAll();
    Object.assign(document.documentElement.dataset, { look: this.look, hand: kept.hand, colour: this.model?.line.colour ?? 3 });
    if (document.title !== this.competition) document.title = this.competition;
    if (this.reported !== this.outbox.waiting) this.report();
    this.updates.saw(session.serverBuild);
    this.followStart(frame?.start ?? {});
  }

  /** What nobody needs before the first tap, but a timekeeper. */
  fetchViews() {
    this.fetchingViews ??= Promise.all([import('./views/finish.js'), import('./views/timer.js')]).then(later => { Object.assign(VIEWS, ...later); this.change(); }, () => { this.fetchingViews = null; });
  }

  /** Once the judge says that this is the lane: then there is a heat to hear. */
  fetchSounds() {
    this.fetchingSounds ??= import('/floor/sounds/sounds.js').then(({ Sounds }) => this.set({ sounds: new Sounds(() => this.clock.now(), undefined, () => this.clock.rate) }), () => { this.fetchingSounds = null; });
  }

  followStart({ id, goAt }) {
    if (this.followed === `${id} ${goAt}`) return;
    this.followed = `${id} ${goAt}`;
    if (id) this.wake.keepOn();
  }
}

const database = await openDatabase();
export const pad = new Pad(document.getElementById('pad'), database, await database.load());
pad.start();
