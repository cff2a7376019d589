// The network, which may be away, or accept and never answer: every request has its time, and no screen waits for one.
import { learn } from './clock.js';

/** Milliseconds that a request may take, with its answer: to decide, to send a photo, to fetch the pack. */
export const limit = { decide: 3_000, photo: 60_000, pack: 30_000 };

/**
 * Asks: { status, ok, body, tag }, the body being null when it is not JSON, as of a page that stands between phone and server;
 * the tag names the answer, if it has one. Null when there was no whole answer in time.
 */
export async function ask(path, { ms = limit.decide, ...options } = {}) {
  const askedAt = Date.now();
  try {
    const response = await fetch(path, {
      credentials: 'same-origin', redirect: 'error', cache: 'no-store', ...options, signal: AbortSignal.timeout(ms),
    });
    learn(response, askedAt);
    const text = await response.text();
    return { status: response.status, ok: response.ok, body: json(text), tag: response.headers.get('ETag') };
  } catch {
    return null;
  }
}

function json(text) {
  try {
    const told = JSON.parse(text);
    return typeof told === 'object' ? told : null;
  } catch {
    return null;
  }
}
