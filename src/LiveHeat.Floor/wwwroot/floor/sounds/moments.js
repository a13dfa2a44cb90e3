// The moments of a heat that are heard: three beeps and GO, the last minute, the cap. Pure.

/** @typedef {{key: string, at: number, tone: 'beep'|'go'|'minute'|'cap'}} Moment at: the server's instant */
const COUNTED_S = 3, MINUTE_MS = 60_000;

/**
 * All moments of the start in force, in order. @param {any} frame @returns {Moment[]}
 * Without a cap there is neither. Nothing counts down to a start that was seen and not scheduled; while a heat stands halted or is over, nothing is to come.
 */
export function momentsOf(frame) {
  if (!frame?.start || !['counting-down', 'running'].includes(frame.phase)) return [];
  const { id, goAt, observed } = frame.start, moment = (name, at, tone) => ({ key: `${id} ${name}`, at, tone });
  const counted = observed ? [] : [...Array.from({ length: COUNTED_S }, (_, nth) => moment(`beep ${COUNTED_S - nth}`, goAt - (COUNTED_S - nth) * 1_000, 'beep')), moment('go', goAt, 'go')];
  const cap = goAt + (frame.haltedMs ?? 0) + frame.capMs;
  return [...counted, ...(frame.capMs > 2 * MINUTE_MS ? [moment('minute', cap - MINUTE_MS, 'minute')] : []), ...(frame.capMs ? [moment('cap', cap, 'cap')] : [])];
}

/** Those that begin within `aheadMs` and have not been played. Pure. @param {Moment[]} moments @param {Set<string>} played @param {number} now @param {number} aheadMs */
export function dueOf(moments, played, now, aheadMs) { return moments.filter(({ key, at }) => at > now && at <= now + aheadMs && !played.has(key)); }
