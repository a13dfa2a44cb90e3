// How far every team got: strips of the heat as it stood when the page was made, once for the screen and once for paper. Paper has another
// ground and another width, and a page cannot be painted anew while it is printed: so the second copy stands ready out of sight.
import { mountStrips } from '../strip.js';

const FINENESS = 3;         // device pixels a CSS pixel, about 290 to the inch

const section = /** @type {HTMLElement} */ (document.querySelector('.how-far'));
const { sheet, frame } = JSON.parse(document.getElementById('strips')?.textContent ?? '');
const paper = /** @type {HTMLElement} */ (section.cloneNode(true));
paper.classList.add('on-paper');
paper.setAttribute('aria-hidden', 'true');
section.after(paper);

const now = () => frame.madeAt;     // nothing goes on: the strips are as old as the figures above them
for (const [place, fineness] of /** @type {const} */ ([[section, 1], [paper, FINENESS]])) {
  place.classList.add('drawn');
  mountStrips(place, sheet, frame, { now, decorative: true, fineness });
}
