// How many lanes fit on one picture. Text does not get smaller than it can be read: lanes tell less, and then turn through pages.

/** Height of a row in lines of text: the team, and who works; or the team alone. */
const FULL_ROW = 2.06, SHORT_ROW = 1.22;
/** One of two boards side by side: the team, and its strip below. */
const SIDE_ROW = 2.2;
/** Fewer pages than this and every lane tells all it has. Over a video all lanes on one picture come first. */
const MANY_PAGES = 3;
export const MANY_OVER_VIDEO = 2;
/** Two columns only where each is still as wide as the screen is high. */
const LEAST_COLUMN = 1.05;
export const TURN_EVERY_MS = 10_000;

/**
 * @param {{count: number, width: number, height: number, screen: number, text: number, side?: boolean, manyPages?: number}} room lanes; CSS pixels for them; the screen's height; least size of text;
 *   side: half of a screen that shows two heats; manyPages: from so many on lanes tell less
 * @param {boolean} mustBeShort the head has been made smaller for short lanes, and they are what it was made for
 * @returns {{columns: number, rows: number, perPage: number, pages: number, fitting: number, short: boolean}}
 *   pages are filled evenly; fitting: how many lanes a page could hold; short: a lane tells its team, strip and place, and no more
 */
export function pagesOf(room, mustBeShort = false) {
  if (room.side) return plan(room, SIDE_ROW, true);
  const full = plan(room, FULL_ROW, false);
  if (!mustBeShort && full.pages < (room.manyPages ?? MANY_PAGES) && full.fitting > 0) return full;
  const short = plan(room, SHORT_ROW, true);
  return mustBeShort || short.pages < full.pages || full.fitting === 0 ? short : full;
}

function plan({ count, width, height, screen, text }, lines, short) {
  const high = Math.floor(height / (text * lines));
  const rowsFit = Math.max(1, high);
  const columns = count > rowsFit && width / (screen * LEAST_COLUMN) >= 2 ? 2 : 1;
  const pages = Math.max(1, Math.ceil(count / (rowsFit * columns)));
  const perPage = Math.max(1, Math.ceil(count / pages));
  return { columns, rows: Math.ceil(perPage / columns), perPage, pages, fitting: high * columns, short };
}

/** The page to show, from 0. @param {number} pages @param {number} sinceMs since the first page was shown */
export function pageAt(pages, sinceMs) { return pages > 1 ? Math.floor(Math.max(0, sinceMs) / TURN_EVERY_MS) % pages : 0; }
