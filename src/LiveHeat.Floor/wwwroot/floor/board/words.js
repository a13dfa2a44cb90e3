// Every word the board and the strips say, in English. Another language is another table of the same shape.

const ordinals = new Intl.PluralRules('en', { type: 'ordinal' });
const suffixes = { one: 'st', two: 'nd', few: 'rd', other: 'th' };
const MINUS = '\u2212';

/** Heat time as a clock shows it. Hours only when there are any. @param {number} ms @param {number} decimals of a second, cut off and not rounded */
export function timeText(ms, decimals = 0) {
  const unit = 10 ** (3 - decimals), whole = Math.floor(Math.max(0, ms) / unit) * unit;
  const seconds = Math.floor(whole / 1000), hours = Math.floor(seconds / 3600), minutes = Math.floor(seconds / 60) % 60;
  const two = value => String(value).padStart(2, '0');
  const head = hours ? `${hours}:${two(minutes)}` : String(minutes);
  const tail = decimals ? `.${String(whole % 1000).padStart(3, '0').slice(0, decimals)}` : '';
  return `${head}:${two(seconds % 60)}${tail}`;
}

/** An official time, with the decimals its rounding left and no more. */
export function officialText(ms) { return timeText(ms, ms % 100 === 0 ? 1 : ms % 10 === 0 ? 2 : 3); }

/** Whole seconds still to go: 0:01 until there are none. */
export function leftText(ms) { return timeText(Math.ceil(ms / 1000) * 1000); }

export function ordinal(place) { return { number: String(place), suffix: suffixes[ordinals.select(place)] }; }

function plural(count, one, many) { return `${count} ${Math.abs(count) === 1 ? one : many}`; }

function list(names) { return new Intl.ListFormat('en', { type: 'conjunction' }).format(names); }

export const words = {
  title: (competition, heat) => [heat, competition].filter(Boolean).join(' · '),
  lane: number => `lane ${number}`,
  workout: workout => [workout.name, workout.summary].filter(Boolean).join(': '),

  // header
  left: ms => `${leftText(ms)} left`,
  leftIn: (division, ms) => `${division}: ${leftText(ms)} left`,
  cap: ms => `time cap ${timeText(ms)}`,
  caps: (least, most) => `time caps ${timeText(least)} to ${timeText(most)}`,
  capReached: 'cap reached',
  startsIn: ms => leftText(ms),
  startsInLabel: 'starts in',
  go: 'GO',
  ready: (ready, all) => `${ready} of ${all} ready`,
  allReady: 'all lanes ready',
  upNext: 'up next',

  // rows
  works: 'together',
  round: (round, of) => `round ${round}/${of}`,
  beforeRounds: 'first work',
  afterRounds: 'last work',
  tag: 'tag',
  tied: '=',
  leads: 'leads',
  level: 'level',
  finished: 'finished',
  behind: ms => (ms < 500 ? '< 1 s' : ms < 180_000 ? `${Math.round(ms / 1000)} s` : `${Math.round(ms / 60_000)} min`),
  behindWorth: (worth, score) => `${MINUS}${words.worth(worth, score)}`,
  finishTime: lane => (lane.officialMs ?? lane.finishMs ?? null) === null ? 'time unknown' : officialText(lane.officialMs ?? lane.finishMs),
  /** @param {number} worth @param {{unit: string, scale: number}} [score] what it counts; left out: reps */
  worth: (worth, score) => (score ? `${(worth / score.scale).toLocaleString('en')} ${score.unit}` : plural(worth, 'rep', 'reps')),
  laneReady: 'ready',
  laneNotReady: 'not yet',
  withdrawn: 'withdrawn',
  disqualified: 'disqualified',
  stopped: 'stopped',
  noPlace: '\u2013',

  // strip
  /** @param {any} lane @param {boolean} certified */
  stripNote(lane, certified) {
    switch (lane.status) {
      case 'finished': return `${words.finishTime(lane)}${certified ? '' : ' unofficial'}`;
      case 'capped': return 'time cap';
      case 'through': return `${words.worth(lane.worth, lane.score)}${certified ? '' : ' unofficial'}`;
      case 'held': return 'held';
      case 'stopped': return 'stopped';
      case 'withdrawn': return 'withdrawn';
      case 'disqualified': return 'disqualified';
      default: return '';
    }
  },
  stripLabel(lane, steps, note) {
    const open = steps[lane.open - 1];
    return [`Lane ${lane.lane}`, open ? `step ${lane.open} of ${steps.length}: ${open.label}` : /finished|through/.test(lane.status) && 'all work done', note].filter(Boolean).join(', ');
  },
  capPace: 'cap pace',
  capPaceOf: division => `cap pace ${division}`,

  // notices
  play: 'play',
  pause: 'pause',
  replayAt: 'moment of the replay',
  replaySpeed: 'speed of the replay',
  asHappened: 'replay: as it happened',
  asKnown: 'replay: as it was known',
  noReplay: 'The replay cannot be had now. Load the page again.',
  halted: 'Heat halted. The clock stands.',
  recalled: 'Start recalled. A new start will come.',
  old: seconds => `${seconds} s old`,
  notLive: age => `Not live. Last news ${age} ago.`,
  ago: ms => (ms < 120_000 ? `${Math.floor(ms / 1000)} s` : `${Math.floor(ms / 60_000)} min`),
  lanePage: (first, last) => (first === last ? `lane ${first}` : `lanes ${first}\u2013${last}`),
  resultPage: (page, pages) => `page ${page} of ${pages}`,

  // result
  status: { ended: 'unofficial', frozen: 'under review', certified: 'certified' },
  statusDetail: { ended: 'Times may still change.', frozen: 'Frozen: the head judge is looking.', certified: 'Official result.' },
  revision: number => `revision ${number}`,

  // nothing on the floor
  noHeat: 'No heat on the floor',
  nextHeats: 'Next heats',
  noNextHeats: 'No more heats on the programme',
  plannedAt: instant => new Date(instant).toLocaleTimeString('en-GB', { hour: '2-digit', minute: '2-digit' }),

  // for screen readers
  spoken: {
    before: (heat, count) => `${heat}: ${plural(count, 'lane', 'lanes')} on the floor.`,
    countDown: seconds => `Starts in ${plural(seconds, 'second', 'seconds')}.`,
    leads: (names, divisions) => `${names.length > 1 && !divisions ? `${list(names)} share the lead` : `${list(names)} ${names.length > 1 ? 'lead' : 'leads'}`}.`,
    second: (name, gap) => `${name} is ${gap} behind.`,
    left: minutes => (minutes < 1 ? 'Less than a minute left.' : `${plural(minutes, 'minute', 'minutes')} left.`),
    result: (status, first) => `Result, ${status}. ${first}`,
    first: (name, score) => `First: ${name}, ${score}.`,
  },
};
