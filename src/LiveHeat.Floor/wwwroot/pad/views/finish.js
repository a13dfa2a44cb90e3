// The end of the lane: the time or the count, read to the captain, who agrees or disputes by name.

import { clockText, h, refill } from '../dom.js';
import { finishOf } from '../lane.js';
import { say } from '../words.js';
import { bar, notices } from './heat.js';

export function finish(pad) {
  const other = h('input', { act: 'captain', maxlength: '40', placeholder: say('finish.other'), 'aria-label': say('finish.other') });
  const top = h('div.score'), note = h('div.then-line'), read = h('div.read'), after = h('div.after'), foot = bar(pad, false);
  let name = '';
  const pick = one => { name = one; pad.changeNow(); };
  other.addEventListener('input', () => pick(other.value.trim()));

  function score() {
    const { model, frame } = pad, time = finishOf(model, frame);
    const { step, atCap, told } = model;
    const what = model.stopped ? say(`finish.stopped.${model.stopped}`) : told?.status === 'withdrawn' ? say('finish.withdrawn') : '';
    if (model.finished) {
      return [say('finish.time'), time ? clockText(time.ms, true) : '–:––', time ? say(time.official ? 'finish.official' : 'finish.unofficial') : say('finish.no-time')];
    }
    const count = step.kind === 'set' ? say('finish.count', { count: atCap?.fact.count ?? model.count, label: step.label }) : step.label;
    const round = step.round ? `${say('finish.in-round', { n: step.round, of: model.rounds })} · ` : '';
    // The score is the engine's; it is told once it knows all that we tapped.
    const worth = told && !pad.outbox.waiting ? say('finish.worth', { n: told.worth }) : '';
    return [what || say('finish.at-cap'), count, [round.slice(0, -3), worth].filter(Boolean).join(' · ')];
  }

  const answer = agreed => event => { if (name) pad.record(event.timeStamp, ...(pad.model.readBack ? [{ fact: 'undone', target: pad.model.readBack.fact.id }] : []), { fact: 'score-read-back', agreed, name }); };
  const root = h('div.body.finish', {}, top, note, read, after, foot.root);
  return {
    root,
    tick: () => foot.tick(),
    update() {
      const { model, session } = pad, { line, readBack, noReps } = model;
      const [what, number, small] = score();
      refill(top, JSON.stringify([what, number, small, noReps, line.name]), () => [
        h('div.row', {}, h('div.lane', {}, String(model.lane)), h('h2', {}, line.name)),
        h('p.quiet', {}, what), h('b.result', { act: 'result' }, number), h('p.quiet', {}, small)]);
      const notice = notices(pad);
      note.hidden = !notice;
      note.dataset.tone = notice?.tone ?? '';
      if (notice) refill(note, notice.key, notice.build);
      const said = readBack?.fact;
      refill(read, String(said?.id), () => (said
        ? h('p.lead', { act: 'read-back' }, say(said.agreed ? 'finish.agreed' : 'finish.disputed', { name: said.name }))
        : [h('p.lead', {}, say('finish.read')),
          h('div.pair.captains', {}, ...line.athletes.map(one => h('button', { act: 'captain-name', on: () => pick(one) }, one)), other),
          h('div.pair', {}, h('button.big', { act: 'agree', on: answer(true) }, say('finish.agree')),
            h('button.big.dispute', { act: 'dispute', on: answer(false) }, say('finish.dispute'))),
          h('p.quiet.pick', {}, say('finish.pick'))]));
      for (const button of read.querySelectorAll('[data-act=captain-name]')) button.setAttribute('aria-pressed', String(button.textContent === name));
      for (const button of read.querySelectorAll('.big')) button.disabled = !name;
      const hint = read.querySelector('.pick');
      if (hint) hint.hidden = !!name;
      refill(after, JSON.stringify([session.next, !!said, pad.nextHeat()?.title]), () => [
        session.next && h('p', {}, say('finish.next-called', { title: session.next.title })),
        said || session.next ? h('button.wide', { act: 'next', on: () => session.goOn() }, say('finish.next')) : null,
        h('p.quiet', {}, say('finish.thanks'))]);
      foot.update();
    },
  };
}
