// Chalk on rubber: a line that is not quite straight and leaves some of the ground bare.
import { seeded } from './seeded.js';

/**
 * Draws a chalk line from top to bottom. Its ends are at `x` exactly, so that lines drawn lane by lane join into one.
 * @param {CanvasRenderingContext2D} ink
 * @param {{x: number, from: number, to: number, width: number, colour: string, alpha?: number, seed?: number, sway?: number}} line
 *   sizes in CSS pixels; `sway` is how far the line may leave its course
 */
export function chalkDown(ink, { x, from, to, width, colour, alpha = 1, seed = 1, sway = width / 3 }) {
  const chance = seeded(seed);
  const grain = Math.max(0.7, width / 8);
  const bend = (chance() - 0.5) * 2 * sway;
  ink.fillStyle = colour;
  for (let y = from; y < to; y += grain) {
    const part = (y - from) / (to - from);
    const centre = x + bend * Math.sin(part * Math.PI) * (0.7 + 0.3 * Math.sin(part * 9));
    for (let across = -width / 2; across < width / 2; across += grain) {
      const edge = Math.abs(across + grain / 2) / (width / 2);
      const bare = chance() < 0.02 + 0.2 * edge ** 4;
      ink.globalAlpha = bare ? alpha * 0.25 : alpha * (0.85 + 0.15 * chance());
      ink.fillRect(centre + across, y, grain * 1.1, Math.min(grain * 1.1, to - y));
    }
  }
  ink.globalAlpha = 1;
}

/** Draws a row of chalk dashes from left to right. @param {CanvasRenderingContext2D} ink @param {{y: number, from: number, to: number, width: number, dash: number, gap: number, colour: string, seed?: number}} row */
export function chalkDashes(ink, { y, from, to, width, dash, gap, colour, seed = 1 }) {
  const chance = seeded(seed);
  const grain = Math.max(0.7, width / 8);
  ink.fillStyle = colour;
  for (let x = from; x < to; x += dash + gap) {
    const tilt = (chance() - 0.5) * width * 0.3;
    for (let along = 0; along < dash && x + along < to; along += grain) {
      for (let across = -width / 2; across < width / 2; across += grain) {
        ink.globalAlpha = chance() < 0.14 ? 0.3 : 0.8 + 0.2 * chance();
        ink.fillRect(x + along, y + across + tilt * (along / dash - 0.5), grain * 1.1, grain * 1.1);
      }
    }
  }
  ink.globalAlpha = 1;
}
