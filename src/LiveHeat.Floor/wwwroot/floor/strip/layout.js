// Where things are along a strip, from 0 (GO) to 1 (all work done). Pure: steps and a lane of a frame go in, numbers come out.
import { whereIs } from '../where.js';

/**
 * @typedef {{step: number, kind: string, leg?: number, quantity?: number, expectedMs: number}} Step one step of a lane, as in the sheet
 * @typedef {{status: string, open: number, count: number|null, sinceMs: number|null}} Place where a lane is, as in the frame
 * @typedef {{edges: number[], joints: number[], begins?: {step: number, at: number}[], count: number}} Layout
 *   edges[k] is where step k ends (edges[0] = 0, the last is 1); joints are the edges of the tags, or where a round by the clock begins
 * @typedef {{first: number, last: number, fromMs: number, untilMs: number}} Window a round by the clock, as in the sheet
 */

/** Each round's steps from its beginning on, none past its end: what a fast team does beyond the expected stands at the end. */
function byClock(steps, windows) {
  const whole = windows[windows.length - 1].untilMs, edges = [0];
  for (const { first, last, fromMs, untilMs } of windows) {
    let end = fromMs;
    for (const step of steps.slice(first - 1, last)) edges.push((end = Math.min(untilMs, end + Math.max(0, step.expectedMs || 0))) / whole);
  }
  return { edges, joints: windows.slice(1).map(({ fromMs }) => fromMs / whole), begins: windows.map(({ first, fromMs }) => ({ step: first, at: fromMs / whole })), count: steps.length };
}

/** Statuses in which a lane goes on by itself, so that an estimate means something. */
const MOVING = new Set(['working']);

/**
 * Lays the steps end to end, each as wide as its expected time. Steps nobody has a time for are as wide as each other. Rounds by the clock
 * are as wide as their time, with the rest between them.
 * @param {Step[]} steps @param {Window[]|null} [windows] @returns {Layout}
 */
export function layoutOf(steps, windows = null) {
  if (windows?.length) return byClock(steps, windows);
  const known = steps.some(step => step.expectedMs > 0);
  const widths = steps.map(step => (known ? Math.max(0, step.expectedMs || 0) : 1));
  const whole = widths.reduce((sum, width) => sum + width, 0) || 1;
  const edges = [0];
  let end = 0;
  for (const width of widths) edges.push((end += width) / whole);
  edges[edges.length - 1] = 1;
  return { edges, joints: steps.flatMap((step, at) => (step.kind === 'tag' ? [edges[at + 1]] : [])), count: steps.length };
}

/** How far the lane is confirmed: the last boundary, and in a set that is counted the part of it that is counted. @param {Layout} layout @param {Step[]} steps @param {Place} lane */
export function confirmedAt(layout, steps, lane) {
  const done = clamp((lane.open ?? 1) - 1, 0, layout.count);
  const from = layout.edges[done];
  const open = steps[done];
  const begin = beginOf(layout, done);
  const quantity = open?.quantity ?? 0;
  if (!lane.count || quantity <= 0) return from;
  return begin + (layout.edges[done + 1] - begin) * clamp(lane.count / quantity, 0, 1);
}

/** Where a step begins that has so many before it: where the last ended, or where its round by the clock does. @param {Layout} layout @param {number} done */
function beginOf(layout, done) { return layout.begins?.find(({ step }) => step === done + 1)?.at ?? layout.edges[done]; }

/** One confirmed step says as much of a lane's pace as the sheet does; nobody is taken to be faster or slower than this. */
const SHEET_WORTH = 1, FASTEST = 0.4, SLOWEST = 3;

/**
 * How much longer a lane takes than its sheet expects, from its confirmed steps alone: 2 is twice as long. With few of them it is taken to be more like the sheet.
 * @param {Step[]} done confirmed, one after the other @param {number} tookMs all of them together, lane time
 */
export function ownPace(done, tookMs) {
  const timed = done.filter(step => step.expectedMs > 0), expected = timed.reduce((sum, step) => sum + step.expectedMs, 0);
  if (expected <= 0) return 1;
  const told = clamp(tookMs / expected, FASTEST, SLOWEST);
  return 1 + (told - 1) * timed.length / (timed.length + SHEET_WORTH);
}

/**
 * Where the lane probably is now: on from its last boundary, through the open step at the lane's own pace so far. Never behind what is
 * confirmed and never past the next boundary that is not. Null when there is nothing to guess from.
 * @param {Layout} layout @param {Step[]} steps @param {Place} lane @param {number|null} laneMs lane time now
 * @param {Window[]|null} [windows] rounds by the clock: while nobody works there is nothing to guess
 */
export function estimatedAt(layout, steps, lane, laneMs, windows = null) {
  const { open: at, resting, fromMs } = whereIs({ steps, windows }, { open: lane.open ?? 1 }, laneMs);
  const open = steps[at - 1];
  if (!open || laneMs === null || resting || !MOVING.has(lane.status)) return null;
  const since = layout.begins?.some(({ step }) => step === at) ? fromMs : at === 1 ? 0 : lane.sinceMs;
  if (since === null || since === undefined) return null;
  // By the clock the rest before a round is nobody's pace: only what was done in this one counts.
  const first = windows?.findLast(window => window.first <= at)?.first ?? 1;
  const pace = ownPace(steps.slice(first - 1, at - 1), since - (fromMs ?? 0));
  const part = open.expectedMs > 0 ? clamp((laneMs - since) / (open.expectedMs * pace), 0, 1) : 0;
  const from = beginOf(layout, at - 1);
  return Math.max(confirmedAt(layout, steps, lane), from + (layout.edges[at] - from) * part);
}

/**
 * Where a team must be at this lane time to finish exactly at the cap: every expected time stretched or shrunk alike so
 * that they fill the cap. As a strip is laid out by expected time, that is the same part of the strip as of the cap.
 * @param {number|null} laneMs @param {number|null} capMs @returns {number|null} 0 to 1; null before GO or without a cap
 */
export function capPaceAt(laneMs, capMs) {
  return laneMs === null || laneMs < 0 || !capMs ? null : clamp(laneMs / capMs, 0, 1);
}

function clamp(value, low, high) { return Math.min(high, Math.max(low, value)); }
