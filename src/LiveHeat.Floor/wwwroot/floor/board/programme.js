// Nothing on the floor: the competition's name and which heats come next, with who stands in which lane.
import { make, nameOf } from './nodes.js';
import { words } from './words.js';

const HEATS = 3;
const DONE = new Set(['ended', 'frozen', 'certified']);

/** Shows as many of the next heats as there is room for. @param {HTMLElement} place @param {any} program @param {HTMLElement} board */
export function showProgramme(place, program, board) {
  place.replaceChildren(programmeOf(program));
  const heats = [...place.querySelectorAll('.next-heat')];
  while (board.dataset.layout === 'board' && heats.length > 1 && board.scrollHeight > board.clientHeight) heats.pop()?.remove();
}

/** @param {any} program as in the wire's program, or null @returns {HTMLElement} */
function programmeOf(program) {
  const next = (program?.heats ?? []).filter(heat => !DONE.has(heat.phase)).slice(0, HEATS);
  const heats = next.map(heat => make('li', 'next-heat',
    make('b', 'next-title', nameOf(heat.title), heat.plannedAt ? ` · ${words.plannedAt(heat.plannedAt)}` : ''),
    make('span', 'next-workout', nameOf(heat.workout?.name ?? heat.workout ?? '')),
    make('span', 'next-teams', ...heat.lanes.flatMap(lane => [make('span', 'next-team', make('b', '', String(lane.lane)), ' ', nameOf(lane.name)), ' ']))));
  return make('section', 'programme',
    make('h1', 'competition', nameOf(program?.competition ?? '')),
    make('p', 'next-label', next.length ? words.nextHeats : words.noNextHeats),
    make('ol', 'next-heats', ...heats));
}
