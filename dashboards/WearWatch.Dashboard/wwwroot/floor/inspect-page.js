// Inspecting: the checklist of this kind of chain, point by point; what is found may have a note and a photo.
import { button, caution, field, h, segments } from './dom.js';
import { number } from './figures.js';
import { signature } from './maker.js';
import { keep } from './outbox.js';
import { shrink } from './photo.js';
import { chainHead, keptPanel } from './words.js';

export function inspectPage(context) {
  const { plant, chain } = context;
  const points = plant.checklists[chain.caution].map(point => ({ ...point, state: 'open', note: '', photo: null }));
  const submit = h('button', { type: 'submit', class: 'button primary big', disabled: true }, 'Save');
  const list = h('ol', { class: 'points' }, points.map(point => pointItem(point, () => {
    submit.disabled = points.every(each => each.state === 'open');
  })));
  const counter = h('input', { id: 'counter', inputmode: 'decimal', autocomplete: 'off' });
  const save = async event => {
    event.preventDefault();
    submit.disabled = true;
    await keepInspection(context, points, number(counter.value));
  };
  return [
    chainHead(chain, chain.lifting ? 'Daily inspection' : 'Inspection'), caution(plant.cautions[chain.caution]),
    h('form', { class: 'inspect', novalidate: true, onsubmit: save }, list,
      field('Hour counter', counter, { unit: 'h', hint: 'if you pass it' }).whole,
      // Of a chain that lifts each point is inspected and answered by itself: what was not inspected is not in order.
      !chain.holds_load && button('All the rest is in order', () => {
        for (const point of points.filter(each => each.state === 'open')) point.choose('fine');
      }),
      h('div', { class: 'foot' }, submit)),
  ];
}

function pointItem(point, changed) {
  const note = h('input', { maxlength: 500, oninput: event => { point.note = event.target.value; } });
  const more = h('div', { class: 'found', hidden: true },
    h('p', { class: 'advice' }, point.advice),
    h('p', { class: 'hint' }, `Source: ${point.source}`),
    h('label', { class: 'field' }, 'Note', note), photoField(point));
  const choices = segments(point.ask, point.point, [['fine', 'in order'], ['found', 'found']], point.state, choose);
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
      told.textContent = point.photo ? `Photo kept, ${kilobytes} kB.` : file ? 'This is no picture.' : '';
    },
  });
  return h('label', { class: 'field' }, 'Photo', input, told);
}

async function keepInspection({ plant, chain, push }, points, counterH) {
  const by = await signature();
  const seen = points.filter(point => point.state !== 'open');
  const found = seen.filter(point => point.state === 'found');
  const about = { chain: chain.chain, chainId: chain.id };
  // What was not inspected is not in order: it is said, and nothing is sent of it.
  const open = points.length - seen.length;
  const left = open > 0 ? `; ${open} not inspected` : '';
  const words = (found.length === 0 ? `${seen.length} ${seen.length === 1 ? 'point' : 'points'} in order`
    : `${found.length} of ${seen.length} points found`) + left;
  const kept = await keep({
    kind: 'inspect', path: '/api/v1/inspections', ...about, words,
    body: {
      chain: chain.chain, taken_at: new Date().toISOString(), counter_h: counterH, told_by: by || 'floor',
      findings: seen.map(({ point, state, note }) => (
        state === 'found' ? { point, found: true, note: note.trim() } : { point, found: false, note: '' })),
    },
  });
  for (const point of found.filter(each => each.photo)) {
    await keep({
      kind: 'photo', path: `/api/v1/inspections/${kept.id}/photos/${point.point}`, bytes: point.photo, type: 'image/jpeg',
      ...about, words: point.ask,
    });
  }

  const advice = found.map(point => h('li', {}, h('strong', {}, point.ask), ': ', point.advice));
  keptPanel(chain, words, advice.length > 0 && h('ul', {}, advice));
  await push();
}
