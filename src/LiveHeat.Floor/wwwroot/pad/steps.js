// The pad's one law: the open step follows the highest step with a standing done-fact, own or received. Pure; the engine must pass the
// same cases (tests/LiveHeat.Testing/Steps/cases.json).

/** @typedef {{fact: any, sequence?: number, flags?: string[], refused?: boolean}} Entry */

const DONE = new Set(['step-done', 'tag-made', 'value-entered', 'attempt-judged']);

export function isDone(fact) { return DONE.has(fact.fact); }

/** Entries (any order, any twice) with authority, not taken back, of the start in force (left out: they tell; null: none). */
export function standing(entries, lane, start) {
  const byId = new Map();
  for (const entry of entries) {
    const added = entry.fact.fact === 'fact-added'; // named by both ids
    const plain = added ? { ...entry, fact: entry.fact.tap, outer: entry.fact.id } : entry;
    if (!byId.has(plain.fact.id) || plain.sequence) byId.set(plain.fact.id, plain);
  }
  const all = [...byId.values()], told = [...all].sort((a, b) => (a.sequence ?? Infinity) - (b.sequence ?? Infinity));
  const { inForce, overAt } = startOf(told);
  const now = start === undefined ? inForce : start;

  // Newest first: a void that was voided itself takes nothing away.
  const voids = told.reduceRight((ids, { fact }) => (fact.fact === 'voided' && !ids.has(fact.id) ? ids.add(fact.target) : ids), new Set());
  const voided = ({ fact, outer }) => voids.has(fact.id) || voids.has(outer);
  const targeting = all.filter(entry => entry.fact.target && !voided(entry));
  const about = (entry, kind) => targeting.filter(({ fact }) => fact.fact === kind && (fact.target === entry.fact.id || fact.target === entry.outer));
  const admitted = entry => about(entry, 'admitted').length > 0;
  const held = entry => entry.refused || voided(entry) || entry.flags?.some(flag => flag === 'old-start' || flag === 'quarantined' && !admitted(entry));

  const seatOf = ({ fact }) => all.find(other => other.fact.fact === 'seat-taken' && other.fact.seat === fact.seat)?.fact;
  // Witnesses and timekeepers move no lane, and take back only what is their own.
  const decides = entry => entry.fact.by || entry.outer || admitted(entry) || (seatOf(entry)?.duty ?? 'primary') === 'primary';
  // Neither a ruling nor an undo can be undone.
  const undone = entry => !entry.fact.by && entry.fact.fact !== 'undone' && about(entry, 'undone').some(undo => undo.fact.lane === lane && !held(undo)
    && (decides(undo) || seatOf(undo)?.by.signIn === seatOf(entry)?.by.signIn));
  const ofStart = ({ fact }) => (fact.start ? now === undefined || fact.start === now : fact.instant > overAt);
  const counts = entry => entry.fact.step === undefined || decides(entry) && ofStart(entry);
  return all.filter(entry => entry.fact.lane === lane && counts(entry) && !held(entry) && !undone(entry));
}

/** `overAt`: when the last other start ended; an older tap that knew none is of that one. */
function startOf(told) {
  let inForce, overAt = -Infinity;
  for (const { fact } of told) {
    if (fact.fact === 'start-scheduled' || fact.fact === 'start-observed') inForce = fact.start;
    if (fact.fact !== 'start-recalled' && fact.fact !== 'call-returned') continue;
    inForce = null;
    overAt = Math.max(overAt, fact.instant);
  }
  return { inForce, overAt };
}

/** `open` is `steps` + 1 when all is done; `owed` is due before it may count; `boundary` opened it at a known instant.
 *  @param {Entry[]} entries @param {string|null} [start] @param {number} [from] the first step that can be open: rounds by the clock leave behind what is not done */
export function laneNow(entries, lane, steps, start, from = 1) {
  const all = standing(entries, lane, start);
  const rulings = all.filter(({ fact }) => fact.fact === 'sent-back').map(({ fact }) => fact);
  const within = all.filter(({ fact }) => Number.isInteger(fact.step) && fact.step >= 1 && fact.step <= steps).map(({ fact }) => fact);
  const dones = within.filter(isDone);

  // Sent back, a fact still says that all before the ruling's step is done.
  const reach = (fact, until = Infinity) => Math.min(fact.step, ...rulings
    .filter(ruling => fact.step >= ruling.step && fact.instant <= ruling.instant && ruling.instant <= until).map(ruling => ruling.step - 1));
  const openAt = until => Math.max(from, 1 + Math.max(0, ...dones.filter(fact => fact.instant <= until).map(fact => reach(fact, until))));

  const open = openAt(Infinity);
  const whole = fact => reach(fact) === fact.step;
  const opened = dones.filter(fact => fact.step === open - 1 && fact.timeKnown !== false && whole(fact));
  const counts = within.filter(fact => fact.fact === 'count-reached' && fact.step === open && whole(fact));
  const owed = within.filter(fact => fact.fact === 'reps-owed' && openAt(fact.instant) === open);
  return {
    open,
    count: latest(counts)?.count ?? 0,
    owed: owed.reduce((sum, { reps }) => sum + reps, 0),
    boundary: opened.reduce((first, next) => (first && first.instant <= next.instant ? first : next), null),
    standing: all,
  };
}

/** The newest: one phone's taps keep their counter order, whatever its clock did. */
export function latest(facts) {
  return facts.reduce((last, next) => {
    const [box, count] = last?.id.split('.') ?? [], [nextBox, nextCount] = next.id.split('.');
    const older = box === nextBox ? +nextCount < +count : nextBox !== 'new' && (box === 'new' || last?.instant > next.instant);
    return older ? last : next;
  }, null);
}
