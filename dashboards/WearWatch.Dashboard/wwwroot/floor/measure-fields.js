// The fields of a measurement, in the order in which a person with gloves fills them.
import { now, offWorthTelling } from './clock.js';
import { button, field, h, segments } from './dom.js';
import { counterText, day, millimetres, moment, ofWall, percent, typed, wall } from './figures.js';
import { t } from './language.js';
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
  const counter = field(t`Hour counter`, input('counter'),
    { unit: 'h', hint: chain.last_counter_h === null ? '' : t`last ${counterText(chain.last_counter_h)}` });
  const still = chain.last_counter_h !== null && !form.counter && button(t`Still ${counterText(chain.last_counter_h)}`, () => {
    form.counter = typed(chain.last_counter_h);
    draw();
    document.querySelector('.lengths input')?.focus();
  }, { class: 'button slim' });
  const pitches = field(t`Pitches`, input('pitches'));
  const temperature = field(t`Temperature of the chain`, input('temperature'), { unit: '°C', hint: t`left out: as the tool` });
  const place = field(t`Place on the chain`, input('place', { 'data-pad': null, inputmode: 'text', maxlength: 200 }),
    { hint: t`the marked section` });
  const takeUp = field(t`Take-up position`, input('take_up'), { unit: 'mm', hint: t`from where a new chain is taut` });
  const strand = field(t`Strand`, input('strand'), { hint: t`of ${chain.strands}, counted from the drive side` });
  const taut = h('label', { class: 'tick' }, h('input', {
    type: 'checkbox', checked: form.taut, onchange: event => { form.taut = event.target.checked; },
  }), t`in place, taut`);
  const zone = plant.plant.time_zone;
  const taken = field(t`Measured at`, h('input', {
    id: 'taken_at', type: 'datetime-local', value: form.taken_at ? wall(form.taken_at, zone) : '',
    oninput: event => { form.taken_at = ofWall(event.target.value, zone) ?? ''; changed(); },
  }), { hint: t`left out: now` });
  const length = lengthFields(form, changed, draw);
  const expected = h('p', { class: 'expected' });
  const all = [
    how(form, chain, plant), expected, lastTime(chain, plant), proposal(chain), counter.whole, still,
    h('div', { class: 'pair' },
      segments(t`Tool`, 'tool', [['tape', t`tape`], ['caliper', t`caliper`]], form.tool, tool => choose('tool', tool)),
      segments(t`Unit`, 'unit', [['mm', 'mm'], ['in', t`inch`]], form.unit, unit => choose('unit', unit))),
    chain.strands > 1 && strand.whole, pitches.whole, length.whole, taut,
    h('p', { class: 'hint taken' }, takenWords(form, zone)),
    h('details', { class: 'more', open: Boolean(form.taken_at) },
      h('summary', {}, chain.has_take_up ? t`Time, temperature, place, take-up` : t`Time, temperature, place`),
      taken.whole, temperature.whole, place.whole, chain.has_take_up && takeUp.whole),
  ];
  return {
    all, expected, counter_h: counter, pitches, length, strand, temperature_c: temperature, take_up_mm: takeUp, taken_at: taken,
  };
}

/**
 * The cautions on top, and those that stand with how to measure: the last and least urgent one, which is said of every chain, so
 * that the first field is in sight on a small phone. A chain that lifts has all on top.
 */
export function cautionsOf(plant, chain) {
  const all = plant.cautions[chain.caution];
  return chain.holds_load || chain.lifting ? [all, []] : [all.slice(0, -1), all.slice(-1)];
}

/** The nominal length of the pitches in the form. */
export function nominal(form, chain) {
  const mm = (Number(form.pitches) || 0) * chain.pitch_mm;
  return form.unit === 'in' ? `${inchFraction(mm)} (${millimetres(mm)})` : millimetres(mm);
}

function takenWords(form, zone) {
  const at = moment(form.taken_at || now(), zone);
  return offWorthTelling() === 0 || form.taken_at ? t`Measured at ${at}.`
    : t`Measured at ${at}, by the server’s clock: the clock of this phone is wrong.`;
}

const how = (form, chain, plant) => h('details', { class: 'how' }, h('summary', {}, t`Where and how`),
  sketch(chain.kind, form.tool), h('ol', {}, plant.guides[chain.family].map(step => h('li', {}, step))),
  cautionsOf(plant, chain)[1].map(text => h('p', {}, text)));

const lastTime = ({ last }, plant) => h('p', { class: 'hint' }, last
  ? t`Last: ${percent(last.elongation_pct)}, ${last.length_as_told} over ${last.pitches}, ${taken(last, plant)}`
  : t`Not measured yet.`);

const proposal = ({ proposed }) => h('p', { class: 'hint proposal' }, proposed.advice);

const taken = (last, plant) => day(last.taken_at, plant.plant.time_zone);

function lengthFields(form, changed, draw) {
  const pad = form.unit === 'in' ? 'fractions' : 'plain';
  const one = (length, key, label, id) => h('input', {
    id, value: length[key], autocomplete: 'off', inputmode: padMode, 'aria-label': label, 'data-pad': pad,
    'aria-describedby': 'length-fault',
    placeholder: form.tool === 'caliper' ? label : '', oninput: event => { length[key] = event.target.value; changed(); },
  });
  const rows = form.lengths.map((length, i) => {
    const [inside, outside, plain] = form.lengths.length > 1 ? [t`inside ${i + 1}`, t`outside ${i + 1}`, t`Length ${i + 1}`]
      : [t`inside`, t`outside`, t`Length`];
    return h('div', { class: 'lengths' }, form.tool === 'caliper'
      ? [one(length, 'one', inside, `inside${i}`), one(length, 'other', outside, `outside${i}`)]
      : one(length, 'one', plain, `length${i}`));
  });
  const more = form.lengths.length < mostLengths && button(t`+ once more (${form.lengths.length} of ${mostLengths})`, () => {
    form.lengths.push({ one: '', other: '' });
    draw();
  }, { class: 'button slim' });
  const fault = h('p', { class: 'fault', id: 'length-fault', role: 'alert' });
  const unit = form.unit === 'in' ? t`in, such as 48 3/16` : 'mm';
  const whole = h('fieldset', { class: 'field' },
    h('legend', {}, t`Length`, ' ', h('span', { class: 'unit' }, unit)), rows, fault, more);
  return {
    whole,
    fault: text => {
      fault.replaceChildren(text ?? '');
      for (const input of whole.querySelectorAll('input')) input.setAttribute('aria-invalid', text ? 'true' : 'false');
    },
  };
}
