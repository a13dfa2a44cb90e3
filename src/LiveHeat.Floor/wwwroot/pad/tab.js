// Two tabs of one pad must not both record or both send: whoever holds the lock is the pad.

const NAME = 'pad';
const PATIENCE_MS = 400;             // after a reload the old page's lock may take a moment to go

/**
 * @param {{onGranted: () => void, onRefused: () => void, onLost: () => void}} listener `onRefused`: another tab has it, and we wait
 * @returns {() => void} takes the lock from the other tab
 */
export function beTheOnlyTab({ onGranted, onRefused, onLost }) {
  const locks = navigator.locks;
  if (!locks) { onGranted(); return () => {}; }               // no secure context: nothing better to be had
  let had = false;
  const waiting = new AbortController();
  const late = setTimeout(onRefused, PATIENCE_MS);
  const hold = () => {
    clearTimeout(late);
    if (!had) { had = true; onGranted(); }
    return new Promise(() => {});                             // until the page goes, or another tab steals it
  };
  const lost = problem => { if (had && problem.name === 'AbortError') { had = false; onLost(); } };
  locks.request(NAME, { signal: waiting.signal }, hold).catch(lost);
  return () => {
    waiting.abort();
    locks.request(NAME, { steal: true }, hold).catch(lost);
  };
}
