// Who works, at what, and who is next: pieces of one lane's line, told from its steps and the step that is open. Pure.
import { whereIs } from '../strip.js';
import { words } from './words.js';

/** What has been done so far, where it has no end and the round says nothing of how far that is: on the board instead of it. @param {any} lane as in the frame */
export function doneOf(lane) { return lane.roundsAndReps && lane.worth > 0 ? words.roundsAndReps(lane.roundsAndReps) : ''; }

/**
 * @typedef {{who: string, what: string, round: string, next: string}} Work empty where there is nothing to say
 * @param {any} lane as in the sheet @param {number} open number of the open step, from 1
 * @param {number|null} [restMs] how long nobody works yet; null: somebody does @returns {Work}
 */
export function workOf(lane, open, restMs = null) {
  const step = lane.steps[open - 1];
  if (!step) return { who: '', what: '', round: '', next: '' };
  if (restMs !== null) return { who: words.rest(restMs), what: '', round: '', next: nameAt(lane, step.athlete) };
  const rounds = lane.expectedSteps ? 0 : lane.steps.reduce((most, other) => Math.max(most, other.round ?? 0), 0);
  return { who: [step.athlete, ...step.with ?? []].map(athlete => nameAt(lane, athlete)).join(' + '), what: taskOf(step), round: roundOf(step, rounds), next: nextOf(lane, open) };
}

/** Part of the last set's expected time after which its end, and with it the tag, is expected. */
const SOON = 0.75;

/**
 * Whether a lane is about to tag: `sure` when the tag is the open step, else by the expected time of the set before it. Pure.
 * @param {any} sheetLane @param {any} lane as in the frame @param {number|null} laneMs @returns {{next: string, sure: boolean}|null}
 */
export function tagOf(sheetLane, lane, laneMs) {
  const { open: at, resting, fromMs } = whereIs(sheetLane, lane, laneMs);
  if (lane.status !== 'working' || resting) return null;
  const [open, then] = sheetLane.steps.slice(at - 1);
  const nameOf = tag => sheetLane.athletes[tag.to - 1] ?? '';
  if (open?.kind === 'tag') return { next: nameOf(open), sure: true };
  if (then?.kind !== 'tag' || laneMs === null || !(open.expectedMs > 0)) return null;
  const since = at !== (lane.open ?? 1) ? fromMs : at === 1 ? 0 : lane.sinceMs;
  return since !== null && since !== undefined && laneMs - since >= open.expectedMs * SOON ? { next: nameOf(then), sure: false } : null;
}

function nameAt(lane, athlete) { return athlete > 0 ? lane.athletes[athlete - 1] ?? '' : words.works; }

function taskOf(step) {
  if (step.kind === 'tag') return words.tag;
  return step.kind === 'set' ? step.movement ?? step.label : step.label;
}

function roundOf(step, rounds) {
  if (step.round > 0) return rounds > 1 ? words.round(step.round, rounds) : '';
  return rounds > 0 ? (step.round === 0 ? words.beforeRounds : words.afterRounds) : '';
}

/** The next athlete who is somebody else; for a team that works as one, the next movement. */
function nextOf(lane, open) {
  const [now, ...later] = lane.steps.slice(open - 1);
  if (now.kind === 'tag') return lane.athletes[now.to - 1] ?? '';
  if (now.athlete === 0) return later.find(step => step.kind === 'set')?.movement ?? '';
  const next = later.find(step => step.athlete !== now.athlete && step.athlete > 0);
  return next ? lane.athletes[next.athlete - 1] ?? '' : '';
}
