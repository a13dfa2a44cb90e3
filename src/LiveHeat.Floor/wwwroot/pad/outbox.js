// Taps on their way to the ledger: stored, sent in order, kept until the heat is certified. It never gives up.

import { Memory } from './database.js';

export const MOST_AT_ONCE = 200;

/** Full jitter: sixty phones do not come back as one. */
export function waitMs(attempt, chance = Math.random()) { return chance * Math.min(8_000, 500 * 2 ** attempt); }

export function nextBatch(taps, most = MOST_AT_ONCE) {
  const waiting = taps.filter(({ state }) => state === 'waiting');
  return waiting.filter(({ heat }) => heat === waiting[0].heat).slice(0, most);
}

/** Null when it goes again under a new id. */
export function afterReceipt(tap, { outcome, sequence, flags, code, detail }) {
  if (outcome === 'conflict') return null;
  if (outcome === 'accepted' || outcome === 'known') return { ...tap, state: 'safe', sequence, flags: flags ?? tap.flags ?? [] };
  return { ...tap, state: 'refused', code, detail };
}

export class Outbox {
  taps = [];
  epoch = null;
  storing = true;
  attempt = 0;
  adding = Promise.resolve();

  constructor(database, options) { Object.assign(this, { database, options }); }

  load(taps, epoch) { Object.assign(this, { taps, epoch }); }

  /** `build` runs when all earlier taps have their ids: an undo can name a tap just made. */
  add(heat, build) {
    const added = this.adding.then(async () => {
      const facts = build();
      const taps = await this.database.addTaps(heat, facts).catch(() => {
        // The disk is full or forbidden: better in memory and sent than lost.
        this.storing = false;
        this.spare ??= new Memory();
        return this.spare.addTaps(heat, facts);
      });
      this.taps.push(...taps);
      this.options.onChange();
      this.kick();
      return taps;
    });
    this.adding = added.catch(() => {});
    return added;
  }

  entriesOf(heat) {
    return this.taps.filter(tap => tap.heat === heat).map(({ fact, sequence, flags, state }) => ({ fact, sequence, flags, refused: state === 'refused' }));
  }

  /** Whether a tap outlives this page. */
  get stores() { return this.storing && this.database.durable; }
  get waiting() { return this.taps.filter(({ state }) => state === 'waiting').length; }
  get refused() { return this.taps.filter(({ state, dismissed }) => state === 'refused' && !dismissed); }

  dismiss(tap) { return this.settle([tap], [{ dismissed: true }]); }

  kick() {
    this.attempt = 0;
    this.hurry?.();
    this.sending ??= this.drain().finally(() => { this.sending = null; });
  }

  async drain() {
    for (let batch; (batch = nextBatch(this.taps)).length;) {
      try {
        const answer = await this.options.post(`/api/heats/${batch[0].heat}/taps`, { taps: batch.map(({ fact }) => fact), epoch: this.epoch });
        if (!await this.take(batch, answer)) throw new Error('no receipts');
        this.attempt = 0;
      } catch { await this.pause(waitMs(this.attempt++)); }
    }
  }

  pause(ms) {
    return new Promise(resolve => {
      const timer = setTimeout(resolve, ms);
      this.hurry = () => { clearTimeout(timer); resolve(); };
    });
  }

  async take(batch, { epoch, head, receipts }) {
    this.saw(epoch, batch[0].heat, head);
    const byId = new Map(receipts.map(receipt => [receipt.id, receipt]));
    const answered = batch.filter(({ fact }) => byId.has(fact.id));
    const after = answered.map(tap => afterReceipt(tap, byId.get(tap.fact.id)));
    await this.settle(answered.filter((_, i) => after[i]), after.filter(Boolean));
    if (after.includes(null)) {
      await this.database.renew(this.taps.filter(({ state }) => state === 'waiting'));
      this.options.onConflict();
    }
    return answered.length > 0;
  }

  async settle(taps, after) {
    taps.forEach((tap, i) => Object.assign(tap, after[i]));
    this.options.onChange();
    await this.database.updateTaps(taps).catch(() => { this.storing = false; });
  }

  /** A restored ledger has another epoch, or a head below its receipts: all is sent again. */
  saw(epoch, heat, head = Infinity) {
    const restored = this.epoch !== null && epoch !== this.epoch;
    this.epoch = epoch;
    const behind = this.taps.some(tap => tap.heat === heat && tap.sequence > head);
    if (!restored && !behind) return;
    const again = this.taps.filter(tap => tap.state === 'safe' && (restored || tap.heat === heat));
    this.settle(again, again.map(() => ({ state: 'waiting', sequence: undefined })));
    this.options.onRestored();
    if (!this.sending) this.kick();
  }

  async certified(heats) {
    const done = this.taps.filter(({ heat, state, dismissed }) => heats.includes(heat) && (state === 'safe' || dismissed));
    this.taps = this.taps.filter(tap => !done.includes(tap));
    if (done.length) await this.database.removeTaps(done.map(({ order }) => order));
  }
}
