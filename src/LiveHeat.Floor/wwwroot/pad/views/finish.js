// The end of the lane: the time or the count, read to the captain, who agrees or disputes by name.

import { button, clockText, h, refill } from '../dom.js';
import { finishMs } from '../lane.js';
import { say } from '../words.js';
import { foot, laneTag, lead, notice, quiet } from './parts.js';

export function finish(pad) {
  const { session } = pad, other = h('input', { act: 'captain', maxlength: 40, placeholder: say('finish.other'), 'aria-label': say('finish.other') });
  const top = h('div.score'), note = h('div.then-line'), read = h('div.read'), after = h('div.read'), bar = foot(pad, false);
  let name = '';
  const pick = one => { name = one; pad.changeNow(); };
  const answer = agreed => event => pad.record(event.timeStamp, { fact: 'score-read-back', agreed, name });
  other.oninput = () => pick(other.value.trim());

  /** What happened, the number, and what is to be known about it. */
  function score({ step, atCap, told, stopped, count, rounds }) {
    const { frame } = pad;
    if (!step) {
      const ms = finishMs(pad.model, frame);
      return [say('finish'), ms === null ? '–:––' : clockText(ms, 1), say(`finish.${ms === null ? 'unknown' : frame?.phase === 'certified' ? 'official' : 'unofficial'}`)];
    }
    const done = step.kind === 'set' ? say('finish.count', { count: atCap?.count ?? count, label: step.label }) : step.label;
    // The score is the engine's, told once it knows all that was tapped.
    const worth = told && !pad.outbox.waiting && say('finish.worth', { n: told.worth }), round = step.round && say('round', { n: step.round, of: rounds });
    return [say(`finish.${stopped ?? (told?.status === 'withdrawn' ? 'withdrawn' : 'capped')}`), done, [round, worth].filter(Boolean).join(' · ')];
  }

  return {
    root: h('div.body.finish', {}, top, note, read, after, bar.root), tick: bar.tick,
    update() {
      const { lane, line, readBack } = pad.model, said = score(pad.model), { next } = session;
      refill(top, [said, line.name], () => [h('div.row', {}, laneTag(lane), h('h2', {}, line.name)), quiet(said[0]), h('b.result', { act: 'result' }, said[1]), quiet(said[2])]);
      note.hidden = !notice(pad, note);
      refill(read, readBack, () => (readBack ? lead(say(readBack.agreed ? 'finish.agreed' : 'finish.disputed', readBack), 'read-back') : [
        lead(say('finish.read')), h('div.pair', {}, ...line.athletes.map(one => button('captain-name', one, () => pick(one))), other),
        h('div.pair', {}, button('agree', say('finish.agree'), answer(true), '.big'), button('dispute', say('finish.dispute'), answer(false), '.big.dispute'))]));
      for (const one of read.querySelectorAll('[data-act=captain-name]')) one.setAttribute('aria-pressed', String(one.textContent === name));
      for (const one of read.querySelectorAll('.big')) one.disabled = !name;
      refill(after, [next, !!readBack], () => [
        next && h('p', {}, say('finish.called', next)), (readBack || next) && button('next', say('finish.next'), () => session.goOn(), next && readBack ? '.big' : '.wide'),
        quiet(say('finish.keep'))]);
      bar.update();
    },
  };
}
