// The lane strip: a lane's whole relay from left to right, as wide as its expected time. One module for board, result and the
// Blazor screens. Confirmed work is tape, the estimate a chalk dash, the cap pace a chalk line; floor.css holds sizes and colours.
//
//   const strip = new Strip(element, { steps, lane, colour, capMs });      // from the sheet
//   strip.update(laneOfFrame, () => laneMs(frame, laneOfFrame, clock.now()));
//   strip.dispose();
//
// mountStrips does that for a page whose elements carry data-strip="<lane number>".
export { Strip } from './strip/lane-strip.js';
export { whereIs } from './where.js';
export { mountStrips } from './strip/mount.js';
export { layoutOf, confirmedAt, estimatedAt, ownPace, capPaceAt } from './strip/layout.js';
export { heatMs, laneMs } from './strip/instants.js';
export { pacedGroups } from './strip/pace.js';
export { everyPicture, wantsCalm } from './strip/loop.js';
