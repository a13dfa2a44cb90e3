// The hub's client: SignalR's JSON protocol over one WebSocket, without negotiation (docs/wire.md, section 5). It never gives up.
// A push may be lost; after each connect it watches again and so gets the newest frame.

const END = '\x1e';                                  // ends each message
const INVOCATION = 1, COMPLETION = 3, PING = 6, CLOSE = 7;
const PING_EVERY_MS = 5_000;
const SILENCE_MS = 12_000;                           // the server pings every 5 s; longer silence is a dead link
const OPENING_MS = 8_000;
const STEADY_MS = 5_000;                             // a link this old has proved itself: the next retry is at once
const HIDDEN_MS = 2_000;                             // away longer than this, a socket is not to be trusted
const RETRY_MS = [0, 250, 500, 1_000, 2_000, 5_000];

/** The nth retry (from 0): half of the wait certain, half by chance, so that sixty phones do not knock at once. */
export function retryDelayMs(attempt, chance = Math.random()) {
  return RETRY_MS[Math.min(attempt, RETRY_MS.length - 1)] * (1 + chance) / 2;
}

/** Of one heat and one epoch, a frame with a lower sequence may not take the place of a newer one. */
export function isNewer(last, next) {
  return !last || last.heat !== next.heat || last.epoch !== next.epoch || next.sequence >= last.sequence;
}

export class Hub {
  /** @type {'online'|'connecting'|'offline'} */ state = 'offline';
  frame = null;
  heat = null;
  attempt = 0;
  stopped = true;
  pending = new Map();
  nextId = 1;

  /** @param {{onFrame?: Function, onProgram?: Function, onPhones?: Function, onState?: Function}} listener */
  constructor(url, listener = {}) {
    this.url = new URL(url, location.href).href.replace(/^http/, 'ws');
    this.listener = listener;
  }

  start() {
    if (!this.stopped) return;
    this.stopped = false;
    if (!this.retryNow) {
      this.retryNow = () => { if (!this.stopped) { this.attempt = 0; this.drop(); this.connect(); } };
      addEventListener('online', this.retryNow);
      document.addEventListener('visibilitychange', () => {
        if (document.visibilityState === 'hidden') this.hiddenAt = Date.now();
        else if (this.state !== 'online' || Date.now() - this.hiddenAt > HIDDEN_MS) this.retryNow();
      });
    }
    this.connect();
  }

  stop() {
    this.stopped = true;
    clearTimeout(this.retryTimer);
    this.drop();
  }

  /** Follows one heat ("current" for the one that is on). A second call moves the connection. */
  watch(heat) {
    const moved = this.heat !== heat;
    this.heat = heat;
    if (moved && this.state === 'online') this.askToWatch();
  }

  /** One clock exchange: the server's answer with our own `t1` (performance.now() just before) and `t4` (at arrival). */
  async exchange(t1) {
    const { result, at } = await this.invoke('Exchange', t1);
    return { ...result, t1, t4: at };
  }

  /** Tells the desk how this phone is. Nothing comes back, and nothing is lost if it does not arrive. */
  reportPhone(status) { this.send({ type: INVOCATION, target: 'ReportPhone', arguments: [status] }); }

  // ---- below: the connection itself ----

  connect() {
    clearTimeout(this.retryTimer);
    this.tell('connecting');
    const socket = this.socket = new WebSocket(this.url);
    this.heardAt = this.pingedAt = performance.now();
    this.openedAt = 0;
    socket.onopen = () => socket.send(JSON.stringify({ protocol: 'json', version: 1 }) + END);
    socket.onmessage = ({ data }) => this.hear(data);
    socket.onclose = () => this.fail();
    this.pulse = setInterval(() => this.beat(), 1_000);
  }

  beat() {
    const now = performance.now();
    if (now - this.heardAt > (this.openedAt ? SILENCE_MS : OPENING_MS)) { this.fail(); return; }
    if (!this.openedAt) return;
    if (now - this.openedAt > STEADY_MS) this.attempt = 0;
    if (now - this.pingedAt >= PING_EVERY_MS) { this.pingedAt = now; this.send({ type: PING }); }
  }

  fail() {
    this.drop();
    if (!this.stopped) this.retryTimer = setTimeout(() => this.connect(), retryDelayMs(this.attempt++));
  }

  drop() {
    const { socket } = this;
    clearInterval(this.pulse);
    clearTimeout(this.retryTimer);
    if (socket) { socket.onopen = socket.onmessage = socket.onclose = null; socket.close(); }
    this.socket = null;
    for (const { reject } of this.pending.values()) reject(new Error('connection lost'));
    this.pending.clear();
    this.tell('offline');
  }

  hear(text) {
    const at = this.heardAt = performance.now();
    for (const part of text.split(END).filter(Boolean)) {
      const message = JSON.parse(part);
      if (message.type === CLOSE || message.error && !message.type) { this.fail(); return; }
      if (!this.openedAt) this.opened(at);
      else if (message.type === INVOCATION) this.called(message.target, message.arguments[0]);
      else if (message.type === COMPLETION) this.answered(message, at);
    }
  }

  opened(at) {
    this.openedAt = at;
    this.tell('online');
    if (this.heat) this.askToWatch();
  }

  called(target, what) {
    const { onProgram, onPhones } = this.listener;
    if (target === 'FrameReady') this.takeFrame(what);
    else if (target === 'ProgramChanged') onProgram?.();
    else if (target === 'PhonesReady') onPhones?.(what);
  }

  takeFrame(frame) {
    if (!frame || this.heat !== 'current' && frame.heat !== this.heat || !isNewer(this.frame, frame)) return;
    this.frame = frame;
    this.listener.onFrame?.(frame);
  }

  askToWatch() { this.invoke('Watch', this.heat).then(({ result }) => this.takeFrame(result), () => {}); }

  /** Calls a method of the hub. @returns {Promise<{result: any, at: number}>} */
  invoke(target, ...args) {
    return new Promise((resolve, reject) => {
      if (this.state !== 'online') { reject(new Error('not connected')); return; }
      const invocationId = String(this.nextId++);
      this.pending.set(invocationId, { resolve, reject });
      this.send({ type: INVOCATION, invocationId, target, arguments: args });
    });
  }

  answered({ invocationId, result = null, error }, at) {
    const waiting = this.pending.get(invocationId);
    this.pending.delete(invocationId);
    if (error) waiting?.reject(new Error(error)); else waiting?.resolve({ result, at });
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
