// Numbers as the other screens write them: to the same last digit, whichever of the two programs did the sum; with the signs of
// the person's language. What is sent has a decimal point.
import { now } from './clock.js';
import { language, t, writeBy } from './language.js';

/** A number with so many decimals, with a decimal point: 15 digits count, a half goes away from zero. */
export function fixed(value, decimals) {
  const [mantissa, exponent] = Math.abs(value).toExponential(14).split('e');
  const digits = BigInt(mantissa.replace('.', ''));
  const drop = 14 - Number(exponent) - decimals;
  const scaled = drop <= 0 ? digits * 10n ** BigInt(-drop) : (digits + 5n * 10n ** BigInt(drop - 1)) / 10n ** BigInt(drop);
  const text = scaled.toString().padStart(decimals + 1, '0');
  const whole = text.slice(0, text.length - decimals);
  return `${value < 0 ? '-' : ''}${whole}${decimals > 0 ? '.' + text.slice(-decimals) : ''}`;
}

/** A number with at most so many decimals, without trailing zeros, with a decimal point. */
export const shortest = (value, decimals) => {
  const text = fixed(value, decimals);
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
};

/** A number with so many decimals, as people read it. */
export const figure = (value, decimals) => signed(fixed(value, decimals));

/** The same with at most so many decimals. */
export const brief = (value, decimals) => signed(shortest(value, decimals));

/** A number as it stands in a field: no groups, so that it is read back as it is. */
export const typed = value => String(value).replace('.', language.decimal_sign);

/** An elongation such as 1.83 %, with a space that does not break. */
export const percent = value => (typeof value === 'number' ? `${figure(value, 2)}\u00a0%` : '–');

/** Running hours such as 12,400 h. */
export const hours = value => (typeof value === 'number' ? `${grouped(fixed(value, 0))}\u00a0h` : '–');

/** An hour counter as it would be typed, without a mark for thousands: 58650 h. */
export const counterText = value => `${typed(Math.round(value * 100) / 100)}\u00a0h`;

/** A length such as 1,219.4 mm. */
export const millimetres = value => {
  const [whole, rest = '0'] = shortest(value, 3).split('.');
  return `${grouped(whole)}${language.decimal_sign}${rest}\u00a0mm`;
};

/** A probability such as 12 %, with the ends told as what they are. */
export const chance = p => (
  p <= 0 ? t`0 %` : p < 0.01 ? t`under 1 %` : p > 0.99 ? t`over 99 %` : t`${{ whole: 100 * p }} %`);

/** Bytes as megabytes, such as 1,240 MB. */
export const megabytes = bytes => `${grouped(fixed(bytes / 1e6, 0))}\u00a0MB`;

/** A whole number such as 12,400. */
export const whole = value => grouped(fixed(value, 0));

/** A number with a decimal point or comma; null for anything else. */
export function number(text) {
  const trimmed = text.trim().replace(',', '.');
  return /^[+-]?(\d+\.?\d*|\.\d+)$/.test(trimmed) ? Number(trimmed) : null;
}

/** How a number was understood whose sign could be one of thousands too, such as 12.400; empty for a plain one. */
export const understood = text => (/^\s*[+-]?[1-9]\d{0,2}[.,]\d{3}\s*$/.test(text)
  ? t`Read as ${{ three: number(text) }}, with decimals. For thousands, write no mark.` : '');

/** A date such as 14 Jan 2027 in the plant's time zone. */
export function day(moment, zone) {
  const [year, month, date] = isoDay(moment, zone).split('-').map(Number);
  const parts = {
    yyyy: year, MMMM: language.months[month - 1], MMM: language.months_short[month - 1], MM: padded(month), M: month,
    dd: padded(date), d: date,
  };
  return language.day_pattern.replace(/'([^']*)'|yyyy|M{1,4}|dd?/g, (part, quoted) => quoted ?? parts[part]);
}

/** A date in the plant as 2027-01-14: for comparing days. */
export const isoDay = (moment, zone) => new Date(moment).toLocaleDateString('en-CA', { timeZone: zone });

/** A time such as 06:30 on the day, else with its date. */
export function moment(at, zone) {
  const time = new Date(at).toLocaleTimeString('en-GB', { hour: '2-digit', minute: '2-digit', timeZone: zone });
  return isoDay(at, zone) === isoDay(now(), zone) ? time : `${day(at, zone)} ${time}`;
}

/** A moment as a clock in the plant shows it, for a field: 2027-01-14T06:40. */
export const wall = (at, zone) => new Date(at).toLocaleString('sv-SE', { timeZone: zone }).replace(' ', 'T').slice(0, 16);

/** The moment at which a clock in the plant shows that; null for no time. */
export function ofWall(text, zone) {
  const shown = Date.parse(`${text}Z`);
  if (Number.isNaN(shown)) return null;
  const behind = at => Date.parse(`${wall(at, zone)}Z`) - Math.floor(at / 60_000) * 60_000;
  return new Date(shown - behind(shown - behind(shown))).toISOString();
}

const signed = text => text.replace('.', language.decimal_sign);
const grouped = text => text.replace(/\B(?=(\d{3})+(?!\d))/g, language.group_sign);
const padded = n => String(n).padStart(2, '0');

writeBy({ percent, hours, millimetres, whole, three: value => figure(value, 3), two: value => brief(value, 2) });
