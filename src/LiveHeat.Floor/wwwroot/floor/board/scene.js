// Which picture the board shows. Pure: a frame and the instant go in, a word comes out.

/** Shown as one huge number from here on. */
export const COUNT_FROM_MS = 15_000;
const GO_FOR_MS = 1_500;

const BEFORE = new Set(['planned', 'called', 'armed']);
const AFTER = new Set(['ended', 'frozen', 'certified']);
const LIVE = new Set(['counting-down', 'running', 'halted']);

/** While these last, a frame comes at least once a second. */
export function isLive(phase) { return LIVE.has(phase); }

/**
 * 'idle': nothing on the floor. 'before': who stands where. 'count-down': as before, with the time to GO. 'running'. 'result'.
 * The count-down turns into the heat by itself: the frame that says so may be late.
 * @param {any} frame @param {number|null} now
 */
export function sceneOf(frame, now) {
  if (!frame) return 'idle';
  if (AFTER.has(frame.phase)) return 'result';
  if (BEFORE.has(frame.phase) || !frame.start) return 'before';
  return frame.phase !== 'halted' && now !== null && now < frame.start.goAt ? 'count-down' : 'running';
}

/** What the huge number is: whole seconds before GO, 0 for GO itself, null when there is none. @param {any} frame @param {number|null} now */
export function countOf(frame, now) {
  if (!frame?.start || now === null || (frame.phase !== 'counting-down' && frame.phase !== 'running')) return null;
  const left = frame.start.goAt - now;
  if (left > COUNT_FROM_MS || left <= -GO_FOR_MS || frame.start.observed) return null;
  return Math.max(0, Math.ceil(left / 1000));
}

/** Whether the start was taken back: there was one, and the heat is before its start again. @param {any} before an earlier frame @param {any} frame */
export function isRecalled(before, frame) {
  return Boolean(before?.start && before.heat === frame?.heat && before.epoch === frame?.epoch && frame?.phase !== 'called' && BEFORE.has(frame?.phase));
}
