// The gauge, for a phone without signal: elongation, uncertainty and scatter of a length over pitches.
// The same arithmetic as src/WearWatch/Gauging, where formulas and sources stand; a test holds both to the same figures.
import { brief, figure } from './figures.js';
import { t } from './language.js';

const expansionPerKelvin = 11.5e-6;
const referenceTemperatureC = 20;
const temperatureWithinKelvin = 5;
const [shortestShare, longestShare] = [0.98, 1.10];

const tools = {
  tape: { largestErrorMm: lengthMm => 0.3 + 0.2 * Math.ceil(lengthMm / 1000), readingMm: 1 / Math.sqrt(6) },
  caliper: { largestErrorMm: () => 0.05, readingMm: Math.sqrt(0.1164 * 0.1164 + 0.01 * 0.01 / 12) },
};

const impossibly = t`no chain runs so. Check the count, the unit and the decimal point.`;

/**
 * Gauges { pitchMm, pitches, lengthsMm, tool, kind, temperatureC }, kind as the pack tells it of its family.
 * Answers { refused: { field, reason } }, or { percent, standardUncertaintyPercent, scatterPercent, doubted }.
 */
export function gauge(span) {
  const refused = refusalOf(span);
  if (refused) return { refused };
  const { pitchMm, pitches, lengthsMm } = span;
  const nominalMm = pitches * pitchMm;
  const lengthMm = mean(lengthsMm);
  const percent = percentOf(span, lengthMm, nominalMm);
  const components = budget(span, lengthMm, 100 / nominalMm, percent);
  const impossible = lengthMm < shortestShare * nominalMm || lengthMm > longestShare * nominalMm;
  return {
    percent,
    standardUncertaintyPercent: inQuadrature(components),
    scatterPercent: inQuadrature(components.filter(c => c.repeats)),
    doubted: !impossible ? null
      : t`${brief(lengthMm, 2)} mm over ${pitches} pitches of ${brief(pitchMm, 3)} mm is ${figure(percent, 1)} %: ${impossibly}`,
  };
}

function refusalOf({ pitchMm, pitches, lengthsMm, temperatureC }) {
  if (lengthsMm.length === 0) return { field: 'length', reason: t`A length is wanted.` };
  if (!(pitchMm > 0)) return { field: 'pitch_mm', reason: t`The pitch must be above zero.` };
  if (!(pitches >= 1)) return { field: 'pitches', reason: t`Count at least one pitch; a length over no pitch says nothing.` };
  if (!lengthsMm.every(mm => mm > 0 && mm < Infinity))
    return { field: 'length', reason: t`The length must be a number above zero.` };
  return temperatureC < -60 || temperatureC > 400
    ? { field: 'temperature_c', reason: t`A chain that is measured has between -60 and 400 degrees Celsius.` }
    : null;
}

function percentOf({ temperatureC }, lengthMm, nominalMm) {
  const at20 = typeof temperatureC !== 'number' ? lengthMm
    : lengthMm * (expansion(referenceTemperatureC) / expansion(temperatureC));
  return 100 * (at20 - nominalMm) / nominalMm;
}

const expansion = temperatureC => 1 + expansionPerKelvin * (temperatureC - referenceTemperatureC);

function budget(span, lengthMm, percentPerMm, percent) {
  const tool = tools[span.tool];
  const components = [
    { percent: percentPerMm * rectangular(tool.largestErrorMm(lengthMm)), repeats: true },
    { percent: percentPerMm * readingMm(span.lengthsMm, tool.readingMm), repeats: true },
    { percent: rectangular(span.kind.new_length_tolerance_pct / 2) },
    { percent: 100 * expansionPerKelvin * rectangular(temperatureWithinKelvin) },
  ];
  if (span.kind.links_alternate && span.pitches % 2 === 1) components.push({ percent: Math.abs(percent) / span.pitches });
  return components;
}

// The mean of n readings; or by how much they differ, when that is more than the graduation explains.
function readingMm(lengthsMm, onceMm) {
  const n = lengthsMm.length;
  const byGraduation = onceMm / Math.sqrt(n);
  if (n < 3) return byGraduation;
  const middle = mean(lengthsMm);
  const deviation = Math.sqrt(sum(lengthsMm.map(mm => (mm - middle) * (mm - middle))) / (n - 1));
  return Math.max(byGraduation, deviation / Math.sqrt(n));
}

const rectangular = halfWidth => halfWidth / Math.sqrt(3);
const inQuadrature = components => Math.sqrt(sum(components.map(c => c.percent * c.percent)));
const sum = values => values.reduce((total, value) => total + value, 0);
const mean = values => sum(values) / values.length;
