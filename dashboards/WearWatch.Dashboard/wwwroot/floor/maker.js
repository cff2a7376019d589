// Who makes the entries: the person who is signed in, kept for hours without signal; without sign-in, the name that was typed.
import { keepValue, value } from './store.js';

/**
 * Who is signed in now by the server: { id, name, and shared on a shared tablet }, or { stop } when it cannot be asked or
 * nobody is.
 */
export async function whoIsHere() {
  let response;
  try {
    response = await fetch('/api/v1/me', { credentials: 'same-origin', redirect: 'error' });
  } catch {
    return { stop: 'offline' };
  }

  if (response.status === 401) return { stop: 'sign-in' };
  // A plant without sign-in knows nobody: everybody's entries go out.
  if (response.status === 404) return keepMaker({ id: null, name: '' });
  if (!response.ok) return { stop: 'later' };
  const { id, name, shared_tablet: shared } = await response.json();
  return { ...await keepMaker({ id, name }), shared };
}

/** The person who was last seen signed in on this phone, also offline. */
export const maker = async () => (await value('maker')) ?? { id: null, name: '' };

/** The name under which entries are kept: of the account, else the one typed on this phone. */
export const signature = async () => (await maker()).name || localStorage.getItem('wearwatch-name') || '';

export const sign = name => localStorage.setItem('wearwatch-name', name.trim());

async function keepMaker(person) {
  await keepValue('maker', person);
  return person;
}
