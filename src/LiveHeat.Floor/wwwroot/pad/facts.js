// Facts in words: what a button takes back, what was refused, what the head judge ruled.

import { knows, say } from './words.js';

/** A floor fact as a short phrase. @param {any} fact @param {any} model the lane, for labels and names */
export function phrase(fact, model) {
  const step = model.steps[fact.step - 1];
  const here = (fact.fact === 'step-done' || fact.fact === 'tag-made') && fact.timeKnown === false;
  const values = { ...fact, label: step?.label ?? `#${fact.step}`, name: model.line.athletes[fact.athlete - 1] };
  if (here && model.steps[fact.step]) return say('fact.here', { label: model.steps[fact.step].label });
  return say(`fact.${fact.fact}${fact.fault && knows(`fact.${fact.fact}.fault`) ? '.fault' : ''}`, values);
}

/** A ruling as a plain sentence, with who made it and why. @param {any} fact @param {any} model */
export function ruling(fact, model) {
  const label = step => model.steps[step - 1]?.label ?? `#${step}`;
  const target = model.known.find(entry => entry.fact.id === fact.target)?.fact ?? fact.tap;
  const signed = ms => `${ms < 0 ? '−' : '+'}${Math.abs(ms) / 1_000}`;
  const sentence = say(`rule.${fact.fact}`, {
    ...fact, label: label(fact.step), from: label(fact.fromStep), what: target ? phrase(target, model) : '',
    seconds: signed(fact.adjustMs ?? 0), athletes: (fact.athletes ?? []).join(', '),
    cost: fact.addMs ? `${signed(fact.addMs)} s` : `${fact.reps ?? ''}`,
  });
  return say('rule.by', { name: fact.by?.name ?? '' }) + sentence + (fact.reason ? ` (${fact.reason})` : '');
}
