// The little that is needed to make and change elements.

/** An element such as "p.lead"; `act` becomes data-act, `on` its click; false and null children are left out. @returns {any} */
export function h(name, { act, on, ...props } = {}, ...children) {
  const [tag, ...classes] = name.split('.');
  const element = document.createElement(tag);
  element.className = classes.join(' ');
  if (tag === 'button') element.type = 'button';
  if (act) element.dataset.act = act;
  if (on) element.onclick = on;
  for (const [key, value] of Object.entries(props)) {
    if (typeof value === 'boolean') element[key] = value; else if (value !== undefined) element.setAttribute(key, value);
  }
  element.append(...children.filter(child => child || child === 0));
  return element;
}

export function button(act, text, on, classes = '', props = {}) { return h(`button${classes}`, { act, on, ...props }, text); }

/** The screen is not touched when the text is the same. */
export function put(element, text) { if (element.textContent !== text) element.textContent = text; }

/** Nor when what the children are made of is the same. */
export function refill(element, made, build) {
  const key = JSON.stringify(made);
  if (element.madeOf === key) return;
  element.madeOf = key;
  element.replaceChildren(...[build()].flat().filter(Boolean));
}

/** The largest font size, in px, at which the text stays inside its element. */
export function fit(element, most, least = 11) {
  const { clientWidth, clientHeight, textContent, style } = element, key = `${textContent} ${clientWidth} ${clientHeight}`;
  if (element.fitted === key || !clientWidth) return;
  element.fitted = key;
  for (let size = most; least < most; size = Math.ceil((least + most) / 2)) {
    style.fontSize = `${size}px`;
    if (element.scrollWidth > clientWidth || element.scrollHeight > clientHeight) most = size - 1; else least = size;
  }
  style.fontSize = `${least}px`;
}

/** "7:02", or "7:02.4" with tenths. */
export function clockText(ms, tenths = 0) {
  const parts = Math.floor(Math.max(0, ms) / (tenths ? 100 : 1_000)) / (tenths ? 10 : 1), minutes = Math.floor(parts / 60);
  return `${minutes}:${(parts - minutes * 60).toFixed(tenths).padStart(tenths ? 4 : 2, '0')}`;
}

/** The lane as a small strip of tape: each set as wide as its expected time, joints at the tags, the roll at the end. */
export function strip() {
  const root = h('div.strip', { 'aria-hidden': 'true' });
  return {
    root,
    update({ steps, open, count, step }) {
      const sum = some => some.reduce((all, { expectedMs }) => all + expectedMs, 0), percent = ms => ms / sum(steps) * 100;
      const at = percent(sum(steps.slice(0, open - 1)) + (step?.quantity ? step.expectedMs * count / step.quantity : 0));
      refill(root, [at, steps.length], () => [
        h('div.tape', { style: `width:${at}%` }),
        ...steps.map(({ kind }, i) => kind === 'tag' && h('i', { style: `left:${percent(sum(steps.slice(0, i + 1)))}%` })),
        step && h('div.roll', { style: `--at:${at}` }),
      ]);
    },
  };
}
