// Is it right all the same? Asked at the top of the form, far from where Save was tapped, after a pause, with the figure read out
// digit by digit; what no chain can be is not confirmed here at all: it waits for a planner.
import { h } from './dom.js';
import { decision } from './decide.js';
import { fixed, percent } from './figures.js';
import { t } from './language.js';

const pause = 1_500;
const digits = [t`zero`, t`one`, t`two`, t`three`, t`four`, t`five`, t`six`, t`seven`, t`eight`, t`nine`];
const spoken = { ...digits, '.': t`point`, '-': t`minus` };

/** An elongation as a person reads it out over the radio: three one point two three percent. */
export const readOut = value => `${[...fixed(value, 2)].map(sign => spoken[sign]).join(' ')} ${t`percent`}`;

/** The question; yes keeps it, no goes back to the fields. */
export function confirmation(gauged, words, yes, no) {
  const impossible = Boolean(gauged.doubted);
  const [title, text, answer] = impossible
    ? [t`No chain can be so`, t`Correct it. Else it is kept for a planner, and moves no date until then.`, t`Keep for planner`]
    : [t`Is it right all the same?`, t`Read it off once more before you say yes.`, t`It is right: save it`];
  return h('section', { class: 'confirm', role: 'group', 'aria-label': title, tabindex: '-1' },
    h('h2', {}, title), h('p', { class: 'figure' }, percent(gauged.percent)),
    h('p', { class: 'read-out' }, t`In words: elongation ${readOut(gauged.percent)}.`), h('p', {}, words), h('p', {}, text),
    h('div', { class: 'choices' },
      decision(t`Correct it`, no, { class: 'button primary' }),
      decision(answer, () => yes({ confirmed: !impossible }), { pause, class: 'button grave' })));
}
