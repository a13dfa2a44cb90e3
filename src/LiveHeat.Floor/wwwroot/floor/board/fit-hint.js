// For whoever sets the screen up: how many lanes fit, and how large the smallest capitals are (key F, or ?fit=1).
import { make } from './nodes.js';
import { ARC_MINUTES, capitalMm, leastCapital } from './sight.js';
import { words } from './words.js';

/**
 * @param {HTMLElement} board @param {{width: number, seat: number}|null} seat @param {() => {fitting: number}} plan as it stands now
 * @param {boolean} shown at once
 */
export function fitHint(board, seat, plan, shown) {
  const hint = make('p', 'fit-hint');
  const tell = () => {
    const { fitting } = plan(), px = leastCapital(seat, innerWidth, innerHeight);
    hint.replaceChildren(make('b', '', fitting > 0 ? words.fit.lanes(fitting) : words.fit.tooFar), seat ? words.fit.seat({ ...seat, mm: capitalMm(seat.seat, ARC_MINUTES), px }) : words.fit.unknown);
  };
  const turn = () => { if (hint.isConnected) hint.remove(); else { tell(); board.append(hint); } };
  addEventListener('keydown', event => { if (event.key.toLowerCase() === 'f' && !event.ctrlKey && !event.altKey && !event.metaKey) turn(); });
  addEventListener('resize', () => { if (hint.isConnected) requestAnimationFrame(tell); });
  if (shown) turn();
}
