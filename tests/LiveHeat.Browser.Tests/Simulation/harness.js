// Plays a plot with the pad's own modules in a page of the server; `askServer` stands for the way to it. Gives what the phones have on
// their disks at the end.
async (trueTime, { plot, goAt, heat, sheet }) => {
  const LONGEST_MS = 180_000, LATE_RECEIPT_MS = 2_000, EXCHANGE_PATIENCE_MS = 12_000;
  const modules = ['/floor/clock.js', '/floor/hub.js', '/pad/database.js', '/pad/outbox.js', '/pad/recorder.js', '/pad/lane.js', '/pad/session.js'];
  const [{ Clock, keepInStep }, { Hub }, { Database, openDatabase }, { Outbox }, { Recorder }, { laneModel }, { call }] =
    await Promise.all(modules.map(path => import(path)));
  const world = trueTime({ plot, goAt, Database, ask }), { at, later, counted, cross, within, runUntil } = world;
  const errors = [], made = [], phones = [];
  let process = 1;

  async function ask(phone, method, path, body) {
    const { frame, ...answer } = JSON.parse(await counted(askServer(JSON.stringify({ atMs: world.now, phone: phone.plot.name, method, path, body }))));
    if (frame) push(frame);
    return answer;
  }

  function push(frame) {
    for (const phone of phones) {
      if (Math.random() < 0.2 && !world.healed || phone.off || !world.healed && within(phone.plot.cuts)) continue;
      later(phone, Math.random() < 0.8 ? 1 + Math.random() * 200 : Math.random() * 6_000, () => {
        const before = phone.hub.frame?.sequence ?? 0;
        phone.hub.takeFrame(frame);
        if (phone.hub.frame.sequence < before) errors.push(`${phone.plot.name} went back to an older frame`);
      });
    }
  }

  class Phone {
    life = 0; off = true; asked = 0; seat = null; facts = []; receipts = new Map();

    constructor(lane, phonePlot) {
      Object.assign(this, { lane, plot: phonePlot });
      at(phonePlot.onMs, () => this.boot());
      for (const { fromMs, untilMs } of phonePlot.reboots) {
        at(fromMs, () => { this.life++; this.off = true; });
        at(untilMs, () => this.boot());
      }
      for (const { fromMs, untilMs } of phonePlot.naps) {
        if (untilMs - fromMs > 2_000) at(untilMs, () => later(this, 0, () => this.online()));
      }
    }

    /** A new page over what the disk has. */
    async boot() {
      world.here = this;
      this.off = false;
      this.database = await counted(openDatabase(this.plot.name));
      const { kept, taps } = await this.database.load();
      world.here = this;
      // A receipt does not wait for the disk: a crash may lose it.
      for (const tap of taps) if (tap.state === 'safe' && world.now - this.receipts.get(tap.fact.id) < LATE_RECEIPT_MS) Object.assign(tap, { state: 'waiting', sequence: undefined });
      const { database } = this, onChange = () => this.look();
      this.clock = new Clock({ bridge: kept.bridge, onBridge: bridge => { database.keep('bridge', bridge); } });
      this.outbox = new Outbox(database, { post: call, onChange, onRestored: () => errors.push(`${this.plot.name}: restored?`), onConflict: () => errors.push(`${this.plot.name}: conflict`) });
      const { frame } = this.hub ?? {};
      this.hub = new Hub('/hub', {});
      Object.assign(this.hub, { heat, frame: frame ?? null });
      this.recorder = new Recorder({ clock: this.clock, outbox: this.outbox, onChange, context: () => this.context() });
      this.outbox.load(taps, null);
      this.online();
    }

    /** The link is up: the clock in a burst, and all that waits. */
    online() {
      this.stopStep?.();
      this.stopStep = keepInStep(this.clock, { exchange: t1 => this.exchange(t1) });
      this.outbox.kick();
    }

    exchange(t1) {
      return new Promise((resolve, reject) => {
        cross(this, async () => ({ received: goAt + world.now, sent: goAt + world.now, process: String(process), rate: 1 }), answer => resolve({ ...answer, t1, t4: performance.now() }), this.life);
        later(this, EXCHANGE_PATIENCE_MS, reject);
      });
    }

    look() {
      for (const { state, fact } of this.outbox.taps) if (state === 'safe' && !this.receipts.has(fact.id)) this.receipts.set(fact.id, world.now);
    }

    context() {
      const { lane, seat, hub: { frame } } = this;
      return { heat, lane, start: frame?.start?.id ?? null, plan: 1, ...(seat && { seat }) };
    }

    /** The same question under the same id until there is an answer; then the lane as the ledger has it. */
    async takeSeat() {
      const id = await this.database.nextId();
      await this.patiently(() => call(`/api/heats/${heat}/commands`, { id, command: 'take-seat', lane: this.lane, duty: 'primary' }));
      const { seat } = await this.patiently(() => call('/api/pad'));
      const { facts } = await this.patiently(() => call(`/api/heats/${heat}/lanes/${this.lane}/facts?after=0`));
      Object.assign(this, { seat, facts });
    }

    async patiently(question) {
      for (;;) {
        try { return await question(); } catch (problem) {
          if (problem.status) throw problem;
          await new Promise(resolve => setTimeout(resolve, 1_000));
        }
      }
    }

    get model() {
      const entries = [...this.facts.map(({ sequence, flags, fact }) => ({ sequence, flags, fact })), ...this.recorder.entriesOf(heat)];
      return laneModel({ sheet, frame: this.hub.frame, lane: this.lane, entries });
    }

    tap({ number, fact, step, count, undoes }, told, alone) {
      world.here = this;
      this.stood ||= !this.seat; // what is tapped from no seat waits for the head judge, and the pad shows it so
      if (alone && !this.stood && /step-done|tag-made|count-reached/.test(fact)) {
        const { carried } = this.model;
        if (carried?.fact !== fact || carried.step !== step || (carried.count ?? null) !== count) {
          errors.push(`${this.plot.name} no. ${number}: the button carries ${JSON.stringify(carried)}, the judge saw ${fact} ${step} ${count}`);
        }
      }
      const own = { 'undone': { target: told.get(undoes) }, 'lane-stopped': { reason: 'withdrew' }, 'count-reached': { step, count } }[fact] ?? { step };
      const stored = this.recorder.record(performance.now(), { fact, ...own });
      stored.then(([tap]) => {
        told.set(number, tap.fact.id);
        made.push({ phone: this.plot.name, lane: this.lane, moment: number, id: tap.fact.id });
      });
    }
  }

  for (const { lane, story, first, second, takeoverMs } of plot.lanes) {
    const told = new Map(), one = new Phone(lane, first), other = second && new Phone(lane, second);
    phones.push(one, ...(other ? [other] : []));
    const sit = phone => later(phone, 0, () => { phone.takeSeat().catch(problem => errors.push(`${phone.plot.name} has no seat: ${problem.code}`)); });
    at(-50_000, () => sit(one));
    if (other) at(takeoverMs, () => sit(other));
    for (const moment of story) at(moment.atMs, () => (other?.seat ? other : one).tap(moment, told, !other));
  }
  for (const { untilMs } of plot.serverDown) at(untilMs, () => { process++; });
  at(-10_000, () => ask(phones[0], 'GO', '', null));

  await runUntil(plot.healedMs);
  world.healed = true;
  for (const phone of phones) later(phone, 0, () => { phone.online(); });
  await runUntil(plot.healedMs + LONGEST_MS, () => world.now > plot.healedMs + 10 && phones.every(({ outbox }) => !outbox.waiting && !outbox.sending));

  const taps = [];
  for (const phone of phones) {
    if (phone.outbox.waiting) errors.push(`${phone.plot.name} still has ${phone.outbox.waiting} taps`);
    const { taps: stored } = await phone.database.load();
    for (const { fact, state, code } of stored) {
      taps.push({ phone: phone.plot.name, fact: JSON.stringify(fact) });
      if (state === 'refused') errors.push(`${phone.plot.name}: ${fact.id} was refused, ${code}`);
    }
  }
  return { errors, made, taps, endMs: world.now };
}
