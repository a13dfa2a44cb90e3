// How the slides turn. Pure.

const USUAL_SECONDS = 20;
const LEAST_SECONDS = 3;                      // nobody reads faster
const MOST_SECONDS = 600;

/** Milliseconds a slide stays; 0 when it is only turned by hand. @param {string|null} seconds as in the address */
export function everyMs(seconds) {
  const wish = seconds === null || seconds.trim() === '' ? NaN : Number(seconds);
  if (!Number.isFinite(wish) || wish < 0) return USUAL_SECONDS * 1000;
  return wish === 0 ? 0 : Math.min(MOST_SECONDS, Math.max(LEAST_SECONDS, wish)) * 1000;
}

/** After the last comes the first. @param {number} place @param {number} count */
export function placeOf(place, count) { return count > 0 ? ((place % count) + count) % count : 0; }

/** Where a key leads; null when it means nothing here. @param {string} key @param {number} shown @param {number} count */
export function keyTurn(key, shown, count) {
  switch (key) {
    case 'ArrowRight': case 'ArrowDown': case 'PageDown': case ' ': case 'Enter': return shown + 1;
    case 'ArrowLeft': case 'ArrowUp': case 'PageUp': return shown - 1;
    case 'Home': return 0;
    case 'End': return count - 1;
    default: return null;
  }
}

/** A click on the left third turns back, elsewhere on. @param {number} x @param {number} width CSS pixels */
export function clickTurn(x, width) { return x < width / 3 ? -1 : 1; }
