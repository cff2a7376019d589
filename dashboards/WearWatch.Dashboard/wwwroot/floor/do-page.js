// What was done at a chain: one of the buttons, the counter, and what that kind of work asks for.
import { decision } from './decide.js';
import { entryOf, faultsOf, newLengthEntry } from './do-entry.js';
import { button, caution, field, h } from './dom.js';
import { draft, keepDraft } from './draft.js';
import { counterText } from './figures.js';
import { t } from './language.js';
import { signature } from './maker.js';
import { pad, padMode } from './pad.js';
import { phrase } from './phrase.js';
import { save } from './saved.js';
import { chainHead } from './words.js';

/** By what is told: its name, its fields, and what follows from it. */
const works = {
  oiling: {
    name: phrase`Lubricated`, record: t`Record: lubricated`,
    fields: ['oil_grade', 'oil_amount_ml', 'oil_method'],
    effect: t`The next lubrication is counted from now.`,
  },
  tensioned: { name: phrase`Tensioned`, record: t`Record: tensioned`,
    fields: ['take_up'], effect: t`The wear and its dates stay as they are.` },
  shortened: {
    name: phrase`Shortened`, record: t`Record: shortened`,
    fields: ['pitches_out', 'mates', 'take_up'],
    effect: t`Wear is counted by the pitch: it and its dates stay as they are.`,
  },
  replacement: {
    name: phrase`Chain replaced`, record: t`Record: chain replaced`,
    fields: ['lot', 'broke', 'pitches', 'length', 'take_up'],
    effect: t`The new chain starts at 0 h. The old one is closed. The length when new is its first reading.`,
  },
  sprocket_replaced: {
    name: phrase`Sprocket replaced`, record: t`Record: sprocket replaced`,
    fields: ['teeth'],
    effect: t`Findings at the old teeth are closed. Inform the planner if the number of teeth changed.`,
  },
  meter_reset: {
    name: phrase`Counter replaced`, record: t`Record: counter replaced`,
    fields: ['counter_after'],
    effect: t`The chain’s own hours run on. Enter the new counter from now on.`,
  },
};

const asked = {
  oil_grade: [t`Lubricant`, '', t`such as ISO VG 150`, 'text'],
  oil_amount_ml: [t`Amount`, 'ml', '', 'plain'],
  pitches_out: [t`Pitches taken out`, '', t`two, so that no offset link is needed`, 'plain'],
  take_up: [t`Take-up position`, 'mm', t`where it stands now, from where a new chain is taut; may be left out`, 'plain'],
  lot: [t`Lot of the new chain`, '', t`from its label or certificate`, 'text'],
  pitches: [t`Pitches of the new chain`, '', '', 'plain'],
  length: [t`Its length when new`, 'mm', t`measured over the usual pitches; may be left out`, 'plain'],
  teeth: [t`Teeth of the new sprocket`, '', '', 'plain'],
  counter_after: [t`Hour counter since`, 'h', '', 'plain'],
};

export const methods = [
  ['', t`not recorded`], ['hand', t`by hand`], ['drip', t`drip`], ['bath', t`bath`], ['stream', t`oil stream`],
  ['lubricator', t`lubricator`],
];

export function doPage(context) {
  const { plant, chain, asked: query } = context;
  const root = h('form', { class: 'do', novalidate: true, onsubmit: event => event.preventDefault() });
  const earlier = context.entries.find(entry => entry.seq === Number(query.get('entry')));
  const choose = kind => draw(root, context, kind, earlier?.body.event === kind ? earlier : undefined);
  const possible = Object.entries(works).filter(([kind]) => kind !== 'shortened' || chain.may_be_shortened);
  const choices = h('div', { class: 'doings', role: 'group', 'aria-label': t`What was done?` },
    possible.map(([kind, work]) => button(t(work.name), () => choose(kind), { class: 'button big' })));
  root.append(choices);
  if (possible.some(([kind]) => kind === query.get('what'))) choose(query.get('what'));
  return [chainHead(chain, t`What was done?`), caution(plant.cautions[chain.caution]), root];
}

function draw(root, context, kind, earlier) {
  const { chain } = context;
  const work = works[kind];
  const screen = `do-${kind}`;
  const form = {
    counter: '', broke: false, mates: true,
    pitches_out: '2', take_up: '', pitches: String(chain.pitches ?? ''), counter_after: '0',
    oil_method: '', ...kind === 'oiling' ? lastOil() : {}, ...structuredClone(earlier?.form) ?? draft(chain, screen),
  };
  const there = work.fields.filter(name => (name !== 'take_up' || chain.has_take_up)
    && (name !== 'mates' || chain.mates.length > 0));
  const last = chain.last_counter_h === null ? '' : t`last ${counterText(chain.last_counter_h)}`;
  const counterName = kind === 'meter_reset' ? t`Hour counter before` : t`Hour counter`;
  const fields = {
    counter: textField(form, 'counter', [counterName, 'h', last, 'plain']),
    ...Object.fromEntries(there.map(name => [name, fieldOf(form, name, chain)])),
    note: textField(form, 'note', [t`Note`, '', '', 'text']),
  };
  const submit = decision(work.record, () => record(context, { kind, form, fields, screen, earlier }),
    { class: 'button primary big' });
  root.oninput = () => keepDraft(chain, screen, form);
  root.replaceChildren(...Object.values(fields).map(each => each.whole), h('div', { class: 'foot' }, pad(root), submit));
  root.querySelector('input').focus();
}

const special = {
  oil_method: methodField, broke: form => tick(form, 'broke', t`the old chain broke while it ran`),
  mates: (form, chain) => tick(form, 'mates', t`as many were taken out of ${chain.mates.join(', ')}: they run together`),
};

const fieldOf = (form, name, chain) => special[name]?.(form, chain) ?? textField(form, name, asked[name]);

function textField(form, name, [label, unit, hint, pads]) {
  return field(label, h('input', {
    id: name, value: form[name] ?? '', autocomplete: 'off', maxlength: 200,
    oninput: event => { form[name] = event.target.value; },
    ...(pads === 'plain' ? { inputmode: padMode, 'data-pad': 'plain' } : {}),
  }), { unit, hint });
}

function methodField(form) {
  return field(t`How`, h('select', {
    id: 'oil_method', onchange: event => { form.oil_method = event.target.value; },
  }, methods.map(([key, name]) => h('option', { value: key, selected: key === form.oil_method }, name))));
}

function tick(form, name, words) {
  const box = h('input', {
    id: name, type: 'checkbox', checked: form[name], onchange: event => { form[name] = event.target.checked; },
  });
  return { whole: h('label', { class: 'tick' }, box, words) };
}

async function record(context, { kind, form, fields, screen, earlier }) {
  const { chain } = context;
  const faults = faultsOf(kind, form, chain);
  for (const [name, fault] of Object.entries(faults)) fields[name]?.fault(fault);
  if (Object.values(faults).some(Boolean)) return;
  const by = (await signature()) || 'floor';
  const { name, effect } = works[kind];
  const done = entryOf(kind, name, { form, chain, by });
  if (earlier) done.body.taken_at = earlier.body.taken_at;
  if (kind === 'oiling') keepOil(form);
  const all = [done, kind === 'replacement' && newLengthEntry(form, chain, by),
    ...(kind === 'shortened' && form.mates ? ofMates(done, context) : [])].filter(Boolean);
  await save(context, all, { words: name, more: h('p', {}, effect), screen, form, earlier });
}

// Chains that run together stay alike: as many pitches go from each. A take-up and a counter are each one's own.
const ofMates = (done, { plant, chain }) => plant.chains.filter(each => chain.mates.includes(each.chain)).map(mate => ({
  ...done, chain: mate.chain, chainId: mate.id,
  body: {
    ...done.body, chain: mate.chain, chain_id: mate.id, counter_h_before: null, counter_h_after: null, take_up_mm: null,
  },
}));

// What was last used on this phone is most likely in the can now.
function lastOil() {
  try {
    return JSON.parse(localStorage.getItem('wearwatch-last-oil') ?? '{}');
  } catch {
    return {};
  }
}

function keepOil({ oil_grade, oil_amount_ml, oil_method }) {
  try {
    localStorage.setItem('wearwatch-last-oil', JSON.stringify({ oil_grade, oil_amount_ml, oil_method }));
  } catch {
    // It is typed anew next time.
  }
}
