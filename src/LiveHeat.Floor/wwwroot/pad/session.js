// What this pad knows from the server and keeps for when there is none: who judges, which heat, its sheet, frame and facts, the seat.

import { call } from './server.js';

/**
 * @typedef {{joined: {lane: number, judge: string, competition: string}|null, heat: string|null, seat: string|null,
 *   seatLost: boolean, ready: string|null, readyHeard: number|null, begun: string|null, noStart: string, left: string|null, ruling: number,
 *   epoch: string|null, hand: string, look: string|null, hiddenAt: number|null, ids: Record<string, string>}} Kept
 *   `ready`, `begun`, `left`: the heat for which it was said; `readyHeard`: the sequence of our readiness; `ruling`: the last one read;
 *   `noStart`: how the start we knew came to nothing; `seatLost`: the server does not know the seat we had (any more)
 */
const FRESH = { heat: null, seat: null, seatLost: false, ready: null, readyHeard: null, begun: null, noStart: '', ruling: 0, ids: {} };
const NOTHING = { ...FRESH, joined: null, left: null, epoch: null, hand: 'right', look: null, hiddenAt: null };
const ASK_AGAIN_MS = 5_000;

export class Session {
  /** @param {{database: any, outbox: import('./outbox.js').Outbox, hub: import('/floor/hub.js').Hub, onChange: () => void}} parts */
  constructor({ database, outbox, hub, onChange }) {
    Object.assign(this, { database, outbox, hub, onChange });
    /** @type {Kept} */ this.kept = { ...NOTHING };
    /** @type {Map<string, import('./database.js').KeptHeat>} */ this.heats = new Map();
    /** the lane's newer heat, while the judge is not through with this one @type {any} */ this.next = null;
    this.program = null;
    this.serverBuild = null;
    this.signedOut = false;
    this.busy = new Set();
    this.askedAt = -Infinity;
  }

  restore({ kept, heats }) {
    Object.assign(this.kept, kept.pad);
    for (const heat of heats) this.heats.set(heat.heat, heat);
  }

  /** @returns {import('./database.js').KeptHeat|null} */
  get heat() { return this.heats.get(this.kept.heat ?? '') ?? null; }
  get frame() { return this.heat?.frame ?? null; }
  get sheet() { return this.heat?.sheet ?? null; }

  keep(changes) {
    Object.assign(this.kept, changes);
    this.database.keep('pad', this.kept).catch(() => {});
    this.onChange();
  }

  /** One at a time of each kind, and quiet when there is no network: the next connect tries again. */
  async alone(kind, work) {
    if (this.busy.has(kind)) return;
    this.busy.add(kind);
    try { await work(); } catch (problem) { if (problem.code === 'not-signed-in') this.signedOut = true; this.onChange(); } finally { this.busy.delete(kind); }
  }

  async join(code, name) {
    await call('/api/join', { code, name });
    this.signedOut = false;
    this.keep({ ...FRESH, left: null });
    this.hear(await call('/api/pad'));
    this.readProgram();
  }

  /** What the server says of this pad. A judge in the middle of a heat is not pushed away from it by the next. */
  refresh() {
    this.askedAt = performance.now();
    return this.alone('pad', async () => this.hear(await call('/api/pad')));
  }

  hear(pad) {
    this.signedOut = false;
    this.serverBuild = pad.build;
    this.outbox.saw(pad.epoch);
    this.outbox.certified(pad.certified ?? []).catch(() => {});
    const changes = { joined: { lane: pad.lane, judge: pad.judge, competition: pad.competition }, epoch: pad.epoch };
    const heat = pad.heat?.id ?? null;
    this.next = null;
    if (heat === this.kept.heat) Object.assign(changes, { seat: pad.seat ?? this.kept.seat, seatLost: !pad.seat && !!this.kept.seat });
    else if (!heat || this.isBusy()) this.next = pad.heat;
    else Object.assign(changes, { ...FRESH, heat, seat: pad.seat });
    this.keep(changes);
    this.follow();
  }

  /** Whether this phone's judge is at work in the heat it has. */
  isBusy() { return !!(this.kept.seat && this.kept.ready === this.kept.heat && this.kept.left !== this.kept.heat); }

  goOn() {
    const heat = this.next?.id ?? null;
    this.next = null;
    this.keep(heat ? { ...FRESH, heat } : { left: this.kept.heat });
    this.follow();
    this.refresh();
  }

  /** Watches the heat and asks for what is missing of it. */
  follow() {
    const { heat } = this.kept;
    this.hub.watch(heat ?? 'current');
    if (!heat) return;
    if (!this.heats.has(heat)) this.heats.set(heat, { heat, entries: [], head: 0 });
    if (!this.sheet) this.readSheet();
    this.catchUp();
  }

  readSheet() {
    const { heat } = this;
    if (heat) this.alone('sheet', async () => { heat.sheet = await call(`/api/heats/${heat.heat}/sheet`); this.save(heat); });
  }

  readProgram() { return this.alone('program', async () => { this.program = await call('/api/program'); this.onChange(); }); }

  /** A frame: the heat as a whole. It also tells whether there is more to ask for. */
  take(frame) {
    const { heat } = this;
    if (!heat || frame.heat !== heat.heat) {
      if (performance.now() - this.askedAt > ASK_AGAIN_MS) this.refresh();
      return;
    }
    const before = heat.frame;
    heat.frame = frame;
    this.outbox.saw(frame.epoch);
    const startOf = one => `${one?.start?.id}@${one?.start?.goAt}`;
    if (before && startOf(before) !== startOf(frame)) heat.head = 0;          // what a start makes of the taps: read them anew
    if (frame.sheet !== heat.sheet?.sheet) this.readSheet();
    if ((this.told(frame)?.factSequence ?? 0) > heat.head) this.catchUp();
    if (before?.start && !frame.start) this.keep({ begun: null, noStart: frame.phase === 'armed' ? 'recalled' : 'returned' });
    else if (frame.start && this.kept.noStart) this.keep({ noStart: '' });
    const gist = one => JSON.stringify([one?.phase, one?.start, one?.haltedAt, one?.sheet, one?.endedAt, one?.epoch]);
    if (gist(before) !== gist(frame)) { this.save(heat); if (before && before.phase !== frame.phase) this.refresh(); } else this.onChange();
  }

  told(frame = this.frame) { return frame?.lanes.find(one => one.lane === this.kept.joined?.lane) ?? null; }

  /** Reads the lane's facts after those we have. A head below ours is a restored ledger: begin again and send all again. */
  catchUp() {
    const { heat } = this, lane = this.kept.joined?.lane;
    if (!heat || !lane) return;
    return this.alone('facts', async () => {
      const after = heat.head;
      const { head, facts } = await call(`/api/heats/${heat.heat}/lanes/${lane}/facts?after=${after}`);
      if (head < after) {
        Object.assign(heat, { head: 0, entries: [] });
        this.outbox.saw(this.outbox.epoch, heat.heat, head);
      } else {
        heat.entries = [...(after ? heat.entries : []), ...facts.map(({ sequence, flags, fact }) => ({ sequence, flags, fact }))];
        heat.head = head;
      }
      this.save(heat);
    });
  }

  /** The ledger is another one: what we read from it is void. */
  forgetFacts() {
    for (const heat of this.heats.values()) Object.assign(heat, { head: 0, entries: [] });
    this.catchUp();
  }

  save(heat) {
    this.database.keepHeat(heat).catch(() => {});
    this.onChange();
  }

  /** A command under an id of its own, kept until it is answered: whoever is unsure sends the same again. */
  async command(command, fields) {
    const { heat, ids } = this.kept;
    const key = `${command} ${heat}`;
    ids[key] ??= await this.database.nextId();
    try {
      return await call(`/api/heats/${heat}/commands`, { id: ids[key], command, ...fields });
    } catch (problem) {
      if (problem.status) delete ids[key];
      throw problem;
    }
  }

  /** Takes the lane's seat. Needs the network, and says so when there is none. */
  async takeSeat() {
    const { lane } = /** @type {any} */ (this.kept.joined);
    await this.command('take-seat', { lane, duty: 'primary' });
    delete this.kept.ids[`take-seat ${this.kept.heat}`];
    this.hear(await call('/api/pad'));
    await this.catchUp();
  }

  /** Says that lane and judge are ready, now or as soon as there is a network. */
  sayReady() {
    this.keep({ ready: this.kept.heat, readyHeard: null });
    this.repeatReady();
  }

  repeatReady() {
    const { heat, ready, readyHeard, seat, joined } = this.kept;
    if (!heat || ready !== heat || readyHeard !== null || !seat) return;
    this.alone('ready', async () => {
      const answer = await this.command('ready', { lane: joined?.lane, seat }).catch(problem => {
        if (problem.status) return { sequence: 0 };          // too late to matter: the heat is under way
        throw problem;
      });
      delete this.kept.ids[`ready ${heat}`];
      this.keep({ readyHeard: answer.sequence });
    });
  }

  /** The hub is there again: everything that waited for it. */
  reconnected() {
    this.outbox.kick();
    if (!this.kept.joined && !this.signedOut) return;
    this.refresh();
    this.readProgram();
    this.repeatReady();
  }
}
