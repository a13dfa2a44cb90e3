// The count-down by ear: three short beeps, one long at GO, placed by the synchronised clock. Silent until a tap unlocks it.

const SHORT_S = 0.12, LONG_S = 0.7;
const AHEAD_MS = 400;                // a beep is placed this long before it sounds: late enough for the newest clock

/** Which beeps a count-down has: milliseconds before GO, and the pitch. */
export const BEEPS = [{ beforeMs: 3_000, hertz: 660 }, { beforeMs: 2_000, hertz: 660 }, { beforeMs: 1_000, hertz: 660 }, { beforeMs: 0, hertz: 990 }];

export class Sound {
  /** @type {AudioContext|null} */ context = null;

  /** Call from a tap: browsers let nothing sound before one. */
  async unlock() {
    const Context = globalThis.AudioContext ?? globalThis.webkitAudioContext;
    if (!Context) return false;
    this.context ??= new Context();
    await this.context.resume().catch(() => {});
    return this.context.state === 'running';
  }

  get ready() { return this.context?.state === 'running'; }

  test() { this.beep(990, 0.02, SHORT_S); }

  /** Follows a start; call it again for another, or with null for none. @param {{goAt: number, msUntil: (instant: number) => number}|null} start */
  follow(start) {
    clearInterval(this.timer);
    if (!start) return;
    const left = BEEPS.filter(beep => start.msUntil(start.goAt - beep.beforeMs) > 0);
    this.timer = setInterval(() => {
      while (left.length && start.msUntil(start.goAt - left[0].beforeMs) < AHEAD_MS) {
        const { beforeMs, hertz } = /** @type {any} */ (left.shift());
        this.beep(hertz, start.msUntil(start.goAt - beforeMs) / 1_000, beforeMs ? SHORT_S : LONG_S);
      }
      if (!left.length) clearInterval(this.timer);
    }, 100);
  }

  beep(hertz, inSeconds, seconds) {
    if (!this.context || inSeconds < -0.2) return;
    const at = this.context.currentTime + Math.max(0, inSeconds);
    const tone = this.context.createOscillator(), loud = this.context.createGain();
    tone.type = 'square';
    tone.frequency.value = hertz;
    loud.gain.setValueAtTime(0, at);
    loud.gain.linearRampToValueAtTime(0.4, at + 0.005);
    loud.gain.setValueAtTime(0.4, at + seconds - 0.02);
    loud.gain.linearRampToValueAtTime(0, at + seconds);
    tone.connect(loud).connect(this.context.destination);
    tone.start(at);
    tone.stop(at + seconds);
  }
}
