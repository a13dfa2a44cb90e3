// Dark, or light for daylight: as the address says (?light=1), or as the device is set (?light=auto).

/** @param {string|null} wish of the address @param {() => void} [changed] told when the device turns */
export function takeGround(wish, changed = () => {}) {
  const root = document.documentElement;
  if (wish !== 'auto') { root.dataset.ground = wish === '1' ? 'light' : 'dark'; return; }
  const day = matchMedia('(prefers-color-scheme: light)');
  const set = () => { root.dataset.ground = day.matches ? 'light' : 'dark'; };
  day.addEventListener('change', () => { set(); changed(); });
  set();
}
