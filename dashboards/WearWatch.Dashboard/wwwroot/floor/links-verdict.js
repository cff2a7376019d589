// What measures of links say, for a phone without signal: each against its own marks, which the server has worked out
// (src/WearWatch/Links/LinkMark.cs); the worst comes first. What was not measured is said, since it is not good.
import { figure } from './figures.js';
import { t } from './language.js';

const wanted = { one_link: t`one link`, several_links: t`length over links`, mean_diameter: t`both diameters` };
const severity = { out: 2, plan: 1, within: 0 };

/** The verdict: { state, words }, state being out, plan, within or nothing. */
export function judgeLinks(links, mm, tool) {
  const values = {
    one_link: mm.one_link, several_links: mm.several_links,
    mean_diameter: mm.d1 !== null && mm.d2 !== null ? (mm.d1 + mm.d2) / 2 : null,
    thinnest_diameter: Math.min(mm.d1 ?? Infinity, mm.d2 ?? Infinity) < Infinity
      ? Math.min(mm.d1 ?? Infinity, mm.d2 ?? Infinity) : null,
  };
  const judged = links.marks.filter(mark => values[mark.measure] !== null)
    .map(mark => ({ ...judgeOne(mark, values[mark.measure], tool), mark }))
    .sort((a, b) => severity[b.state] - severity[a.state]);
  const missing = Object.keys(wanted).filter(measure => values[measure] === null);
  const unlimited = Object.keys(wanted).filter(measure => values[measure] !== null
    && links.marks.every(mark => mark.measure !== measure));
  const words = [
    ...judged.map(each => each.words),
    ...unlimited.map(measure => t`No limit is known for ${wanted[measure]}: it cannot be judged here.`),
    missing.length > 0 && missing.length < 3
      && t`Not measured: ${missing.map(each => wanted[each]).join(', ')}. No statement on that.`,
  ].filter(Boolean);
  if (words.length === 0) return { state: 'nothing', words: [t`Enter at least one measure.`] };
  return { state: judged[0]?.state ?? 'nothing', words };
}

function judgeOne(mark, mm, tool) {
  const out = tool === 'tape' && mark.out_by_tape_mm !== null ? mark.out_by_tape_mm : mark.out_mm;
  const beyond = line => (mark.grows ? mm >= line - 1e-9 : mm <= line + 1e-9);
  const name = mark.name[0].toUpperCase() + mark.name.slice(1);
  const against = t`${name} ${figure(mm, 2)} mm against ${figure(mark.limit_mm, 2)} mm`;
  if (beyond(mark.limit_mm)) return { state: 'out', words: t`Take out of use. Discard limit reached: ${against}.` };
  if (beyond(out)) {
    return { state: 'out', words: t`Take out of use. The limit may be reached: ${against}, within the uncertainty.` };
  }

  return beyond(mark.plan_mm)
    ? { state: 'plan', words: t`${against}: a competent person sets the date.` }
    : { state: 'within', words: t`${against}: wear within limits; not a release for use.` };
}
