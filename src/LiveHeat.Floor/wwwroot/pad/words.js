// What the pad says, by name. The sentences are in /floor/words/pad.en.json and its neighbours, which translators edit; only the phone's language is fetched.

import { languageOf, wordsOf } from '/floor/words/words.js';

const asked = new URLSearchParams(location.search).get('lang');
export const language = document.documentElement.lang = languageOf(asked, ...navigator.languages);
const told = await wordsOf('pad');

/** Numbers and times of day as the language writes them; `point` stands before the tenths. */
export const write = value => told.write(value), timeOfDay = instant => told.timeOfDay(instant), point = told.decimalMark;

/** An address whose answer has words in it: its language, where the browser's own is not meant. */
export function inLanguage(path) { return asked ? `${path}${path.includes('?') ? '&' : '?'}lang=${language}` : path; }

const has = key => key in told.table || `${key}.other` in told.table;

const RIGHT_TO_LEFT = /[\u0590-\u08ff]/;

/** A name that is read from right to left turns no number around that stands behind it. */
const isolated = text => (RIGHT_TO_LEFT.test(text) ? `\u2068${text}\u2069` : text);

export const listed = (names, sign = ', ') => names.map(isolated).join(sign);

/** A sentence that counts counts `n`. A key without a sentence is a fact of a newer server: better its name than nothing. */
export function say(key, places = {}) {
  const safe = Object.fromEntries(Object.entries(places).map(([name, value]) => [name, typeof value === 'string' ? isolated(value) : value]));
  return (!has(key) ? key : key in told.table ? told.say(key, safe) : told.count(key, safe.n, safe)).trim();
}

export function phrase(fact, { steps, line, faultSaid }) {
  const label = step => steps[step - 1]?.label ?? `#${step}`;
  if (fact.timeKnown === false && steps[fact.step]) return say('here.tap', { label: label(fact.step + 1) });
  if (fact.fact === 'lane-stopped') return say(`finish.${fact.reason}`);
  const key = has(fact.fact) && (fact.good || !('fault' in fact)) ? fact.fact : `${fact.fact}.tap`;
  return say(key, { ...fact, ...('fault' in fact && { fault: faultSaid(fact.fault) }), label: label(fact.step), name: line.athletes[fact.athlete - 1] });
}

/** '' when there is nothing to tell a judge. */
export function ruling(fact, model) {
  const { by, reason, addMs, reps, adjustMs = addMs ?? 0 } = fact;
  if (!by || !has(fact.fact)) return '';
  const label = step => model.steps[step - 1]?.label ?? '';
  const target = fact.tap ?? model.known.find(entry => entry.fact.id === fact.target)?.fact;
  const seconds = `${adjustMs > 0 ? '+' : ''}${write(adjustMs / 1_000)}`;
  const said = say(fact.fact, {
    ...fact, n: reps, label: label(fact.step), from: label(fact.fromStep), what: target && phrase(target, model), seconds,
    athletes: fact.athletes && listed(fact.athletes), cost: addMs ? say('cost.seconds', { seconds }) : reps && say('cost.reps', { n: reps }),
  });
  return say(reason ? 'ruling.reason' : 'ruling', { name: by.name, said, reason });
}
