// What is wrong with how a page looks, as sentences: text that is cut or covers other text, what is off the screen, controls too small to hit.
// Called with { root, least, scrolls }: a selector; the least size of a control in CSS pixels; whether the page itself may scroll down.
({ root, least, scrolls }) => {
  const SLACK = 1.5;                          // CSS pixels: rounding, and the slant of a letter
  const within = document.querySelector(root), faults = [];
  if (!within) return [`there is no ${root}`];
  const short = text => text.trim().replace(/\s+/g, ' ').slice(0, 40);
  const named = element => `${element.tagName.toLowerCase()}${element.dataset.act ? `[${element.dataset.act}]` : ''} "${short(element.textContent)}"`;
  const styleOf = element => getComputedStyle(element);
  const spoken = element => !!element.closest('.summary, .mud-sr-only, .on-strip, [hidden]');          // for screen readers, or not there
  const seen = element => !spoken(element) && element.checkVisibility({ opacityProperty: true, visibilityProperty: true });
  const ancestors = element => { const all = []; for (let one = element; one && one !== document.documentElement; one = one.parentElement) all.push(one); return all; };
  const cuts = element => { const { overflowX, overflowY } = styleOf(element); return overflowX !== 'visible' || overflowY !== 'visible'; };
  const scrolling = element => /auto|scroll/.test(styleOf(element).overflowY) && element.scrollHeight > element.clientHeight + 1;

  // The letters themselves: a line's box is higher than they are.
  const texts = [];
  const walker = document.createTreeWalker(within, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const element = node.parentElement;
    if (!node.textContent.trim() || !seen(element)) continue;
    const range = document.createRange();
    range.selectNodeContents(node);
    for (const box of range.getClientRects()) {
      if (box.width < 1 || box.height < 1) continue;
      const half = parseFloat(styleOf(element).fontSize) * 0.36, middle = (box.top + box.bottom) / 2;
      texts.push({ element, text: short(node.textContent), left: box.left, right: box.right, top: middle - half, bottom: middle + half });
    }
  }

  // A box that something scrolls may reach beyond what is seen of it; what it scrolls out of sight is not looked at.
  const shownBy = (box, element) => {
    const scroller = ancestors(element).find(scrolling);
    if (!scroller) return true;
    const frame = scroller.getBoundingClientRect();
    return box.top >= frame.top - SLACK && box.bottom <= frame.bottom + SLACK;
  };
  const offScreen = box => box.left < -SLACK || box.right > innerWidth + SLACK || (!scrolls && (box.top < -SLACK || box.bottom > innerHeight + SLACK));

  for (const box of texts) {
    box.shown = shownBy(box, box.element);
    if (!box.shown) continue;
    if (offScreen(box)) faults.push(`off the screen: "${box.text}" at ${[box.left, box.right, box.top, box.bottom].map(Math.round)}`);
    for (const one of ancestors(box.element)) {
      if (!cuts(one) || scrolling(one)) continue;
      const frame = one.getBoundingClientRect();
      if (box.left < frame.left - SLACK || box.right > frame.right + SLACK || box.top < frame.top - SLACK || box.bottom > frame.bottom + SLACK)
        faults.push(`cut: "${box.text}" by ${one.className || one.tagName} ${[box.left - frame.left, frame.right - box.right, box.top - frame.top, frame.bottom - box.bottom].map(Math.round)}`);
    }
  }

  for (const element of within.querySelectorAll('*')) {
    if (!element.textContent.trim() || !seen(element) || element.closest('svg')) continue;
    const { overflowX, display } = styleOf(element);
    if (display !== 'inline' && overflowX !== 'visible' && !/auto|scroll/.test(overflowX) && element.scrollWidth > element.clientWidth + 1)
      faults.push(`wider than its place: ${named(element)} ${element.scrollWidth} > ${element.clientWidth}`);
  }

  // Text on text. What lies under an open panel is not on the screen: only what a finger there would meet is compared.
  const onTop = box => {
    const met = document.elementFromPoint((box.left + box.right) / 2, (box.top + box.bottom) / 2);
    return !met || met.contains(box.element) || box.element.contains(met) || ancestors(met).some(one => styleOf(one).pointerEvents === 'none');
  };
  const upper = texts.filter(box => box.shown && !offScreen(box)).map(box => ({ ...box, onTop: onTop(box) }));
  const meet = (one, other) => Math.min(one.right, other.right) - Math.max(one.left, other.left) > SLACK && Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top) > SLACK;
  upper.forEach((one, i) => upper.slice(0, i).forEach(other => {
    if (one.element !== other.element && (one.onTop === other.onTop) && meet(one, other)) faults.push(`on each other: "${one.text}" and "${other.text}"`);
  }));

  const controls = [...within.querySelectorAll('button, a[href], input:not([type=hidden]), select, textarea, [role=button], [role=radio], summary')].filter(seen);
  const boxes = controls.map(control => ({ control, box: control.getBoundingClientRect() }));
  for (const { control, box } of boxes) {
    if (box.width === 0 || !shownBy(box, control)) continue;
    if (box.width < least - 0.5 || box.height < least - 0.5) faults.push(`too small to hit: ${named(control)} ${Math.round(box.width)}x${Math.round(box.height)} < ${least}`);
    if (offScreen(box)) faults.push(`off the screen: ${named(control)} at ${[box.left, box.right, box.top, box.bottom].map(Math.round)}`);
  }

  const page = document.documentElement;
  if (page.scrollWidth > innerWidth + 1) faults.push(`the page is wider than the screen: ${page.scrollWidth} > ${innerWidth}`);
  return [...new Set(faults)];
}
