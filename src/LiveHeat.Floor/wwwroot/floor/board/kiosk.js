// A screen that nobody sits at: full screen at the first touch (browsers want one), no pointer, no menu, the display kept awake.

/** @param {boolean} alone whether nobody works at this screen: ?kiosk=1 */
export function beKiosk(alone) {
  const fill = () => { if (!document.fullscreenElement) document.documentElement.requestFullscreen?.().catch(() => {}); };
  if (!alone) return;
  document.documentElement.dataset.kiosk = '';
  for (const kind of ['pointerdown', 'keydown']) addEventListener(kind, fill);
  addEventListener('contextmenu', event => event.preventDefault());
  const stayAwake = () => { if (document.visibilityState === 'visible') navigator.wakeLock?.request('screen').catch(() => {}); };
  document.addEventListener('visibilitychange', stayAwake);
  stayAwake();
}
