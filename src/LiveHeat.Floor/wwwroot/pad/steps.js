// The pad's one law: the open step follows the highest step with a standing done-fact, its own or received.
// Pure. Held to the engine by a shared table of cases (tests/LiveHeat.Testing/Steps/cases.json) that both must pass.

/**
 * A fact as this phone knows it: its own (no sequence until the receipt) or read from the server.
 * @typedef {{fact: any, sequence?: number|null, flags?: string[], refused?: string|boolean|null}} Entry
 * @typedef {{open: number, count: number, owed: number, boundary: Entry|null, standing: Entry[]}} Lane
 */

const DONE = new Set(['step-done', 'tag-made', 'value-entered']);

/** Whether a fact completes its step. */
export function isDone(fact) { return DONE.has(fact.fact); }

/** What the desk added counts like a tap; its own id and the tap's both name it. */
function unwrap(entry) {
  return entry.fact.fact === 'fact-added' ? { ...entry, fact: entry.fact.tap, outer: entry.fact.id } : entry;
}

/**
 * The entries of one lane that stand: on the ledger or on their way there, with authority, not taken back, of the start in force.
 * @param {Entry[]} entries in any order, any of them twice
 * @param {number} lane
 * @param {string|null} [start] the start in force, null for none; left out, it is read from the entries themselves
 * @returns {Entry[]}
 */
export function standing(entries, lane, start) {
  const byId = new Map();
  for (const entry of entries) {
    const plain = unwrap(entry);
    if (!byId.has(plain.fact.id) || plain.sequence) byId.set(plain.fact.id, plain);
  }
  const all = [...byId.values()];
  const inForce = start === undefined ? startInForce(all) : start;
  const overAt = lastEndOfStart(all);

  const about = new Map();
  for (const entry of all) {
    const { target } = entry.fact;
    if (target) about.set(target, [...(about.get(target) ?? []), entry]);
  }
  const named = ({ fact, outer }, kind) => [...(about.get(fact.id) ?? []), ...(outer ? about.get(outer) ?? [] : [])]
    .some(next => next.fact.fact === kind && valid(next));
  const undone = ({ fact }) => !fact.by && fact.fact !== 'undone'
    && (about.get(fact.id) ?? []).some(next => next.fact.fact === 'undone' && next.fact.lane === fact.lane && valid(next));

  /** An undo can be voided, but not undone; nor can a ruling be undone. */
  function valid(entry) {
    const { fact, flags = [] } = entry;
    if (entry.refused || flags.includes('old-start')) return false;
    if (flags.includes('quarantined') && !named(entry, 'admitted')) return false;
    if (fact.fact === 'voided' || fact.fact === 'admitted') return true;
    return !named(entry, 'voided') && !undone(entry);
  }

  const ofStart = ({ fact }) => (fact.start ? inForce === undefined || fact.start === inForce : fact.instant > overAt);
  return all.filter(entry => entry.fact.lane === lane && valid(entry) && (entry.fact.step === undefined || ofStart(entry)));
}

/** The start in force by the entries; undefined when they tell of none. */
function startInForce(entries) {
  let start;
  for (const { fact } of bySequence(entries)) {
    if (fact.fact === 'start-scheduled' || fact.fact === 'start-observed') start = fact.start;
    else if (fact.fact === 'start-recalled' || fact.fact === 'call-returned') start = null;
  }
  return start;
}

/** The instant at which the last start that counts no more was ended. A tap made on no known start before it is of the old one. */
function lastEndOfStart(entries) {
  return entries.filter(({ fact }) => fact.fact === 'start-recalled' || fact.fact === 'call-returned')
    .reduce((last, { fact }) => Math.max(last, fact.instant), -Infinity);
}

function bySequence(entries) {
  return [...entries].sort((a, b) => (a.sequence ?? Infinity) - (b.sequence ?? Infinity));
}

/**
 * Where the lane is.
 * @param {Entry[]} entries @param {number} lane @param {number} steps how many steps the lane has
 * @param {string|null} [start] as in {@link standing}
 * @returns {Lane} `open` is steps + 1 when all is done; `count` is within the open set; `owed` is what is to be made up before it may
 *   count; `boundary` is the earliest fact that opened it at a known instant
 */
export function laneNow(entries, lane, steps, start) {
  const all = standing(entries, lane, start);
  const rulings = all.filter(({ fact }) => fact.fact === 'sent-back');
  const within = all.filter(({ fact }) => Number.isInteger(fact.step) && fact.step >= 1 && fact.step <= steps);
  const dones = within.filter(({ fact }) => isDone(fact));

  /** What a fact says after the rulings made up to then: sent back, it still says that all before the ruling's step is done. */
  const reach = ({ fact }, until = Infinity) => Math.min(fact.step, ...rulings
    .filter(({ fact: ruling }) => fact.step >= ruling.step && fact.instant <= ruling.instant && ruling.instant <= until)
    .map(({ fact: ruling }) => ruling.step - 1));
  const openAt = until => 1 + Math.max(0, ...dones.filter(({ fact }) => fact.instant <= until).map(done => reach(done, until)));

  const open = openAt(Infinity);
  const whole = entry => reach(entry) === entry.fact.step;
  const opened = dones.filter(done => whole(done) && done.fact.step === open - 1 && done.fact.timeKnown !== false);
  const counts = within.filter(entry => entry.fact.fact === 'count-reached' && entry.fact.step === open && whole(entry));
  const debts = within.filter(({ fact }) => fact.fact === 'reps-owed' && openAt(fact.instant) === open);
  return {
    open,
    count: counts.reduce((last, next) => (!last || next.fact.instant >= last.fact.instant ? next : last), /** @type {Entry|null} */ (null))?.fact.count ?? 0,
    owed: debts.reduce((sum, { fact }) => sum + fact.reps, 0),
    boundary: opened.reduce((first, next) => (!first || next.fact.instant < first.fact.instant ? next : first), /** @type {Entry|null} */ (null)),
    standing: all,
  };
}
