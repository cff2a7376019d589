// A reading of a part or a sprocket beside the length: which, how much, where; held at once against what the phone knows of it.
import { nowIso } from './clock.js';
import { once, rest } from './decide.js';
import { caution, field, h, segments } from './dom.js';
import { draft, keepDraft } from './draft.js';
import { counterText, figure, number } from './figures.js';
import { t } from './language.js';
import { readLength } from './length.js';
import { signature } from './maker.js';
import { pad, padMode } from './pad.js';
import { phrase } from './phrase.js';
import { save } from './saved.js';
import { counterFault } from './verdict.js';
import { chainHead } from './words.js';

export function partsPage(context) {
  const { plant, chain, asked, entries } = context;
  const { parts } = plant.kinds[chain.family];
  const earlier = entries.find(entry => entry.seq === Number(asked.get('entry')));
  const form = { part: parts[0].part, value: '', place: '', fresh: '', counter: '', unit: 'mm',
    ...structuredClone(earlier?.form) ?? draft(chain, 'parts') };
  const root = h('form', { class: 'measure parts', novalidate: true });
  const status = h('div', { class: 'verdict', role: 'status', 'aria-live': 'polite' });
  const submit = rest(h('button', { type: 'submit', class: 'button primary big' }, t`Save`));
  const trySave = once(submit, savePart);
  root.addEventListener('submit', event => { event.preventDefault(); trySave(); });
  let fields = {};

  function draw() {
    fields = fieldsOf(form, chain, parts, judgeNow);
    const choice = h('select', { id: 'part', onchange: event => { form.part = event.target.value; draw(); } },
      parts.map(each => h('option', { value: each.part, selected: each.part === form.part }, each.name)));
    root.replaceChildren(
      field(t`Part`, choice).whole,
      segments(t`Unit`, 'unit', [['mm', 'mm'], ['in', t`inch`]], form.unit, unit => { form.unit = unit; draw(); }),
      ...Object.values(fields).map(each => each.whole), h('div', { class: 'foot' }, status, pad(root), submit));
    judgeNow();
  }

  function judgeNow() {
    const read = readPart(form);
    const said = judgePart(knownOf(chain, form.part), parts.find(each => each.part === form.part), read.mm.value);
    status.className = `verdict ${said.state}`;
    status.replaceChildren(h('p', {}, said.words));
    for (const [name, fault] of Object.entries(read.faults)) fields[name]?.fault(fault);
    if (!earlier) keepDraft(chain, 'parts', form);
    submit.disabled = read.mm.value === null;
    return said;
  }

  async function savePart() {
    const read = readPart(form);
    const faults = { ...read.faults, counter: counterFault(form.counter, number(form.counter), chain) };
    for (const [name, fault] of Object.entries(faults)) fields[name]?.fault(fault);
    if (Object.values(faults).some(Boolean)) return;
    const { state, words } = judgeNow();
    const reading = {
      kind: 'parts', path: '/api/v1/part-readings', chain: chain.chain, chainId: chain.id,
      words: `${parts.find(each => each.part === form.part).name} ${form.value.trim()} ${form.unit}`, form,
      body: {
        chain: chain.chain, chain_id: chain.id, taken_at: earlier?.body.taken_at ?? nowIso(), counter_h: number(form.counter),
        part: form.part, place: form.place.trim(), value: form.value.trim(), unit: form.unit,
        new: (fields.fresh && form.fresh.trim()) || null, told_by: (await signature()) || 'floor',
      },
    };
    const more = h('div', { class: `verdict ${state}` }, h('p', {}, words));
    await save(context, [reading], { words: phrase`Reading of a part`, more, screen: 'parts', form, earlier });
  }

  draw();
  return [chainHead(chain, t`Parts`), caution(plant.cautions[chain.caution]), root];
}

const knownOf = (chain, part) => chain.parts.find(each => each.part === part) ?? {};

function fieldsOf(form, chain, parts, changed) {
  const { grows } = parts.find(each => each.part === form.part);
  const known = knownOf(chain, form.part);
  const input = (id, more) => h('input', {
    id, value: form[id], autocomplete: 'off', ...more, oninput: event => { form[id] = event.target.value; changed(); },
  });
  const pads = form.unit === 'in' ? 'fractions' : 'plain';
  const length = (id, name, hint) => field(name, input(id, { inputmode: padMode, 'data-pad': pads }), { unit: form.unit, hint });
  const lastCounter = chain.last_counter_h === null ? '' : t`last ${counterText(chain.last_counter_h)}`;
  const last = known.last_mm === undefined ? '' : t`last ${figure(known.last_mm, 2)} mm`;
  const limit = limitWords(known, grows);
  return {
    value: length('value', t`Measured`, [last, limit].filter(Boolean).join(', ')),
    ...!grows && known.new_mm === undefined
      ? { fresh: length('fresh', t`Size when new`, t`once: without it there is no limit`) } : {},
    place: field(t`Where`, input('place', { maxlength: 200 }), { hint: t`such as drive sprocket, tooth 1` }),
    counter: field(t`Hour counter`, input('counter', { inputmode: padMode, 'data-pad': 'plain' }),
      { unit: 'h', hint: lastCounter }),
  };
}

function limitWords(known, grows) {
  if (known.limit_mm === undefined) return t`no limit is known`;
  const limit = figure(known.limit_mm, 2);
  return grows ? t`limit ${limit} mm` : t`new ${figure(known.new_mm, 2)} mm, least ${limit} mm`;
}

function readPart(form) {
  const read = Object.fromEntries(['value', 'fresh'].map(name => [name, readOne(form[name], form.unit)]));
  return {
    mm: { value: read.value.mm ?? null, fresh: read.fresh.mm ?? null },
    faults: { value: read.value.reason ?? null, fresh: read.fresh.reason ?? null },
  };
}

// A tooth that is not worn reads nothing, which is no length.
const readOne = (text, unit) => (number(text) === 0 ? { mm: 0 } : text.trim() ? readLength(text, unit) : {});

/** What a reading says by what the phone knows: { state, words }. */
export function judgePart(known, part, mm) {
  if (mm === null) return { state: 'nothing', words: t`Enter what was measured.` };
  if (known.limit_mm === undefined)
    return { state: 'nothing', words: t`No limit is known: it is kept and followed.` };
  const beyond = line => line !== undefined && (part.grows ? mm >= line - 1e-9 : mm <= line + 1e-9);
  const against = t`${figure(mm, 2)} mm against ${figure(known.limit_mm, 2)} mm`;
  if (beyond(known.limit_mm)) {
    return { state: 'out', words: known.out_mm === undefined ? t`Limit reached: ${against}. The planner gets a notice.`
      : t`Take out of use. Limit reached: ${against}.` };
  }

  if (beyond(known.out_mm))
    return { state: 'out', words: t`Take out of use. The limit may be reached: ${against}, within the uncertainty.` };
  return beyond(known.plan_mm) ? { state: 'plan', words: t`${against}: its renewal is planned.` }
    : { state: 'within', words: t`${against}: within its limit.` };
}
