// What this phone has kept: what is to be checked, what waits for signal, what was sent or thrown away; each with what to do.
import { offWorthTelling } from './clock.js';
import { decision } from './decide.js';
import { h, linkButton } from './dom.js';
import { megabytes, moment } from './figures.js';
import { choose, language, languages, t } from './language.js';
import { guest, isOf, maker } from './maker.js';
import { canBeTakenBack, State } from './outbox.js';
import { chainOf } from './pack.js';
import { counted } from './phrase.js';
import { freeBytes, keepEntry } from './store.js';
import { answers } from './to-check.js';
import { liftingMark } from './words.js';

const words = {
  [State.kept]: ['…', t`kept here`], [State.sent]: ['✓', t`sent`], [State.check]: ['!', t`to be checked`],
  [State.thrown]: ['×', t`thrown away`],
};
const kinds = {
  measure: t`Measured`, lubricate: t`Lubricated`, inspect: t`Inspected`, done: t`Done`, photo: t`Photo`, links: t`Links`,
  parts: t`Parts`, exam: t`Examined`, answer: t`Answer`, hand: t`Round`, handed: t`To the planner`,
};

export function keptPage(context) {
  const { entries, push, redraw } = context;
  const speech = h('select', { id: 'language', onchange: async event => choose(event.target.value, await isPersons()) },
    languages.map(([code, own]) => h('option', { value: code, lang: code, selected: code === language.code }, own)));
  const of = state => entries.filter(entry => entry.state === state).toReversed();
  const waiting = of(State.kept).length;
  const check = of(State.check).length;
  const list = entries => entries.length > 0 && h('ol', { class: 'kept' }, entries.map(entry => item(entry, context)));
  const thrown = of(State.thrown).filter(canBeTakenBack);
  return [
    h('h1', { tabindex: '-1' }, t`On this phone`),
    h('p', { class: 'hint' }, t`What you enter is kept here first, and sent in order when there is signal.`),
    check > 0 && h('h2', { class: 'red' },
      counted(check, t`${check} entry to be checked`, t`${check} entries to be checked`)),
    list(of(State.check)),
    waiting > 0 && [
      h('h2', {}, t`Not sent yet`),
      decision(t`Send ${waiting} now`, async () => told(await push({ atOnce: true }), redraw), { class: 'button primary big' }),
      h('p', { id: 'send-told', role: 'status' }), list(of(State.kept)),
    ],
    entries.length === 0 && h('p', {}, t`Nothing was entered on this phone yet.`),
    list(of(State.sent)), thrown.length > 0 && h('h2', {}, t`Thrown away`), list(thrown),
    h('div', { class: 'field' }, h('label', { for: 'language' }, t`Language`), speech), look(), room(),
  ];
}

// Who is signed in takes the choice along; a guest of this phone, and a plant without sign-in, choose for the phone.
async function isPersons() {
  return (await maker()).id !== null && !(await guest());
}

// Why something stayed is said; nothing is silent about another person's entries.
async function told(outcome, redraw) {
  await redraw({ stays: true });
  const place = document.getElementById('send-told');
  const others = outcome.others?.join(', ');
  const why = others ? t`These wait for ${others}: sign in under that name, then they are sent.`
    : { 'sign-in': t`Signed out. Sign in, then it is sent`, offline: t`No signal: kept on this phone`,
      later: t`The server does not answer: kept here` }[outcome.stop] ?? '';
  if (place && why) place.replaceChildren(why, ' ', outcome.stop === 'sign-in' || others
    ? linkButton(t`Change person`, '#/who', { class: 'button slim' }) : '');
}

function look() {
  const looks = [['', t`as on the desk`], ['light', t`light`], ['dark', t`dark`], ['sun', t`sunlight: black on white`]];
  const now = localStorage.getItem('wearwatch-floor-look') ?? '';
  const choice = h('select', { id: 'look', onchange: event => {
    if (event.target.value) localStorage.setItem('wearwatch-floor-look', event.target.value);
    else localStorage.removeItem('wearwatch-floor-look');
    document.documentElement.dataset.look = event.target.value || 'light';
  } }, looks.map(([key, word]) => h('option', { value: key, selected: key === now }, word)));
  return h('div', { class: 'field' }, h('label', { for: 'look' }, t`Appearance`), choice);
}

// How much more this phone can keep, and how far its clock is off.
function room() {
  const off = Math.round(offWorthTelling() / 60_000);
  const free = h('p', { class: 'hint' });
  freeBytes().then(bytes => { if (bytes !== null) free.textContent = t`${megabytes(bytes)} free for entries and photos.`; });
  return [free, off !== 0 && h('p', { class: 'why' }, off > 0 ? t`This phone’s clock is ${off} min slow: times are corrected.`
    : t`This phone’s clock is ${-off} min fast: times are corrected.`)];
}

function item(entry, context) {
  const [sign, word] = words[entry.state];
  if (!isOf(entry, context.me)) return sealed(entry, sign, word);
  const zone = context.plant?.plant.time_zone;
  const chain = chainOf(context.plant, entry.chainId);
  const held = entry.state === State.kept && entry.by ? t`, by ${entry.by}` : '';
  return h('li', { class: `entry ${entry.state}`, 'data-state': entry.state },
    h('p', { class: 'state' }, h('span', { 'aria-hidden': 'true' }, `${sign} `), word),
    h('div', {}, h('p', {},
      h('strong', {}, `${kinds[entry.kind] ?? entry.kind}: ${chain?.chain ?? (entry.chain || t`Without a line`)}`),
      chain && liftingMark(chain)), h('p', {}, t(entry.words)),
      h('p', { class: 'hint' }, `${moment(entry.body?.taken_at ?? entry.at, zone)}${held}`),
      entry.state === State.check && answers(entry, context),
      entry.state === State.sent && entry.kind === 'measure' && chain && entry.readingId && entry.form
        && linkButton(t`Correct it`, `#/chain/${chain.id}/measure?entry=${entry.seq}`, { class: 'button slim' }),
      entry.state === State.thrown && decision(t`Take it back`,
        () => keepEntry({ ...entry, state: entry.why ? State.check : State.kept }).then(() => context.redraw()),
        { class: 'button slim' })));
}

/** What another person entered here: it waits, and is shown to that person only. */
function sealed(entry, sign, word) {
  return h('li', { class: `entry ${entry.state}`, 'data-state': entry.state },
    h('p', { class: 'state' }, h('span', { 'aria-hidden': 'true' }, `${sign} `), word),
    h('p', {}, t`An entry of ${entry.by}: sign in as that person to see and send it.`));
}
