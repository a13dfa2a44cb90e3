// What stands on the page before the program and its resources are there, in the device's language: index.html has the words, one attribute a language.
import { languages, setLanguage } from './page.js';

const spoken = languages().map(wish => wish.split(/[-_]/)[0].toLowerCase()).find(wish => document.querySelector(`.starting[data-${CSS.escape(wish)}]`));
if (spoken) {
  setLanguage(spoken);
  for (const element of document.querySelectorAll(`[data-${spoken}]`)) element.textContent = element.getAttribute(`data-${spoken}`);
}

// The strips come with the first lanes, not after them: their modules and words are fetched while the program is.
void import('./strips.js');
