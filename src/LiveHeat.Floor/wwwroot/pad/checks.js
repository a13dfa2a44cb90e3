// What must be right with this phone before a heat. Nothing here stops a judge; it says what is wrong and what to do.

/** The browser decides by itself and may say no. @returns {Promise<'safe'|'at-risk'>} */
export async function askForStorage() {
  const { storage } = navigator;
  return await storage?.persisted?.() || await storage?.persist?.() ? 'safe' : 'at-risk';
}

export async function battery() {
  const found = await navigator.getBattery?.().catch(() => undefined);
  return found && { percent: Math.round(found.level * 100), charging: found.charging };
}

/** @returns {{id: string, state: 'ok'|'ask'|'warn', values?: any}[]} */
export function checks({ durable, storage, online, clock, soundHeard, wake, power }) {
  return [
    { id: 'storage', state: !durable ? 'warn' : storage === 'safe' ? 'ok' : 'ask' },
    { id: 'clock', state: { good: 'ok', fair: 'ask' }[clock.word] ?? 'warn', values: clock },
    { id: 'network', state: online ? 'ok' : 'warn' },
    { id: 'sound', state: soundHeard ? 'ok' : 'ask' },
    { id: 'screen', state: { on: 'ok', off: 'ask' }[wake] ?? 'warn' },
    { id: 'calls', state: 'ask' },
    ...(power ? [{ id: 'battery', state: power.percent < 30 && !power.charging ? 'warn' : 'ok', values: power }] : []),
  ];
}
