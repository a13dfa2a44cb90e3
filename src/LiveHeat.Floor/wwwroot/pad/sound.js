// The count-down by ear: three short beeps, one long at GO, placed by the synchronised clock. Silent until a tap unlocks it.

const SHORT_S = 0.12, LONG_S = 0.7;
const AHEAD_MS = 400;                // a beep is placed this long before it sounds: late enough for the newest clock

export class Sound {
  context = null;

  /** Call from a tap: browsers let nothing sound before one. */
  async unlock() {
    const Context = globalThis.AudioContext ?? globalThis.webkitAudioContext;
    if (Context) await (this.context ??= new Context()).resume().catch(() => {});
  }

  get ready() { return this.context?.state === 'running'; }

  /** Follows a start: call it again for another, with none to stop. */
  follow(goAt, msUntil) {
    clearInterval(this.timer);
    const left = !goAt ? [] : [3_000, 2_000, 1_000, 0].map(before => goAt - before).filter(at => msUntil(at) > 0);
    this.timer = setInterval(() => {
      while (left.length && msUntil(left[0]) < AHEAD_MS) {
        const [at] = left.splice(0, 1);
        this.beep(msUntil(at) / 1_000, at === goAt ? LONG_S : SHORT_S);
      }
      if (!left.length) clearInterval(this.timer);
    }, 100);
  }

  beep(inSeconds = 0, seconds = LONG_S) {
    const { context } = this;
    if (!context) return;
    const at = context.currentTime + Math.max(0, inSeconds), tone = context.createOscillator(), loud = context.createGain();
    tone.type = 'square';
    tone.frequency.value = seconds === LONG_S ? 990 : 660;
    loud.gain.setValueAtTime(0.4, at);
    loud.gain.setTargetAtTime(0, at + seconds, 0.01);        // no click at the end
    tone.connect(loud).connect(context.destination);
    tone.start(at);
    tone.stop(at + seconds + 0.1);
  }
}
