// The server by HTTP: every write is safe to repeat, every read a plain GET.

const WAIT_MS = 10_000;

/** `code` is stable ("offline" is our own), `message` a sentence to show. */
export class Problem extends Error {
  constructor(code, message = '', status = 0, retryAfterMs = 0) {
    super(message);
    Object.assign(this, { code, status, retryAfterMs });
  }
}

export async function call(path, body) {
  const waiting = new AbortController(), timer = setTimeout(() => waiting.abort(), WAIT_MS);
  try {
    const answer = await fetch(path, {
      signal: waiting.signal,
      ...(body && { method: 'POST', headers: { 'Content-Type': 'application/json' }, body: JSON.stringify(body) }),
    });
    const { ok, status, headers } = answer, type = headers.get('Content-Type') ?? '', text = await answer.text();
    const value = /json/.test(type) ? JSON.parse(text) : {};
    if (ok && !/html/.test(type)) return value;            // a page instead of an answer: somebody else's sign-in page
    throw new Problem(value.code ?? `http-${status}`, value.detail, ok ? 0 : status, 1_000 * headers.get('Retry-After'));
  } catch (problem) {
    throw problem instanceof Problem ? problem : new Problem('offline');
  } finally {
    clearTimeout(timer);
  }
}

/** Crockford's base 32, as typed or as an address's fragment; '' when it is no code. */
export function readCode(text) {
  const code = text.toUpperCase().replace(/[^0-9A-Z]/g, '').replace(/O/g, '0').replace(/[IL]/g, '1');
  return /^[0-9A-HJKMNP-TV-Z]{8}$/.test(code) ? code : '';
}
