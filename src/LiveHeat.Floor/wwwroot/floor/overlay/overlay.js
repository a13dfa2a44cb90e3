// The board's own lanes for a video mix: transparent, without pages of anything else, nothing to press. A lower third, or with ?full=1 the
// whole picture. The server's page carries the newest state, so that a mix that shows it again sees it as it is and nothing rolls out.
const main = /** @type {HTMLElement} */ (document.getElementById('board'));
main.dataset.overlay = new URLSearchParams(location.search).get('full') === '1' ? 'full' : 'third';
void import('../board/board.js');
