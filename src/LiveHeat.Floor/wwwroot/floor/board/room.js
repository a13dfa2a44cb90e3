// How much of a row the team's text may have: as much as this heat's longest texts need, within limits.
import { words } from './words.js';
import { workOf } from './work.js';

const LEAST = 0.2, MOST = 0.33, MOST_SHORT = 0.44, MOST_STANDING = 0.24;   // parts of a row's width

/**
 * For the team's text: its name, who works and who is next, or afterwards all its athletes.
 * @param {any} sheet @param {HTMLElement} board carries the sizes @param {string} scene @param {number} width of a row, CSS pixels @returns {number} CSS pixels
 */
export function nameRoom(sheet, board, scene, width) {
  const name = sizeOf(board, 'lane-name'), work = sizeOf(board, 'lane-work'), wide = ruler();
  let most = 0;
  for (const lane of sheet.lanes) {
    most = Math.max(most, wide(name, lane.name) + parseFloat(name.split(' ')[1]) * 0.2);
    for (const line of board.dataset.lines === '1' ? [] : scene === 'running' ? workLines(lane, board) : scene === 'result' ? [lane.athletes.join(' MM ')] : []) {
      most = Math.max(most, wide(work, line) * 0.97);
    }
  }
  return Math.round(Math.min((board.dataset.lines === '1' ? MOST_SHORT : MOST) * width, Math.max(LEAST * width, most)));
}

/** All that may come to stand there during the heat, so that nothing moves while it runs. */
function workLines(lane, board) {
  const two = board.dataset.lines === '3';                      // who works and who is next have a line each
  return lane.steps.filter(step => step.kind === 'set').flatMap(step => {
    const { who, what, round, next } = workOf(lane, step.step);
    const far = lane.expectedSteps ? words.roundsAndReps({ rounds: 88, reps: 88 }) : round;
    return (two ? [[who, what], [far, 'MM', next]] : [[who, what, far, 'M', next]]).map(line => line.join('  '));
  });
}

/** Place and gap, and where several divisions are on the floor the division between them. @returns {number|null} null: as the style sheet has it */
export function standingRoom(sheet, board, width) {
  const names = [...new Set(sheet.lanes.map(lane => lane.divisionName))];
  if (names.length < 2) return null;
  const label = sizeOf(board, 'lane-label'), division = sizeOf(board, 'division'), wide = ruler();
  const most = wide(label, '10th') + Math.max(...names.map(text => wide(division, text))) + wide(label, '888 s') * 0.8 + parseFloat(label.split(' ')[1]) * 1.6;
  return Math.round(Math.min(MOST_STANDING * width, most));
}

function ruler() {
  const ink = /** @type {CanvasRenderingContext2D} */ (document.createElement('canvas').getContext('2d'));
  return (font, text) => { ink.font = font; return ink.measureText(text).width; };
}

/** The font a class gets inside the lanes, as canvas wants it. */
function sizeOf(board, name) {
  const probe = document.createElement('span');
  probe.className = name;
  board.querySelector('.lanes')?.append(probe);
  const { fontWeight, fontSize, fontFamily } = getComputedStyle(probe);
  probe.remove();
  return `${fontWeight} ${fontSize} ${fontFamily}`;
}
