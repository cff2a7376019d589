// Who makes the entries: the person who is signed in, kept for hours without signal; without sign-in, the name that was typed.
import { ask } from './net.js';
import { keepValue, value } from './store.js';

/** Of an entry whose maker could not sign in: it waits until that person has. */
export const whose = 'whose';

const nobody = { id: null, name: '' };

/**
 * Who is signed in now by the server: { id, name, their language, and shared on a shared tablet }, or { stop } when it cannot
 * be asked or nobody is.
 */
export async function whoIsHere() {
  const answer = await ask('/api/v1/me');
  if (answer === null) return { stop: 'offline' };
  if (answer.status === 401) return { stop: 'sign-in' };
  // A plant without sign-in knows nobody: everybody's entries go out.
  if (answer.status === 404) return keepMaker(nobody);
  if (!answer.ok || answer.body === null) return { stop: 'later' };
  const { id, name, shared_tablet: shared, language } = answer.body;
  return { ...await keepMaker({ id, name }), shared, language };
}

/** Who enters now, also offline: who took this phone over since, else the person who was last seen signed in. */
export const maker = async () => (await guest()) ?? (await value('maker')) ?? nobody;

/** Who took this phone over without a sign-in: known by a PIN, or by a name alone; undefined for nobody. */
export async function guest() {
  const kept = await value('guest');
  return typeof kept === 'string' ? { id: whose, name: kept } : kept; // an earlier version kept the name alone
}

/** Those who have been signed in on this phone, to choose from. */
export const known = async () => (await value('known')) ?? [];

/** Without signal another person takes the phone, proven by a PIN or not: what is entered waits for that person's sign-in. */
export const takeOver = ({ id = whose, name }) => keepValue('guest', { id, name: name.trim() });

/** The name under which entries are kept: of the account, else the one typed on this phone. */
export const signature = async () => (await maker()).name || localStorage.getItem('wearwatch-name') || '';

export const sign = name => localStorage.setItem('wearwatch-name', name.trim());

/**
 * Whether an entry is a person's: shown to whoever enters, sent under whoever the server says is signed in. Nobody's entry goes
 * out under another name.
 */
export const isOf = (entry, person) => entry.maker === null
  || (entry.maker === whose ? isSame(entry.by, person.name) : entry.maker === person.id);

/** Whether two names are a person's. */
export const isSame = (one, other) => one?.trim().toLowerCase() === other?.trim().toLowerCase();

async function keepMaker(person) {
  const [before, since] = [await value('maker'), await guest()];
  // Who is signed in now is told by the sign-in again once it is another one, or the one who took the phone over.
  const isBack = since?.id === whose ? isSame(since.name, person.name) : since?.id === person.id;
  if (since && (isBack || (before && before.id !== person.id))) await keepValue('guest', undefined);
  if (before?.id === person.id && before?.name === person.name) return person;
  await keepValue('maker', person);
  const others = (await known()).filter(name => !isSame(name, person.name));
  if (person.name) await keepValue('known', [person.name, ...others].slice(0, 12));
  return person;
}
