// Where a lane is, by its taps and by the clock. Pure. Contracts/Frames/LanePlace.cs and the pad's roundNow say the same: all answer to
// tests/LiveHeat.Testing/Places/places.json.

/**
 * @typedef {{open: number, round: number|null, resting: boolean, turnsMs: number|null, fromMs: number|null}} Whereabouts
 *   open: number of the open step, from 1; while resting the first of the next round; the number of steps and one more when nothing is left
 *   round: by the clock, from 1; null where one round follows the other
 *   turnsMs: lane time at which the round ends or, while resting, the next begins; null when nothing more does
 *   fromMs: lane time at which the round began
 */

/**
 * In rounds by the clock what was not done when one is over stays undone, and who is through rests.
 * @param {{steps: any[], windows?: {first: number, last: number, fromMs: number, untilMs: number}[]|null}} sheetLane
 * @param {{open: number}} lane as in the frame @param {number|null} laneMs lane time now; null and before GO it is the first round @returns {Whereabouts}
 */
export function whereIs({ steps, windows }, { open = 1 }, laneMs) {
  if (!windows?.length) return { open, round: null, resting: false, turnsMs: null, fromMs: null };
  const at = Math.max(0, windows.findLastIndex(({ fromMs }) => fromMs <= (laneMs ?? 0)));
  const { first, last, fromMs, untilMs } = windows[at], next = windows[at + 1], here = Math.max(open, first);
  if ((laneMs ?? 0) <= untilMs && here <= last) return { open: here, round: at + 1, resting: false, turnsMs: untilMs, fromMs };
  return { open: Math.max(open, next?.first ?? steps.length + 1), round: at + 1, resting: Boolean(next), turnsMs: next?.fromMs ?? null, fromMs };
}
