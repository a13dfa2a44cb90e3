// Text that does not stand out enough from what is behind it, as sentences. Called with { root, least }: a ratio as WCAG 2.2 defines it
// (relative luminance, (L1 + 0.05) / (L2 + 0.05)). Tape is drawn by pictures: its colour is the lane's --tape.
({ root, least }) => {
  const ink = document.createElement('canvas').getContext('2d', { willReadFrequently: true }), faults = new Set(), pairs = new Set();
  ink.canvas.width = ink.canvas.height = 1;
  const rgba = colour => { ink.clearRect(0, 0, 1, 1); ink.fillStyle = colour; ink.fillRect(0, 0, 1, 1); return [...ink.getImageData(0, 0, 1, 1).data]; };
  const light = colour => { const [r, g, b] = rgba(colour).map(value => value / 255).map(value => (value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4)); return 0.2126 * r + 0.7152 * g + 0.0722 * b; };
  const value = (element, name) => getComputedStyle(element).getPropertyValue(name).trim();
  const behind = element => {
    for (let one = element; one; one = one.parentElement) {
      if (one.matches('.lane-number, .next-number')) return value(one, '--tape');
      if (one.matches('.strip-note.on-tape')) return value(one, `--tape-${one.closest('[data-colour]').dataset.colour}`);
      const { backgroundColor } = getComputedStyle(one);
      if (rgba(backgroundColor)[3] > 250) return backgroundColor;
    }
    return value(document.documentElement, '--ground');
  };
  const walker = document.createTreeWalker(document.querySelector(root), NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const element = node.parentElement;
    if (!node.textContent.trim() || element.closest('.summary, [hidden]') || !element.checkVisibility({ opacityProperty: true, visibilityProperty: true })) continue;
    const { color, opacity } = getComputedStyle(element), ground = behind(element);
    if (rgba(color)[3] < 20) continue;                  // written as an outline only
    const [one, other] = [light(color), light(ground)].sort((a, b) => b - a), ratio = (one + 0.05) / (other + 0.05);
    pairs.add(`${color} on ${ground}`);
    if (ratio < least || Number(opacity) < 1) faults.add(`${element.closest('[class]').className} "${node.textContent.trim().slice(0, 20)}" ${color} on ${ground}: ${ratio.toFixed(2)}`);
  }
  return pairs.size > 1 ? [...faults] : ['fewer than two colours are in use'];
}
