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
  /** @param {() => number|null} now the server's instant @param {() => AudioContext} open makes the sound card's context */
  constructor(now, open = () => new AudioContext()) {
    this.now = now;
    this.card = open();
    /** @type {Set<string>} */ this.played = new Set();
    /** @type {{key: string, inMs: number}[]} */ this.told = [];       // what the card was told, for whoever looks
    const wake = () => { if (this.card.state === 'suspended') this.card.resume().catch(() => {}); };
    for (const kind of ['pointerdown', 'keydown']) addEventListener(kind, wake);      // browsers want a touch before they sound
    wake();
  }

  /** One picture. @param {any} frame */
  turn(frame) {
    const now = this.now();
    if (now === null || this.card.state !== 'running') return;
    for (const { key, at, tone } of dueOf(momentsOf(frame), this.played, now, AHEAD_MS)) {
      this.played.add(key);
      this.told.push({ key, inMs: at - now });
      for (const note of TONES[tone]) this.play(note, this.card.currentTime + (at - now) / 1000);
    }
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
