// Which screen the pad shows: a function of what it knows. Pure.

import { capMs, heatMs } from './lane.js';

/** The heat's phase by our own clock: a count-down ends by itself. */
export function phaseNow(frame, now) {
  return frame?.phase === 'counting-down' && now !== null && now >= frame.start.goAt ? 'running' : frame?.phase ?? 'planned';
}

/** Whether the lane's cap has passed. */
export function isCapped(model, frame, now) {
  const cap = capMs(model, frame), at = heatMs(frame, now);
  return !model.finished && cap !== null && at !== null && at >= cap && !model.told?.heldAt;
}

/**
 * @param {{alone: boolean, asksToJoin: boolean, kept: import('./session.js').Kept, model: any, frame: any, now: number|null}} known
 *   `alone`: no other tab is the pad; `now`: the instant it is, null when unknown
 * @returns {'tab'|'join'|'waiting'|'confirm'|'checks'|'ready'|'countdown'|'heat'|'finish'|'taken'}
 */
export function viewOf({ alone, asksToJoin, kept, model, frame, now }) {
  if (!alone) return 'tab';
  if (asksToJoin || !kept.joined) return 'join';
  if (!kept.heat || !model || kept.left === kept.heat) return 'waiting';
  const phase = phaseNow(frame, now);
  const over = ['ended', 'frozen', 'certified'].includes(phase);
  if (!kept.seat) return over ? 'waiting' : 'confirm';
  const through = model.finished || model.stopped || model.told?.status === 'withdrawn' || over && (model.atCap || model.step?.kind !== 'set' || phase !== 'ended');
  if (through) return 'finish';
  if (!over && (model.takenBy || kept.seatLost)) return 'taken';
  if (phase === 'counting-down') return 'countdown';
  if (phase === 'running' || phase === 'halted' || phase === 'ended') return 'heat';
  if (calledAgain(kept, model, frame)) return 'confirm';
  if (kept.ready !== kept.heat) return 'checks';
  return kept.begun === kept.heat ? 'heat' : 'ready';
}

/** The heat was called anew after we had said that we are ready: look at lane and team once more. */
export function calledAgain({ ready, heat, readyHeard }, model, frame) {
  return ready === heat && !!readyHeard && (frame?.sequence ?? 0) >= readyHeard && model.told?.ready === false;
}
