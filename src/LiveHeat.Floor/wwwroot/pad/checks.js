// What must be right with this phone before a heat. Nothing here stops a judge; it says what is wrong and what to do.

/** @typedef {{id: string, state: 'ok'|'warn'|'ask', values?: any}} Check  the words are in words.js: check.<id>.<state> */

/** Asks the browser to keep our storage; it decides by itself and may say no. @returns {Promise<'safe'|'at-risk'>} */
export async function askForStorage(durable) {
  if (!durable) return 'at-risk';
  const { storage } = navigator;
  if (!storage?.persist) return 'at-risk';
  return await storage.persisted() || await storage.persist() ? 'safe' : 'at-risk';
}

/** @returns {Promise<{percent: number, charging: boolean}|null>} null where the browser does not tell */
export async function battery() {
  const found = await navigator.getBattery?.().catch(() => null);
  return found ? { percent: Math.round(found.level * 100), charging: found.charging } : null;
}

/**
 * @param {{durable: boolean, storage: 'safe'|'at-risk', online: boolean, clock: {word: string, ms: number|null}, soundHeard: boolean,
 *   wake: 'on'|'off'|'cannot', battery: {percent: number, charging: boolean}|null}} phone
 * @returns {Check[]}
 */
export function checks(phone) {
  const list = [
    { id: 'storage', state: phone.durable ? phone.storage === 'safe' ? 'ok' : 'ask' : 'warn' },
    { id: 'clock', state: phone.clock.word === 'good' ? 'ok' : phone.clock.word === 'fair' ? 'ask' : 'warn', values: { ms: phone.clock.ms ?? '?' } },
    { id: 'network', state: phone.online ? 'ok' : 'warn' },
    { id: 'sound', state: phone.soundHeard ? 'ok' : 'ask' },
    { id: 'screen', state: phone.wake === 'on' ? 'ok' : phone.wake === 'off' ? 'ask' : 'warn' },
    { id: 'calls', state: 'ask' },
  ];
  if (phone.battery) {
    const low = phone.battery.percent < 30 && !phone.battery.charging;
    list.push({ id: 'battery', state: low ? 'warn' : 'ok', values: { percent: phone.battery.percent } });
  }
  return /** @type {Check[]} */ (list);
}
