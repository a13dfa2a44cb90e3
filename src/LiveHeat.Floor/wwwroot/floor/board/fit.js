// Makes a line of text fit its place without cutting it: first narrower, then smaller.

/** The narrowest a line may be drawn, as a part of its own width: below that letters run together from the stands. */
export const NARROWEST = 0.8;

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

/** Wraps text into at most `lines` lines and shrinks it until it fits. @param {HTMLElement} block wraps by itself @param {number} width @param {number} height CSS pixels @param {number} least smallest part of its size */
export function fitBlock(block, width, height, least = 0.6) {
  block.style.fontSize = '';
  const whole = parseFloat(getComputedStyle(block).fontSize);
  for (let size = 1; size > least && (block.offsetHeight > height + 1 || block.offsetWidth > width + 1); size -= 0.04) {
    block.style.fontSize = `${whole * (size - 0.04)}px`;
  }
}
