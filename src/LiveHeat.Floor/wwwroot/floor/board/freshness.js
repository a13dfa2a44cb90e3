// How old is what the board shows. Old is marked, very old is said aloud; the last good state stays either way.
import { words } from './words.js';

export const OLD_MS = 3_000;
export const NOT_LIVE_MS = 10_000;

/**
 * The age in real milliseconds. While a heat is live a frame comes every second; otherwise nothing need come, and an open
 * connection is enough.
 * @param {{live: boolean, online: boolean, frameAt: number, heardAt: number, at: number}} signs all performance.now()
 */
export function ageOf({ live, online, frameAt, heardAt, at }) {
  if (live) return Math.max(0, at - frameAt);
  return online ? 0 : Math.max(0, at - heardAt);
}

/** @param {number} ageMs @returns {{level: 'fresh'|'old'|'not-live', text: string}} */
export function freshnessOf(ageMs) {
  if (ageMs > NOT_LIVE_MS) return { level: 'not-live', text: words.notLive(ageMs) };
  return ageMs > OLD_MS ? { level: 'old', text: words.old(Math.floor(ageMs / 1000)) } : { level: 'fresh', text: '' };
}
