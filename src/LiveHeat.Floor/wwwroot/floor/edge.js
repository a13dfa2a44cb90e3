// The margin that a television may cut off, as the address says: ?edge=5, in percent of the picture's width and height.

const MOST = 10;

/** The margin as a part of the picture; null where the address says nothing that can be. Pure. @param {string|null} wish percent, with a point or a comma */
export function edgeOf(wish) {
  const percent = wish?.trim() ? Number(wish.replace(',', '.')) : NaN;
  return percent >= 0 && percent <= MOST ? percent / 100 : null;
}

/** @param {URLSearchParams} options of the page's address */
export function takeEdge(options) {
  const edge = edgeOf(options.get('edge'));
  if (edge !== null) document.documentElement.style.setProperty('--edge', `${edge}`);
}
