// What the board and the strips say, by name. The sentences are in ../words/board.*.json, a file a language.
import { wordsOf } from '../words/words.js';

const told = await wordsOf('board');
const say = (key, places = {}) => told.say(key, places);
const MINUS = '\u2212';

/** Heat time as a clock shows it. Hours only when there are any. @param {number} ms @param {number} decimals of a second, cut off and not rounded */
export function timeText(ms, decimals = 0) {
  const unit = 10 ** (3 - decimals), whole = Math.floor(Math.max(0, ms) / unit) * unit;
  const seconds = Math.floor(whole / 1000), hours = Math.floor(seconds / 3600), minutes = Math.floor(seconds / 60) % 60;
  const two = value => String(value).padStart(2, '0');
  const head = hours ? `${hours}:${two(minutes)}` : String(minutes);
  const tail = decimals ? told.decimalMark + String(whole % 1000).padStart(3, '0').slice(0, decimals) : '';
  return `${head}:${two(seconds % 60)}${tail}`;
}

/** An official time, with the decimals its rounding left and no more. */
export function officialText(ms) { return timeText(ms, ms % 100 === 0 ? 1 : ms % 10 === 0 ? 2 : 3); }

/** Whole seconds still to go: 0:01 until there are none. */
export function leftText(ms) { return timeText(Math.ceil(ms / 1000) * 1000); }

export function ordinal(place) { return { number: told.write(place), suffix: told.ordinal(place) }; }

export const words = {
  title: (competition, heat) => [heat, competition].filter(Boolean).join(' · '),
  lane: number => say('lane', { number }),
  workout: ({ name, summary }) => (name && summary ? say('workout', { name, summary }) : name || summary || ''),

  // header
  left: ms => say('left', { time: leftText(ms) }),
  leftIn: (division, ms) => say('left.division', { division, time: leftText(ms) }),
  cap: ms => say('cap', { time: timeText(ms) }),
  caps: (least, most) => say('caps', { least: timeText(least), most: timeText(most) }),
  capReached: say('cap.reached'),
  capReachedIn: division => say('cap.reached.division', { division }),
  lastMinute: say('cap.last-minute'),
  startsIn: ms => leftText(ms),
  startsInLabel: say('starts-in'),
  go: say('go'),
  ready: (ready, all) => say('ready', { ready, all }),
  allReady: say('ready.all'),
  upNext: say('up-next'),

  // rows
  works: say('together'),
  round: (round, of) => say('round', { round, of }),
  roundLeft: (round, of, ms) => say('round.left', { round, of, time: leftText(ms) }),
  rest: ms => say('rest', { time: leftText(ms) }),
  beforeRounds: say('round.before'),
  afterRounds: say('round.after'),
  tag: say('tag'),
  tagTo: next => say('tag.to', { next }),
  tied: '=',
  leads: say('leads'),
  leaderOf: (division, names) => say('leader.division', { division, names: told.list(names) }),
  level: say('level'),
  finished: say('finished'),
  behind: ms => (ms < 500 ? say('behind.moment') : ms < 180_000 ? say('behind.seconds', { count: Math.round(ms / 1000) }) : say('behind.minutes', { count: Math.round(ms / 60_000) })),
  behindWorth: (worth, score) => MINUS + words.worth(worth, score),
  finishTime: lane => (lane.officialMs ?? lane.finishMs ?? null) === null ? say('time.unknown') : officialText(lane.officialMs ?? lane.finishMs),
  /** @param {number} worth @param {{unit: string, scale: number}} [score] what it counts; left out: reps */
  worth: (worth, score) => (score ? say('measure', { amount: worth / score.scale, unit: score.unit }) : told.count('reps', worth)),
  roundsAndReps: ({ rounds, reps }) => (rounds === 0 ? told.count('reps', reps) : reps === 0 ? told.count('rounds', rounds) : say('rounds.and', { rounds: told.count('rounds', rounds), reps })),
  laneReady: say('lane.ready'),
  laneNotReady: say('lane.not-ready'),
  withdrawn: say('lane.withdrawn'),
  disqualified: say('lane.disqualified'),
  stopped: say('lane.stopped'),
  noPlace: '\u2013',

  // strip
  /** @param {any} lane @param {boolean} certified */
  stripNote(lane, certified) {
    switch (lane.status) {
      case 'finished': return certified ? words.finishTime(lane) : say('lane.unofficial', { time: words.finishTime(lane) });
      case 'through': return certified ? words.worth(lane.worth, lane.score) : say('lane.unofficial', { time: words.worth(lane.worth, lane.score) });
      case 'capped': case 'held': case 'stopped': case 'withdrawn': case 'disqualified': return say(`lane.${lane.status}`);
      default: return '';
    }
  },
  stripLabel(lane, steps, note) {
    const open = steps[lane.open - 1];
    const where = open ? say('strip.step', { step: lane.open, of: steps.length, label: open.label }) : /finished|through/.test(lane.status) && say('strip.done');
    return [say('strip.lane', { number: lane.lane }), where, note].filter(Boolean).join(', ');
  },
  capPace: say('cap-pace'),
  capPaceOf: division => say('cap-pace.division', { division }),

  // replay
  play: say('replay.play'),
  pause: say('replay.pause'),
  replayAt: say('replay.at'),
  replaySpeed: say('replay.speed'),
  asHappened: say('replay.happened'),
  asKnown: say('replay.known'),
  noReplay: say('replay.none'),

  // notices
  halted: say('halted'),
  recalled: say('recalled'),
  old: seconds => say('age.old', { count: seconds }),
  notLive: ms => (ms < 120_000 ? say('age.not-live.seconds', { count: Math.floor(ms / 1000) }) : say('age.not-live.minutes', { count: Math.floor(ms / 60_000) })),
  lanePage: (first, last) => (first === last ? say('page.lane', { number: first }) : say('page.lanes', { first, last })),
  resultPage: (page, pages) => say('page', { page, pages }),

  // result
  status: { ended: say('result.ended'), frozen: say('result.frozen'), certified: say('result.certified') },
  statusDetail: (phase, revision) => (phase === 'certified' && revision > 1 ? say('result.certified.revision', { number: revision }) : say(`result.${phase}.detail`)),

  // nothing on the floor
  noHeat: say('programme.no-heat'),
  noNextHeats: say('programme.none'),
  plannedAt: instant => told.timeOfDay(instant),
  plannedTitle: (title, instant) => say('programme.at', { title, time: told.timeOfDay(instant) }),
  plannedIn: minutes => (minutes < 1 ? say('programme.now') : told.count('programme.in', minutes)),

  // between heats
  standings: say('standings'),
  provisional: say('standings.provisional'),
  afterCertified: say('standings.certified'),
  points: points => told.count('standings.points', points),
  until: instant => say('message.until', { time: told.timeOfDay(instant) }),

  // how much can be read
  fit: {
    lanes: lanes => told.count('fit.lanes', lanes),
    seat: ({ width, seat, mm, px }) => say('fit.seat', { width, seat, mm: Math.round(mm), px: Math.round(px) }),
    unknown: say('fit.unknown'),
    tooFar: say('fit.too-far'),
  },

  // for screen readers
  spoken: {
    before: (heat, count) => told.count('spoken.before', count, { heat }),
    countDown: seconds => told.count('spoken.count-down', seconds),
    leads: names => (names.length > 1 ? say('spoken.share', { names: told.list(names) }) : say('spoken.leads', { names: told.list(names) })),
    of: (division, sentence) => say('spoken.of', { division, sentence }),
    second: (name, gap) => say('spoken.second', { name, gap }),
    left: minutes => (minutes < 1 ? say('spoken.left.less') : told.count('spoken.left', minutes)),
    result: (status, first) => say('spoken.result', { status, first }),
    // A unit may be short for something and bring a full stop of its own.
    first: (name, score) => say('spoken.first', { name, score }).replace(/\.\.$/, '.'),
  },
};
