// The fields of a measurement, in the order in which a person with gloves fills them.
import { button, field, h, segments } from './dom.js';
import { day, hours, millimetres, percent } from './figures.js';
import { inchFraction } from './length.js';
import { mostLengths } from './measure-form.js';
import { padMode } from './pad.js';
import { sketch } from './sketch.js';

/** The fields: all of them for the screen, and by the names of the file format those that can be at fault. */
export function fieldsOf(form, chain, plant, changed, draw) {
  const input = (name, more = {}) => h('input', {
    id: name, value: form[name] ?? '', autocomplete: 'off', inputmode: padMode, 'data-pad': 'plain', ...more,
    oninput: event => { form[name] = event.target.value; changed(); },
  });
  const choose = (name, to) => { form[name] = to; draw(); };
  const counter = field('Hour counter', input('counter'),
    { unit: 'h', hint: chain.last_counter_h === null ? '' : `last ${hours(chain.last_counter_h)}` });
  const pitches = field('Pitches', input('pitches'));
  const temperature = field('Temperature of the chain', input('temperature'), { unit: '°C', hint: 'left out: as the tool' });
  const place = field('Place on the chain', input('place', { 'data-pad': null, inputmode: 'text', maxlength: 200 }),
    { hint: 'the marked section' });
  const takeUp = field('Take-up position', input('take_up'), { unit: 'mm', hint: 'from where a new chain is taut' });
  const strand = field('Strand', input('strand'), { hint: `of ${chain.strands}, counted from the drive side` });
  const taut = h('label', { class: 'tick' }, h('input', {
    type: 'checkbox', checked: form.taut, onchange: event => { form.taut = event.target.checked; },
  }), 'in place, taut');
  const length = lengthFields(form, changed, draw);
  const expected = h('p', { class: 'expected' });
  const all = [
    how(form, chain, plant), expected, lastTime(chain, plant), counter.whole,
    h('div', { class: 'pair' },
      segments('Tool', 'tool', [['tape', 'tape'], ['caliper', 'caliper']], form.tool, tool => choose('tool', tool)),
      segments('Unit', 'unit', [['mm', 'mm'], ['in', 'inch']], form.unit, unit => choose('unit', unit))),
    chain.strands > 1 && strand.whole, pitches.whole, length.whole, taut,
    h('details', { class: 'more' }, h('summary', {}, chain.has_take_up ? 'Temperature, place, take-up' : 'Temperature, place'),
      temperature.whole, place.whole, chain.has_take_up && takeUp.whole),
  ];
  return { all, expected, counter_h: counter, pitches, length, strand, temperature_c: temperature, take_up_mm: takeUp };
}

/** The nominal length of the pitches in the form. */
export function nominal(form, chain) {
  const mm = (Number(form.pitches) || 0) * chain.pitch_mm;
  return form.unit === 'in' ? `${inchFraction(mm)} (${millimetres(mm)})` : millimetres(mm);
}

const how = (form, chain, plant) => h('details', { class: 'how' }, h('summary', {}, 'Where and how'),
  sketch(chain.kind, form.tool), h('ol', {}, plant.guides[chain.family].map(step => h('li', {}, step))));

const lastTime = ({ last, proposed }, plant) => h('p', { class: 'hint' }, last
  ? `Last: ${percent(last.elongation_pct)}, ${last.length_as_told} over ${last.pitches}, `
    + day(last.taken_at, plant.plant.time_zone)
  : `Not measured yet. Proposed: ${proposed.pitches} pitches, ${millimetres(proposed.length_mm)} when new.`);

function lengthFields(form, changed, draw) {
  const pad = form.unit === 'in' ? 'fractions' : 'plain';
  const one = (length, key, label, id) => h('input', {
    id, value: length[key], autocomplete: 'off', inputmode: padMode, 'aria-label': label, 'data-pad': pad,
    placeholder: form.tool === 'caliper' ? label : '', oninput: event => { length[key] = event.target.value; changed(); },
  });
  const rows = form.lengths.map((length, i) => {
    const nth = form.lengths.length > 1 ? ` ${i + 1}` : '';
    return h('div', { class: 'lengths' }, form.tool === 'caliper'
      ? [one(length, 'one', `inside${nth}`, `inside${i}`), one(length, 'other', `outside${nth}`, `outside${i}`)]
      : one(length, 'one', `Length${nth}`, `length${i}`));
  });
  const more = form.lengths.length < mostLengths && button(`+ once more (${form.lengths.length} of ${mostLengths})`, () => {
    form.lengths.push({ one: '', other: '' });
    draw();
  }, { class: 'button slim' });
  const fault = h('p', { class: 'fault', role: 'alert' });
  const unit = form.unit === 'in' ? ' in, such as 48 3/16' : ' mm';
  return {
    whole: h('fieldset', { class: 'field' }, h('legend', {}, 'Length', h('span', { class: 'unit' }, unit)), rows, fault, more),
    fault: text => fault.replaceChildren(text ?? ''),
  };
}
