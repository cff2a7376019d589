// What was done at a chain: one of the buttons, the counter, and what that kind of work asks for.
import { button, caution, field, h } from './dom.js';
import { hours, number } from './figures.js';
import { signature } from './maker.js';
import { bodyOf, readForm } from './measure-form.js';
import { keep } from './outbox.js';
import { pad, padMode } from './pad.js';
import { counterFault, takeUpFault } from './verdict.js';
import { chainHead, keptPanel } from './words.js';

/** By what is told: its name, its fields, and what follows from it. */
const works = {
  oiling: {
    name: 'Lubricated', fields: ['oil_grade', 'oil_amount_ml', 'oil_method'],
    effect: 'The next lubrication is counted from now.',
  },
  tensioned: { name: 'Tensioned', fields: ['take_up'], effect: 'The wear and its dates stay as they are.' },
  shortened: {
    name: 'Shortened', fields: ['pitches_out', 'take_up'],
    effect: 'Wear is counted by the pitch: it and its dates stay as they are.',
  },
  replacement: {
    name: 'Chain replaced', fields: ['lot', 'broke', 'pitches', 'length', 'take_up'],
    effect: 'The new chain starts at 0 h. The old one is closed. The length when new is its first reading.',
  },
  sprocket_replaced: {
    name: 'Sprocket replaced', fields: ['teeth'],
    effect: 'Findings at the old teeth are closed. Inform the planner if the number of teeth changed.',
  },
  meter_reset: {
    name: 'Counter replaced', fields: ['counter_after'],
    effect: 'The chain’s own hours run on. Enter the new counter from now on.',
  },
};

const asked = {
  oil_grade: ['Lubricant', '', 'such as ISO VG 150', 'text'],
  oil_amount_ml: ['Amount', 'ml', '', 'plain'],
  pitches_out: ['Pitches taken out', '', 'two, so that no offset link is needed', 'plain'],
  take_up: ['Take-up position', 'mm', 'where it stands now, from where a new chain is taut; may be left out', 'plain'],
  lot: ['Lot of the new chain', '', 'from its label or certificate', 'text'],
  pitches: ['Pitches of the new chain', '', '', 'plain'],
  length: ['Its length when new', 'mm', 'measured over the usual pitches; may be left out', 'plain'],
  teeth: ['Teeth of the new sprocket', '', '', 'plain'],
  counter_after: ['Hour counter since', 'h', '', 'plain'],
};

const methods = [
  ['', 'not recorded'], ['hand', 'by hand'], ['drip', 'drip'], ['bath', 'bath'], ['stream', 'oil stream'],
  ['lubricator', 'lubricator'],
];

export function doPage(context) {
  const { plant, chain, asked: query } = context;
  const root = h('form', { class: 'do', novalidate: true, onsubmit: event => event.preventDefault() });
  const choose = kind => draw(root, context, kind);
  const possible = Object.entries(works).filter(([kind]) => kind !== 'shortened' || chain.may_be_shortened);
  const choices = h('div', { class: 'doings', role: 'group', 'aria-label': 'What was done?' },
    possible.map(([kind, work]) => button(work.name, () => choose(kind), { class: 'button big' })));
  root.append(choices);
  if (possible.some(([kind]) => kind === query.get('what'))) choose(query.get('what'));
  return [chainHead(chain, 'What was done?'), caution(plant.cautions[chain.caution]), root];
}

function draw(root, context, kind) {
  const { chain } = context;
  const work = works[kind];
  const form = {
    counter: '', broke: false, pitches_out: '2', take_up: '', pitches: String(chain.pitches ?? ''), counter_after: '0',
    oil_method: '',
  };
  const there = work.fields.filter(name => name !== 'take_up' || chain.has_take_up);
  const last = chain.last_counter_h === null ? '' : `last ${hours(chain.last_counter_h)}`;
  const counterName = kind === 'meter_reset' ? 'Hour counter before' : 'Hour counter';
  const fields = {
    counter: textField(form, 'counter', [counterName, 'h', last, 'plain']),
    ...Object.fromEntries(there.map(name => [name, fieldOf(form, name)])),
    note: textField(form, 'note', ['Note', '', '', 'text']),
  };
  const record = () => save(context, kind, form, fields);
  const submit = button(`Record: ${work.name.toLowerCase()}`, record, { class: 'button primary big' });
  root.replaceChildren(...Object.values(fields).map(each => each.whole), h('div', { class: 'foot' }, pad(root), submit));
  root.querySelector('input').focus();
}

const special = { oil_method: methodField, broke: brokeField };

const fieldOf = (form, name) => special[name]?.(form) ?? textField(form, name, asked[name]);

function textField(form, name, [label, unit, hint, pads]) {
  return field(label, h('input', {
    id: name, value: form[name] ?? '', autocomplete: 'off', maxlength: 200,
    oninput: event => { form[name] = event.target.value; },
    ...(pads === 'plain' ? { inputmode: padMode, 'data-pad': 'plain' } : {}),
  }), { unit, hint });
}

function methodField(form) {
  return field('How', h('select', {
    id: 'oil_method', onchange: event => { form.oil_method = event.target.value; },
  }, methods.map(([key, name]) => h('option', { value: key }, name))));
}

function brokeField(form) {
  const box = h('input', { id: 'broke', type: 'checkbox', onchange: event => { form.broke = event.target.checked; } });
  return { whole: h('label', { class: 'tick' }, box, 'the old chain broke while it ran') };
}

function faultsOf(kind, form, chain) {
  const whole = text => /^\d+$/.test(text.trim()) && Number(text) >= 1 && Number(text) <= 1_000_000;
  const changes = kind === 'meter_reset';
  return {
    counter: changes && !form.counter.trim() ? 'What the counter showed just before.'
      : counterFault(form.counter, number(form.counter), chain),
    counter_after: changes && !(number(form.counter_after) >= 0) ? 'A number such as 0: what the counter shows since.' : null,
    pitches_out: kind === 'shortened' ? pitchesFault(form.pitches_out.trim(), chain) : null,
    take_up: takeUpFault(form.take_up),
    pitches: kind !== 'replacement' || !form.pitches.trim() || whole(form.pitches) ? null : 'A whole number of pitches.',
    teeth: kind !== 'sprocket_replaced' || !form.teeth?.trim() || teethPossible(form.teeth.trim()) ? null
      : 'A sprocket has 5 to 1,000 teeth.',
    length: kind === 'replacement' && form.length?.trim() ? newLength(form, chain).fault : null,
    oil_amount_ml: !form.oil_amount_ml?.trim() || number(form.oil_amount_ml) > 0 ? null : 'A number such as 20.',
  };
}

const teethPossible = text => /^\d+$/.test(text) && Number(text) >= 5 && Number(text) <= 1000;

function pitchesFault(text, chain) {
  const possible = /^[1-9]\d*$/.test(text) && Number(text) < (chain.pitches ?? Infinity);
  if (!possible) return 'A whole number of pitches, fewer than the chain has.';
  return chain.can_be_odd || Number(text) % 2 === 0 ? null
    : 'There is no offset link for such a chain: pitches are taken out of it in pairs.';
}

// The length when new is a reading like any other, over the pitches that are measured here anyway.
function newLength(form, chain) {
  const told = {
    counter: form.counter, tool: 'tape', pitches: String(chain.last?.pitches ?? chain.proposed.pitches), unit: 'mm',
    temperature: '', place: '', take_up: '', strand: '', taut: true, lengths: [{ one: form.length, other: '' }],
  };
  const read = readForm(told, { ...chain, last_counter_h: null });
  return { told, read, fault: read.faults.length ?? read.gauged?.doubted ?? null };
}

async function save(context, kind, form, fields) {
  const { chain, push } = context;
  const faults = faultsOf(kind, form, chain);
  for (const [name, fault] of Object.entries(faults)) fields[name]?.fault(fault);
  if (Object.values(faults).some(Boolean)) return;
  const by = (await signature()) || 'floor';
  const about = { chain: chain.chain, chainId: chain.id };
  const words = works[kind].name;
  const body = eventOf(kind, form, chain, by);
  await keep({ kind: kind === 'oiling' ? 'lubricate' : 'done', path: '/api/v1/events', ...about, words, body });
  if (kind === 'replacement' && form.length?.trim()) {
    const { told, read } = newLength(form, chain);
    const first = bodyOf(told, chain, read, by, false);
    await keep({ kind: 'measure', path: '/api/v1/readings', ...about, words: 'Length when new', form: told, body: first });
  }

  keptPanel(chain, works[kind].name, h('p', {}, works[kind].effect));
  await push();
}

function eventOf(kind, form, chain, by) {
  const before = number(form.counter);
  return {
    chain: chain.chain, event: kind, taken_at: new Date().toISOString(), counter_h_before: before,
    counter_h_after: kind === 'meter_reset' ? number(form.counter_after) : before, note: form.note?.trim() ?? '', told_by: by,
    lot: form.lot?.trim() || null, broke: form.broke, take_up_mm: number(form.take_up),
    pitches_out: kind === 'shortened' ? Number(form.pitches_out) : null,
    new_pitches: kind === 'replacement' ? count(form.pitches) : null,
    new_teeth: kind === 'sprocket_replaced' ? count(form.teeth) : null,
    oil_grade: form.oil_grade?.trim() || null, oil_method: form.oil_method || null,
    oil_amount_ml: form.oil_amount_ml?.trim() ? number(form.oil_amount_ml) : null,
  };
}

const count = text => (text?.trim() ? Number(text) : null);
