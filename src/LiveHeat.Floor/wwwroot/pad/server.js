// The server by HTTP: every write is safe to repeat, every read a plain GET. What goes wrong is a Problem with a code and a sentence.

const WAIT_MS = 10_000;

/** What went wrong: `code` is stable ("offline" and "slow" are our own), `message` a sentence to show. */
export class Problem extends Error {
  constructor(code, sentence, status = 0, retryAfterMs = 0) {
    super(sentence);
    this.code = code;
    this.status = status;
    this.retryAfterMs = retryAfterMs;
  }
}

/** @param {string} path @param {any} [body] a POST when given @returns {Promise<any>} */
export async function call(path, body) {
  const giveUp = new AbortController();
  const timer = setTimeout(() => giveUp.abort(), WAIT_MS);
  try {
    const answer = await fetch(path, {
      method: body === undefined ? 'GET' : 'POST',
      headers: body === undefined ? {} : { 'Content-Type': 'application/json' },
      body: body === undefined ? undefined : JSON.stringify(body),
      credentials: 'same-origin', signal: giveUp.signal,
    });
    const text = await answer.text();
    const value = text && /json/.test(answer.headers.get('Content-Type') ?? '') ? JSON.parse(text) : null;
    if (answer.ok) return value;
    const retryAfterMs = 1_000 * (Number(answer.headers.get('Retry-After')) || 0);
    throw new Problem(value?.code ?? `http-${answer.status}`, value?.detail ?? value?.title ?? '', answer.status, retryAfterMs);
  } catch (problem) {
    if (problem instanceof Problem) throw problem;
    throw new Problem('offline', '');
  } finally {
    clearTimeout(timer);
  }
}

/** What an address's fragment or a typing thumb may hold, as the eight characters of a code; '' when it is none. Crockford's base 32. */
export function readCode(text) {
  const code = text.toUpperCase().replace(/[^0-9A-Z]/g, '').replace(/O/g, '0').replace(/[IL]/g, '1');
  return /^[0-9A-HJKMNP-TV-Z]{8}$/.test(code) ? code : '';
}
