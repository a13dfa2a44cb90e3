// The few things the board does to the page: make an element once, change its text only when the text changed.

/** @param {string} tag @param {string} name its class @param {...(Node|string)} inside @returns {HTMLElement} */
export function make(tag, name = '', ...inside) {
  const element = document.createElement(tag);
  if (name) element.className = name;
  element.append(...inside);
  return element;
}

/** Whether the text had to change. @param {Element} element @param {string} text */
export function say(element, text) {
  if (element.textContent === text) return false;
  element.textContent = text;
  return true;
}

/** A name on its own, so that Hebrew or Arabic beside English keeps its order. @param {string} text */
export function nameOf(text, tag = 'bdi') { return make(tag, '', text); }

/** @param {HTMLElement} element @param {Record<string, string|number|null|undefined>} data null takes the attribute away */
export function mark(element, data) {
  for (const [name, value] of Object.entries(data)) {
    if (value === null || value === undefined || value === '') delete element.dataset[name];
    else if (element.dataset[name] !== String(value)) element.dataset[name] = String(value);
  }
}

const shapes = {
  arrow: 'M1 8h16M12 2.5 18 8l-6 5.5',
  tick: 'M2.5 9 7.5 14 17 3',
};

/** A mark drawn as a line, since typefaces lack it. @param {'arrow'|'tick'} shape */
export function drawn(shape) {
  const svg = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
  svg.setAttribute('viewBox', '0 0 19 16');
  svg.setAttribute('class', `drawn ${shape}`);
  svg.setAttribute('aria-hidden', 'true');
  const line = document.createElementNS('http://www.w3.org/2000/svg', 'path');
  line.setAttribute('d', shapes[shape]);
  svg.append(line);
  return svg;
}
