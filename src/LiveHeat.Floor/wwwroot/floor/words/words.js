// The words of a screen in its language. A language is a file of keys and sentences beside this one: board.en.json. A sentence has
// places, {time}; a key that counts has .one and .other and, where a language needs them, the other names of Intl.PluralRules.
//
// The language is that of the address (?lang=de), else that of the page (<html lang>), else English; the pad's page has no language of its own
// and takes the phone's. A page that carries its words
// in <script type="application/json" id="words"> asks for nothing more.

export const LANGUAGES = ['en', 'es', 'fr', 'de'];
const FIRST = 'en';
const ASK_AGAIN_MS = 2_000;

/** What the browser's own formats are asked for: the hall's English writes the day in 24 hours. */
const CULTURES = { en: 'en-GB' };

/** The first that there is. Pure. @param {...(string|null|undefined)} wishes such as that of the address, then that of <html lang> */
export function languageOf(...wishes) {
  const known = wish => LANGUAGES.find(language => language === wish?.toLowerCase().split('-')[0]);
  return wishes.map(known).find(Boolean) ?? FIRST;
}

/** What a page asks the server with, so that labels are in its own language and not the device's. The server wrote it into the page. */
export function ownLanguage() { return document.documentElement.lang ? { 'accept-language': document.documentElement.lang } : {}; }

export class Words {
  /** @param {Record<string, string>} table @param {string} language */
  constructor(table, language) {
    this.table = table;
    this.language = language;
    const culture = CULTURES[language] ?? language;
    this.numbers = new Intl.NumberFormat(culture);
    this.cardinals = new Intl.PluralRules(culture);
    this.ordinals = new Intl.PluralRules(culture, { type: 'ordinal' });
    this.lists = new Intl.ListFormat(culture, { type: 'conjunction' });
    this.clock = new Intl.DateTimeFormat(culture, { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' });
    this.decimalMark = this.numbers.formatToParts(1.5).find(part => part.type === 'decimal')?.value ?? '.';
  }

  /** A sentence with its places filled; numbers are written as the language writes them. @param {string} key @param {Record<string, string|number>} places */
  say(key, places = {}) {
    const sentence = this.table[key];
    if (sentence === undefined) throw new Error(`There are no words for ${key}.`);
    return sentence.replace(/\{(\w+)\}/g, (_, name) => this.write(places[name]));
  }

  /** A sentence that counts. @param {string} key without .one or .other @param {number} count @param {Record<string, string|number>} places */
  count(key, count, places = {}) { return this.say(this.form(key, this.cardinals.select(Math.abs(count))), { count, ...places }); }

  /** What is written behind the number of a place. @param {number} place */
  ordinal(place) { return this.say(this.form('place', this.ordinals.select(place))); }

  /** @param {string[]} names */
  list(names) { return this.lists.format(names); }

  /** The time of day. @param {number} instant */
  timeOfDay(instant) { return this.clock.format(instant); }

  write(value) { return typeof value === 'number' ? this.numbers.format(value) : String(value ?? ''); }

  form(key, category) { return `${key}.${category}` in this.table ? `${key}.${category}` : `${key}.other`; }
}

/** The words of a screen: those the page carries, else asked for until they are had. @param {string} screen such as board @returns {Promise<Words>} */
export async function wordsOf(screen) {
  const language = languageOf(new URLSearchParams(location.search).get('lang'), document.documentElement.lang);
  const carried = document.getElementById('words');
  if (carried?.dataset.screen === screen && carried.dataset.language === language) return new Words(JSON.parse(carried.textContent ?? ''), language);
  for (;;) {
    try {
      const answer = await fetch(new URL(`${screen}.${language}.json`, import.meta.url));
      if (answer.ok) return new Words(await answer.json(), language);
    } catch { /* the network is away: asked again */ }
    await new Promise(again => setTimeout(again, ASK_AGAIN_MS));
  }
}
