// What this phone keeps. Taps with strict durability: a transaction's end means "on the disk".

/** @typedef {{order: number, heat: string, fact: any, state: 'waiting'|'safe'|'refused', sequence?: number}} Tap */

const OPEN_MS = 3_000;               // some browsers never answer an open

export function randomId() {
  return btoa(String.fromCharCode(...crypto.getRandomValues(new Uint8Array(16)))).replace(/\+/g, '-').replace(/\//g, '_').slice(0, 22);
}

export async function openDatabase(name = 'pad') {
  try { return new Database(name, await open(name)); } catch { return new Memory(); }
}

function open(name) {
  return new Promise((resolve, reject) => {
    setTimeout(reject, OPEN_MS);
    const request = indexedDB.open(name, 1);
    request.onupgradeneeded = () => {
      const database = request.result;
      database.createObjectStore('kept').put({ id: randomId(), next: 1 }, 'outbox');
      database.createObjectStore('heats', { keyPath: 'heat' });
      database.createObjectStore('taps', { keyPath: 'order', autoIncrement: true });
    };
    request.onsuccess = () => resolve(request.result);
    request.onerror = reject;
  });
}

export class Database {
  durable = true;

  constructor(name, connection) { Object.assign(this, { name, connection }); }

  async run(durability, work, mode = 'readwrite') {
    const begin = () => this.connection.transaction(['kept', 'heats', 'taps'], mode, { durability });
    let transaction;
    try { transaction = begin(); } catch { // the browser closed it behind our back
      this.connection = await open(this.name);
      transaction = begin();
    }
    return new Promise((resolve, reject) => {
      const [kept, heats, taps] = ['kept', 'heats', 'taps'].map(store => transaction.objectStore(store));
      const result = work({ kept, heats, taps });
      transaction.oncomplete = () => resolve(result);
      transaction.onerror = transaction.onabort = () => reject(transaction.error);
    });
  }

  async load() {
    const [keys, values, heats, taps] = await this.run('relaxed', ({ kept, heats, taps }) =>
      [kept.getAllKeys(), kept.getAll(), heats.getAll(), taps.getAll()], 'readonly');
    return { kept: Object.fromEntries(keys.result.map((key, i) => [key, values.result[i]])), heats: heats.result, taps: taps.result };
  }

  keep(key, value) { return this.run('relaxed', ({ kept }) => { kept.put(value, key); }).catch(() => {}); }
  keepHeat(heat) { return this.run('relaxed', ({ heats }) => { heats.put(heat); }).catch(() => {}); }
  forgetHeat(heat) { return this.run('relaxed', ({ heats }) => { heats.delete(heat); }).catch(() => {}); }
  updateTaps(changed) { return this.run('relaxed', ({ taps }) => changed.forEach(tap => taps.put(tap))); }
  removeTaps(orders) { return this.run('relaxed', ({ taps }) => orders.forEach(order => taps.delete(order))); }

  /** With ids from the counter, which moves in the same transaction. */
  addTaps(heat, facts) {
    return this.run('strict', ({ kept, taps }) => {
      const added = facts.map(fact => ({ heat, fact, state: 'waiting' }));
      counted(kept, added.length, ids => added.forEach((tap, i) => {
        tap.fact = { ...tap.fact, id: ids[i] };
        taps.add(tap).onsuccess = ({ target }) => { tap.order = target.result; };
      }));
      return added;
    });
  }

  async nextId() {
    let id;
    await this.run('strict', ({ kept }) => counted(kept, 1, ids => { [id] = ids; }));
    return id;
  }

  renew(changed) {
    return this.run('strict', ({ kept, taps }) => {
      kept.put(renewed(changed), 'outbox');
      changed.forEach(tap => taps.put(tap));
    });
  }
}

function counted(kept, count, then) {
  kept.get('outbox').onsuccess = ({ target: { result: { id, next } } }) => {
    kept.put({ id, next: next + count }, 'outbox');
    then(Array.from({ length: count }, (_, i) => `${id}.${next + i}`));
  };
}

function renewed(taps) {
  const id = randomId(), names = new Map(taps.map((tap, i) => [tap.fact.id, `${id}.${i + 1}`]));
  for (const tap of taps) {
    const { fact } = tap;
    tap.fact = { ...fact, id: names.get(fact.id), ...(names.has(fact.target) && { target: names.get(fact.target) }) };
  }
  return { id, next: taps.length + 1 };
}

/** Where there is no storage. */
export class Memory {
  durable = false;
  outbox = { id: randomId(), next: 1 };
  order = 1e9;   // above any of the disk's

  async load() { return { kept: {}, heats: [], taps: [] }; }
  async keep() {}
  async keepHeat() {}
  async forgetHeat() {}
  async updateTaps() {}
  async removeTaps() {}
  async nextId() { return `${this.outbox.id}.${this.outbox.next++}`; }
  async renew(taps) { this.outbox = renewed(taps); }
  async addTaps(heat, facts) {
    return facts.map(fact => ({ order: this.order++, heat, state: 'waiting', fact: { ...fact, id: `${this.outbox.id}.${this.outbox.next++}` } }));
  }
}
