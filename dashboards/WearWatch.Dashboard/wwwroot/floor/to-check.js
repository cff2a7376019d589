// What can be done about an entry that was refused or is doubted: nothing of it is lost, whatever the register says by now.
import { readOut } from './confirm.js';
import { now } from './clock.js';
import { decision } from './decide.js';
import { h, linkButton } from './dom.js';
import { percent } from './figures.js';
import { t } from './language.js';
import { signature } from './maker.js';
import { begin, bodyOf, readForm, take } from './measure-form.js';
import { keepOrTell, textOfEntry } from './not-kept.js';
import { State } from './outbox.js';
import { chainOf } from './pack.js';
import { phrase } from './phrase.js';
import { askServer, slipList } from './slips.js';
import { keepEntry } from './store.js';

const pause = 1_500;
const screens = {
  measure: 'measure', links: 'links', parts: 'parts', inspect: 'inspect', lubricate: 'do?what=oiling', done: 'do',
};

/** The parts of an entry's item: why, what may have slipped, and the ways on. */
export function answers(entry, context) {
  const chain = chainOf(context.plant, entry.chainId);
  const ways = h('div', { class: 'choices' });
  const more = h('div', { class: 'more' });
  const slips = h('div', { class: 'slips' });
  if (entry.readingId && chain && entry.form) {
    askServer(entry.body, entry.readingId)
      .then(doubt => slipList(slips, doubt, chain, slip => correct(entry, chain, slip, context)));
  }

  ways.append(...(entry.readingId ? ofDoubted : ofRefused)(entry, chain, context, more).filter(Boolean));
  return [h('p', { class: 'why' }, t(entry.why)), slips, ways, more];
}

function ofDoubted(entry, chain, context, more) {
  const gauged = chain && entry.form && readForm(begin(chain, entry.form), { ...chain, last_counter_h: null }).gauged;
  const confirm = () => ask(more, t`Is it right all the same?`, gauged && t`In words: elongation ${readOut(gauged.percent)}.`,
    gauged?.percent === undefined ? t`It is right` : t`Yes, ${percent(gauged.percent)}`,
    () => say(entry, 'confirmation', 'It is right', phrase`It is right`, context));
  return [
    change(entry, chain, t`Correct it`),
    // What no chain can be waits for a planner.
    gauged?.doubted ? h('p', { class: 'hint' }, t`It waits for a planner.`) : decision(t`It is right: use it`, confirm),
    decision(t`Withdraw it`, () => ask(more, t`Withdraw it?`, t`It stays on record and is not used.`, t`Yes, withdraw it`,
      () => say(entry, 'withdrawal', 'Withdrawn', phrase`Withdrawn`, context))),
  ];
}

const ofRefused = (entry, chain, context, more) => [
  decision(t`Send again`, () => settle({ ...entry, state: State.kept, why: '' }, context), { class: 'button primary' }),
  entry.confirmable && decision(t`It is right: use it`, () => ask(more, t`Is it right all the same?`, null, t`It is right`,
    () => settle(
      { ...entry, state: State.kept, why: '', confirmable: false, body: { ...entry.body, confirmed: true } }, context))),
  change(entry, chain, t`Change it`),
  entry.body && context.plant && decision(t`Other chain`, () => move(entry, context, more)),
  entry.body && decision(t`To the planner`, () => ask(more, t`Hand it to the planner?`, t`The planner gets all that it says.`,
    t`Yes, hand it on`, () => handOn(entry, context))),
  decision(t`Throw it away`, () => ask(more, t`Throw it away?`, t`It can be taken back for a day.`, t`Yes, throw it away`,
    () => settle({ ...entry, state: State.thrown, thrownAt: now() }, context))),
];

const change = (entry, chain, name) => {
  const [screen, query] = (screens[entry.kind] ?? '').split('?');
  if (!chain || !entry.form || !screen) return null;
  const what = entry.kind === 'done' ? `what=${entry.body.event}` : query;
  return linkButton(name, `#/chain/${chain.id}/${screen}?${what ? `${what}&` : ''}entry=${entry.seq}`);
};

// The second step stands below the first one, and hears nothing for a while.
function ask(place, title, text, yes, act) {
  place.replaceChildren(h('section', { class: 'confirm', role: 'group', 'aria-label': title, tabindex: '-1' },
    h('p', {}, h('strong', {}, title)), text && h('p', {}, text), h('div', { class: 'choices' },
      decision(t`No`, () => place.replaceChildren(), { class: 'button primary' }),
      decision(yes, act, { pause, class: 'button grave' }))));
  place.firstChild.focus();
}

// Another chain than the one whose name was tapped, or one that was renamed, taken out or taken in anew.
function move(entry, context, place) {
  const to = h('select', { id: `to-${entry.seq}` },
    context.plant.chains.map(({ id, chain, position }) => (
      h('option', { value: id }, [chain, position].filter(Boolean).join(' · ')))));
  place.replaceChildren(h('section', { class: 'confirm' },
    h('div', { class: 'field' }, h('label', { for: to.id }, t`It was done at`), to),
    h('div', { class: 'choices' }, decision(t`Move it there`, () => {
      const chain = chainOf(context.plant, to.value);
      return settle({
        ...entry, state: State.kept, why: '', chain: chain.chain, chainId: chain.id,
        path: entry.path.replace(encodeURIComponent(entry.chain), encodeURIComponent(chain.chain)),
        body: { ...entry.body, ...'chain' in entry.body ? { chain: chain.chain, chain_id: chain.id } : {} },
      }, context);
    }, { pause }))));
  to.focus();
}

async function handOn(entry, context) {
  const by = (await signature()) || 'floor';
  const kept = await keepOrTell([{
    kind: 'handed', path: '/api/v1/floor/handed', chain: entry.chain, chainId: entry.chainId,
    words: phrase`Handed to the planner`,
    body: { entry: textOfEntry(entry), by },
  }], () => handOn(entry, context));
  if (kept) await settle({ ...entry, state: State.thrown, thrownAt: now() }, context);
}

// An answer is an entry like any other: kept first, sent when it can be, never twice.
async function say(entry, what, why, words, context) {
  const by = await signature();
  const kept = await keepOrTell([{
    kind: 'answer', method: 'PUT', path: `/api/v1/readings/${entry.readingId}/${what}`, body: { by: by || 'floor', why },
    chain: entry.chain, chainId: entry.chainId, words,
  }], () => say(entry, what, why, words, context));
  if (kept) await settle({ ...entry, state: State.sent, why: '' }, context);
}

async function correct(entry, chain, slip, context) {
  const form = begin(chain, structuredClone(entry.form));
  take(form, readForm(form, chain), slip);
  const read = readForm(form, chain);
  const kept = await keepOrTell([{
    kind: 'measure', path: `/api/v1/readings/${entry.readingId}/corrections`, chain: entry.chain, chainId: entry.chainId, form,
    body: { ...bodyOf(form, chain, read, await signature(), false), taken_at: entry.body.taken_at },
    words: phrase`Corrected: ${slip.words}`,
  }], () => correct(entry, chain, slip, context));
  if (kept) await settle({ ...entry, state: State.sent, why: '' }, context);
}

async function settle(entry, context) {
  await keepEntry(entry);
  await context.redraw({ stays: true });
  await context.push();
}
