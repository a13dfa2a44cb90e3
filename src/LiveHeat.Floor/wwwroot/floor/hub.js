// The hub's client: SignalR's JSON protocol over one WebSocket (docs/wire.md, section 5). It never gives up, and watches again after
// each connect.

const END = '\x1e', INVOCATION = 1, COMPLETION = 3, PING = 6, CLOSE = 7;
const PING_EVERY_MS = 5_000, SILENCE_MS = 12_000, OPENING_MS = 8_000;
const STEADY_MS = 5_000; // a link this old has proved itself
const HIDDEN_MS = 2_000; // away longer, a socket is not trusted
const RETRY_MS = [0, 250, 500, 1_000, 2_000]; // a network that is back shows the newest state within five seconds

/** Half by chance: phones do not knock at once. */
export function retryDelayMs(attempt, chance = Math.random()) { return RETRY_MS[Math.min(attempt, RETRY_MS.length - 1)] * (1 + chance) / 2; }

export function isNewer(last, next) { return last?.heat !== next.heat || last.epoch !== next.epoch || next.sequence >= last.sequence; }

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
    this.retryNow = () => { if (!this.stopped) { this.attempt = 0; this.drop(); this.connect(); } };
    addEventListener('online', this.retryNow);
    document.addEventListener('visibilitychange', () => {
      if (document.visibilityState === 'hidden') this.hiddenAt = Date.now();
      else if (this.state !== 'online' || Date.now() - this.hiddenAt > HIDDEN_MS) this.retryNow();
    });
  }

  start() {
    if (this.stopped) { this.stopped = false; this.connect(); }
  }

  stop() {
    this.stopped = true;
    this.drop();
  }

  /** One heat, or "current". */
  watch(heat) {
    if (this.heat === heat) return;
    this.heat = heat;
    this.askToWatch();
  }

  /** The server's answer with our own `t1` and `t4`, readings of performance.now(). */
  async exchange(t1) {
    const { result, at } = await this.invoke('Exchange', t1);
    return { ...result, t1, t4: at };
  }

  reportPhone(status) { this.send({ type: INVOCATION, target: 'ReportPhone', arguments: [status] }); }

  connect() {
    const socket = this.socket = new WebSocket(this.url);
    this.tell('connecting');
    this.heardAt = this.pingedAt = performance.now();
    this.openedAt = 0;
    socket.onopen = () => socket.send(JSON.stringify({ protocol: 'json', version: 1 }) + END);
    socket.onmessage = ({ data }) => this.hear(data);
    socket.onclose = () => this.fail();
    this.pulse = setInterval(() => this.beat(performance.now()), 1_000);
  }

  beat(now) {
    if (now - this.heardAt > (this.openedAt ? SILENCE_MS : OPENING_MS)) this.fail();
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
    this.openedAt = 0;
    for (const { reject } of this.pending.values()) reject(new Error('connection lost'));
    this.pending.clear();
    this.tell('offline');
  }

  hear(text) {
    const at = this.heardAt = performance.now();
    for (const part of text.split(END).filter(Boolean)) {
      const { type, error, target, arguments: [what] = [], invocationId, result = null } = JSON.parse(part);
      if (type === CLOSE || error && !type) { this.fail(); return; }
      if (!this.openedAt) {
        this.openedAt = at;
        this.tell('online');
        this.askToWatch();
      } else if (type === INVOCATION) {
        if (target === 'FrameReady') this.takeFrame(what);
        else this.listener[{ ProgramChanged: 'onProgram', PhonesReady: 'onPhones' }[target]]?.(what);
      } else if (type === COMPLETION) {
        const waiting = this.pending.get(invocationId);
        this.pending.delete(invocationId);
        if (error) waiting?.reject(new Error(error)); else waiting?.resolve({ result, at });
      }
    }
  }

  takeFrame(frame) {
    if (!frame || this.heat !== 'current' && frame.heat !== this.heat || !isNewer(this.frame, frame)) return;
    this.frame = frame;
    this.listener.onFrame?.(frame);
  }

  askToWatch() { if (this.heat) this.invoke('Watch', this.heat).then(({ result }) => this.takeFrame(result), () => {}); }

  /** @returns {Promise<{result: any, at: number}>} */
  invoke(target, ...args) {
    return new Promise((resolve, reject) => {
      if (this.state !== 'online') { reject(new Error('not connected')); return; }
      const invocationId = String(this.nextId++);
      this.pending.set(invocationId, { resolve, reject });
      this.send({ type: INVOCATION, invocationId, target, arguments: args });
    });
  }

  send(message) {
    if (this.state === 'online' && this.socket.readyState === 1) this.socket.send(JSON.stringify(message) + END);
  }

  tell(state) {
    if (this.state === state) return;
    this.state = state;
    this.listener.onState?.(state);
  }
}
