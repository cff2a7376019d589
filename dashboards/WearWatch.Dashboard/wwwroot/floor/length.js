// Reads a length as a person wrote it: 609.6, 609.6 mm, 24.75 in, 48 3/16, 48-3/16", 3/4", 1.219 m.
// The same rules as src/WearWatch/Units/LengthText.cs; a test holds both to the same figures.
import { t } from './language.js';

const number = String.raw`(?<number>\d+(?:[.,]\d+)?|[.,]\d+)?`;
const fraction = String.raw`(?:(?:(?<=\d)(?:\s+|\s*-\s*)|(?<![\d.,]))(?<top>\d{1,3})\s*/\s*(?<over>\d{1,3}))?`;
const mark = String.raw`(?<unit>mm|cm|m|inches|inch|in\.?|"|''|”|″)?`;
const shape = new RegExp(`^\\s*${number}${fraction}\\s*${mark}\\s*$`, 'i');
const thousandsOrDecimals = /^[1-9]\d{0,2},\d{3}$/;
const finestDenominator = 64;
const mostDigits = 28;

const allowed = t`Write a number (609.6), a number with mm, cm, m or in, or inches with a fraction (48 3/16).`;

/** The length in millimetres with the unit it was written in, or why it is none: { mm, unit } or { reason }. */
export function readLength(text, unit) {
  if (!text || !text.trim()) return { reason: t`A length is wanted, such as 609.6 or 24 3/16".` };
  const found = shape.exec(text)?.groups;
  if (!found) {
    return {
      reason: t`'${text.trim()}' is not a length. ${allowed}`,
    };
  }

  const number = found.number ?? '';
  const mark = (found.unit ?? '').toLowerCase();
  const fraction = found.over === undefined ? null : { top: Number(found.top), over: Number(found.over) };
  const reason = faultOf(text, number, mark, fraction);
  return reason ? { reason } : inMillimetres(number.replace(',', '.'), mark, fraction, unit);
}

function faultOf(text, number, mark, fraction) {
  if (thousandsOrDecimals.test(number))
    return t`'${number}' can be read in two ways. Write a decimal point, and no mark for thousands.`;
  if (number.length > mostDigits) return t`'${number}' has more digits than a length can have.`;
  if (!fraction) return null;
  const { top, over } = fraction;
  if (['mm', 'cm', 'm'].includes(mark)) return t`'${text.trim()}': fractions are for inches; write ${mark} with a decimal point.`;
  if (/[.,]/.test(number)) return t`'${text.trim()}' has a decimal point and a fraction; use one of them.`;
  if (over < 2 || over > finestDenominator || (over & (over - 1)) !== 0)
    return t`${top}/${over} is on no inch rule: it has halves, quarters, eighths, 16ths, 32nds and 64ths.`;
  return top >= over ? t`${top}/${over} is not a fraction of an inch: the upper number must be the smaller one.` : null;
}

// Whole numbers as long as it goes and one division at the end, so that 48 3/16 is the number nearest to 1223.9625.
function inMillimetres(digits, mark, fraction, unit) {
  const isMetric = ['mm', 'cm', 'm'].includes(mark) || (mark === '' && !fraction && unit === 'mm');
  const [times, by] = { cm: [10, 1], m: [1000, 1] }[mark] ?? (isMetric ? [1, 1] : [254, 10]);
  const decimals = 10 ** (digits.split('.')[1] ?? '').length;
  const over = fraction?.over ?? 1;
  const parts = Number(digits.replace('.', '')) * over + (fraction?.top ?? 0) * decimals;
  if (parts / (decimals * over) > 1_000_000) return { reason: t`No chain is so long; is the unit right?` };
  if (parts === 0) return { reason: t`A length above zero is wanted.` };
  return { mm: (parts * times) / (by * decimals * over), unit: isMetric ? 'mm' : 'in' };
}

/** The nearest mark of an inch rule, as it is written: 48 3/16". */
export function inchFraction(mm, graduation = 64) {
  const parts = Math.round((mm * 10 / 254) * graduation);
  const whole = Math.floor(parts / graduation);
  let [top, over] = [parts % graduation, graduation];
  if (top === 0) return `${whole}"`;
  while (top % 2 === 0) [top, over] = [top / 2, over / 2];
  return whole === 0 ? `${top}/${over}"` : `${whole} ${top}/${over}"`;
}
