// Plays the moments of a heat on the synchronised clock: told to the sound card a little ahead, so that they begin to the millisecond.
import { dueOf, momentsOf } from './moments.js';

const AHEAD_MS = 400;
const TONES = {
  beep: [{ hertz: 660, from: 0, lastsMs: 160 }],
  go: [{ hertz: 1_320, from: 0, lastsMs: 900 }],
  minute: [{ hertz: 880, from: 0, lastsMs: 220 }, { hertz: 880, from: 320, lastsMs: 220 }],
  cap: [{ hertz: 330, from: 0, lastsMs: 700 }, { hertz: 330, from: 800, lastsMs: 1_100 }],
};
const RISE_S = 0.008;                       // a tone that begins at once cracks

export class Sounds {
  /**
   * @param {() => number|null} now the server's instant @param {() => AudioContext} open makes the sound card's context
   * @param {() => number} rate of the server's time, 1 but for a fast rehearsal
   */
  constructor(now, open = () => new AudioContext(), rate = () => 1) {
    this.now = now;
    this.rate = rate;
    this.card = open();
    /** @type {Set<string>} */ this.played = new Set();
    /** @type {{key: string, inMs: number}[]} */ this.told = [];       // what the card was told, for whoever looks
    const wake = () => { if (!this.ready) this.card.resume().catch(() => {}); };
    for (const kind of ['pointerdown', 'pointerup', 'click', 'keydown']) addEventListener(kind, wake);      // browsers want a touch before they sound; a finger's is over when it lifts
    wake();
  }

  get ready() { return this.card.state === 'running'; }

  /** For whoever sets the volume; from a touch. */
  async sample() {
    await this.card.resume();
    this.sound('go', 0);
  }

  /** One picture. @param {any} frame */
  turn(frame) {
    const now = this.now();
    if (now === null || !this.ready) return;
    for (const { key, at, tone } of dueOf(momentsOf(frame), this.played, now, AHEAD_MS * this.rate())) {
      const inMs = (at - now) / this.rate();
      this.played.add(key);
      this.told.push({ key, inMs });
      this.sound(tone, inMs);
    }
  }

  sound(tone, inMs) {
    for (const note of TONES[tone]) this.play(note, this.card.currentTime + inMs / 1000);
  }

  play({ hertz, from, lastsMs }, begin) {
    const { card } = this, at = begin + from / 1000, end = at + lastsMs / 1000;
    const voice = card.createOscillator(), loud = card.createGain();
    voice.type = 'triangle';
    voice.frequency.value = hertz;
    loud.gain.setValueAtTime(0, at);
    loud.gain.linearRampToValueAtTime(0.9, at + RISE_S);
    loud.gain.setValueAtTime(0.9, end - RISE_S);
    loud.gain.linearRampToValueAtTime(0, end);
    voice.connect(loud).connect(card.destination);
    voice.start(at);
    voice.stop(end);
  }
}
