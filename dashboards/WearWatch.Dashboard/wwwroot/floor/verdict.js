// What is said of a length while the tape is still on the chain: whether it fits what the kept forecast lets expect.
// Once there is signal, the server asks better (POST /api/v1/readings/question): it knows the whole track and the neighbours.
import { now as clockNow } from './clock.js';
import { hours, number, percent } from './figures.js';
import { t } from './language.js';

/** So many standard deviations off is unusual: 1 of 20 right readings is. */
const unusualDeviations = 2;

/** So many standard deviations off is doubtful: 1 of 2,000 right readings is. */
const doubtfulDeviations = 3.5;

/**
 * The elongation to be expected so many running hours after the last reading, as { percent, deviationPercent }; null when nothing
 * is known. e = e0 + r h / 1000; the variances of e0 and of r h add up (docs/references.md [1]).
 */
export function expectation(expected, hoursSince) {
  if (!expected) return null;
  const grown = expected.rate_pct_per_1000h * Math.max(0, hoursSince) / 1000;
  return {
    percent: expected.start_pct + grown,
    deviationPercent: Math.hypot(expected.start_sd_pct, grown * expected.log_rate_sd),
  };
}

/** Running hours since the last reading: by the counter where it can be told and be right, else by the calendar. */
export function hoursSince(plant, chain, counterH, now = clockNow()) {
  const last = chain.last_counter_h;
  if (counterH !== null && last !== null && counterH >= last && !counterDoubt(chain, counterH, now)) return counterH - last;
  const sincePack = Math.max(0, now - Date.parse(plant.made_at)) / 3_600_000;
  return (chain.expected?.hours_since_reading ?? 0) + sincePack * plant.plant.running_hours_per_week / 168;
}

/** What is expected before anything is entered, in words. */
export function span(expected) {
  if (!expected) return t`Nothing is known of this chain yet. This is its first reading.`;
  const width = 2 * expected.deviationPercent;
  return t`${percent(expected.percent - width)} to ${percent(expected.percent + width)} is expected now.`;
}

/** The judgement of a gauged length: 'fits', 'unusual' or 'doubtful', with its words. */
export function judge(gauged, expected, isFirst) {
  if (gauged.doubted) return { judgement: 'doubtful', words: gauged.doubted };
  if (!expected) return { judgement: 'fits', words: t`The first reading of this chain.` };
  // What the uncertainty against nominal and the track share stays the same all the chain's life: only the scatter is new.
  const own = isFirst ? gauged.standardUncertaintyPercent : gauged.scatterPercent;
  const deviation = Math.hypot(expected.deviationPercent, own);
  const off = (gauged.percent - expected.percent) / deviation;
  const range = t`${percent(expected.percent)} ${`±\u00a0${percent(2 * deviation)}`} was to be expected`;
  if (Math.abs(off) <= unusualDeviations) return { judgement: 'fits', words: t`Fits: ${range}.` };
  return Math.abs(off) <= doubtfulDeviations
    ? {
      judgement: 'unusual',
      words: off > 0 ? t`Unusually long: ${range}. Measure again at the same place.`
        : t`Unusually short: ${range}. Measure again at the same place.`,
    }
    : {
      judgement: 'doubtful',
      words: off > 0 ? t`Hardly possible, too long: ${range}. Check the count, the unit and the decimal point.`
        : t`Hardly possible, too short: ${range}. Check the count, the unit and the decimal point.`,
    };
}

/** Another chain whose last length was told as that of this one, to the tenth of a millimetre; undefined for none. */
export const sameAsOther = (plant, chain, read) => plant.chains.find(other => other.id !== chain.id
  && other.last?.pitches === read.pitches && Math.abs(other.last.length_mm - read.lengthMm) < 0.05);

/** What is wrong with a take-up's position; null when nothing is, or nothing was read. */
export function takeUpFault(text = '') {
  const mm = number(text);
  const possible = mm !== null && mm >= 0 && mm <= 100_000;
  return !text.trim() || possible ? null : t`Millimetres such as 35, from where a new chain is taut.`;
}

/** A day more than have passed: dates are told to the day, and clocks by people. */
const dayHours = 24;

/** What does not fit about a counter that went on farther than the clock since the last reading; null when nothing does. */
export function counterDoubt(chain, counterH, now = clockNow()) {
  if (counterH === null || chain.last_counter_h === null || !chain.last?.taken_at) return null;
  const passed = Math.max(0, now - Date.parse(chain.last.taken_at)) / 3_600_000;
  const by = counterH - chain.last_counter_h;
  return by <= passed + dayHours
    ? null
    : t`The counter went on by ${hours(by)} since the last reading, ${hours(passed)} ago. Read it again.`;
}

/** What is wrong with a counter; null when nothing is. */
export function counterFault(text, counterH, chain) {
  if (text.trim() && !(counterH >= 0 && counterH <= 1e7)) return t`A number such as 12400.`;
  return counterH !== null && counterH < chain.last_counter_h
    ? t`Lower than the last one, ${hours(chain.last_counter_h)}. Was the counter changed? Then record that first.`
    : null;
}
