// One turn of the display for everything that moves: twenty strips and a clock share one requestAnimationFrame.

/** @type {Set<(at: number) => void>} */ const turns = new Set();
let asked = 0;

/** Calls `turn` once for each picture the display draws, with performance.now(). Returns how to stop. @param {(at: number) => void} turn */
export function everyPicture(turn) {
  turns.add(turn);
  asked ||= requestAnimationFrame(run);
  return () => { turns.delete(turn); };
}

function run(at) {
  for (const turn of turns) {
    try { turn(at); } catch (error) { reportError(error); }        // one strip's fault stops no other
  }
  asked = turns.size ? requestAnimationFrame(run) : 0;
}

const calm = globalThis.matchMedia?.('(prefers-reduced-motion: reduce)');

/** Whether this device asks for less motion. */
export function wantsCalm() { return calm?.matches ?? false; }
