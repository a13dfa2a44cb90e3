// The text on the screen whose capitals are lower than they must be, as sentences. Called with { root, least }: CSS pixels.
// A capital's height is measured from the typeface that is drawn, not taken from the style sheet.
({ root, least }) => {
  const SLACK = 0.75;                         // CSS pixels: half a pixel of the typeface's own rounding, and that of sizes
  const ink = document.createElement('canvas').getContext('2d'), faults = [];
  const walker = document.createTreeWalker(document.querySelector(root), NodeFilter.SHOW_TEXT);
  let seen = 0;
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const element = node.parentElement;
    if (!node.textContent.trim() || element.closest('.summary, [hidden]') || !element.checkVisibility({ opacityProperty: true, visibilityProperty: true })) continue;
    seen++;
    const { fontWeight, fontSize, fontFamily } = getComputedStyle(element);
    ink.font = `${fontWeight} ${fontSize} ${fontFamily}`;
    const high = ink.measureText('H').actualBoundingBoxAscent;
    if (high < least - SLACK) faults.push(`${element.closest('[class]').className} "${node.textContent.trim().slice(0, 30)}": ${high.toFixed(1)} < ${least.toFixed(1)}`);
  }
  return seen ? faults : ['there is no text at all'];
}
