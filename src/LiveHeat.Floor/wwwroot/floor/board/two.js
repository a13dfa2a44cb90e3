// Around two boards: this page fills the screen, not one of the two in it.
import { beKiosk } from './kiosk.js';

beKiosk(new URLSearchParams(location.search).get('kiosk') === '1');
