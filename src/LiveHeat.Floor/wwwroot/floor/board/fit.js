// Makes a line of text fit its place: first narrower, then smaller, and where it would get too small to be read, shorter.

/** The narrowest a line may be drawn, as a part of its own width: below that letters run together from the stands. */
export const NARROWEST = 0.8;
const ROUNDING = 0.25;                    // CSS pixels of a size
const MORE = '\u2026';

/** What to do with a line of `natural` width in `room`. Pure. @returns {{narrow: number, size: number}} both 1 when it fits as it is */
export function fitOf(natural, room) {
  if (natural <= room || natural <= 0 || room <= 0) return { narrow: 1, size: 1 };
  const needed = room / natural;
  return needed >= NARROWEST ? { narrow: needed, size: 1 } : { narrow: NARROWEST, size: needed / NARROWEST };
}

/** @param {HTMLElement} line an inline-block that does not wrap @param {number} room CSS pixels @param {'left'|'right'|'center'} side which side stays put @returns {number} the size it got, 1 when it did not have to shrink */
export function fitLine(line, room, side = 'left') {
  line.style.fontSize = line.style.transform = line.style.marginInlineEnd = line.style.marginInlineStart = '';
  const natural = line.offsetWidth;
  const { narrow, size } = fitOf(natural, Math.floor(room));
  if (narrow === 1) return 1;
  if (size < 1) line.style.fontSize = `${parseFloat(getComputedStyle(line).fontSize) * size}px`;
  const wide = line.offsetWidth, spare = Math.ceil(wide * (1 - narrow));
  line.style.transform = `scaleX(${narrow})`;
  line.style.transformOrigin = side;
  if (side === 'left') line.style.marginInlineEnd = `${-spare}px`;
  else if (side === 'right') line.style.marginInlineStart = `${-spare}px`;
  else line.style.marginInlineStart = line.style.marginInlineEnd = `${-spare / 2}px`;
  return size;
}

/** Whether a line's text is as large as it must be. @param {HTMLElement} line @param {number} least size of text, CSS pixels */
export function isReadable(line, least) { return parseFloat(getComputedStyle(line).fontSize) >= least - ROUNDING; }

/**
 * Fits a text that may lose its end: words go, and in the last of them letters, until it is as large as it must be.
 * @param {HTMLElement} line @param {Element} holder of the text, within the line @param {string} text whole @param {number} room @param {number} least CSS pixels @param {'left'|'right'|'center'} side
 */
export function fitWords(line, holder, text, room, least, side = 'left') {
  const told = shorter => { if (holder.textContent !== shorter) holder.textContent = shorter; fitLine(line, room, side); return isReadable(line, least); };
  if (told(text)) return;
  for (const shorter of shorterOf(text)) if (told(shorter)) return;
}

/** Ever shorter texts: a word less, then a letter less. Pure. @param {string} text @returns {string[]} */
export function shorterOf(text) {
  const words = text.trim().split(/\s+/), letters = [...words[0]];
  const less = words.slice(1).map((_, gone) => `${words.slice(0, words.length - 1 - gone).join(' ')}${MORE}`);
  return [...less, ...letters.slice(1).map((_, gone) => letters.slice(0, letters.length - 1 - gone).join('') + MORE)];
}

/** Wraps text and shrinks it until it fits. @param {HTMLElement} block wraps by itself @param {number} width @param {number} height CSS pixels @param {number} least size of text, CSS pixels @returns {boolean} whether it fits at no less than that */
export function fitBlock(block, width, height, least) {
  block.style.fontSize = '';
  const over = () => block.offsetHeight > height + 1 || block.offsetWidth > width + 1;
  for (let size = parseFloat(getComputedStyle(block).fontSize); over(); size *= 0.96) {
    if (size * 0.96 < least - ROUNDING) { block.style.fontSize = `${least}px`; return !over(); }
    block.style.fontSize = `${size * 0.96}px`;
  }
  return true;
}
