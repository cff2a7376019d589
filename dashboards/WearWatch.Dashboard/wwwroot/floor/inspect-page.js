// Inspecting: the checklist of this kind of chain, point by point; what is found may have a note and a photo.
import { nowIso } from './clock.js';
import { once, rest } from './decide.js';
import { button, caution, field, h, segments } from './dom.js';
import { draft, keepDraft } from './draft.js';
import { number } from './figures.js';
import { t } from './language.js';
import { signature } from './maker.js';
import { counted, phrase } from './phrase.js';
import { shrink } from './photo.js';
import { save } from './saved.js';
import { chainHead } from './words.js';

export function inspectPage(context) {
  const { plant, chain, asked, entries } = context;
  const earlier = entries.find(entry => entry.seq === Number(asked.get('entry')));
  const form = earlier?.form ?? draft(chain, 'inspect') ?? { counter: '', points: {} };
  const points = plant.checklists[chain.caution]
    .map(point => ({ ...point, state: 'open', note: '', ...form.points[point.point], photo: null }));
  const submit = rest(h('button', { type: 'submit', class: 'button primary big' }, t`Save`));
  const changed = () => {
    submit.disabled = points.every(each => each.state === 'open');
    form.counter = counter.value;
    form.points = Object.fromEntries(points.map(({ point, state, note }) => [point, { state, note }]));
    if (!earlier) keepDraft(chain, 'inspect', form);
  };
  const counter = h('input', {
    id: 'counter', inputmode: 'decimal', autocomplete: 'off', value: form.counter, oninput: () => changed(),
  });
  const list = h('ol', { class: 'points' }, points.map(point => pointItem(point, changed)));
  const trySave = once(submit, () => keepInspection(context, points, { counterH: number(counter.value), form, earlier }));
  submit.disabled = points.every(each => each.state === 'open');
  return [
    chainHead(chain, chain.lifting ? t`Daily inspection` : t`Inspection`), caution(plant.cautions[chain.caution]),
    h('form', { class: 'inspect', novalidate: true, onsubmit: event => { event.preventDefault(); trySave(); } }, list,
      field(t`Hour counter`, counter, { unit: 'h', hint: t`if you pass it` }).whole,
      // Of a chain that lifts each point is inspected and answered by itself: what was not inspected is not in order.
      !chain.holds_load && button(t`All the rest is in order`, () => {
        for (const point of points.filter(each => each.state === 'open')) point.choose('fine');
      }),
      h('div', { class: 'foot' }, submit)),
  ];
}

function pointItem(point, changed) {
  const note = h('input', {
    maxlength: 500, value: point.note, oninput: event => { point.note = event.target.value; changed(); },
  });
  const more = h('div', { class: 'found', hidden: point.state !== 'found' },
    h('p', { class: 'advice' }, point.advice),
    h('p', { class: 'hint' }, t`Source: ${point.source}`),
    h('label', { class: 'field' }, t`Note`, note), photoField(point));
  const choices = segments(point.ask, point.point, [['fine', t`in order`], ['found', t`found`]], point.state, choose);
  function choose(state) {
    point.state = state;
    more.hidden = state !== 'found';
    choices.querySelectorAll('input')[state === 'found' ? 1 : 0].checked = true;
    changed();
  }

  point.choose = choose;
  return h('li', { class: 'point' }, choices, more);
}

function photoField(point) {
  const told = h('p', { class: 'hint', role: 'status' });
  const input = h('input', {
    type: 'file', accept: 'image/*', capture: 'environment', onchange: async event => {
      const [file] = event.target.files;
      point.photo = file ? await shrink(file) : null;
      const kilobytes = Math.ceil((point.photo?.byteLength ?? 0) / 1000);
      told.textContent = point.photo ? t`Photo kept, ${kilobytes} kB.` : file ? t`This is no picture.` : '';
    },
  });
  return h('label', { class: 'field' }, t`Photo`, input, told);
}

async function keepInspection(context, points, { counterH, form, earlier }) {
  const { chain } = context;
  const by = await signature();
  const seen = points.filter(point => point.state !== 'open');
  const found = seen.filter(point => point.state === 'found');
  const about = { chain: chain.chain, chainId: chain.id };
  // What was not inspected is not in order: it is said, and nothing is sent of it.
  const open = points.length - seen.length;
  const inspected = found.length > 0 ? phrase`${found.length} of ${seen.length} points found`
    : counted(seen.length, phrase`${seen.length} point in order`, phrase`${seen.length} points in order`);
  const words = open > 0 ? phrase`${inspected}; ${open} not inspected` : inspected;
  const look = {
    id: crypto.randomUUID(), kind: 'inspect', path: '/api/v1/inspections', ...about, words, form: structuredClone(form),
    body: {
      chain: chain.chain, chain_id: chain.id, taken_at: earlier?.body.taken_at ?? nowIso(), counter_h: counterH,
      told_by: by || 'floor',
      findings: seen.map(({ point, state, note }) => (
        state === 'found' ? { point, found: true, note: note.trim() } : { point, found: false, note: '' })),
    },
  };
  const photos = found.filter(each => each.photo).map(point => ({
    kind: 'photo', path: `/api/v1/inspections/${look.id}/photos/${point.point}`, bytes: point.photo, type: 'image/jpeg',
    ...about, words: point.ask,
  }));
  const advice = found.map(point => h('li', {}, h('strong', {}, point.ask), ': ', point.advice));
  const more = advice.length > 0 ? h('ul', {}, advice) : [];
  await save(context, [look, ...photos], { words, more, screen: 'inspect', form, earlier });
}
