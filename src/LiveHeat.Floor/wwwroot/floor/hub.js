// The hub's client: SignalR's JSON protocol over one WebSocket, without negotiation (docs/wire.md, section 5).
// It never gives up. A push may be lost; after each connect it watches again and so gets the newest frame.

const END = '\x1e';                                  // ends each message of the protocol
const INVOCATION = 1, COMPLETION = 3, PING = 6, CLOSE = 7;
const PING_EVERY_MS = 5_000;
const SILENCE_MS = 12_000;                           // the server pings every 5 s; longer silence is a dead link
const OPENING_MS = 8_000;
const STEADY_MS = 5_000;                             // a connection this old has proved itself: the next retry is at once
const HIDDEN_MS = 2_000;                             // away longer than this, a socket is not to be trusted
const RETRY_MS = [0, 250, 500, 1_000, 2_000, 5_000];

/** Milliseconds before the nth retry (from 0): half of it certain, half by chance, so that sixty phones do not knock at once. */
export function retryDelayMs(attempt, chance = Math.random()) {
  const most = RETRY_MS[Math.min(attempt, RETRY_MS.length - 1)];
  return most / 2 + (most / 2) * chance;
}

/** Whether `next` may take the place of `last`: of one heat and one epoch, an older sequence may not. */
export function isNewer(last, next) {
  return !last || last.heat !== next.heat || last.epoch !== next.epoch || next.sequence >= last.sequence;
}

/** The whole messages in `text`; keep-alives of other framings are no concern here. */
export function messagesOf(text) {
  return text.split(END).filter(Boolean).map(part => JSON.parse(part));
}

/**
 * @typedef {'online'|'connecting'|'offline'} HubState
 * @typedef {{onFrame?: (frame: any) => void, onProgram?: () => void, onPhones?: (phones: any[]) => void,
 *   onState?: (state: HubState) => void}} HubListener
 */
export class Hub {
  /** @param {string} url path or address of the hub, e.g. "/hub"  @param {HubListener} listener */
  constructor(url, listener = {}) {
    this.url = new URL(url, globalThis.location?.href ?? 'http://127.0.0.1/').href.replace(/^http/, 'ws');
    this.listener = listener;
    /** @type {HubState} */ this.state = 'offline';
    /** @type {any} the newest frame seen */ this.frame = null;
    this.attempt = 0;
    this.heat = null;
    this.wantsPhones = false;
    this.pending = new Map();
    this.nextId = 1;
    this.stopped = true;
  }

  start() {
    if (!this.stopped) return;
    this.stopped = false;
    this.wake = () => this.retryNow();
    this.show = () => {
      if (document.visibilityState === 'hidden') { this.hiddenAt = Date.now(); return; }
      if (this.state !== 'online' || Date.now() - (this.hiddenAt ?? Date.now()) > HIDDEN_MS) this.retryNow();
    };
    globalThis.addEventListener?.('online', this.wake);
    globalThis.document?.addEventListener('visibilitychange', this.show);
    this.connect();
  }

  stop() {
    this.stopped = true;
    globalThis.removeEventListener?.('online', this.wake);
    globalThis.document?.removeEventListener('visibilitychange', this.show);
    clearTimeout(this.retryTimer);
    this.drop();
  }

  /** Follows one heat ("current" for the one that is on). A second call moves the connection. */
  watch(heat) {
    this.heat = heat;
    if (this.state === 'online') this.askToWatch();
  }

  /** Organiser and head judge only: the list of phones, now and on each change. */
  watchPhones() {
    this.wantsPhones = true;
    if (this.state === 'online') this.askForPhones();
  }

  /**
   * One clock exchange. Resolves to the server's answer with our own `t4` (performance.now() at arrival) and the `t1` given.
   * @param {number} t1 performance.now() just before the call
   * @returns {Promise<{t1: number, received: number, sent: number, t4: number, process: string, rate: number}>}
   */
  async exchange(t1) {
    const { result, at } = await this.invoke('Exchange', t1);
    return { ...result, t1, t4: at };
  }

  /** Tells the desk how this phone is. Nothing comes back, and nothing is lost if it does not arrive. */
  reportPhone(status) { this.send({ type: INVOCATION, target: 'ReportPhone', arguments: [status] }); }

  // ---- below: the connection itself ----

  retryNow() {
    if (this.stopped) return;
    this.attempt = 0;
    this.drop();
    this.connect();
  }

  connect() {
    clearTimeout(this.retryTimer);
    this.tell('connecting');
    let socket;
    try { socket = new WebSocket(this.url); } catch { this.retryLater(); return; }
    this.socket = socket;
    this.heardAt = performance.now();
    this.openedAt = 0;
    const mine = () => this.socket === socket;
    socket.onopen = () => mine() && socket.send(JSON.stringify({ protocol: 'json', version: 1 }) + END);
    socket.onmessage = event => mine() && this.hear(event.data);
    socket.onclose = () => { if (mine()) { this.drop(); this.retryLater(); } };
    this.pulse = setInterval(() => mine() && this.beat(), 1_000);
    this.pingedAt = performance.now();
  }

  beat() {
    const now = performance.now();
    const limit = this.openedAt ? SILENCE_MS : OPENING_MS;
    if (now - this.heardAt > limit) { this.drop(); this.retryLater(); return; }
    if (!this.openedAt) return;
    if (now - this.openedAt > STEADY_MS) this.attempt = 0;
    if (now - this.pingedAt >= PING_EVERY_MS) { this.pingedAt = now; this.send({ type: PING }); }
  }

  drop() {
    const socket = this.socket;
    this.socket = null;
    clearInterval(this.pulse);
    if (socket) { socket.onopen = socket.onmessage = socket.onclose = null; try { socket.close(); } catch { /* already gone */ } }
    for (const { reject } of this.pending.values()) reject(new Error('connection lost'));
    this.pending.clear();
    this.tell('offline');
  }

  retryLater() {
    if (this.stopped) return;
    clearTimeout(this.retryTimer);
    this.retryTimer = setTimeout(() => this.connect(), retryDelayMs(this.attempt++));
  }

  hear(text) {
    const at = performance.now();
    this.heardAt = at;
    for (const message of messagesOf(text)) {
      if (!this.openedAt) this.shakeHands(message, at);
      else if (message.type === INVOCATION) this.called(message.target, message.arguments ?? []);
      else if (message.type === COMPLETION) this.answered(message, at);
      else if (message.type === CLOSE) { this.drop(); this.retryLater(); return; }
    }
  }

  shakeHands(message, at) {
    if (message.error) { this.drop(); this.retryLater(); return; }
    this.openedAt = at;
    this.tell('online');
    if (this.heat) this.askToWatch();
    if (this.wantsPhones) this.askForPhones();
  }

  called(target, [first]) {
    if (target === 'FrameReady') this.takeFrame(first);
    else if (target === 'ProgramChanged') this.listener.onProgram?.();
    else if (target === 'PhonesReady') this.listener.onPhones?.(first);
  }

  takeFrame(frame) {
    if (!frame || (this.heat && this.heat !== 'current' && frame.heat !== this.heat)) return;
    if (!isNewer(this.frame, frame)) return;
    this.frame = frame;
    this.listener.onFrame?.(frame);
  }

  askToWatch() { this.invoke('Watch', this.heat).then(({ result }) => this.takeFrame(result), () => {}); }

  askForPhones() { this.invoke('WatchPhones').then(({ result }) => result && this.listener.onPhones?.(result), () => {}); }

  /** @returns {Promise<{result: any, at: number}>} */
  invoke(target, ...args) {
    const invocationId = String(this.nextId++);
    return new Promise((resolve, reject) => {
      if (this.state !== 'online') { reject(new Error('not connected')); return; }
      this.pending.set(invocationId, { resolve, reject });
      this.send({ type: INVOCATION, invocationId, target, arguments: args });
    });
  }

  answered({ invocationId, result, error }, at) {
    const waiting = this.pending.get(invocationId);
    if (!waiting) return;
    this.pending.delete(invocationId);
    if (error) waiting.reject(new Error(error)); else waiting.resolve({ result: result ?? null, at });
  }

  send(message) {
    if (this.state === 'online' && this.socket?.readyState === 1) this.socket.send(JSON.stringify(message) + END);
  }

  tell(state) {
    if (this.state === state) return;
    this.state = state;
    this.listener.onState?.(state);
  }
}
