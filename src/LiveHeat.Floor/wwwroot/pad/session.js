// What this pad knows from the server, and keeps for when there is none: who judges, which heat, its sheet, frame and facts, the seat.

import { call } from './server.js';

// `ready`, `begun`, `left`: the heat it was said for; `seatSince`, `readyHeard`, `ruling`: a ledger sequence; `noStart`: how the start we
// knew came to nothing; `ids`: of commands not yet answered.
const FRESH = { heat: null, seat: null, seatSince: 0, ready: null, readyHeard: null, begun: null, noStart: '', ruling: 0, ids: {} };
const NOTHING = { ...FRESH, joined: null, left: null, epoch: null, hand: 'right', look: null, hiddenAt: null };
const ASK_AGAIN_MS = 5_000;

export class Session {
  kept = { ...NOTHING };
  heats = new Map();
  next = null;                       // the lane's newer heat, while the judge is not through with this one
  program = null;
  serverBuild = null;
  signedOut = false;
  busy = new Set();
  askedAt = 0;

  /** @param {{database: any, outbox: any, hub: any, onChange: () => void}} parts */
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

  /** One of each kind at a time, quiet without network: the next connect tries again. */
  async alone(kind, work) {
    if (this.busy.has(kind)) return;
    this.busy.add(kind);
    try { await work(); } catch ({ code }) { this.signedOut ||= code === 'not-signed-in'; this.onChange(); } finally { this.busy.delete(kind); }
  }

  async join(code, name) {
    await call('/api/join', { code, name });
    const pad = await call('/api/pad');
    this.keep({ ...FRESH, left: null });
    this.hear(pad);
    this.hub.retryNow();                                 // the link was nobody's; now it is ours
  }

  refresh() {
    this.askedAt = performance.now();
    return this.alone('pad', async () => this.hear(await call('/api/pad')));
  }

  readProgram() { return this.alone('program', async () => { this.program = await call('/api/program'); this.onChange(); }); }

  /** What /api/pad says. A judge in the middle of a heat is not pushed away from it by the next. */
  hear({ epoch, competition, lane, judge, heat, seat, certified, build }) {
    const { kept, outbox } = this;
    Object.assign(this, { signedOut: false, serverBuild: build, next: null });
    outbox.saw(epoch);
    outbox.certified(certified);
    const atWork = kept.seat && kept.ready === kept.heat && kept.left !== kept.heat;
    let changes = {};
    if (heat?.id === kept.heat) changes = { seat: seat ?? kept.seat };
    else if (heat && !atWork) changes = { ...FRESH, heat: heat.id, seat };
    else this.next = heat;
    this.keep({ joined: { lane, judge, competition }, epoch, ...changes });
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
    const { heat } = this.kept;
    this.hub.watch(heat ?? 'current');
    if (!heat) return;
    if (!this.heats.has(heat)) this.heats.set(heat, { heat, entries: [], head: 0 });
    if (!this.heat.sheet) this.readSheet();
    this.catchUp();
  }

  readSheet() {
    const { heat } = this;
    this.alone('sheet', async () => { heat.sheet = await call(`/api/heats/${heat.heat}/sheet`); this.save(heat); });
  }

  told(frame) { return frame?.lanes.find(({ lane }) => lane === this.kept.joined?.lane); }

  /** A frame also tells whether there is more to ask for. */
  take(frame) {
    const { heat, kept } = this;
    if (frame.heat !== heat?.heat) {
      if (performance.now() - this.askedAt > ASK_AGAIN_MS) this.refresh();
      return;
    }
    const before = heat.frame;
    heat.frame = frame;
    this.outbox.saw(frame.epoch);
    if (before && (before.start?.id !== frame.start?.id || before.start?.goAt !== frame.start?.goAt)) heat.head = 0;   // what a start makes of the taps
    if (frame.sheet !== heat.sheet?.sheet) this.readSheet();
    if (this.told(frame)?.factSequence > heat.head) this.catchUp();
    if (before?.start && !frame.start) this.keep({ begun: null, noStart: frame.phase === 'armed' ? 'recalled' : 'returned' });
    else if (frame.start && kept.noStart) this.keep({ noStart: '' });
    const gist = ({ phase, start, haltedAt, sheet, endedAt, epoch } = {}) => JSON.stringify([phase, start, haltedAt, sheet, endedAt, epoch]);
    if (gist(before) === gist(frame)) { this.onChange(); return; }
    this.save(heat);
    if (before && before.phase !== frame.phase) this.refresh();
  }

  /** A head below ours is a restored ledger: begin again. */
  catchUp() {
    const { heat, kept: { joined } } = this;
    if (!heat || !joined) return;
    return this.alone('facts', async () => {
      const after = heat.head, { head, facts } = await call(`/api/heats/${heat.heat}/lanes/${joined.lane}/facts?after=${after}`);
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

  /** The id is kept until it is answered: whoever is unsure sends the same again. */
  async command(command, fields) {
    const { heat, ids } = this.kept, key = `${command} ${heat}`;
    ids[key] ??= await this.database.nextId();
    try {
      const answer = await call(`/api/heats/${heat}/commands`, { id: ids[key], command, ...fields });
      delete ids[key];
      return answer;
    } catch (problem) {
      if (problem.status) delete ids[key];
      throw problem;
    }
  }

  async takeSeat() {
    const { sequence } = await this.command('take-seat', { lane: this.kept.joined.lane, duty: 'primary' });
    this.keep({ seatSince: sequence });
    this.hear(await call('/api/pad'));
  }

  sayReady() {
    this.keep({ ready: this.kept.heat, readyHeard: null });
    this.repeatReady();
  }

  repeatReady() {
    const { heat, ready, readyHeard, seat, joined } = this.kept;
    if (!heat || ready !== heat || readyHeard !== null || !seat) return;
    this.alone('ready', async () => {
      const { sequence } = await this.command('ready', { lane: joined.lane, seat }).catch(problem => {
        if (problem.status) return { sequence: 0 };          // too late to matter: the heat is under way
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
