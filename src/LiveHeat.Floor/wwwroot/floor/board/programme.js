// Nothing on the floor, or a result that everybody has read: the competition's name, the next heat with who stands in which lane and when, and what comes after it.
import { fitWords } from './fit.js';
import { make, nameOf } from './nodes.js';
import { words } from './words.js';

const LATER = 3, COLOURS = 6;
const TO_COME = new Set(['planned', 'called', 'armed']);
const SOON_MS = 90 * 60_000;              // further away only the time of day is told
const TURN_MS = 10_000;

/** Whether a heat is to come. @param {any} program */
export function hasNext(program) { return (program?.heats ?? []).some(heat => TO_COME.has(heat.phase)); }

/**
 * Shows the next heat, and as many of those after it as there is room for. Lanes for which there is no room take turns.
 * @param {HTMLElement} place @param {any} program as in the wire's program, or null @param {HTMLElement} board @param {number|null} now @param {number} least size of text, CSS pixels
 */
export function showProgramme(place, program, board, now, least) {
  const [next, ...later] = (program?.heats ?? []).filter(heat => TO_COME.has(heat.phase));
  const competition = make('h1', 'competition', nameOf(program?.competition ?? ''));
  const label = make('p', 'next-label', next ? words.upNext : words.noNextHeats);
  if (!next) { place.replaceChildren(make('section', 'programme', competition, label)); return; }
  const lanes = next.lanes.map(laneOf), list = make('ol', 'next-lanes', ...lanes);
  const heading = make('h2', 'next-heat', nameOf(next.title), when(next, now));
  const after = later.slice(0, LATER).map(heat => make('li', 'later-heat', nameOf(heat.plannedAt ? words.plannedTitle(heat.title, heat.plannedAt) : heat.title), ' ', make('span', 'later-workout', nameOf(heat.workout ?? ''))));
  const rest = make('ol', 'later-heats', ...after);
  place.replaceChildren(make('section', 'programme', competition, label, heading, make('p', 'next-workout', nameOf(next.workout ?? '')), list, rest));
  if (board.dataset.layout !== 'board') return;
  for (const lane of lanes) {
    const name = /** @type {HTMLElement} */ (lane.querySelector('.next-name'));
    fitWords(name, name, name.textContent ?? '', lane.clientWidth - name.offsetLeft + lane.offsetLeft, least);
  }
  const over = () => place.scrollHeight > place.clientHeight + 1;
  for (const gone of [...after].reverse()) if (over()) gone.remove();
  for (const gone of [label, place.querySelector('.next-workout'), competition]) if (over()) gone?.remove();
  turnLanes(list, lanes, over, now);
}

/** Leaves as many lanes as there is room for, other ones every ten seconds. */
function turnLanes(list, lanes, over, now) {
  let fitting = lanes.length;
  while (fitting > 1 && over()) lanes[--fitting].remove();
  if (fitting === lanes.length) return;
  const pages = Math.ceil(lanes.length / fitting), page = Math.floor((now ?? 0) / TURN_MS) % pages;
  list.replaceChildren(...lanes.slice(page * fitting, (page + 1) * fitting));
}

function laneOf({ lane, name }) {
  const row = make('li', 'next-lane', make('b', 'next-number', String(lane)), make('span', 'next-name', name));
  row.style.setProperty('--tape', `var(--tape-${(lane - 1) % COLOURS})`);
  return row;
}

/** When it is planned: the time of day, and where it is near how long that is. */
function when(heat, now) {
  if (!heat.plannedAt) return '';
  const soon = now !== null && heat.plannedAt - now < SOON_MS && heat.plannedAt > now - SOON_MS;
  return make('span', 'next-when', words.plannedAt(heat.plannedAt), ...(soon ? [' · ', words.plannedIn(Math.ceil((heat.plannedAt - now) / 60_000))] : []));
}
