// Paints a strip's canvases at the size it has now. Called when the strip gets a size or another ground, not while it moves.
import { chalkDashes, chalkDown } from './chalk.js';
import { drawRoll } from './roll.js';
import { drawTape } from './tape.js';

const FAINT = 0.7;
const TAPE_PART = 0.76;             // of the strip's height; the roll has all of it
export const PACE_PART = 0.105;     // width of the cap pace line

/** @param {{parts: any, host: HTMLElement, layout: any, number: number, width: number, height: number, gutter: number, end: number, scale: number}} strip */
export function paint(strip) {
  const { parts, host, layout, width, height, gutter, end, number, scale } = strip;
  const style = getComputedStyle(host);
  const colour = name => style.getPropertyValue(name).trim();
  const tape = colour(`--tape-${host.dataset.colour}`), chalk = colour('--chalk'), floorChalk = colour('--lane-chalk'), ground = colour('--ground');
  const tall = height * TAPE_PART, top = (height - tall) / 2;

  const floor = sized(parts.floor, width, height, scale);
  floor.translate(0, top);
  drawFloor(floor, { from: gutter, to: end, tall, layout, chalk: floorChalk, track: colour('--lane-floor'), seed: number });

  const cloth = sized(parts.tape, width, height, scale);
  cloth.translate(0, top);
  drawTape(cloth, { from: gutter, to: end, height: tall, joints: layout.joints, colour: tape, seed: number });

  const dash = sized(parts.dash, width, height, scale);
  chalkDashes(dash, {
    y: height / 2, from: gutter, to: end, width: Math.max(2.5, height * 0.11), dash: height * 0.22, gap: height * 0.16, colour: floorChalk, seed: number,
  });
  dash.globalCompositeOperation = 'destination-in';       // fainter as a whole: it is an estimate
  dash.fillStyle = `rgb(0 0 0 / ${FAINT})`;
  dash.fillRect(0, 0, width, height);
  sized(parts.roll, height, height, scale);
  drawRoll(sized(parts.wound, height, height, scale), { size: height, colour: tape, ground });

  const reach = parseFloat(style.getPropertyValue('--pace-reach')) || 0;        // how far the line goes on above and below, pixels
  const line = height * PACE_PART, wide = line * 3;
  parts.pace.style.top = `${-reach}px`;
  parts.pace.style.left = `${-wide / 2}px`;
  const ink = sized(parts.pace, wide, height + 2 * reach, scale);
  ink.fillStyle = colour('--ground');
  ink.globalAlpha = 0.9;
  ink.fillRect(wide / 2 - line * 0.95, 0, line * 1.9, height + 2 * reach);
  chalkDown(ink, { x: wide / 2, from: 0, to: height + 2 * reach, width: line, colour: chalk, seed: number + 40, sway: line * 0.35 });
}

/** The floor that is not yet taped: where the legs meet, where the sets end, and the line to start from. */
function drawFloor(ink, { from, to, tall, layout, chalk, track, seed }) {
  ink.fillStyle = track;
  ink.fillRect(from, tall * 0.04, to - from, tall * 0.92);
  const x = part => from + part * (to - from);
  const thin = Math.max(1.5, tall * 0.035);
  for (const [at, edge] of layout.edges.entries()) {
    if (at === 0 || at === layout.count || layout.joints.includes(edge)) continue;
    chalkDown(ink, { x: x(edge), from: tall * 0.7, to: tall * 0.9, width: thin, colour: chalk, alpha: 0.35, seed: seed * 50 + at });
  }
  for (const [at, joint] of layout.joints.entries()) {
    chalkDown(ink, { x: x(joint), from: tall * 0.1, to: tall * 0.9, width: thin, colour: chalk, alpha: 0.5, seed: seed * 70 + at });
  }
  chalkDown(ink, { x: to - thin, from: 0, to: tall, width: thin * 2, colour: chalk, alpha: 0.75, seed: seed + 11 });
  chalkDown(ink, { x: from, from: 0, to: tall, width: thin * 2, colour: chalk, alpha: 0.75, seed: seed + 12 });
}

/** @param {HTMLCanvasElement} canvas */
function sized(canvas, width, height, scale) {
  canvas.width = Math.max(1, Math.round(width * scale));
  canvas.height = Math.max(1, Math.round(height * scale));
  canvas.style.width = `${width}px`;
  canvas.style.height = `${height}px`;
  const ink = /** @type {CanvasRenderingContext2D} */ (canvas.getContext('2d'));
  ink.setTransform(scale, 0, 0, scale, 0, 0);
  return ink;
}
