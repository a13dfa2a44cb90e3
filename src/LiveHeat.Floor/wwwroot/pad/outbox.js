// Taps on their way to the ledger: stored first, sent in order, kept until the heat is certified. It never gives up.

import { MemoryDatabase } from './database.js';

/** @typedef {import('./database.js').Tap} Tap */
/** @typedef {{epoch: string, head: number, receipts: {id: string, outcome: string, sequence?: number, flags?: string[], code?: string, detail?: string}[]}} Answer */

export const MOST_AT_ONCE = 200;
const FIRST_WAIT_MS = 500, LONGEST_WAIT_MS = 8_000;

/** Full jitter: anywhere between nothing and a bound that doubles, so that sixty phones do not come back as one. */
export function waitMs(attempt, chance = Math.random()) {
  return chance * Math.min(LONGEST_WAIT_MS, FIRST_WAIT_MS * 2 ** attempt);
}

/** The next to send: the oldest waiting tap's heat, in the order they were made. @param {Tap[]} taps */
export function nextBatch(taps, most = MOST_AT_ONCE) {
  const first = taps.find(tap => tap.state === 'waiting');
  return first ? taps.filter(tap => tap.state === 'waiting' && tap.heat === first.heat).slice(0, most) : [];
}

/** What a tap is after its receipt; null when it goes again under a new id. @param {Tap} tap @returns {Tap|null} */
export function afterReceipt(tap, { outcome, sequence, flags, code, detail }) {
  if (outcome === 'accepted' || outcome === 'known') return { ...tap, state: 'safe', sequence, flags: flags ?? tap.flags ?? [] };
  if (outcome === 'conflict') return null;
  return { ...tap, state: 'refused', code, detail };
}

export class Outbox {
  /**
   * @param {import('./database.js').Database|MemoryDatabase} database
   * @param {{post: (path: string, body: any) => Promise<Answer>, onChange: () => void,
   *   onRestored?: () => void, onConflict?: (taps: Tap[]) => void}} options
   */
  constructor(database, options) {
    this.database = database;
    this.options = options;
    /** @type {Tap[]} by order */ this.taps = [];
    /** @type {string|null} */ this.epoch = null;
    /** @type {import('./server.js').Problem|null} why the last sending failed */ this.trouble = null;
    /** false after a tap could only be held in memory */ this.storing = true;
    this.attempt = 0;
    this.adding = Promise.resolve();
  }

  load(taps, epoch) {
    this.taps = [...taps].sort((a, b) => a.order - b.order);
    this.epoch = epoch ?? null;
  }

  /**
   * Stores taps and starts sending. `build` runs when all earlier taps have their ids, so an undo can name a tap just made.
   * @param {string} heat @param {() => any[]} build facts without ids @returns {Promise<Tap[]>} once on the disk
   */
  add(heat, build) {
    const added = this.adding.then(async () => {
      const facts = build();
      const taps = await this.database.addTaps(heat, facts).catch(() => this.inMemory(heat, facts));
      this.taps.push(...taps);
      this.options.onChange();
      this.kick();
      return taps;
    });
    this.adding = added.catch(() => {});
    return added;
  }

  /** The disk refused (full, or the browser forbids it). Better in memory and sent than lost; the pad says so. */
  inMemory(heat, facts) {
    this.storing = false;
    this.spare ??= Object.assign(new MemoryDatabase(), { order: 1e9 });
    return this.spare.addTaps(heat, facts);
  }

  entriesOf(heat) {
    return this.taps.filter(tap => tap.heat === heat)
      .map(({ fact, sequence, flags, state, code }) => ({ fact, sequence, flags, refused: state === 'refused' ? code ?? 'refused' : null }));
  }

  get waiting() { return this.taps.filter(tap => tap.state === 'waiting').length; }
  get refused() { return this.taps.filter(tap => tap.state === 'refused' && !tap.dismissed); }

  async dismiss(tap) {
    Object.assign(tap, { dismissed: true });
    await this.database.updateTaps([tap]);
    this.options.onChange();
  }

  /** Sends now what waits: after a tap, after a connect. */
  kick() {
    this.attempt = 0;
    this.hurry?.();
    if (!this.sending) this.sending = this.drain().finally(() => { this.sending = null; });
  }

  async drain() {
    for (let batch = nextBatch(this.taps); batch.length; batch = nextBatch(this.taps, this.most)) {
      try {
        const answer = await this.options.post(`/api/heats/${batch[0].heat}/taps`, { taps: batch.map(tap => tap.fact), epoch: this.epoch });
        if (!await this.take(batch, answer)) throw new Error('no receipts');
        this.trouble = null;
        this.most = MOST_AT_ONCE;
        this.attempt = 0;
      } catch (problem) {
        if (await this.blame(batch, problem)) continue;
        this.trouble = problem;
        this.options.onChange();
        await this.pause(Math.max(problem.retryAfterMs ?? 0, waitMs(this.attempt++)));
      }
      this.options.onChange();
    }
  }

  /** A batch that cannot be read as a whole goes one by one, so that the one tap at fault blocks none behind it. */
  async blame(batch, { status, code, message }) {
    if (status !== 400 && status !== 413 && status !== 422) return false;
    this.most = 1;
    if (batch.length === 1) await this.settle(batch, [{ ...batch[0], state: 'refused', code, detail: message }]);
    return true;
  }

  pause(ms) {
    return new Promise(resolve => {
      const timer = setTimeout(resolve, ms);
      this.hurry = () => { clearTimeout(timer); resolve(undefined); };
    });
  }

  /** Takes the receipts. @param {Tap[]} batch @param {Answer} answer @returns {Promise<boolean>} whether any came */
  async take(batch, answer) {
    const lost = this.epoch !== null && answer.epoch !== this.epoch;
    this.saw(answer.epoch, batch[0].heat, answer.head);
    const byId = new Map(answer.receipts.map(receipt => [receipt.id, receipt]));
    const answered = batch.filter(tap => byId.has(tap.fact.id));
    const after = answered.map(tap => afterReceipt(tap, byId.get(tap.fact.id)));
    await this.settle(answered.filter((_, i) => after[i]), after.filter(Boolean));
    const conflicts = answered.filter((_, i) => !after[i]);
    if (conflicts.length) {
      // All that waits moves to the new outbox id, for the old counter is not ours alone.
      await this.database.renew(this.taps.filter(tap => tap.state === 'waiting'));
      this.options.onConflict?.(conflicts);
    }
    return answered.length > 0 || lost;
  }

  async settle(taps, after) {
    taps.forEach((tap, i) => Object.assign(tap, after[i]));
    if (taps.length) await this.database.updateTaps(taps).catch(() => { this.storing = false; });
  }

  /**
   * The ledger's epoch, and perhaps a heat's head, as the server tells them. A restored backup has another epoch, or a head below
   * what it gave receipts for: then all is sent again, and what it knows is answered "known".
   */
  saw(epoch, heat, head = Infinity) {
    const restored = this.epoch !== null && epoch !== this.epoch;
    const behind = this.taps.some(tap => tap.heat === heat && tap.state === 'safe' && (tap.sequence ?? 0) > head);
    this.epoch = epoch;
    if (!restored && !behind) return;
    const again = this.taps.filter(tap => tap.state === 'safe' && (restored || tap.heat === heat));
    again.forEach(tap => Object.assign(tap, { state: 'waiting', sequence: undefined }));
    this.database.updateTaps(again).catch(() => { this.storing = false; });
    this.options.onRestored?.();
    this.options.onChange();
    if (again.length && !this.sending) this.kick();
  }

  /** Drops what is certified and has its receipt. */
  async certified(heats) {
    const done = this.taps.filter(tap => heats.includes(tap.heat) && (tap.state === 'safe' || tap.dismissed));
    if (!done.length) return;
    this.taps = this.taps.filter(tap => !done.includes(tap));
    await this.database.removeTaps(done.map(tap => tap.order));
    this.options.onChange();
  }
}
