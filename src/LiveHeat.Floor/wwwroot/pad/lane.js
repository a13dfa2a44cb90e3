// One lane as its pad sees it, from sheet, frame and facts. Pure.

import { laneNow, latest } from './steps.js';

const NOT_UNDOABLE = /^(undone|head-judge-called|finish-timed)$/;

/** The judge's taps; those of the own seat beside the judge, after what was done before it. */
function ownOf(entries, own) {
  const beside = {};
  for (const { fact } of entries) if (fact.fact === 'seat-taken' && fact.duty !== 'primary') beside[fact.seat] = fact.instant;
  return entries.filter(({ fact }) => (fact.seat === own ? fact.fact !== 'seat-taken' : fact.by || !beside[fact.seat] && fact.instant < (beside[own] ?? Infinity)));
}

/** The round by the clock at a lane time; null where one follows the other. */
export function roundNow({ windows }, atMs) {
  if (!windows) return null;
  const i = Math.max(0, windows.findLastIndex(({ fromMs }) => fromMs <= atMs)), round = windows[i], next = windows[i + 1], over = atMs > round.untilMs;
  return { ...round, over, next, turnMs: over ? next?.fromMs : round.untilMs };
}

export function laneModel({ sheet, frame, lane, entries, now: moment = null, kept: { seat, duty = 'primary' } = {} }) {
  const line = sheet.lanes.find(one => one.lane === lane), { steps } = line;
  const told = frame?.lanes.find(one => one.lane === lane) ?? null, start = frame?.start ?? null;
  // The server holds taps until it knows a start; the judge goes on.
  const own = ownOf(entries, seat), facts = start ? own : own.map(entry => (!entry.fact.start && entry.flags?.includes('early') ? { ...entry, flags: [] } : entry));
  const atMs = heatMs(frame, frame?.haltedAt ?? moment) - (told?.creditMs ?? 0), round = roundNow(line, atMs);
  const now = laneNow(facts, lane, steps.length, frame ? start?.id ?? null : undefined, round?.first);
  const stand = now.standing.map(({ fact }) => fact), step = steps[now.open - 1] ?? null;
  const here = kind => stand.filter(fact => fact.fact === kind && fact.step === now.open);
  const newest = kind => latest(stand.filter(fact => fact.fact === kind));
  const backAt = Math.max(...stand.filter(fact => fact.fact === 'sent-back').map(({ instant }) => instant));
  const undoable = fact => (duty !== 'timekeeper' ? !fact.by && !NOT_UNDOABLE.test(fact.fact) && (duty === 'primary' || fact.seat === seat)
    : fact.fact === 'finish-timed' && fact.seat === seat && fact.instant > backAt && (fact.start ?? start?.id) === start?.id);
  const last = latest(stand.filter(undoable)), atCap = latest(here('reps-at-cap')), left = step && round && now.open <= round.last;
  const waits = step && round?.next && (!left || round.over && (step.kind === 'set' ? atCap : step.kind !== 'value')) ? round.next : null;
  return {
    lane, line, steps, step, told, start, known: entries,
    open: now.open, count: now.count, boundary: now.boundary?.instant ?? null,
    owed: Math.max(now.owed, told?.open === now.open ? told.owed : 0),
    athlete: latest(here('athlete-working'))?.athlete ?? step?.athlete ?? 0,
    rounds: line.expectedSteps ? '∞' : Math.max(0, ...steps.map(one => one.round ?? 0)),
    noReps: here('no-rep').length + here('tag-fault').length,
    carried: step && carriedBy(step, now.count, sheet),
    counted: latest(here('count-reached'))?.instant ?? null,
    last, lastSafe: !!now.standing.find(({ fact }) => fact === last)?.sequence,
    atCap, round, waits, over: !!left && round.over, turnAt: round?.turnMs === undefined || frame?.haltedAt || moment === null ? Infinity : moment + round.turnMs - atMs + 1,
    attempts: stand.filter(fact => fact.fact === 'attempt-judged'), shares: step?.minimumEach == null ? null : stand.filter(({ fact, step: of }) => of === now.open && /^(athlete-working|count-reached)$/.test(fact)),
    stopped: newest('lane-stopped')?.reason ?? null,
    readBack: newest('score-read-back'),
    /** What a judge reads for a fault. Recorded is its name, whatever the pad's language. */
    faultSaid: name => sheet.faultWords?.find(({ fault }) => fault === name)?.said ?? name,
  };
}

/** Units that one tap stands for; 0: only the end is tapped. */
export function checkpoint({ kind, unit, increment }, { counting, checkpointEvery }) {
  if (counting !== 'reps' || kind !== 'set') return 0;
  return unit === 'reps' ? checkpointEvery || 1 : increment > 1 ? increment : 0;
}

/** A set that the team shares: units by athlete, who works, what is counted; and whose least is not reached if it were done now. */
export function sharesOf({ shares, step, line }) {
  const units = {};
  let who = 0, at = 0;
  for (const { fact, athlete, count } of [...shares].sort((a, b) => a.instant - b.instant || latest([a, b]) === a || -1)) {
    if (fact === 'athlete-working') { who = athlete; continue; }
    units[who] = (units[who] ?? 0) + count - at;
    at = count;
  }
  const short = who ? line.athletes.filter((_, i) => (units[i + 1] ?? 0) + (i + 1 === who ? step.quantity - at : 0) < step.minimumEach) : [];
  return { units, who, at, short };
}

export function carriedBy(step, count, sheet) {
  const { kind, quantity, step: number } = step, every = checkpoint(step, sheet);
  const next = every ? (Math.floor(count / every) + 1) * every : Infinity;
  if (kind === 'set' && next < quantity) return { fact: 'count-reached', step: number, count: next };
  return { fact: kind === 'tag' ? 'tag-made' : kind === 'value' ? 'value-entered' : 'step-done', step: number };
}

export function tooEarly({ step, boundary, counted, count, open, start }, carried, instant) {
  const from = Math.max(counted ?? 0, boundary ?? (open === 1 && start?.goAt || 0));
  const part = step.quantity ? ((carried.count ?? step.quantity) - count) / step.quantity : 1;
  return from > 0 && instant - from < step.earliestMs * part;
}

export function heatMs(frame, instant) {
  return frame?.start && instant !== null ? instant - frame.start.goAt - (frame.haltedMs ?? 0) : null;
}

export function capMs({ told, line }) { return told ? told.capMs : line.capMs; }

export function isCapped(model, frame, now) {
  const cap = capMs(model), at = heatMs(frame, frame?.haltedAt ?? now);
  return !!model.step && (model.over || !!model.waits || cap !== null && at !== null && at >= cap);
}

/** What a lane hears of its heat: the last minute and the cap are its own, and nothing to who is through. */
export function heardFrame(model, frame) { return model && frame && { ...frame, capMs: model.step && !model.stopped ? capMs(model) : 0 }; }

/** Rounded up to 0.1 s as hand times are, until the server has said it. */
export function finishMs({ told, boundary }, frame) {
  if (told?.officialMs != null) return told.officialMs;
  const own = boundary === null ? null : heatMs(frame, boundary);
  return own === null ? null : Math.ceil((own - (told?.creditMs ?? 0)) / 100) * 100;
}

export function following({ steps, open }) {
  const rest = steps.slice(open, open + 3), tag = rest.findIndex(({ kind }) => kind === 'tag');
  return tag < 0 ? rest : rest.slice(0, tag + 1);
}

export function phaseNow(frame, now) {
  return frame?.phase === 'counting-down' && now !== null && now >= frame.start.goAt ? 'running' : frame?.phase ?? 'planned';
}

/** Called anew after we were ready. */
export function calledAgain({ ready, heat, readyHeard }, { told }, frame) {
  return ready === heat && !!readyHeard && frame.sequence >= readyHeard && told?.ready === false;
}

export function seatLost({ seat, seatSince, duty }, { told, known }, frame) {
  if (duty !== 'primary') return known.some(({ fact }) => fact.fact === 'seat-given-up' && fact.seat === seat);
  return !!told && frame.sequence >= seatSince && told.seat !== seat;
}

export function viewOf({ alone, asksToJoin, kept, model, frame, now }) {
  if (!alone) return 'tab';
  if (asksToJoin || !kept.joined) return 'join';
  if (!model || kept.left === kept.heat) return 'waiting';
  const phase = phaseNow(frame, now), over = /ended|frozen|certified/.test(phase);
  if (!kept.seat) return over ? 'waiting' : 'confirm';
  const work = kept.duty === 'timekeeper' ? 'timer' : 'heat', counted = kept.duty === 'witness' || model.atCap || model.step?.kind !== 'set' || phase !== 'ended';
  if (model.told?.status === 'withdrawn' || work === 'heat' && (!model.step || model.stopped || over && counted)) return 'finish';
  if (!over && seatLost(kept, model, frame)) return 'taken';
  if (phase === 'counting-down') return 'countdown';
  if (over || /running|halted/.test(phase)) return work;
  if (calledAgain(kept, model, frame)) return 'confirm';
  if (kept.ready !== kept.heat) return 'checks';
  return kept.begun === kept.heat ? work : 'ready';
}
