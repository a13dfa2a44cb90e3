// The little that is needed to make and change elements.

/**
 * An element. `act` becomes data-act (what a test and a style hold on to), `on` its click; a child may be null.
 * @param {string} name "button.big.wide" @param {Record<string, any>} [props] @param {...(Node|string|number|null|undefined|false)} children
 * @returns {any}
 */
export function h(name, props = {}, ...children) {
  const [tag, ...classes] = name.split('.');
  const element = document.createElement(tag || 'div');
  if (classes.length) element.className = classes.join(' ');
  if (tag === 'button') element.type = 'button';
  for (const [key, value] of Object.entries(props)) {
    if (value === undefined || value === null) continue;
    if (key === 'act') element.dataset.act = value;
    else if (key === 'on') element.addEventListener('click', value);
    else if (key in element && typeof value !== 'string') element[key] = value;
    else element.setAttribute(key, value);
  }
  element.append(...children.filter(child => child !== null && child !== undefined && child !== false).map(child => (typeof child === 'number' ? String(child) : child)));
  return element;
}

/** Changes a text only when it is another: the screen is not touched ten times a second for nothing. */
export function put(element, text) {
  if (element.textContent !== text) element.textContent = text;
}

/** Replaces an element's children only when `key` is another than last time. */
export function refill(element, key, build) {
  if (element.filledFor === key) return;
  element.filledFor = key;
  element.replaceChildren(...[build()].flat().filter(Boolean));
}

/** The largest font size, in px, at which the element's text stays inside `box`; never below `least`. */
export function fit(element, box, most, least = 14) {
  const key = `${element.textContent}|${box.clientWidth}|${box.clientHeight}`;
  if (element.fittedFor === key || !box.clientWidth) return;
  element.fittedFor = key;
  let low = least, high = most;
  while (high - low > 1) {
    const middle = (low + high) / 2;
    element.style.fontSize = `${middle}px`;
    if (box.scrollWidth > box.clientWidth || box.scrollHeight > box.clientHeight) high = middle; else low = middle;
  }
  element.style.fontSize = `${Math.floor(low)}px`;
}

/** "7:02", or "7:02.4" with tenths; a minus before GO. */
export function clockText(ms, tenths = false) {
  const whole = tenths ? Math.floor(Math.abs(ms) / 100) / 10 : Math.floor(Math.abs(ms) / 1_000);
  const minutes = Math.floor(whole / 60), seconds = whole - minutes * 60;
  return `${ms < 0 && whole > 0 ? '−' : ''}${minutes}:${seconds.toFixed(tenths ? 1 : 0).padStart(tenths ? 4 : 2, '0')}`;
}
