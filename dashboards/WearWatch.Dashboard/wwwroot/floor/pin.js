// The PIN by which a person takes a shared device over without signal. The device keeps a verifier, never the PIN; tries are
// counted, so that nobody guesses at the screen. It proves nothing to the server: what it is worth stands in docs/security.md.
import { phrase } from './phrase.js';
import { keepValue, value } from './store.js';

const shortest = 4;
const iterations = 600_000; // OWASP's advice for PBKDF2 with HMAC-SHA-256, from memory
const saltBytes = 16;
const verifierBits = 256;
const free = 3;
const most = 10;
const firstWaitMs = 5_000;
const lock = 'wearwatch-floor-pins';

/** The most digits. */
export const longest = 8;

/** Those who have set a PIN on this device: each an id of the server and a name. */
export const holders = async () => (await value('pins')) ?? [];

/** What is wrong with a PIN that somebody chose, by the same rule as the server's; null when it will do. */
export function faultOf(pin) {
  if (pin.length < shortest || pin.length > longest) return phrase`A PIN has ${shortest} to ${longest} digits.`;
  if (!/^[0-9]+$/.test(pin)) return phrase`A PIN has digits only.`;
  const steps = new Set([...pin].slice(1).map((digit, i) => digit - pin[i]));
  return steps.size > 1 ? null
    : phrase`Choose digits that neither repeat nor count up or down: those are guessed first.`;
}

/** Sets a person's PIN on this device, in place of an earlier one. */
export async function setPin({ id, name }, pin) {
  const salt = crypto.getRandomValues(new Uint8Array(saltBytes));
  const made = { id, name, salt, iterations, verifier: await derive(pin, { salt, iterations }), misses: 0, until: 0 };
  await navigator.locks.request(lock, () => replace(id, made));
}

/** Takes a person's PIN off this device. */
export const dropPin = id => navigator.locks.request(lock, () => replace(id));

/**
 * Tries a PIN: { person } when it is right; else the milliseconds until the next try (waitMs) and how many are left. A try during
 * the wait is not looked at (isEarly). With none left the verifier is gone, until the person sets a PIN anew.
 */
export const tryPin = (id, pin) => navigator.locks.request(lock, async () => {
  const holder = (await holders()).find(each => each.id === id);
  const left = most - (holder?.misses ?? most);
  if (left <= 0) return { left: 0, waitMs: 0 };
  const waitMs = waitOf(holder);
  if (waitMs > 0) return { left, waitMs, isEarly: true };
  // Counted before it is looked at: a page that is loaded anew meanwhile gains no try.
  const misses = holder.misses + 1;
  await replace(id, { ...holder, misses, until: Date.now() + pauseAfter(misses), verifier: left > 1 ? holder.verifier : null });
  if (isSame(await derive(pin, holder), holder.verifier)) {
    await replace(id, { ...holder, misses: 0, until: 0 });
    return { person: { id, name: holder.name } };
  }

  return { left: left - 1, waitMs: left > 1 ? pauseAfter(misses) : 0 };
});

// The first misses are slips of a glove; then each wait is twice the one before.
const pauseAfter = misses => (misses <= free ? 0 : firstWaitMs * 2 ** (misses - free - 1));

// A clock that was set back makes nobody wait for longer than the pause.
const waitOf = ({ misses, until }) => Math.min(Math.max(0, until - Date.now()), pauseAfter(misses));

async function derive(pin, { salt, iterations }) {
  const key = await crypto.subtle.importKey('raw', new TextEncoder().encode(pin), 'PBKDF2', false, ['deriveBits']);
  const how = { name: 'PBKDF2', hash: 'SHA-256', salt, iterations };
  return new Uint8Array(await crypto.subtle.deriveBits(how, key, verifierBits));
}

const isSame = (one, other) => one.every((byte, i) => byte === other[i]);

async function replace(id, made) {
  const others = (await holders()).filter(each => each.id !== id);
  await keepValue('pins', made ? [...others, made].sort((a, b) => a.name.localeCompare(b.name)) : others);
}
