// Entries on their way: kept on the phone first, sent in the order in which they were made, by one sender over all tabs and the
// service worker. What is sent twice is stored once, since each entry carries a key of its own.
import { now, nowIso } from './clock.js';
import { isOf, maker, signature, whoIsHere } from './maker.js';
import { ask, limit } from './net.js';
import { phrase } from './phrase.js';
import { dropEntries, entries, keepEntries, keepEntry } from './store.js';

const sentKept = 60;
const dayMs = 86_400_000;
const lock = 'wearwatch-floor-send';

/** Milliseconds for which what was kept can be undone. */
export const undoMs = 10_000;

export const State = { kept: 'kept', sent: 'sent', check: 'check', thrown: 'thrown' };

/**
 * Keeps entries that belong together, all or none: each its kind, where it goes (path, method), what it tells (body), its words
 * as a phrase: none of it depends on the language. They are safe once this has answered, and wait ten seconds for an undo.
 */
export async function keepAll(all) {
  const person = await maker();
  const by = person.name || (await signature());
  const [at, heldUntil, group] = [nowIso(), Date.now() + undoMs, crypto.randomUUID()];
  const made = all.map(({ id = crypto.randomUUID(), method = 'POST', ...told }) => (
    { id, at, state: State.kept, method, ...told, group, heldUntil, maker: person.id, by }));
  const seqs = await keepEntries(made);
  return made.map((entry, i) => ({ ...entry, seq: seqs[i] }));
}

/** Milliseconds for which an entry can still be undone before it is sent. A clock that was set back holds nothing for long. */
export const heldMs = entry => {
  const left = (entry.heldUntil ?? 0) - Date.now();
  return entry.state === State.kept && left > 0 && left <= undoMs ? left : 0;
};

/** Takes back what was just kept, all of its group; false when it was sent already. */
export const undo = group => navigator.locks.request(lock, async () => {
  const mine = (await entries()).filter(entry => entry.group === group);
  if (mine.length === 0 || mine.some(entry => entry.state !== State.kept)) return false;
  await dropEntries(mine.map(entry => entry.seq));
  return true;
});

/**
 * Sends what is kept: { sent, stop, held, others, shared }: how many were sent, why it stopped (offline, sign-in or later), for
 * how long the next is held for an undo, whose entries wait for their makers, whether the tablet is shared. Asked to do so at
 * once, it holds nothing.
 */
export const send = ({ atOnce = false, tell = () => {} } = {}) => navigator.locks.request(lock, async () => {
  const here = await whoIsHere();
  const all = await entries();
  const waiting = all.filter(entry => entry.state === State.kept);
  if (here.stop) return { sent: 0, stop: here.stop };
  const mine = waiting.filter(entry => isOf(entry, here));
  const others = waiting.filter(entry => !isOf(entry, here)).map(entry => entry.by);
  const outcome = { sent: 0, shared: here.shared, others: [...new Set(others)] };
  for (const [i, entry] of mine.entries()) {
    const held = atOnce ? 0 : heldMs(entry);
    if (held > 0) return { ...outcome, held };
    tell(mine.length - i);
    const answer = await sendOne(entry);
    if (answer.stop) {
      await keepEntry({ ...entry, tries: (entry.tries ?? 0) + 1 });
      return { ...outcome, stop: answer.stop };
    }

    await keepEntry({ ...entry, tries: 0, ...answer });
    outcome.sent++;
  }

  await forgetOld(all);
  return outcome;
});

// Each vain try doubles the time, so that a server that is slow only is not asked for ever in vain.
const patience = entry => (entry.bytes ? limit.photo : Math.min(limit.photo, limit.decide * 2 ** (entry.tries ?? 0)));

async function sendOne(entry) {
  const answer = await ask(entry.path, {
    method: entry.method, ms: patience(entry),
    headers: { 'Content-Type': entry.type ?? 'application/json', 'Idempotency-Key': entry.id },
    body: entry.bytes ?? JSON.stringify(entry.body),
  });
  if (answer === null) return { stop: 'offline' };
  if (answer.status === 401) return { stop: 'sign-in' };
  // What is not in the server's own words was said by something between: the entry stays.
  if (answer.status === 408 || answer.status === 429 || answer.status >= 500 || answer.body === null) return { stop: 'later' };
  const { body } = answer;
  if (!answer.ok) return { state: State.check, why: whyOf(body, answer.status), confirmable: Boolean(body.errors?.confirmed) };
  return body.standing === 'waiting'
    ? { state: State.check, why: body.why, readingId: body.id }
    : { state: State.sent, sentAt: new Date().toISOString(), readingId: body.id, why: '' };
}

/** What a refusal says, in the words of the server. */
export const whyOf = (problem, status) =>
  Object.values(problem.errors ?? {}).flat().join(' ') || problem.detail || problem.title
    || phrase`The server refused it (${status}).`;

/** Whether what was thrown away can still be taken back. */
export const canBeTakenBack = entry => entry.state === State.thrown && now() - entry.thrownAt < dayMs;

async function forgetOld(all) {
  const sent = all.filter(entry => entry.state === State.sent);
  const old = [
    ...sent.slice(0, Math.max(0, sent.length - sentKept)),
    ...all.filter(entry => entry.state === State.thrown && !canBeTakenBack(entry)),
  ];
  if (old.length > 0) await dropEntries(old.map(entry => entry.seq));
}

/** Asks the browser to send later, where it can, even with this page closed. */
export async function sendLater() {
  try {
    await (await navigator.serviceWorker?.ready)?.sync?.register('send');
  } catch {
    // This browser sends only while the page is open.
  }
}
