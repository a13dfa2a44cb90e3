// After the last step: the score, and the captain's answer to it. Fetched when the pad has time; phone.js keeps it for when there is no network.

import { finishMs } from '../lane.js';
import { say, write } from '../words.js';
import { button, clockText, dutyMark, fit, foot, h, laneTag, lead, notice, quiet, refill } from './parts.js';

export function finish(pad) {
  const { session } = pad, other = h('input', { act: 'captain', maxlength: 40, placeholder: say('finish.name'), 'aria-label': say('finish.name') });
  const top = h('div.score'), note = h('div.then-line'), read = h('div.read'), after = h('div.read'), bar = foot(pad, false);
  let name = '';
  const pick = one => { name = one; pad.draw(); };
  const answer = agreed => event => pad.record(event.timeStamp, { fact: 'score-read-back', agreed, name });
  other.oninput = () => pick(other.value.trim());

  function score({ step, atCap, told, stopped, count, rounds, line }) {
    const { frame } = pad;
    // The score is the engine's, once it knows all taps.
    const worth = told && !pad.outbox.waiting && (line.score ? `${write(told.worth / line.score.scale)} ${line.score.unit}` : told.worth);
    if (!step && line.score) return [say('finish.through'), worth || '–', say(`finish.${frame?.phase === 'certified' ? 'official' : 'unofficial'}`)];
    if (!step) {
      const ms = finishMs(pad.model, frame);
      return [say('finish'), ms === null ? '–:––' : clockText(ms, 1), say(`finish.${ms === null ? 'unknown' : frame?.phase === 'certified' ? 'official' : 'unofficial'}`)];
    }
    if (told?.status === 'withdrawn' && !stopped) return ['', say('finish.withdrawn'), ''];
    const done = step.kind === 'set' ? say('finish.count', { count: atCap?.count ?? count, label: step.label }) : step.label;
    const round = step.round && say('round', { n: step.round, of: rounds });
    return [say(`finish.${stopped ?? 'capped'}`), done, [round, (worth || worth === 0) && say('finish.worth', { n: worth })].filter(Boolean).join(' · ')];
  }

  return {
    root: h('div.body.finish', {}, top, note, read, after, bar.root), tick: bar.tick,
    update() {
      const { lane, line, readBack } = pad.model, said = score(pad.model), { next, kept: { duty } } = session, beside = duty !== 'primary' || pad.model.told?.status === 'withdrawn';
      refill(top, [said, line.name], () => [h('div.row', {}, laneTag(lane), h('h2', {}, line.name)), dutyMark(pad), quiet(said[0]), h('b.result', { act: 'result' }, said[1]), quiet(said[2])]);
      fit(top.querySelector('.result'), 76);
      note.hidden = !notice(pad, note);
      refill(read, readBack, () => (readBack ? lead(say(readBack.agreed ? 'finish.agreed' : 'finish.disputed', readBack), 'read-back') : [
        lead(say('finish.read')), h('div.pair', {}, ...line.athletes.map(one => button('captain-name', one, () => pick(one))), other),
        h('div.pair', {}, button('agree', say('finish.agree'), answer(true), '.big'), button('dispute', say('finish.dispute'), answer(false), '.big.dispute'))]));
      for (const one of read.querySelectorAll('[data-act=captain-name]')) one.setAttribute('aria-pressed', String(one.textContent === name));
      for (const one of read.querySelectorAll('.big')) one.disabled = !name;
      read.hidden = beside;   // the judge reads it to the captain, when there is something to read
      refill(after, [next, !!readBack, beside], () => [
        next && h('p', {}, say('finish.called', next)), (readBack || next || beside) && button('next', say('finish.next'), () => session.goOn(), next && readBack ? '.big' : '.wide')]);
      bar.update();
    },
  };
}
