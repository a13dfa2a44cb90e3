// What can be read from the farthest seat. Pure.
//
// A letter is as high as it looks: h = 2 D tan(a/2), with the angle a that its capitals fill. 20 minutes of arc is what is preferred,
// 16 the least (ISO 9241-3, carried into ISO 9241-303).

export const ARC_MINUTES = 20;
/** Least cap height where nobody has said how large the screen is: 2.6 % of its height. */
const USUAL_CAPITAL = 0.026;
/** Below this part of the screen's height letters are no larger than their edges, from however near. */
const SMALLEST_CAPITAL = 0.016;
/** Cap height of the board's typeface as a part of its size. */
export const CAPITAL_OF_SIZE = 0.7;
const NEAREST_M = 0.5, FARTHEST_M = 300, NARROWEST_M = 0.2, WIDEST_M = 60;

/** Height of capitals that fill so many minutes of arc, in millimetres. @param {number} seatMetres @param {number} minutes */
export function capitalMm(seatMetres, minutes = ARC_MINUTES) { return 2 * seatMetres * 1000 * Math.tan(minutes / 60 / 180 * Math.PI / 2); }

/**
 * What the organiser measured, in metres: from the address of this screen (?width=4&seat=25, with a point or a comma), else as it is set up.
 * @param {URLSearchParams} options @param {{widthM: number, seatM: number}|null} [setUp] @returns {{width: number, seat: number}|null} null unless both are there and possible
 */
export function seatOf(options, setUp) {
  const metres = name => Number((options.get(name) ?? '').replace(',', '.'));
  const own = options.has('width') || options.has('seat');
  const width = own ? metres('width') : setUp?.widthM ?? 0, seat = own ? metres('seat') : setUp?.seatM ?? 0;
  return width >= NARROWEST_M && width <= WIDEST_M && seat >= NEAREST_M && seat <= FARTHEST_M ? { width, seat } : null;
}

/**
 * Least cap height on this screen, CSS pixels.
 * @param {{width: number, seat: number}|null} seat null: unknown @param {number} width of the screen that the metres are of @param {number} height CSS pixels
 */
export function leastCapital(seat, width, height) {
  if (!seat) return USUAL_CAPITAL * height;
  return Math.max(SMALLEST_CAPITAL * height, capitalMm(seat.seat) / 1000 / seat.width * width);
}

/** Least size of text on this screen, CSS pixels. @param {{width: number, seat: number}|null} seat @param {number} width @param {number} height */
export function leastText(seat, width, height) { return leastCapital(seat, width, height) / CAPITAL_OF_SIZE; }
