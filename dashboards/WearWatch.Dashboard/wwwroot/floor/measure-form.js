// What a person has typed of a measurement so far, as it was typed; and what the gauge makes of it.
import { now, nowIso } from './clock.js';
import { brief, number, typed } from './figures.js';
import { gauge } from './gauge.js';
import { t } from './language.js';
import { readLength } from './length.js';
import { counterFault, takeUpFault } from './verdict.js';

export const mostLengths = 5;

/** A form for a chain: begun from its last reading, since counts and tools seldom change; or from one that is to be put right. */
export function begin(chain, earlier) {
  const last = chain.last;
  const fresh = {
    counter: '', tool: last?.tool === 'caliper' ? 'caliper' : 'tape',
    pitches: String(chain.proposed.pitches),
    unit: last?.unit ?? 'mm', lengths: [{ one: '', other: '' }], temperature: '', place: last?.place ?? '', take_up: '',
    strand: '', taut: true, taken_at: '',
  };
  return { ...fresh, ...earlier };
}

/** The lengths as text, as they are told and kept: "1219.4; 1219.6", or "1210.2 inside 1226.1 outside". */
export const lengthsText = form => filled(form)
  .map(({ one, other }) => (form.tool === 'caliper' ? `${one.trim()} inside ${other.trim()} outside` : one.trim())).join('; ');

const filled = form => form.lengths.filter(({ one, other }) => one.trim() || (form.tool === 'caliper' && other.trim()));

/** What stands in the form: { faults, gauged, lengthMm, counterH, pitches, complete }. */
export function readForm(form, chain) {
  const counterH = number(form.counter);
  const pitches = number(form.pitches);
  const strand = number(form.strand);
  const temperatureC = form.temperature.trim() ? number(form.temperature) : null;
  const lengths = filled(form).map(length => lengthOf(length, form));
  const faults = {
    counter_h: counterFault(form.counter, counterH, chain),
    pitches: !form.pitches.trim() || isCount(pitches) ? null : t`A whole number of pitches, at least 1.`,
    strand: form.strand.trim() && !(strand >= 1 && strand <= chain.strands) ? t`One of the strands 1 to ${chain.strands}.` : null,
    temperature_c: form.temperature.trim() && temperatureC === null ? t`A number in degrees Celsius, such as 45.` : null,
    take_up_mm: takeUpFault(form.take_up),
    taken_at: Date.parse(form.taken_at) > now() + 300_000 ? t`The time lies in the future.` : null,
    length: lengths.find(length => length.reason)?.reason ?? null,
  };
  const complete = lengths.length > 0 && lengths.every(length => length.mm) && isCount(pitches) && !faults.temperature_c;
  const span = {
    pitchMm: chain.pitch_mm, pitches, lengthsMm: lengths.map(length => length.mm),
    tool: form.tool, kind: chain.kind, temperatureC,
  };
  const gauged = complete ? gauge(span) : null;
  if (gauged?.refused) faults[gauged.refused.field] = gauged.refused.reason;
  const lengthMm = complete ? span.lengthsMm.reduce((a, b) => a + b, 0) / lengths.length : null;
  const canBeSaved = gauged !== null && !gauged.refused && Object.values(faults).every(fault => !fault);
  // A faulty counter may be put right by the server's question: it is asked about all the same.
  const canBeAsked = gauged !== null && !gauged.refused
    && Object.entries(faults).every(([field, fault]) => !fault || (field === 'counter_h' && counterH !== null));
  return { faults, gauged, lengthMm, counterH, pitches, temperatureC, strand, canBeSaved, canBeAsked };
}

const isCount = pitches => Number.isInteger(pitches) && pitches >= 1 && pitches <= 100_000;

// Over the rollers: the mean of inside and outside is the length from centre to centre; roller and play cancel.
function lengthOf({ one, other }, { tool, unit }) {
  const first = readLength(one, unit);
  if (tool !== 'caliper') return first;
  if (first.reason) return one.trim() ? first : {};
  const second = readLength(other, unit);
  if (second.reason) return other.trim() ? second : {};
  if (first.unit !== second.unit) return { reason: t`Inside and outside are in different units; write both in one.` };
  if (second.mm > first.mm) return { mm: (first.mm + second.mm) / 2 };
  const [between, over] = [brief(first.mm, 2), brief(second.mm, 2)];
  return { reason: t`Over the rollers is more than between them: ${over} mm outside, ${between} mm inside cannot be.` };
}

/** What is sent of it. */
export const bodyOf = (form, chain, read, by, confirmed) => ({
  chain: chain.chain, chain_id: chain.id, taken_at: form.taken_at || nowIso(), counter_h: read.counterH,
  tool: form.tool, place: form.place.trim(),
  pitches: read.pitches, length: lengthsText(form), unit: form.unit, temperature_c: read.temperatureC,
  strand: read.strand, taut: form.taut, take_up_mm: number(form.take_up ?? ''),
  told_by: by || 'floor', confirmed,
});

/** Takes a slip's correction over: the person said yes to it. */
export function take(form, read, slip) {
  if (slip.counter_h !== null && slip.counter_h !== read.counterH) form.counter = typed(slip.counter_h);
  form.pitches = String(slip.pitches);
  if (Math.abs(read.lengthMm - slip.length_mm) < 0.005) return;
  const one = typed(Math.round(slip.length_mm * 100) / 100);
  Object.assign(form, { tool: 'tape', unit: 'mm', lengths: [{ one, other: '' }] });
}
