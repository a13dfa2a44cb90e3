// How many lanes fit on one picture. Text does not get smaller than it can be read: lanes turn through pages instead.

/** Least cap height of text on the board, as a part of the screen's height: 2.6 %. */
export const LEAST_CAPITAL = 0.026;
/** Cap height of the board's typeface as a part of its size. */
export const CAPITAL_OF_SIZE = 0.7;
/** Least size of text, as a part of the screen's height. */
export const LEAST_TEXT = LEAST_CAPITAL / CAPITAL_OF_SIZE;
/** A lane needs two lines of text. */
export const LEAST_ROW = 2 * LEAST_TEXT * 1.03;
/** Two columns only where each is still as wide as the screen is high. */
const LEAST_COLUMN = 1.05;
export const TURN_EVERY_MS = 10_000;

/**
 * @param {{count: number, width: number, height: number, screen: number}} room lanes; CSS pixels for them; the screen's height
 * @returns {{columns: number, rows: number, perPage: number, pages: number}} pages are filled evenly
 */
export function pagesOf({ count, width, height, screen }) {
  const fitting = Math.max(1, Math.floor(height / (screen * LEAST_ROW)));
  const columns = count > fitting && width / (screen * LEAST_COLUMN) >= 2 ? 2 : 1;
  const pages = Math.max(1, Math.ceil(count / (fitting * columns)));
  const perPage = Math.max(1, Math.ceil(count / pages));
  return { columns, rows: Math.ceil(perPage / columns), perPage, pages };
}

/** The page to show, from 0. @param {number} pages @param {number} sinceMs since the first page was shown */
export function pageAt(pages, sinceMs) { return pages > 1 ? Math.floor(Math.max(0, sinceMs) / TURN_EVERY_MS) % pages : 0; }
