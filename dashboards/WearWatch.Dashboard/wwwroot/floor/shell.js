// What stands around each screen: who enters, the signal, what is kept, and the ways to the others.
import { h } from './dom.js';
import { moment } from './figures.js';
import { t } from './language.js';
import { maker, signature, whose } from './maker.js';
import { State } from './outbox.js';
import { keptPack } from './pack.js';
import { entries } from './store.js';

const $ = id => document.getElementById(id);
const tabs = [['', t`Round`], ['oil', t`Oil`], ['find', t`Find`], ['kept', t`Kept`]]
  .map(([where, word]) => h('a', { href: `#/${where}` }, word));
const other = h('a', { id: 'switch', href: '/people/switch?back=/floor/', hidden: true }, t`Switch`);
let now = { sending: 0, stop: undefined, others: [] };

/** The ways to the other screens; the one that is open is marked. */
export function paintTabs(where) {
  if (!tabs[0].isConnected) {
    $('tabs').replaceChildren(...tabs, other);
    $('tabs').setAttribute('aria-label', t`Floor`);
  }

  for (const link of tabs) {
    if (link.hash === `#/${where}`) link.setAttribute('aria-current', 'page');
    else link.removeAttribute('aria-current');
  }
}

/** The truth about the phone in one line: who, whether entries go out and why not, how old its data are, what is kept. */
export async function paintHead(changes = {}) {
  now = { ...now, ...changes };
  other.hidden = !now.shared;
  const pack = await keptPack().catch(() => undefined);
  const asOf = pack ? t`as of ${moment(pack.made_at, pack.plant.time_zone)}` : '';
  const [state, words] = said();
  $('net').dataset.state = state;
  const text = [words, asOf].filter(Boolean).join(' · ');
  if ($('net').textContent !== text) $('net').replaceChildren(state === 'sign' ? h('a', { href: signInAddress() }, text) : text);
  await paintKept();
  await paintWho();
}

function said() {
  if (now.sending > 0) return ['on', t`Sending ${now.sending}`];
  if (now.stop === 'offline' || !navigator.onLine) return ['off', t`No signal: kept on this phone`];
  if (now.stop === 'sign-in') return ['sign', t`Signed out. Sign in, then it is sent`];
  if (now.stop === 'later') return ['off', t`The server does not answer: kept here`];
  if (now.others.length > 0) return ['sign', t`${now.others.join(', ')} signs in, then it is sent`];
  return now.stop === undefined ? ['wait', t`Looking for signal`] : ['on', t`Connected`];
}

/** Where one signs in, also while another one is signed in, and comes back from. */
export const signInAddress = () => `/people/sign-in?other=true&back=${encodeURIComponent(location.pathname + location.hash)}`;

async function paintKept() {
  const all = await entries().catch(() => []);
  const [kept, check] = [State.kept, State.check].map(state => all.filter(entry => entry.state === state).length);
  $('kept').textContent = check > 0 ? t`Kept ${kept} · check ${check}` : t`Kept ${kept}`;
  $('kept').dataset.check = check > 0;
}

async function paintWho() {
  const person = await maker().catch(() => ({ name: '' }));
  const name = person.name || await signature().catch(() => '');
  const mark = person.id === whose ? '?' : '';
  const initials = name.split(/\s+/).filter(Boolean).map(part => part[0].toUpperCase());
  $('who').textContent = name ? `${initials[0]}${initials.length > 1 ? initials.at(-1) : ''}${mark}` : '?';
  const words = name ? t`${name} enters: change person` : t`Nobody’s name is known: say who enters`;
  // What is spoken to the phone is what stands there.
  $('who').setAttribute('aria-label', `${$('who').textContent} ${words}`);
  $('who').title = name;
}
