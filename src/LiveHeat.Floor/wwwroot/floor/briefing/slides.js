// The briefing as slides: one at a time, turned by itself, by arrow keys and by click. The server writes them all into the page;
// they are split by what fits on this screen (split.js). Address options: ?every=20 seconds a slide, 0 turns only by hand; ?width=4&seat=25 the
// screen's width and the farthest seat in metres: no letter is smaller than can be read from there; ?light=1 or auto and ?edge=5 as on the board;
// ?side: in one half of a screen that shows two heats.
// For tests main carries data-ready once it is laid out, and the slide on the screen data-shown.
import { leastText, seatOf } from '../board/sight.js';
import { takeEdge } from '../edge.js';
import { takeGround } from '../ground.js';
import { layOut, filled } from './split.js';
import { everyMs, keyTurn, clickTurn, placeOf } from './turning.js';

const main = /** @type {HTMLElement} */ (document.getElementById('slides'));
const written = /** @type {HTMLElement[]} */ ([...main.querySelectorAll('.slide')].map(slide => slide.cloneNode(true)));
const options = new URLSearchParams(location.search), every = everyMs(options.get('every')), seat = seatOf(options);
const CROWDED_ABOVE = 0.06;                             // of the screen's height: larger letters leave the head to the heading
let shown = 0;
/** @type {HTMLElement[]} */ let slides = [];
let timer = 0;

const foot = document.createElement('footer');
foot.className = 'foot';
foot.innerHTML = '<span class="here"></span><i class="roll"></i>';
foot.style.setProperty('--every', `${every}ms`);

/** Lays all slides out for this screen and stays at the same one. */
function draw() {
  const source = slides[shown]?.dataset.source ?? '0';
  main.dataset.ready = '';
  if (seat) {
    const least = leastText(seat, innerWidth, innerHeight);
    main.style.setProperty('--least', `${least}px`);
    main.toggleAttribute('data-crowded', least > innerHeight * CROWDED_ABOVE);
  }
  slides = layOut(main, written, foot);
  for (const picture of main.querySelectorAll('img')) picture.addEventListener('error', () => lost(picture.getAttribute('src')), { once: true });
  show(Math.max(0, slides.findIndex(slide => slide.dataset.source === source)));
}

/** A picture that cannot be had leaves its room to the words. @param {string|null} address */
function lost(address) {
  for (const slide of written) for (const picture of slide.querySelectorAll('img')) if (picture.getAttribute('src') === address) picture.remove();
  draw();
}

/** @param {number} place */
function show(place) {
  shown = placeOf(place, slides.length);
  slides.forEach((slide, i) => slide.toggleAttribute('data-shown', i === shown));
  const turning = every > 0 && slides.length > 1;
  foot.toggleAttribute('data-turning', turning);
  /** @type {Element} */ (foot.firstElementChild).textContent = slides.length > 1 ? filled(main.dataset.here, shown + 1, slides.length) : '';
  const roll = /** @type {Element} */ (foot.lastElementChild);
  roll.replaceWith(roll.cloneNode());                   // rolls out anew
  clearTimeout(timer);
  if (turning) timer = setTimeout(() => show(shown + 1), every);
}

addEventListener('keydown', event => {
  if (event.ctrlKey || event.altKey || event.metaKey) return;
  const place = keyTurn(event.key, shown, slides.length);
  if (place === null) return;
  event.preventDefault();
  show(place);
});
main.addEventListener('click', event => show(shown + clickTurn(event.clientX, innerWidth)));

let resizing = 0;
addEventListener('resize', () => { cancelAnimationFrame(resizing); resizing = requestAnimationFrame(draw); });

takeGround(options.get('light'));
takeEdge(options);
main.toggleAttribute('data-side', options.has('side'));
draw();
document.fonts.ready.then(draw);                        // other letters, other lines
