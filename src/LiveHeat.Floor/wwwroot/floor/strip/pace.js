// Which lanes get a cap pace line. Pure.

/**
 * The groups of lanes of which enough is known: a line before anybody has done a part of the work says nothing about a team.
 * @param {any} sheet @param {any} frame @returns {Set<string>}
 */
export function pacedGroups(sheet, frame) {
  if (frame?.phase !== 'running' && frame?.phase !== 'halted' && frame?.phase !== 'counting-down') return new Set();
  const known = new Set(frame.lanes.filter(lane => isNumber(lane.paceMs) || lane.status === 'finished').map(lane => lane.lane));
  return new Set(sheet.lanes.filter(lane => known.has(lane.lane)).map(lane => lane.group));
}

function isNumber(value) { return value !== null && value !== undefined; }
