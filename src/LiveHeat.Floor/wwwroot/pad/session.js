// What this pad asks of the server, and keeps for when there is none.

import { inLanguage, language } from './words.js';

const WAIT_MS = 10_000;

/** `message` is a sentence to show. */
export class Problem extends Error {
  constructor(code, message = '', status = 0) {
    super(message);
    Object.assign(this, { code, status });
  }
}

export async function call(path, body) {
  const waiting = new AbortController(), timer = setTimeout(() => waiting.abort(), WAIT_MS);
  try {
    const answer = await fetch(inLanguage(path), {
      signal: waiting.signal,
      ...(body && { method: 'POST', headers: { 'Content-Type': 'application/json' }, body: JSON.stringify(body) }),
    });
    const { ok, status, headers } = answer, type = headers.get('Content-Type') ?? '', text = await answer.text();
    const value = /json/.test(type) ? JSON.parse(text) : {};
    if (ok && !/html/.test(type)) return value;   // html: somebody else's sign-in page
    throw new Problem(value.code ?? `http-${status}`, value.detail, ok ? 0 : status);
  } catch (problem) {
    throw problem instanceof Problem ? problem : new Problem('offline');
  } finally {
    clearTimeout(timer);
  }
}

/** '' when it is no code. */
export function readCode(text) {
  const code = text.toUpperCase().replace(/[^0-9A-Z]/g, '').replace(/O/g, '0').replace(/[IL]/g, '1');
  return /^[0-9A-HJKMNP-TV-Z]{8}$/.test(code) ? code : '';
}

// `ready`, `begun`, `left` are heats; `seatSince`, `readyHeard`, `ruling` ledger sequences.
const FRESH = { heat: null, seat: null, seatSince: 0, ready: null, readyHeard: null, begun: null, noStart: '', ruling: 0 };
const NOTHING = { ...FRESH, duty: 'primary', joined: null, left: null, epoch: null, hand: 'right', look: null, hiddenAt: null };
const ASK_AGAIN_MS = 5_000;

export class Session {
  kept = { ...NOTHING };
  heats = new Map();
  next = null; // a newer heat, while the judge is not through with this one
  program = null;
  serverBuild = null;
  signedOut = false;
  busy = new Set();
  askedAt = 0;

  constructor(parts) { Object.assign(this, parts); }

  restore(kept, heats) {
    Object.assign(this.kept, kept);
    for (const heat of heats) this.heats.set(heat.heat, heat);
  }

  get heat() { return this.heats.get(this.kept.heat); }

  keep(changes) {
    Object.assign(this.kept, changes);
    this.database.keep('pad', this.kept);
    this.onChange();
  }

  save(heat) {
    this.database.keepHeat(heat);
    this.onChange();
  }

  /** One of a kind at a time; what fails is tried at the next connect. */
  async alone(kind, work) {
    if (this.busy.has(kind)) return;
    this.busy.add(kind);
    try { await work(); } catch (problem) {
      if (!(problem instanceof Problem)) throw problem;
      this.signedOut ||= problem.code === 'not-signed-in';
      this.onChange();
    } finally { this.busy.delete(kind); }
  }

  async join(code, name) {
    await call('/api/join', { code, name });
    const pad = await call('/api/pad');
    this.keep({ ...FRESH, duty: 'primary', left: null });
    this.hear(pad);
    this.hub.retryNow();   // the link was nobody's
  }

  refresh() {
    this.askedAt = performance.now();
    return this.alone('pad', async () => this.hear(await call('/api/pad')));
  }

  readProgram() { return this.alone('program', async () => { this.program = await call('/api/program'); this.onChange(); }); }

  /** A judge at work is not pushed away by the next heat. */
  hear({ epoch, competition, lane, judge, heat, seat, duty, certified, build }) {
    const { kept, outbox } = this;
    Object.assign(this, { signedOut: false, serverBuild: build, next: null });
    outbox.saw(epoch);
    outbox.certified(certified);
    for (const id of certified) if (id !== kept.heat && this.heats.delete(id)) this.database.forgetHeat(id);
    const atWork = kept.seat && kept.ready === kept.heat && kept.left !== kept.heat;
    const here = heat?.id === kept.heat, moves = heat && !here && !atWork, before = here && seat !== kept.seat && kept.seat;
    if (!here && !moves) this.next = heat;
    // A new duty leaves a seat behind.
    if (seat && before && (duty !== 'primary' || kept.duty !== 'primary')) this.alone('seat', () => this.command('give-up-seat', { lane, seat: before }));
    this.keep({ joined: { lane, judge, competition }, epoch, ...(moves && { ...FRESH, heat: heat.id }), ...(seat && (here || moves) && { seat, duty }) });
    this.follow();
  }

  goOn() {
    const heat = this.next?.id;
    this.keep(heat ? { ...FRESH, heat } : { left: this.kept.heat });
    this.next = null;
    this.follow();
    this.refresh();
  }

  follow() {
    const { heat, joined } = this.kept;
    this.hub.watch(heat ?? 'current');
    if (!heat) return;
    if (!this.heats.has(heat)) this.heats.set(heat, { heat, entries: [], head: 0 });
    if (this.heat.sheet?.language !== language || this.heat.sheet.of !== joined?.lane) this.readSheet();
    if (!this.heat.frame) this.alone('frame', async () => this.take(await call(`/api/heats/${heat}/frame`)));
    this.catchUp();
  }

  /** Of its own lane: a phone needs no other's. */
  readSheet() {
    const { heat, kept: { joined } } = this, of = joined?.lane;
    this.alone('sheet', async () => { heat.sheet = { language, of, ...await call(`/api/heats/${heat.heat}/sheet?lane=${of}`) }; this.save(heat); });
  }

  told(frame) { return frame?.lanes.find(({ lane }) => lane === this.kept.joined?.lane); }

  take(frame) {
    const { heat, kept } = this;
    if (frame.heat !== heat?.heat) {
      if (performance.now() - this.askedAt > ASK_AGAIN_MS) this.refresh();
      return;
    }
    const before = heat.frame;
    heat.frame = frame;
    this.outbox.saw(frame.epoch);
    if (before && (before.start?.id !== frame.start?.id || before.start?.goAt !== frame.start?.goAt)) heat.head = 0;   // it changes what taps are
    if (frame.sheet !== heat.sheet?.sheet) this.readSheet();
    if (this.told(frame)?.factSequence > heat.head) this.catchUp();
    if (before?.start && !frame.start) this.keep({ begun: null, noStart: frame.phase === 'armed' ? 'recalled' : 'returned' });
    else if (frame.start && kept.noStart) this.keep({ noStart: '' });
    const gist = ({ phase, start, haltedAt, sheet, endedAt, epoch } = {}) => JSON.stringify([phase, start, haltedAt, sheet, endedAt, epoch]);
    if (gist(before) === gist(frame)) { this.onChange(); return; }
    this.save(heat);
    if (before && before.phase !== frame.phase) this.refresh();
  }

  catchUp() {
    const { heat, kept: { joined } } = this;
    if (!heat || !joined) return;
    return this.alone('facts', async () => {
      const after = heat.head, { head, facts } = await call(`/api/heats/${heat.heat}/lanes/${joined.lane}/facts?after=${after}`);
      if (heat.head !== after) return;   // all is to be read anew
      const entries = facts.map(({ sequence, flags, fact }) => ({ sequence, flags, fact }));
      if (head < after) Object.assign(heat, { head: 0, entries: [] });
      else Object.assign(heat, { head, entries: after ? [...heat.entries, ...entries] : entries });
      this.outbox.saw(this.outbox.epoch, heat.heat, head);
      this.save(heat);
    });
  }

  forgetFacts() {
    for (const heat of this.heats.values()) Object.assign(heat, { head: 0, entries: [] });
    this.catchUp();
  }

  async command(command, fields) { return call(`/api/heats/${this.kept.heat}/commands`, { id: await this.database.nextId(), command, ...fields }); }

  async takeSeat(duty) {
    const { sequence } = await this.command('take-seat', { lane: this.kept.joined.lane, duty });
    this.keep({ seatSince: sequence });
    this.hear(await call('/api/pad'));
  }

  sayReady() {
    this.keep({ ready: this.kept.heat, readyHeard: null });
    this.repeatReady();
  }

  repeatReady() {
    const { heat, ready, readyHeard, seat, duty, joined } = this.kept;
    if (!heat || ready !== heat || readyHeard !== null || !seat || duty !== 'primary') return;   // the lane is ready when its judge is
    this.alone('ready', async () => {
      const { sequence } = await this.command('ready', { lane: joined.lane, seat }).catch(problem => {
        if (problem.status) return { sequence: 0 };   // too late to matter
        throw problem;
      });
      this.keep({ readyHeard: sequence });
    });
  }

  reconnected() {
    this.outbox.kick();
    this.readProgram();
    if (!this.kept.joined) return;
    this.refresh();
    this.repeatReady();
  }
}
