// The links of a round-link chain: three measures in big fields, each judged at once against its own limit; the worst is said.
import { nowIso } from './clock.js';
import { once, rest } from './decide.js';
import { caution, field, h, segments } from './dom.js';
import { draft, keepDraft } from './draft.js';
import { counterText, figure, number } from './figures.js';
import { t } from './language.js';
import { readLength } from './length.js';
import { judgeLinks } from './links-verdict.js';
import { signature } from './maker.js';
import { pad, padMode } from './pad.js';
import { save } from './saved.js';
import { counterFault } from './verdict.js';
import { chainHead } from './words.js';

const lengths = ['one_link', 'several_links', 'd1', 'd2'];

export function linksPage(context) {
  const { plant, chain, asked, entries } = context;
  const earlier = entries.find(entry => entry.seq === Number(asked.get('entry')));
  const form = { place: '', unit: 'mm', tool: 'caliper', one_link: '', several_links: '', d1: '', d2: '', counter: '',
    ...structuredClone(earlier?.form) ?? draft(chain, 'links') };
  const root = h('form', { class: 'measure links', novalidate: true });
  const status = h('div', { class: 'verdict', role: 'status', 'aria-live': 'polite' });
  const submit = rest(h('button', { type: 'submit', class: 'button primary big' }, t`Save`));
  const trySave = once(submit, saveLinks);
  root.addEventListener('submit', event => { event.preventDefault(); trySave(); });
  let fields = {};

  function draw() {
    fields = fieldsOf(form, chain, judgeNow, draw);
    root.replaceChildren(
      h('p', { class: 'hint' }, t`Lower and block the load. Clean, hanging, taut; at the links that bend most under load.`),
      fields.place.whole,
      h('div', { class: 'pair' },
        segments(t`Unit`, 'unit', [['mm', 'mm'], ['in', t`inch`]], form.unit, unit => { form.unit = unit; draw(); }),
        segments(t`Length over links by`, 'tool', [['caliper', t`caliper`], ['tape', t`tape`]], form.tool,
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
    if (!earlier) keepDraft(chain, 'links', form);
    submit.disabled = lengths.every(name => read.mm[name] === null);
  }

  async function saveLinks() {
    const read = readLinks(form);
    const faults = {
      ...read.faults, place: form.place.trim() ? null : t`Say which link, where: the next one measures there again.`,
      counter: counterFault(form.counter, number(form.counter), chain),
    };
    for (const [name, fault] of Object.entries(faults)) fields[name]?.fault(fault);
    if (Object.values(faults).some(Boolean)) return;
    const said = judgeLinks(chain.links, read.mm, form.tool);
    const measures = {
      kind: 'links', path: '/api/v1/link-measures', chain: chain.chain, chainId: chain.id, words: wordsOf(form), form,
      body: {
        chain: chain.chain, chain_id: chain.id, taken_at: earlier?.body.taken_at ?? nowIso(),
        counter_h: number(form.counter), place: form.place.trim(),
        tool: form.tool, unit: form.unit, ...Object.fromEntries(lengths.map(name => [name, form[name].trim() || null])),
        told_by: (await signature()) || 'floor',
      },
    };
    const more = h('div', { class: `verdict ${said.state}` }, said.words.map(text => h('p', {}, text)));
    await save(context, [measures], { words: t`Measures of the links`, more, screen: 'links', form, earlier });
  }

  draw();
  return [chainHead(chain, t`Links`), caution(plant.cautions[chain.caution]), root];
}

function fieldsOf(form, chain, changed) {
  const { links } = chain;
  const nominal = measure => {
    const mark = links.marks.find(each => each.measure === measure);
    if (!mark) return t`no limit is known`;
    const [fresh, limit] = [figure(mark.new_mm, 2), figure(mark.limit_mm, 2)];
    return mark.grows ? t`new ${fresh} mm, limit ${limit} mm` : t`new ${fresh} mm, least ${limit} mm`;
  };
  const pads = form.unit === 'in' ? 'fractions' : 'plain';
  const input = (id, more) => h('input', {
    id, value: form[id], autocomplete: 'off', ...more, oninput: event => { form[id] = event.target.value; changed(); },
  });
  const length = (id, name, hint) => field(name, input(id, { inputmode: padMode, 'data-pad': pads }), { unit: form.unit, hint });
  const last = chain.last_counter_h === null ? '' : t`last ${counterText(chain.last_counter_h)}`;
  return {
    place: field(t`Which link, where`, input('place', { maxlength: 200 }), { hint: t`such as 40 links above the hook` }),
    one_link: length('one_link', t`One link, inside, L1`, nominal('one_link')),
    several_links: length('several_links',
      links.outer_edges ? t`Over ${links.links} links, outer edges` : t`Over ${links.links} links`,
      nominal('several_links')),
    d1: length('d1', t`Crown d1, in the direction of pull`, t`where two links bear on each other`),
    d2: length('d2', t`Crown d2, at right angles`, t`mean of both: ${nominal('mean_diameter')}`),
    counter: field(t`Hour counter`, input('counter', { inputmode: padMode, 'data-pad': 'plain' }), { unit: 'h', hint: last }),
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
