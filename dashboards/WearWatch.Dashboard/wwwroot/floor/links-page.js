// The links of a round-link chain: three measures in big fields, each judged at once against its own limit; the worst is said.
import { caution, field, h, segments } from './dom.js';
import { fixed, hours, number } from './figures.js';
import { readLength } from './length.js';
import { judgeLinks } from './links-verdict.js';
import { signature } from './maker.js';
import { keep } from './outbox.js';
import { pad, padMode } from './pad.js';
import { counterFault } from './verdict.js';
import { chainHead, keptPanel } from './words.js';

const lengths = ['one_link', 'several_links', 'd1', 'd2'];

export function linksPage(context) {
  const { plant, chain } = context;
  const form = { place: '', unit: 'mm', tool: 'caliper', one_link: '', several_links: '', d1: '', d2: '', counter: '' };
  const root = h('form', { class: 'measure links', novalidate: true, onsubmit: event => { event.preventDefault(); save(); } });
  const status = h('div', { class: 'verdict', role: 'status', 'aria-live': 'polite' });
  const submit = h('button', { type: 'submit', class: 'button primary big' }, 'Save');
  let fields = {};

  function draw() {
    fields = fieldsOf(form, chain, judgeNow, draw);
    root.replaceChildren(
      h('p', { class: 'hint' }, 'Lower and block the load. Clean, hanging, taut; at the links that bend most under load.'),
      fields.place.whole,
      h('div', { class: 'pair' },
        segments('Unit', 'unit', [['mm', 'mm'], ['in', 'inch']], form.unit, unit => { form.unit = unit; draw(); }),
        segments('Length over links by', 'tool', [['caliper', 'caliper'], ['tape', 'tape']], form.tool,
          tool => { form.tool = tool; draw(); })),
      ...lengths.map(name => fields[name].whole), fields.counter.whole,
      h('div', { class: 'foot' }, status, pad(root), submit));
    judgeNow();
  }

  function judgeNow() {
    const read = readLinks(form);
    const said = judgeLinks(chain.links, read.mm, form.tool);
    status.className = `verdict ${said.state}`;
    status.replaceChildren(...said.words.map(text => h('p', {}, text)));
    for (const name of lengths) fields[name].fault(read.faults[name]);
    submit.disabled = lengths.every(name => read.mm[name] === null);
  }

  async function save() {
    const read = readLinks(form);
    const faults = {
      ...read.faults, place: form.place.trim() ? null : 'Say which link, where: the next one measures there again.',
      counter: counterFault(form.counter, number(form.counter), chain),
    };
    for (const [name, fault] of Object.entries(faults)) fields[name]?.fault(fault);
    if (Object.values(faults).some(Boolean)) return;
    submit.disabled = true;
    const said = judgeLinks(chain.links, read.mm, form.tool);
    await keep({
      kind: 'links', path: '/api/v1/link-measures', chain: chain.chain, chainId: chain.id, words: wordsOf(form),
      body: {
        chain: chain.chain, taken_at: new Date().toISOString(), counter_h: number(form.counter), place: form.place.trim(),
        tool: form.tool, unit: form.unit, ...Object.fromEntries(lengths.map(name => [name, form[name].trim() || null])),
        told_by: (await signature()) || 'floor',
      },
    });
    const verdict = h('div', { class: `verdict ${said.state}` }, said.words.map(text => h('p', {}, text)));
    keptPanel(chain, 'Measures of the links', verdict);
    await context.push();
  }

  draw();
  return [chainHead(chain, 'Links'), caution(plant.cautions[chain.caution]), root];
}

function fieldsOf(form, chain, changed) {
  const { links } = chain;
  const nominal = measure => {
    const mark = links.marks.find(each => each.measure === measure);
    if (!mark) return 'no limit is known';
    return `new ${fixed(mark.new_mm, 2)} mm, ${mark.grows ? 'limit' : 'least'} ${fixed(mark.limit_mm, 2)} mm`;
  };
  const pads = form.unit === 'in' ? 'fractions' : 'plain';
  const input = (id, more) => h('input', {
    id, value: form[id], autocomplete: 'off', ...more, oninput: event => { form[id] = event.target.value; changed(); },
  });
  const length = (id, name, hint) => field(name, input(id, { inputmode: padMode, 'data-pad': pads }), { unit: form.unit, hint });
  const last = chain.last_counter_h === null ? '' : `last ${hours(chain.last_counter_h)}`;
  return {
    place: field('Which link, where', input('place', { maxlength: 200 }), { hint: 'such as 40 links above the hook' }),
    one_link: length('one_link', 'One link, inside, L1', nominal('one_link')),
    several_links: length(
      'several_links', `Over ${links.links} links${links.outer_edges ? ', outer edges' : ''}`, nominal('several_links')),
    d1: length('d1', 'Crown d1, in the direction of pull', 'where two links bear on each other'),
    d2: length('d2', 'Crown d2, at right angles', `mean of both: ${nominal('mean_diameter')}`),
    counter: field('Hour counter', input('counter', { inputmode: padMode, 'data-pad': 'plain' }), { unit: 'h', hint: last }),
  };
}

function readLinks(form) {
  const read = Object.fromEntries(lengths.map(name => [name, form[name].trim() ? readLength(form[name], form.unit) : {}]));
  return {
    mm: Object.fromEntries(lengths.map(name => [name, read[name].mm ?? null])),
    faults: Object.fromEntries(lengths.map(name => [name, read[name].reason ?? null])),
  };
}

const wordsOf = form => [['L1', 'one_link'], ['L', 'several_links'], ['d1', 'd1'], ['d2', 'd2']]
  .filter(([, name]) => form[name].trim()).map(([word, name]) => `${word} ${form[name].trim()}`).join('; ') + ` ${form.unit}`;
