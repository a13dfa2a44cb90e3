// Gaffer tape: matt woven cloth in one colour, torn by hand at both ends, one piece a leg, each laid over the end of the last.
import { seeded } from './seeded.js';

/**
 * Draws the whole tape of a lane. What is not yet worked is hidden by the strip, not left out here, so this is drawn once a size.
 * @param {CanvasRenderingContext2D} ink
 * @param {{from: number, to: number, height: number, joints: number[], colour: string, seed: number}} tape
 *   from, to: CSS pixels; joints: 0 to 1 between them
 */
export function drawTape(ink, { from, to, height, joints, colour, seed }) {
  const chance = seeded(seed * 97 + 5);
  const lap = height * 0.16;
  const ends = [...joints.map(joint => from + joint * (to - from)), to];
  let begin = from;
  for (const end of ends) {
    if (end - begin < 1) continue;
    const first = begin === from, last = end === to;
    piece(ink, { left: begin - (first ? 0 : lap / 2), right: end + (last ? 0 : lap), first, height, colour, chance });
    begin = end;
  }
}

function piece(ink, { left, right, first, height, colour, chance }) {
  const outline = outlineOf(left, right, height, chance);
  ink.save();
  ink.shadowColor = 'rgba(0,0,0,.55)';
  ink.shadowBlur = height * 0.1;
  ink.shadowOffsetY = height * 0.035;
  ink.fillStyle = colour;
  ink.fill(outline);
  ink.restore();

  ink.save();
  ink.clip(outline);
  const sheen = ink.createLinearGradient(0, 0, 0, height);
  sheen.addColorStop(0, 'rgba(255,255,255,.10)');
  sheen.addColorStop(0.3, 'rgba(255,255,255,.03)');
  sheen.addColorStop(0.7, 'rgba(0,0,0,.02)');
  sheen.addColorStop(1, 'rgba(0,0,0,.16)');
  ink.fillStyle = sheen;
  ink.fillRect(left - height, 0, right - left + 2 * height, height);
  weave(ink, left, right, height);
  scuffs(ink, left, right, height, chance);
  creases(ink, left, right, height, chance);
  if (!first) joint(ink, left, height);
  ink.restore();

  ink.lineWidth = Math.max(0.6, height * 0.014);
  ink.strokeStyle = 'rgba(0,0,0,.4)';
  ink.stroke(outline);
}

/** Long edges nearly straight, laid a little askew; short ends torn. */
function outlineOf(left, right, height, chance) {
  const outline = new Path2D();
  const askew = () => height * (0.035 + 0.055 * chance());
  const [topLeft, topRight, bottomLeft, bottomRight] = [askew(), askew(), height - askew(), height - askew()];
  const torn = torning(height, chance);
  const rough = height * 0.012;
  const along = (from, to, y0, y1) => {
    const steps = Math.max(2, Math.round(Math.abs(to - from) / (height * 0.5)));
    for (let at = 1; at <= steps; at++) {
      const part = at / steps;
      outline.lineTo(from + (to - from) * part, y0 + (y1 - y0) * part + (at < steps ? (chance() - 0.5) * 2 * rough : 0));
    }
  };
  outline.moveTo(left, topLeft);
  along(left, right, topLeft, topRight);
  for (const [part, out] of torn) outline.lineTo(right + out, topRight + (bottomRight - topRight) * part);
  outline.lineTo(right, bottomRight);
  along(right, left, bottomRight, bottomLeft);
  for (const [part, out] of torning(height, chance)) outline.lineTo(left + out, bottomLeft + (topLeft - bottomLeft) * part);
  outline.closePath();
  return outline;
}

/** A torn end, as [part of the way down, how far it stands out]. Also what a strip without its roll is cut off by. */
export function torning(height, chance) {
  const slant = (chance() - 0.5) * height * 0.1;
  let part = 0.04 + 0.1 * chance();
  const points = [];
  for (; part < 0.97; part += 0.05 + 0.17 * chance() ** 2) points.push([part, slant * (part - 0.5) + (chance() - 0.5) * height * 0.07]);
  return points;
}

/** Threads both ways. Close up it is cloth; from the stands it only takes the shine off. */
function weave(ink, left, right, height) {
  const pitch = Math.max(2, height / 18);
  ink.fillStyle = 'rgba(0,0,0,.055)';
  for (let x = left - height; x < right + height; x += pitch) ink.fillRect(x, 0, pitch * 0.4, height);
  ink.fillStyle = 'rgba(255,255,255,.06)';
  for (let y = 0; y < height; y += pitch) ink.fillRect(left - height, y, right - left + 2 * height, pitch * 0.4);
}

function scuffs(ink, left, right, height, chance) {
  for (let count = (right - left) / (height * 0.22); count > 0; count--) {
    ink.fillStyle = chance() < 0.6 ? `rgba(0,0,0,${0.03 + 0.05 * chance()})` : `rgba(255,255,255,${0.04 + 0.07 * chance()})`;
    ink.fillRect(left + chance() * (right - left), chance() * height, height * (0.1 + 0.5 * chance()), height * (0.012 + 0.02 * chance()));
  }
}

/** Where the tape did not go down flat: a dark side and a light side. */
function creases(ink, left, right, height, chance) {
  for (let count = Math.round((right - left) / (height * 3.2) * chance() * 1.6); count > 0; count--) {
    const x = left + chance() * (right - left), slant = (chance() - 0.5) * height * 0.7;
    const up = chance() < 0.5, long = height * (0.25 + 0.4 * chance());
    for (const [shift, colour] of [[0, 'rgba(0,0,0,.16)'], [height * 0.025, 'rgba(255,255,255,.2)']]) {
      ink.strokeStyle = colour;
      ink.lineWidth = height * 0.022;
      ink.beginPath();
      ink.moveTo(x + shift, up ? 0 : height);
      ink.quadraticCurveTo(x + shift + slant * 0.2, up ? long / 2 : height - long / 2, x + shift + slant, up ? long : height - long);
      ink.stroke();
    }
  }
}

/** The step where this piece goes up over the end of the one before. */
function joint(ink, left, height) {
  const lap = height * 0.24;
  const under = ink.createLinearGradient(left, 0, left + lap, 0);
  under.addColorStop(0, 'rgba(255,255,255,.28)');
  under.addColorStop(0.12, 'rgba(0,0,0,.1)');
  under.addColorStop(0.86, 'rgba(0,0,0,.26)');
  under.addColorStop(1, 'rgba(0,0,0,0)');
  ink.fillStyle = under;
  ink.fillRect(left - height * 0.1, 0, lap + height * 0.1, height);
}
