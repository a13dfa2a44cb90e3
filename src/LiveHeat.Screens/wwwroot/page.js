// What a page needs of the browser that C# cannot reach: ground, return from the background, printing.
const GROUND = 'ground';

/** The ground kept on this device: "dark" or "light". */
export function ground() {
  let kept = null;
  try { kept = localStorage.getItem(GROUND); } catch { /* storage switched off: the default then */ }
  return kept === 'light' ? 'light' : 'dark';
}

export function setGround(name) {
  document.documentElement.dataset.ground = name;
  try { localStorage.setItem(GROUND, name); } catch { /* the page shows it all the same */ }
}

/** A list that this tab keeps, over reloads too. @param {string} name @returns {string[]} */
export function kept(name) {
  try { return JSON.parse(sessionStorage.getItem(name) ?? '[]'); } catch { return []; /* storage switched off: the page knows what it knows */ }
}

/** @param {string} name @param {string[]} list */
export function keep(name, list) {
  try { sessionStorage.setItem(name, JSON.stringify(list)); } catch { /* the page knows it until it is loaded anew */ }
}

/** Calls back when the page was hidden for more than two seconds: a socket that slept is not to be trusted. */
export function onReturn(screen) {
  let hiddenAt = null;
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') { hiddenAt = Date.now(); return; }
    if (hiddenAt !== null && Date.now() - hiddenAt > 2_000) screen.invokeMethodAsync('Returned');
    hiddenAt = null;
  });
  addEventListener('online', () => screen.invokeMethodAsync('Returned'));
}

const PLAYER_KEYS = [' ', 'ArrowLeft', 'ArrowRight'];
let keyScreen = null;

/** Calls back for a player's keys, but not where somebody writes or is about to press a button; null ends it. */
export function onKeys(screen) { keyScreen = screen; }

document.addEventListener('keydown', event => {
  if (!keyScreen || !PLAYER_KEYS.includes(event.key) || event.ctrlKey || event.altKey || event.metaKey) return;
  const at = event.target instanceof Element ? event.target : document.body;
  if (at.closest('input:not([type=range]), select, textarea') || (event.key === ' ' && at.closest('button, a, summary'))) return;
  event.preventDefault();
  keyScreen.invokeMethodAsync('Pressed', event.key, event.shiftKey);
});

/** Scrolls the list around an element so that it stands in the middle; not the page. @param {HTMLElement|null} element */
export function centre(element) {
  const list = element?.parentElement;
  if (list && list.scrollHeight > list.clientHeight) list.scrollTop = element.offsetTop - list.clientHeight / 2;
}

/**
 * The languages that are wished for, dearest first: the address's (?lang=de), which holds for this tab from then on, and the device's, such as "de-AT".
 * @returns {string[]}
 */
export function languages() {
  let asked = new URLSearchParams(location.search).get('lang');
  try {
    if (asked) sessionStorage.setItem('lang', asked);
    asked ??= sessionStorage.getItem('lang');
  } catch { /* storage switched off: only the address says it then */ }
  return [...(asked ? [asked] : []), ...(navigator.languages ?? [])];
}

/** @param {string} language */
export function setLanguage(language) { document.documentElement.lang = language; }

export function print() { window.print(); }
