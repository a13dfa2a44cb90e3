// What this phone keeps: the outbox of taps, the heats it knows, and a few small things. IndexedDB; taps with strict durability,
// so that a transaction's end means "on the disk", not "soon on the disk".

/**
 * @typedef {{order: number, heat: string, fact: any, state: 'waiting'|'safe'|'refused',
 *   sequence?: number, flags?: string[], code?: string, detail?: string, dismissed?: boolean}} Tap
 *   `order` is this phone's own numbering; the fact's id is in the fact
 * @typedef {{heat: string, sheet?: any, frame?: any, entries: any[], head: number}} KeptHeat
 */

const VERSION = 1;
const OPEN_MS = 3_000;               // some browsers never answer an open; then we go on in memory and say so

/** 128 random bits as 22 characters of base64url. */
export function randomId() {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return btoa(String.fromCharCode(...bytes)).replace(/\+/g, '-').replace(/\//g, '_').replace(/=+$/, '');
}

/** Opens the phone's database, or one in memory (`durable` false) where there is none to be had. */
export async function openDatabase(name = 'pad') {
  try {
    return new Database(name, await open(name));
  } catch {
    return new MemoryDatabase();
  }
}

function open(name) {
  return new Promise((resolve, reject) => {
    setTimeout(() => reject(new Error('the database did not open')), OPEN_MS);
    const request = indexedDB.open(name, VERSION);
    request.onupgradeneeded = () => {
      const kept = request.result.createObjectStore('kept');
      kept.put({ id: randomId(), next: 1 }, 'outbox');
      request.result.createObjectStore('heats', { keyPath: 'heat' });
      request.result.createObjectStore('taps', { keyPath: 'order', autoIncrement: true });
    };
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

export class Database {
  durable = true;

  constructor(name, connection) {
    this.name = name;
    this.connection = connection;
  }

  /**
   * Runs `work` in one transaction and resolves to what it returned once the transaction is complete.
   * @template T @param {string[]} stores @param {'readonly'|'readwrite'} mode @param {'strict'|'relaxed'} durability
   * @param {(stores: Record<string, IDBObjectStore>) => T} work @returns {Promise<T>}
   */
  async run(stores, mode, durability, work) {
    let transaction;
    try {
      transaction = this.connection.transaction(stores, mode, { durability });
    } catch {                                            // the browser closed the connection behind our back
      this.connection = await open(this.name);
      transaction = this.connection.transaction(stores, mode, { durability });
    }
    return new Promise((resolve, reject) => {
      const result = work(Object.fromEntries(stores.map(store => [store, transaction.objectStore(store)])));
      transaction.oncomplete = () => resolve(result);
      transaction.onerror = transaction.onabort = () => reject(transaction.error ?? new Error('the transaction was aborted'));
    });
  }

  /** Everything, in one read. @returns {Promise<{kept: Record<string, any>, heats: KeptHeat[], taps: Tap[]}>} */
  async load() {
    const found = await this.run(['kept', 'heats', 'taps'], 'readonly', 'relaxed', ({ kept, heats, taps }) => ({
      keys: kept.getAllKeys(), values: kept.getAll(), heats: heats.getAll(), taps: taps.getAll(),
    }));
    const kept = Object.fromEntries(found.keys.result.map((key, i) => [key, found.values.result[i]]));
    return { kept, heats: found.heats.result, taps: found.taps.result };
  }

  keep(key, value) { return this.run(['kept'], 'readwrite', 'relaxed', ({ kept }) => { kept.put(value, key); }); }

  keepHeat(record) { return this.run(['heats'], 'readwrite', 'relaxed', ({ heats }) => { heats.put(record); }); }

  /** Stores taps; each fact gets its id from the counter, which moves in the same transaction. @returns {Promise<Tap[]>} */
  addTaps(heat, facts) {
    return this.run(['kept', 'taps'], 'readwrite', 'strict', ({ kept, taps }) => {
      const added = facts.map(fact => ({ heat, fact, state: 'waiting' }));
      numbered(kept, added.length, ids => added.forEach((tap, i) => {
        tap.fact = { fact: tap.fact.fact, id: ids[i], ...tap.fact };
        taps.add(tap).onsuccess = event => { tap.order = event.target.result; };
      }));
      return added;
    });
  }

  /** An id for a command. */
  async nextId() {
    const answer = await this.run(['kept'], 'readwrite', 'strict', ({ kept }) => {
      const id = { value: '' };
      numbered(kept, 1, ids => { [id.value] = ids; });
      return id;
    });
    return answer.value;
  }

  updateTaps(changed) { return this.run(['taps'], 'readwrite', 'relaxed', ({ taps }) => changed.forEach(tap => taps.put(tap))); }

  removeTaps(orders) { return this.run(['taps'], 'readwrite', 'relaxed', ({ taps }) => orders.forEach(order => taps.delete(order))); }

  /** A new outbox id, and new ids from it for these taps (ours were taken by another phone or an older copy of this one). */
  renew(changed) {
    return this.run(['kept', 'taps'], 'readwrite', 'strict', ({ kept, taps }) => {
      const outbox = renewed(changed);
      kept.put(outbox, 'outbox');
      changed.forEach(tap => taps.put(tap));
    });
  }
}

function numbered(kept, count, then) {
  kept.get('outbox').onsuccess = event => {
    const { id, next } = event.target.result;
    kept.put({ id, next: next + count }, 'outbox');
    then(Array.from({ length: count }, (_, i) => `${id}.${next + i}`));
  };
}

function renewed(taps) {
  const id = randomId();
  const names = new Map(taps.map((tap, i) => [tap.fact.id, `${id}.${i + 1}`]));
  for (const tap of taps) {
    tap.fact = { ...tap.fact, id: names.get(tap.fact.id) };
    if (names.has(tap.fact.target)) tap.fact.target = names.get(tap.fact.target);
  }
  return { id, next: taps.length + 1 };
}

/** The same for a browser without storage: it records and sends, and the checks say that a reload would lose what is unsent. */
export class MemoryDatabase {
  durable = false;
  outbox = { id: randomId(), next: 1 };
  order = 0;

  async load() { return { kept: {}, heats: [], taps: [] }; }
  async keep() { /* nowhere to keep it */ }
  async keepHeat() { /* nowhere to keep it */ }
  async updateTaps() { /* the outbox holds them */ }
  async removeTaps() { /* the outbox holds them */ }
  async nextId() { return `${this.outbox.id}.${this.outbox.next++}`; }
  async renew(taps) { this.outbox = renewed(taps); }
  async addTaps(heat, facts) {
    return facts.map(fact => ({
      order: ++this.order, heat, state: 'waiting', fact: { fact: fact.fact, id: `${this.outbox.id}.${this.outbox.next++}`, ...fact },
    }));
  }
}
