// Entries on their way: kept on the phone first, sent in the order in which they were made, by one sender over all tabs and the
// service worker. What is sent twice is stored once, since each entry carries a key of its own.
import { dropEntry, entries, keepEntry } from './store.js';
import { maker, signature, whoIsHere } from './maker.js';

const sentKept = 60;
export const State = { kept: 'kept', sent: 'sent', check: 'check' };

/** Keeps an entry: its kind, where it goes (path, method), what it tells (body), in words. It is safe once this has answered. */
export async function keep({ method = 'POST', ...told }) {
  const person = await maker();
  const entry = {
    id: crypto.randomUUID(), at: new Date().toISOString(), state: State.kept,
    method, ...told, maker: person.id, by: person.name || (await signature()),
  };
  const seq = await keepEntry(entry);
  return { ...entry, seq };
}

/** Sends what is kept. Answers how many were sent, and why it stopped: offline, sign-in or later. */
export const send = () => navigator.locks.request('wearwatch-floor-send', async () => {
  const all = await entries();
  const waiting = all.filter(entry => entry.state === State.kept);
  if (waiting.length === 0) return { sent: 0 };
  const here = await whoIsHere();
  if (here.stop) return { sent: 0, stop: here.stop };
  let sent = 0;
  for (const entry of waiting) {
    // Nobody's entry goes out under another name.
    if (entry.maker !== null && entry.maker !== here.id) continue;
    const answer = await sendOne(entry);
    if (answer.stop) return { sent, stop: answer.stop };
    await keepEntry({ ...entry, ...answer });
    if (answer.state === State.sent) sent++;
  }

  await forgetOld(all);
  return { sent };
});

async function sendOne(entry) {
  let response;
  try {
    response = await fetch(entry.path, {
      method: entry.method, credentials: 'same-origin', redirect: 'error',
      headers: { 'Content-Type': entry.type ?? 'application/json', 'Idempotency-Key': entry.id },
      body: entry.bytes ?? JSON.stringify(entry.body),
    });
  } catch {
    return { stop: 'offline' };
  }

  if (response.status === 401) return { stop: 'sign-in' };
  if (response.status === 408 || response.status === 429 || response.status >= 500) return { stop: 'later' };
  const answer = await response.json().catch(() => ({}));
  if (!response.ok) return { state: State.check, why: whyOf(answer, response.status) };
  return answer.standing === 'waiting'
    ? { state: State.check, why: answer.why, readingId: answer.id }
    : { state: State.sent, sentAt: new Date().toISOString(), readingId: answer.id, why: '' };
}

/** What a refusal says, in the words of the server. */
export const whyOf = (problem, status) =>
  Object.values(problem.errors ?? {}).flat().join(' ') || problem.detail || problem.title || `The server refused it (${status}).`;

async function forgetOld(all) {
  const sent = all.filter(entry => entry.state === State.sent);
  for (const entry of sent.slice(0, Math.max(0, sent.length - sentKept))) await dropEntry(entry.seq);
}

/** Asks the browser to send later, where it can, even with this page closed. */
export async function sendLater() {
  try {
    await (await navigator.serviceWorker?.ready)?.sync?.register('send');
  } catch {
    // This browser sends only while the page is open.
  }
}
