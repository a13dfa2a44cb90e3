// A lane's place and what stands beside it, as the board writes them. Pure. Order and gaps come with the frame; nothing is ranked here.
import { words, ordinal } from './words.js';

const STANDS_OUT = 3;

/**
 * @param {any} lane as in the frame
 * @param {'running'|'result'} scene
 * @param {any} [sheetLane] the same lane in the sheet
 * @returns {{place: {tie: string, number: string, suffix: string}|null, rank: number, beside: string}}
 *   rank: 1 to 3 for the places that stand out, else 0; beside: gap, time, reps or what became of the lane
 */
export function standingOf(lane, scene, sheetLane = null) {
  if (lane.status === 'withdrawn' || lane.status === 'disqualified') return { place: null, rank: 0, beside: words[lane.status] };
  const placed = lane.place > 0 && (scene === 'result' || hasShown(lane));
  const place = placed ? { tie: lane.tied ? words.tied : '', ...ordinal(lane.place) } : null;
  return { place, rank: placed && lane.place <= STANDS_OUT ? lane.place : 0, beside: scene === 'result' ? scoreOf(lane) : placed ? gapOf(lane, sheetLane) : unplaced(lane) };
}

/** Before their first confirmed step all teams share the first place, which says nothing. */
function hasShown(lane) { return lane.worth > 0 || (lane.open ?? 1) > 1 || lane.place > 1 || !lane.tied; }

function unplaced(lane) { return lane.status === 'stopped' ? words.stopped : ''; }

/** Where most work wins seconds decide nothing. */
function countsWork(lane, sheetLane) { return Boolean(lane.roundsAndReps || sheetLane?.windows); }

/** How far behind the leader in words, without a sign: in time, where most work wins in reps; empty where it is not known. @param {any} lane as in the frame @param {any} [sheetLane] */
export function behindOf(lane, sheetLane) {
  if (countsWork(lane, sheetLane)) return lane.gapWorth > 0 ? words.worth(lane.gapWorth, lane.score) : '';
  return lane.gapMs === null || lane.gapMs === undefined ? '' : words.behind(lane.gapMs);
}

function gapOf(lane, sheetLane) {
  if (lane.status === 'stopped') return '';
  if (/capped|through/.test(lane.status)) return scoreOf(lane);
  if (lane.roundsAndReps && lane.place === 1) return scoreOf(lane);
  if (countsWork(lane, sheetLane) && lane.gapWorth > 0) return words.behindWorth(lane.gapWorth, lane.score);
  if (lane.place === 1) return lane.status === 'finished' ? words.finished : words.leads;
  if (lane.gapMs !== null && lane.gapMs !== undefined) return words.behind(lane.gapMs);
  if (lane.gapWorth === null || lane.gapWorth === undefined) return '';
  return lane.gapWorth === 0 ? words.level : words.behindWorth(lane.gapWorth, lane.score);
}

/** A finisher's official time; the work of everyone else, less the reps of penalties; where it has no end, in rounds and reps. */
export function scoreOf(lane) {
  if (lane.status === 'finished') return words.finishTime(lane);
  if (lane.status === 'withdrawn' || lane.status === 'disqualified') return words[lane.status];
  if (lane.roundsAndReps) return words.roundsAndReps(lane.roundsAndReps);
  return words.worth(Math.max(0, (lane.worth ?? 0) - (lane.penaltyReps ?? 0) * (lane.score?.scale ?? 1)), lane.score);
}

/**
 * Who is in front, in words: the first three and how far they are behind; where several divisions are on the floor the first of each. Nobody before the first
 * confirmed work, and nobody where so many share a place that it says nothing.
 * @param {any[]} sheetLanes @param {any[]} lanes as in the frame @returns {string[]}
 */
export function leadersOf(sheetLanes, lanes) {
  const sheets = new Map(sheetLanes.map(lane => [lane.lane, lane]));
  const leading = lanes.filter(lane => lane.place >= 1 && lane.place <= STANDS_OUT && lane.worth > 0).sort((one, other) => one.place - other.place);
  if (new Set(sheetLanes.map(lane => lane.group)).size > 1) {
    return [...new Set(sheetLanes.map(lane => lane.divisionName))].flatMap(division => {
      const names = leading.map(lane => ({ place: lane.place, sheet: sheets.get(lane.lane) })).filter(({ place, sheet }) => place === 1 && sheet.divisionName === division).map(({ sheet }) => sheet.name);
      return names.length && names.length < STANDS_OUT ? [words.leaderOf(division, names)] : [];
    });
  }
  return leading.length > STANDS_OUT ? [] : leading.map(lane => {
    const { number, suffix } = ordinal(lane.place), sheet = sheets.get(lane.lane);
    return `${number}${suffix} ${sheet.name} ${lane.place > 1 ? standingOf(lane, 'running', sheet).beside : ''}`.trim();
  });
}

/** Lane numbers by place, each group by itself, in the order in which the groups stand on the floor. @param {any[]} sheetLanes @param {Map<number, any>} states */
export function resultOrder(sheetLanes, states) {
  const groups = [...new Set(sheetLanes.map(lane => lane.group))];
  const rank = lane => states.get(lane.lane)?.place ?? Infinity;
  return [...sheetLanes]
    .sort((one, other) => groups.indexOf(one.group) - groups.indexOf(other.group) || compare(rank(one), rank(other)) || one.lane - other.lane)
    .map(lane => lane.lane);
}

function compare(one, other) { return one === other ? 0 : one < other ? -1 : 1; }
