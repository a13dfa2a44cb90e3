// Where things are along a strip, from 0 (GO) to 1 (all work done). Pure: steps and a lane of a frame go in, numbers come out.

/**
 * @typedef {{step: number, kind: string, leg?: number, quantity?: number, expectedMs: number}} Step one step of a lane, as in the sheet
 * @typedef {{status: string, open: number, count: number|null, sinceMs: number|null}} Place where a lane is, as in the frame
 * @typedef {{edges: number[], joints: number[], count: number}} Layout
 *   edges[k] is where step k ends (edges[0] = 0, the last is 1); joints are the edges of the tags
 */

/** Statuses in which a lane goes on by itself, so that an estimate means something. */
const MOVING = new Set(['working']);

/** Lays the steps end to end, each as wide as its expected time. Steps nobody has a time for are as wide as each other. @param {Step[]} steps @returns {Layout} */
export function layoutOf(steps) {
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
  const quantity = open?.quantity ?? 0;
  if (!lane.count || quantity <= 0) return from;
  return from + (layout.edges[done + 1] - from) * clamp(lane.count / quantity, 0, 1);
}

/**
 * Where the lane probably is now: on from its last boundary at the expected pace of the open step. Never behind what is
 * confirmed and never past the next boundary that is not. Null when there is nothing to guess from.
 * @param {Layout} layout @param {Step[]} steps @param {Place} lane @param {number|null} laneMs lane time now
 */
export function estimatedAt(layout, steps, lane, laneMs) {
  const done = (lane.open ?? 1) - 1;
  const open = steps[done];
  if (!open || laneMs === null || !MOVING.has(lane.status)) return null;
  const since = done === 0 ? 0 : lane.sinceMs;
  if (since === null || since === undefined) return null;
  const part = open.expectedMs > 0 ? clamp((laneMs - since) / open.expectedMs, 0, 1) : 0;
  const from = layout.edges[done];
  return Math.max(confirmedAt(layout, steps, lane), from + (layout.edges[done + 1] - from) * part);
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
