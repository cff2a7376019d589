// What this phone has kept: what waits for signal, what was sent, what is to be checked, each with what to do about it.
import { button, h, linkButton } from './dom.js';
import { moment } from './figures.js';
import { maker, sign, signature } from './maker.js';
import { keep, State } from './outbox.js';
import { dropEntry, keepEntry } from './store.js';
import { askServer, slipList } from './slips.js';
import { begin, bodyOf, readForm, take } from './measure-form.js';
import { chainOf } from './pack.js';
import { liftingMark } from './words.js';

const words = { [State.kept]: ['…', 'kept here'], [State.sent]: ['✓', 'sent'], [State.check]: ['!', 'to be checked'] };
const kinds = {
  measure: 'Measured', lubricate: 'Lubricated', inspect: 'Inspected', done: 'Done', photo: 'Photo', links: 'Links',
  exam: 'Examined', answer: 'Answer', hand: 'Round',
};

export function keptPage(context) {
  const { entries, push, redraw } = context;
  const name = h('input', { id: 'name', autocomplete: 'name', maxlength: 80, onchange: event => sign(event.target.value) });
  signature().then(text => { name.value = text; });
  maker().then(person => { if (person.id !== null) name.disabled = true; });
  const waiting = entries.filter(entry => entry.state === State.kept).length;
  return [
    h('h1', { tabindex: '-1' }, 'On this phone'),
    h('p', { class: 'hint' }, 'What you enter is kept here first, and sent in order when there is signal.'),
    h('div', { class: 'field' }, h('label', { for: 'name' }, 'Your name'), name),
    waiting > 0 && button(`Send ${waiting} now`, async () => { await push(); redraw(); }, { class: 'button primary big' }),
    h('ol', { class: 'kept' }, entries.toReversed().map(entry => item(entry, context))),
    entries.length === 0 && h('p', {}, 'Nothing was entered on this phone yet.'),
  ];
}

function item(entry, context) {
  const [sign, word] = words[entry.state];
  const zone = context.plant?.plant.time_zone;
  const held = entry.state === State.kept && entry.by ? `, by ${entry.by}` : '';
  return h('li', { class: `entry ${entry.state}`, 'data-state': entry.state },
    h('p', { class: 'state' }, h('span', { 'aria-hidden': 'true' }, `${sign} `), word),
    h('div', {}, h('p', {}, h('strong', {}, `${kinds[entry.kind] ?? entry.kind}: ${entry.chain}`),
      mark(entry, context)), h('p', {}, entry.words),
      h('p', { class: 'hint' }, `${moment(entry.at, zone)}${held}`),
      entry.state === State.check && answers(entry, context)));
}

function mark(entry, context) {
  const chain = chainOf(context.plant, entry.chainId);
  return chain && liftingMark(chain);
}

function answers(entry, context) {
  const chain = chainOf(context.plant, entry.chainId);
  const edit = chain && entry.form && linkButton('Correct it', `#/chain/${chain.id}/measure?entry=${entry.seq}`);
  const why = h('p', { class: 'why' }, entry.why);
  if (!entry.readingId) {
    return [why, h('div', { class: 'choices' }, edit, button('Throw it away', () => dropEntry(entry.seq).then(context.redraw)))];
  }

  const slips = h('div', { class: 'slips' });
  if (chain && entry.form) {
    askServer(entry.body, entry.readingId)
      .then(doubt => slipList(slips, doubt, chain, slip => correct(entry, chain, slip, context)));
  }

  return [why, slips, h('div', { class: 'choices' },
    button('It is right: use it', () => answer(entry, 'confirmation', 'It is right', context), { class: 'button primary' }),
    edit,
    button('Withdraw it', () => answer(entry, 'withdrawal', 'Withdrawn', context)))];
}

// An answer is an entry like any other: kept first, sent when it can be, never twice.
async function answer(entry, what, said, context) {
  const by = await signature();
  await keep({
    kind: 'answer', method: 'PUT', path: `/api/v1/readings/${entry.readingId}/${what}`, body: { by: by || 'floor', why: said },
    chain: entry.chain, chainId: entry.chainId, words: said,
  });
  await settle(entry, context);
}

async function correct(entry, chain, slip, context) {
  const form = begin(chain, structuredClone(entry.form));
  take(form, readForm(form, chain), slip);
  const read = readForm(form, chain);
  await keep({
    kind: 'measure', path: `/api/v1/readings/${entry.readingId}/corrections`, chain: entry.chain, chainId: entry.chainId, form,
    body: { ...bodyOf(form, chain, read, await signature(), false), taken_at: entry.body.taken_at },
    words: `Corrected: ${slip.words}`,
  });
  await settle(entry, context);
}

async function settle(entry, context) {
  await keepEntry({ ...entry, state: State.sent, why: '' });
  await context.push();
  context.redraw();
}
