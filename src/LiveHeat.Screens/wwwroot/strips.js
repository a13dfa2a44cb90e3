// Hands sheet and frame, as JSON texts in the words of docs/wire.md, to the strip module.
import { mountStrips } from '/floor/strip.js';

/** @param {HTMLElement} root holds elements with data-strip="<lane>" @param {string} sheet @param {string} frame */
export function mount(root, sheet, frame, serverNow, rate) {
  const strips = mountStrips(root, JSON.parse(sheet), JSON.parse(frame), { serverNow, rate });
  return {
    update(next, now, nextRate) { strips.synchronise(now, nextRate); strips.update(JSON.parse(next)); },
    take(next) { strips.take(JSON.parse(next)); },
    dispose() { strips.dispose(); },
  };
}
