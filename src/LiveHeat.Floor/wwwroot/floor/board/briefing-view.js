// The heat's briefing slides on the board: the page of /briefing in a frame, turned by the board.
import { make } from './nodes.js';

/**
 * What the slides take over from the board that shows them, as options of their address.
 * @param {URLSearchParams} options of the board's address @param {{width: number, seat: number}|null} seat of its screen, or of the whole of which it is one half
 */
export function slidesLook(options, seat) {
  const part = options.has('side') ? innerWidth / parent.innerWidth : 1;
  return new URLSearchParams({
    lang: document.documentElement.lang, ...Object.fromEntries(['light', 'edge', 'side'].filter(name => options.has(name)).map(name => [name, options.get(name) ?? ''])),
    ...(seat && { width: String(seat.width * part), seat: String(seat.seat) }),
  }).toString();
}

export class BriefingView {
  /** @param {string} look options of the slides' address */
  constructor(look = '') {
    this.look = look;
    this.element = /** @type {HTMLIFrameElement} */ (make('iframe', 'briefing'));
    this.element.setAttribute('aria-hidden', 'true');
    this.element.tabIndex = -1;
    /** @type {string|null} */ this.heat = null;
  }

  /** Fetches a heat's slides, once. @param {string|null} heat null: none are wanted */
  load(heat) {
    if (heat === this.heat) return;
    this.heat = heat;
    if (heat) this.element.src = `/briefing/${encodeURIComponent(heat)}?slides&every=0&${this.look}`;
    else this.element.removeAttribute('src');
  }

  /** How many slides there are; 0 while they are on the way. */
  get count() { return this.heat && this.page?.querySelector('#slides[data-ready]') ? this.slides.length : 0; }

  /** @param {number} nth */
  show(nth) {
    const { slides, page } = this, here = slides.findIndex(slide => slide.hasAttribute('data-shown'));
    const view = page?.defaultView;
    if (!view || here < 0) return;
    const turns = (nth - here + slides.length) % slides.length;
    for (let turn = 0; turn < turns; turn++) view.dispatchEvent(new view.KeyboardEvent('keydown', { key: 'ArrowRight', bubbles: true, cancelable: true }));
  }

  get page() { return this.element.contentDocument; }

  get slides() { return [...(this.page?.querySelectorAll('#slides .slide') ?? [])]; }
}
