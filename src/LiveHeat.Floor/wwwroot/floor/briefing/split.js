// Slides by what fits on the screen: letters do not get smaller than can be read from the stands, what does not fit goes to a further slide.

const SIZES = ['large', 'some', 'least'];     // as in slides.css; the last is the least that can be read
const SPLIT_SIZE = 'some';                    // several slides are no reason for the smallest letters
const LONG_HEADING = 0.2;                     // a heading higher than this part of the screen is written smaller
const ROUNDING = 1;                           // CSS pixels
const MOST_PARTS = 40;                        // of one slide: on a screen so small that nothing fits, the rest is left to stand

/**
 * Puts the slides into main, split, each with data-source: its number among those written.
 * @param {HTMLElement} main @param {HTMLElement[]} written as the server sent them @param {Element} foot stands behind them
 * @returns {HTMLElement[]}
 */
export function layOut(main, written, foot) {
  const slides = /** @type {HTMLElement[]} */ (written.map(slide => slide.cloneNode(true)));
  main.replaceChildren(...slides, foot);
  return slides.flatMap((slide, source) => {
    slide.dataset.source = String(source);
    const heading = /** @type {HTMLElement} */ (slide.querySelector('h1'));
    if (heading.offsetHeight > main.clientHeight * LONG_HEADING) slide.dataset.heading = 'long';
    const fits = SIZES.some(size => { slide.dataset.size = size; return firstOver(slide) < 0; });
    if (fits) return [slide];
    slide.dataset.size = SPLIT_SIZE;
    const parts = [slide];
    for (let last = slide, next; parts.length < MOST_PARTS && (next = splitOff(last)); last = next) parts.push(next);
    parts.forEach((part, i) => { if (parts.length > 1) /** @type {Element} */ (part.querySelector('.part-of')).textContent = filled(main.dataset.part, i + 1, parts.length); });
    return parts;
  });
}

/** The page's words with their places filled: "{0} of {1}". @param {string|undefined} words @param {...number} places */
export function filled(words, ...places) { return (words ?? '').replace(/\{(\d)\}/g, (_, place) => String(places[place])); }

const linesOf = slide => /** @type {HTMLElement} */ (slide.querySelector('.lines'));
const bottomOf = element => element.getBoundingClientRect().bottom;

/** The first line that does not fit; -1 when all do. */
function firstOver(slide) {
  const lines = linesOf(slide), room = bottomOf(lines) + ROUNDING;
  return [...lines.children].findIndex(line => bottomOf(line) > room);
}

/** Moves what does not fit into a slide behind this one. @returns {HTMLElement|null} null when all fits */
function splitOff(slide) {
  const over = firstOver(slide);
  if (over < 0) return null;
  const lines = linesOf(slide), all = [...lines.children];
  const next = slide.cloneNode(true), rest = linesOf(next);
  rest.replaceChildren();
  // A heading stays with what it heads; a line that is higher than the screen by itself is cut between words.
  const from = over > 1 && all[over - 1].classList.contains('head') ? over - 1 : over;
  if (from === 0) {
    const end = cutLine(slide, all[0]);
    if (end === null) return null;
    rest.append(end, ...all.slice(1));
  } else rest.append(...all.slice(from));
  slide.after(next);
  return next;
}

/** Leaves as many words in the line as fit; of a word that does not fit alone, as many letters. @returns {Element|null} a line with the rest; null when it cannot be cut */
function cutLine(slide, line) {
  const text = line.querySelector('.text'), whole = text?.textContent ?? '';
  let words = whole.split(/(?<=\s)/);
  if (!text || whole.length < 2) return null;
  const fits = count => { text.textContent = words.slice(0, count).join(''); return bottomOf(line) <= bottomOf(linesOf(slide)) + ROUNDING; };
  if (!fits(1)) words = [...whole];
  let most = 1, over = words.length;            // at least one word or letter a slide, so that this comes to an end
  while (over - most > 1) {
    const middle = (most + over) >> 1;
    if (fits(middle)) most = middle; else over = middle;
  }
  fits(most);
  const end = /** @type {Element} */ (line.cloneNode(true));
  /** @type {Element} */ (end.querySelector('.text')).textContent = words.slice(most).join('');
  return end;
}
