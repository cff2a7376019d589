// What was done at a chain, as it was typed: what is wrong with it, and what is sent of it.
import { nowIso } from './clock.js';
import { number } from './figures.js';
import { t } from './language.js';
import { bodyOf, readForm } from './measure-form.js';
import { phrase } from './phrase.js';
import { counterFault, takeUpFault } from './verdict.js';

/** What is wrong, by field; null where nothing is. */
export function faultsOf(kind, form, chain) {
  const whole = text => /^\d+$/.test(text.trim()) && Number(text) >= 1 && Number(text) <= 1_000_000;
  const changes = kind === 'meter_reset';
  return {
    counter: changes && !form.counter.trim() ? t`What the counter showed just before.`
      : counterFault(form.counter, number(form.counter), chain),
    counter_after: changes && !(number(form.counter_after) >= 0) ? t`A number such as 0: what the counter shows since.` : null,
    pitches_out: kind === 'shortened' ? pitchesFault(form.pitches_out.trim(), chain) : null,
    take_up: takeUpFault(form.take_up),
    pitches: kind !== 'replacement' || !form.pitches.trim() || whole(form.pitches) ? null : t`A whole number of pitches.`,
    teeth: kind !== 'sprocket_replaced' || !form.teeth?.trim() || teethPossible(form.teeth.trim()) ? null
      : t`A sprocket has 5 to 1,000 teeth.`,
    length: kind === 'replacement' && form.length?.trim() ? newLength(form, chain).fault : null,
    oil_amount_ml: !form.oil_amount_ml?.trim() || number(form.oil_amount_ml) > 0 ? null : t`A number such as 20.`,
  };
}

const teethPossible = text => /^\d+$/.test(text) && Number(text) >= 5 && Number(text) <= 1000;

function pitchesFault(text, chain) {
  const possible = /^[1-9]\d*$/.test(text) && Number(text) < (chain.pitches ?? Infinity);
  if (!possible) return t`A whole number of pitches, fewer than the chain has.`;
  return chain.can_be_odd || Number(text) % 2 === 0 ? null
    : t`There is no offset link for such a chain: pitches are taken out of it in pairs.`;
}

// The length when new is a reading like any other, over the pitches that are measured here anyway.
function newLength(form, chain) {
  const told = {
    counter: form.counter, tool: 'tape', pitches: String(chain.proposed.pitches), unit: 'mm',
    temperature: '', place: '', take_up: '', strand: '', taut: true, lengths: [{ one: form.length, other: '' }],
  };
  const read = readForm(told, { ...chain, last_counter_h: null });
  return { told, read, fault: read.faults.length ?? read.gauged?.doubted ?? null };
}

/** The length when new as an entry of its own; null when none was told. */
export function newLengthEntry(form, chain, by) {
  if (!form.length?.trim()) return null;
  const { told, read } = newLength(form, chain);
  return {
    kind: 'measure', path: '/api/v1/readings', chain: chain.chain, chainId: chain.id, words: phrase`Length when new`, form: told,
    body: bodyOf(told, chain, read, by, false),
  };
}

/** The work as an entry, under its name as a phrase. */
export const entryOf = (kind, name, { form, chain, by }) => ({
  kind: kind === 'oiling' ? 'lubricate' : 'done', path: '/api/v1/events', chain: chain.chain, chainId: chain.id, words: name,
  form, body: eventOf(kind, form, chain, by),
});

function eventOf(kind, form, chain, by) {
  const before = number(form.counter);
  return {
    chain: chain.chain, chain_id: chain.id, event: kind, taken_at: nowIso(), counter_h_before: before,
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
