// Numbers as the other screens write them: to the same last digit, whichever of the two programs did the sum.

/** A number with so many decimals: 15 digits count, a half goes away from zero. */
export function fixed(value, decimals) {
  const [mantissa, exponent] = Math.abs(value).toExponential(14).split('e');
  const digits = BigInt(mantissa.replace('.', ''));
  const drop = 14 - Number(exponent) - decimals;
  const scaled = drop <= 0 ? digits * 10n ** BigInt(-drop) : (digits + 5n * 10n ** BigInt(drop - 1)) / 10n ** BigInt(drop);
  const text = scaled.toString().padStart(decimals + 1, '0');
  const whole = text.slice(0, text.length - decimals);
  return `${value < 0 ? '-' : ''}${whole}${decimals > 0 ? '.' + text.slice(-decimals) : ''}`;
}

/** A number with at most so many decimals, without trailing zeros. */
export const shortest = (value, decimals) => {
  const text = fixed(value, decimals);
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
};

/** An elongation such as 1.83 %, with a space that does not break. */
export const percent = value => (typeof value === 'number' ? `${fixed(value, 2)}\u00a0%` : '–');

/** Running hours such as 12,400 h. */
export const hours = value => (typeof value === 'number' ? `${grouped(fixed(value, 0))}\u00a0h` : '–');

/** A length such as 1,219.4 mm. */
export const millimetres = value => {
  const [whole, rest = '0'] = shortest(value, 3).split('.');
  return `${grouped(whole)}.${rest}\u00a0mm`;
};

/** A probability such as 12 %, with the ends told as what they are. */
export const chance = p => (p <= 0 ? '0 %' : p < 0.01 ? 'under 1 %' : p > 0.99 ? 'over 99 %' : `${fixed(100 * p, 0)} %`);

/** A number with a decimal point or comma; null for anything else. */
export function number(text) {
  const trimmed = text.trim().replace(',', '.');
  return /^[+-]?(\d+\.?\d*|\.\d+)$/.test(trimmed) ? Number(trimmed) : null;
}

/** A date such as 14 Jan 2027 in the plant's time zone. */
export function day(moment, zone) {
  const parts = new Intl.DateTimeFormat('en-US', { day: 'numeric', month: 'short', year: 'numeric', timeZone: zone })
    .formatToParts(new Date(moment));
  return ['day', 'month', 'year'].map(name => parts.find(part => part.type === name).value).join(' ');
}

/** A date in the plant as 2027-01-14: for comparing days. */
export const isoDay = (moment, zone) => new Date(moment).toLocaleDateString('en-CA', { timeZone: zone });

/** A time such as 06:30 on the day, else with its date. */
export function moment(at, zone) {
  const time = new Date(at).toLocaleTimeString('en-GB', { hour: '2-digit', minute: '2-digit', timeZone: zone });
  return isoDay(at, zone) === isoDay(Date.now(), zone) ? time : `${day(at, zone)} ${time}`;
}

/** A count with its noun: 1 chain, 2 chains. */
export const count = (n, noun) => `${grouped(String(n))} ${noun}${n === 1 ? '' : 's'}`;

const grouped = whole => whole.replace(/\B(?=(\d{3})+(?!\d))/g, ',');
