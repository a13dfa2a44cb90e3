// Chance that comes out the same every time: a lane's tape has the same torn edges on every screen and after every reload.

/** Numbers from 0 up to 1, the same ones for the same seed (mulberry32, public domain). @param {number} seed @returns {() => number} */
export function seeded(seed) {
  let state = (seed * 0x9e3779b1) >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}
