// One turn of the display for everything that moves: twenty strips and a clock share one requestAnimationFrame.

/** @type {Set<(at: number, nth: number) => void>} */ const turns = new Set();
let asked = 0, nth = 0;

/** Calls `turn` once for each picture the display draws, with performance.now() and the picture's number. Returns how to stop. @param {(at: number, nth: number) => void} turn */
export function everyPicture(turn) {
  turns.add(turn);
  asked ||= requestAnimationFrame(run);
  return () => { turns.delete(turn); };
}

function run(at) {
  nth++;
  for (const turn of turns) {
    try { turn(at, nth); } catch (error) { reportError(error); }        // one strip's fault stops no other
  }
  asked = turns.size ? requestAnimationFrame(run) : 0;
}

/**
 * Every how many pictures something that moves so slowly need be moved: a power of two, so that all that is slow moves on the same
 * pictures and those between cost nothing. Pure. @param {number} pixels for each picture @param {number} least pixels that anybody sees
 */
export function everyNth(pixels, least) { return 2 ** Math.min(4, Math.max(0, Math.floor(Math.log2(least / Math.max(pixels, 1e-6))))); }

const less = globalThis.matchMedia?.('(prefers-reduced-motion: reduce)');
let calm = less?.matches ?? false;
less?.addEventListener('change', () => { calm = less.matches; });       // asked for every picture, it would be worked out for every picture

/** Whether this device asks for less motion. */
export function wantsCalm() { return calm; }
