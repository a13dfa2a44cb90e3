// One lane as its pad sees it: the sheet (what is to be done), the frame (the heat) and the facts, made into what a view shows. Pure.

import { laneNow } from './steps.js';

const UNDOABLE = new Set(['step-done', 'tag-made', 'value-entered', 'count-reached', 'no-rep', 'tag-fault', 'athlete-working',
  'reps-at-cap', 'lane-stopped', 'score-read-back']);
const RULINGS = new Set(['sent-back', 'reps-owed', 'lane-held', 'lane-resumed', 'time-adjusted', 'line-up-changed', 'variant-taken',
  'voided', 'admitted', 'fact-added', 'warned', 'penalised', 'call-answered', 'lane-withdrawn', 'call-replaced']);

/**
 * @param {{sheet: any, frame: any, lane: number, entries: import('./steps.js').Entry[], seat: string|null}} known
 *   `frame` may be null (never heard of one); `seat` is this phone's
 */
export function laneModel({ sheet, frame, lane, entries, seat }) {
  const line = sheet.lanes.find(one => one.lane === lane);
  const steps = line.steps;
  const told = frame?.lanes.find(one => one.lane === lane) ?? null;
  const start = frame?.start ?? null;
  // Made before anybody told us of a start: the server holds them for now, the judge goes on.
  const facts = start ? entries : entries.map(entry => (!entry.fact.start && entry.flags?.includes('early') ? { ...entry, flags: [] } : entry));
  const now = laneNow(facts, lane, steps.length, frame ? start?.id ?? null : undefined);
  const step = steps[now.open - 1] ?? null;
  const here = kind => now.standing.filter(({ fact }) => fact.fact === kind && fact.step === now.open);
  const latest = list => list.reduce((last, next) => (!last || next.fact.instant >= last.fact.instant ? next : last), null);
  const substitute = latest(here('athlete-working'))?.fact.athlete;
  const all = kind => now.standing.filter(({ fact }) => fact.fact === kind);
  return {
    lane, line, steps, step, told, start, known: entries,
    open: now.open, count: now.count, owed: Math.max(now.owed, told && told.open === now.open ? told.owed : 0),
    finished: !step,
    boundary: now.boundary?.fact.instant ?? null,
    athlete: substitute ?? step?.athlete ?? 0,
    rounds: Math.max(0, ...steps.map(one => one.round ?? 0)),
    noReps: here('no-rep').length + here('tag-fault').length,
    carried: step ? carriedBy(step, now.count, sheet) : null,
    lastCount: latest(here('count-reached'))?.fact.instant ?? null,
    last: latest(now.standing.filter(({ fact }) => !fact.by && UNDOABLE.has(fact.fact))),
    atCap: latest(here('reps-at-cap')),
    stopped: latest(all('lane-stopped'))?.fact.reason ?? null,
    readBack: latest(all('score-read-back')),
    takenBy: takenBy(entries, lane, seat),
    rulings: entries.filter(({ fact, sequence }) => sequence && RULINGS.has(fact.fact)),
  };
}

/** Another phone's primary seat that is newer than ours, as the fact that took it; null while ours holds. */
function takenBy(entries, lane, seat) {
  const taken = entries.filter(({ fact }) => fact.fact === 'seat-taken' && fact.lane === lane && fact.duty === 'primary')
    .sort((a, b) => a.sequence - b.sequence).at(-1)?.fact;
  return seat && taken && taken.seat !== seat ? taken : null;
}

/** How many units of a set one tap stands for; 0 when only its end is tapped. */
export function checkpoint(step, sheet) {
  if (sheet.counting !== 'reps' || step.kind !== 'set') return 0;
  return step.unit === 'reps' ? sheet.checkpointEvery || 1 : step.increment > 1 ? step.increment : 0;
}

/** What the target records for the open step: `{fact, step, ...}`. A value step has no target before its number. */
export function carriedBy(step, count, sheet) {
  if (step.kind === 'tag') return { fact: 'tag-made', step: step.step };
  if (step.kind === 'value') return { fact: 'value-entered', step: step.step };
  const every = checkpoint(step, sheet);
  const next = every ? (Math.floor(count / every) + 1) * every : Infinity;
  return next < step.quantity ? { fact: 'count-reached', step: step.step, count: next } : { fact: 'step-done', step: step.step };
}

/**
 * Server milliseconds since the last boundary below which nobody can have done what the target says; 0 when there is no saying.
 * @param {ReturnType<typeof laneModel>} model @param {any} carried
 */
export function earliest({ step, boundary, lastCount, count, open, start }, carried) {
  if (!step || step.step !== carried.step) return null;
  const from = Math.max(lastCount ?? -Infinity, boundary ?? (open === 1 ? start?.goAt ?? -Infinity : -Infinity));
  if (from === -Infinity) return null;
  const part = step.quantity ? ((carried.count ?? step.quantity) - count) / step.quantity : 1;
  return { from, afterMs: step.earliestMs * part };
}

/** Heat time of an instant; null while no start is known. A halted heat stands still. */
export function heatMs(frame, instant) {
  if (!frame?.start || instant === null) return null;
  return Math.min(instant, frame.haltedAt ?? Infinity) - frame.start.goAt - (frame.haltedMs ?? 0);
}

/** The lane's cap in heat time. */
export function capMs(model, frame) {
  return model.told?.capMs ?? model.line.capMs ?? frame?.capMs ?? null;
}

/** The finish of a lane: the server's word when it has one, else this phone's own reading, rounded up to 0.1 s as hand times are. */
export function finishOf(model, frame) {
  const { told, boundary, finished } = model;
  if (!finished) return null;
  if (told?.officialMs != null) return { ms: told.officialMs, official: true };
  const ms = told?.finishMs ?? (boundary === null ? null : heatMs({ ...frame, haltedAt: null }, boundary));
  return ms === null ? null : { ms: Math.ceil(ms / 100) * 100, official: false };
}

/** The steps after the open one, until the next tag or the end: what the judge reads as "then". */
export function following({ steps, open }, most = 3) {
  const rest = steps.slice(open, open + most);
  const tag = rest.findIndex(step => step.kind === 'tag');
  return tag >= 0 ? rest.slice(0, tag + 1) : rest;
}
