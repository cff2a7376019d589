// Words and marks that several screens share. A condition has a colour, a shape and a word; the words are those of
// ConditionWords, which a test compares. A chain that lifts has words of its own and is never green.
import { h, s } from './dom.js';
import { t } from './language.js';
import { counted } from './phrase.js';

const conditions = {
  within_limit: [t`within limit`, 'M5 12.5 10 17.5 19 7'],
  plan_a_swap: [t`plan a swap`, 'M12 4 2.8 20h18.4zM12 10v4M12 17h.01'],
  swap_now: [t`swap now`, 'M4 4h16v16H4zM12 7v6M12 16h.01'],
  wear_within_limits: [t`wear within limits; not a release for use`, 'M12 4v10M12 18h.01'],
  planning_limit_reached: [
    t`limit for planning reached: a competent person sets the date`, 'M12 4 2.8 20h18.4zM12 10v4M12 17h.01'],
  take_out_of_use: [t`take out of use`, 'M4 4h16v16H4zM12 7v6M12 16h.01'],
  cannot_be_judged: [t`cannot be judged`, 'M12 3a9 9 0 1 0 .01 0M12 16h.01M9.5 9.5a2.5 2.5 0 1 1 3.5 2.3c-.7.3-1 .8-1 1.7'],
  not_known: [t`not known`, 'M12 3a9 9 0 1 0 .01 0M12 16h.01M9.5 9.5a2.5 2.5 0 1 1 3.5 2.3c-.7.3-1 .8-1 1.7'],
};

/** A condition as a mark; its word is beside it, or read out. */
export function conditionMark(condition, worded = false) {
  const [word, path] = conditions[condition] ?? conditions.not_known;
  return h('span', { class: `condition ${condition}` },
    s('svg', { viewBox: '0 0 24 24', 'aria-hidden': 'true' }, s('path', { d: path })),
    h('span', { class: worded ? '' : 'unseen' }, word));
}

const liftingShapes = {
  out_of_use: 'M8 3h8l5 5v8l-5 5H8l-5-5V8z',
  examine_first: 'M12 4 2.8 20h18.4zM12 10v4M12 17h.01',
  attend: 'M12 2 22 12 12 22 2 12z',
  nothing_stands: 'M12 3v6a5 5 0 1 1-5 5',
};

const liftingSign = verdict => s('svg', { viewBox: '0 0 24 24', 'aria-hidden': 'true' },
  s('path', { d: liftingShapes[verdict] ?? liftingShapes.nothing_stands }));

/** Beside the name of a chain that lifts, in a list: the worst that stands against its use. Nothing for another chain. */
export const liftingMark = chain => chain.lifting && h('span',
  { class: `lifting ${chain.lifting.verdict}`, 'data-lifting': chain.chain }, liftingSign(chain.lifting.verdict),
  chain.lifting.brief);

/** On top of a screen about a chain that lifts: all that stands against its use. Nothing for another chain. */
export const liftingBanner = chain => chain.lifting && h('section',
  { class: `lifting-banner ${chain.lifting.verdict}`, 'aria-label': t`Chain that lifts`, 'data-lifting': chain.chain },
  h('p', { class: 'lifting-verdict' }, liftingSign(chain.lifting.verdict), chain.lifting.words),
  chain.lifting.faults.map(text => h('p', {}, text)), h('p', { class: 'hint' }, chain.lifting.due));

/** Where a chain runs: its line and place. */
export const place = chain => [chain.line, chain.position].filter(Boolean).join(' · ');

/** The head of a screen about a chain. */
export const chainHead = (chain, title) => h('div', {}, h('div', { class: 'head' },
  h('a', { class: 'button slim', href: `#/chain/${chain.id}`, 'aria-label': t`Back to ${chain.chain}` }, '‹'),
  h('div', {}, h('h1', { tabindex: '-1' }, title), h('p', { class: 'hint' }, `${chain.chain} · ${place(chain)}`))),
  liftingBanner(chain));

/** How a forecast moved, in words. */
export function moveWords(before, after, day) {
  if (!after) return before ? t`The early date was ${day(before)}; now the limit is not in sight.`
    : t`The limit is not in sight.`;
  if (!before) return t`The early date is ${day(after)}: 19 of 20 such chains last longer.`;
  const days = Math.round((Date.parse(after) - Date.parse(before)) / 86_400_000);
  if (days === 0) return t`The early date stays at ${day(after)}.`;
  const [from, to, n] = [day(before), day(after), Math.abs(days)];
  return days < 0
    ? counted(n, t`The early date moved ${n} day earlier, from ${from} to ${to}.`,
      t`The early date moved ${n} days earlier, from ${from} to ${to}.`)
    : counted(n, t`The early date moved ${n} day later, from ${from} to ${to}.`,
      t`The early date moved ${n} days later, from ${from} to ${to}.`);
}
