// Heat time and lane time from a frame and the instant it is now, all in milliseconds (docs/wire.md, manners).

/** Heat time: since the start in force, less what the heat was halted. Negative before GO; null without a start. */
export function heatMs(frame, now) {
  if (!frame?.start || now === null || now === undefined) return null;
  const until = Math.min(now, frame.haltedAt ?? Infinity, frame.endedAt ?? Infinity);
  return until - frame.start.goAt - (frame.haltedMs ?? 0);
}

/** Lane time: heat time less what the lane was held. Stands while the lane is held, and at its finish. */
export function laneMs(frame, lane, now) {
  if (lane.finishMs !== null && lane.finishMs !== undefined && lane.status === 'finished') return lane.finishMs;
  const heat = heatMs(frame, lane.heldAt ? Math.min(now, lane.heldAt) : now);
  return heat === null ? null : heat - (lane.creditMs ?? 0);
}
