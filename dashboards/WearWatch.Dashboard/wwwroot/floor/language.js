// The language of this phone: its texts and figures are one file, which the service worker keeps. Another choice loads the page
// anew, so that no screen is half in one language and half in another.
import { formOf } from './phrase.js';

// What was chosen on this phone, and what the person who is signed in has chosen: theirs goes first, as on the server.
const cookie = 'language', personCookie = 'person-language';
const patienceMs = 3_000;

/** The languages there are, as [code, its own name]. */
export const languages = (document.documentElement.dataset.languages ?? '').split(';').filter(Boolean).map(l => l.split('='));

/** How this language writes figures, and its texts by the English ones. */
export const language = await read(wanted());

/** A text in this language: t`Chain ${name}`, or a phrase that was made before. What is a plain text already stays. */
export function t(said, ...facts) {
  if (Array.isArray(said)) return fill(formOf(said), facts);
  return said?.form === undefined ? said ?? '' : fill(said.form, said.facts);
}

/**
 * Keeps another language, also without signal: with the person who is signed in, whom the server is told as soon as it can be;
 * else with this phone, by the cookie that the server reads too.
 */
export async function choose(code, isPersons) {
  if (isPersons) {
    localStorage.setItem(untold, code);
    await tell(code);
  }

  keep(isPersons ? personCookie : cookie, code);
  location.reload();
}

/** Speaks the language of the person who is here by the server; without signal nothing changes. */
export async function follow(here) {
  if (here.stop === 'offline' || here.stop === 'later') return;
  const chosenHere = localStorage.getItem(untold);
  const code = here.id && chosenHere && await tell(chosenHere) ? chosenHere : here.language ?? undefined;
  if (code === kept(personCookie)) return;
  keep(personCookie, code);
  if (wanted() !== language.code) location.reload();
}

const untold = 'language-untold';

async function tell(code) {
  try {
    const response = await fetch('/api/v1/me/language', {
      method: 'PUT', body: JSON.stringify({ language: code }), credentials: 'same-origin', redirect: 'error',
      signal: AbortSignal.timeout(patienceMs),
      headers: { 'Content-Type': 'application/json', 'Idempotency-Key': `language:${code}:${Date.now()}` },
    });
    if (response.ok) localStorage.removeItem(untold);
    return response.ok;
  } catch {
    return false; // no signal: told when the server is asked who is here
  }
}

const keep = (name, code) => {
  document.cookie = `${name}=${code ?? ''}; path=/; max-age=${code ? 31536000 : 0}; samesite=lax`;
};

const fill = (form, facts) => (language.texts[form] ?? form).replace(/\{(\d+)\}/g, (_, i) => written(facts[i]));

function written(fact) {
  if (typeof fact === 'number') return String(fact).replace('.', language.decimal_sign);
  if (typeof fact !== 'object' || fact === null) return fact ?? '';
  return fact.form === undefined ? figure(fact) : t(fact);
}

// A figure that was kept: its kind of figure, and the number.
let kinds = {};
const figure = fact => Object.entries(fact).map(([kind, value]) => kinds[kind]?.(value) ?? value).join('');

/** Tells how figures of phrases are written. */
export const writeBy = ways => { kinds = ways; };

function kept(name) {
  return new RegExp(`(?:^|; )${name}=([a-z]{2,3})(?:;|$)`).exec(document.cookie)?.[1];
}

// What was chosen here, also the language of those who develop, which no list offers; else what the browser asks for.
function wanted() {
  const asked = navigator.languages.map(tag => tag.split('-')[0].toLowerCase());
  return kept(personCookie) ?? kept(cookie) ?? asked.find(code => languages.some(([each]) => each === code)) ?? 'en';
}

async function read(code) {
  try {
    const response = await fetch(`/floor/language/${code}.json`,
      { credentials: 'same-origin', signal: AbortSignal.timeout(patienceMs) });
    if (response.ok) return await response.json();
  } catch {
    // No signal, and no copy yet.
  }

  return code === 'en' ? plain() : read('en');
}

// What the scripts can say without any file.
function plain() {
  const names = month => Array.from({ length: 12 }, (_, i) => new Date(2001, i, 1).toLocaleDateString('en-GB', { month }));
  return {
    code: 'en', decimal_sign: '.', group_sign: ',', months: names('long'), months_short: names('short'),
    day_pattern: 'd MMM yyyy', texts: {},
  };
}
