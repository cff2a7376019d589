// The server's question about an entry that does not fit: the likeliest slips with their odds, each put right by one tap.
import { button, h, linkButton } from './dom.js';
import { chance, hours, percent } from './figures.js';
import { t } from './language.js';
import { ask } from './net.js';

const shown = 3;
const pause = 350;

/** Asks the server about an entry: { is_doubted, expected_pct, slips }; null without signal, or when it cannot be asked. */
export async function askServer(body, corrects) {
  const answer = await ask(`/api/v1/readings/question${corrects ? `?corrects=${corrects}` : ''}`, {
    method: 'POST', headers: { 'Content-Type': 'application/json' }, body: JSON.stringify(body),
  });
  return answer?.ok ? answer.body : null;
}

/** Asks while a person types: a little later, and only the newest question's answer is told. */
export function watch(tell) {
  let [asked, timer] = [0, 0];
  return {
    ask(body, corrects) {
      const turn = ++asked;
      clearTimeout(timer);
      tell(null);
      if (body !== null) timer = setTimeout(async () => {
        const doubt = await askServer(body, corrects);
        if (turn === asked) tell(doubt);
      }, pause);
    },
    stop() {
      asked++;
      clearTimeout(timer);
    },
  };
}

/** Lists what may have slipped. */
export function slipList(list, doubt, chain, take) {
  if (doubt?.column === 'temperature_c') {
    list.replaceChildren(h('p', { class: 'hint' }, doubt.question));
    return;
  }

  if (!doubt?.is_doubted || doubt.slips.length === 0) {
    list.replaceChildren();
    return;
  }

  list.replaceChildren(
    h('p', { class: 'hint' }, `${expectedWords(doubt)} ${t`What it may have been, with its probability:`}`),
    ...doubt.slips.slice(0, shown).map(slip => choice(slip, chain, take)));
}

function expectedWords(doubt) {
  if (doubt.column === 'length') return `${t`About ${percent(doubt.expected_pct)} was expected.`} ${doubt.how_far}`;
  const [about, most] = [hours(doubt.expected_counter_h), doubt.most_counter_h];
  return most === null ? t`This counter does not fit: about ${about} was expected.`
    : t`This counter does not fit: about ${about} was expected, at most ${hours(most)} by the days that have passed.`;
}

function choice(slip, chain, take) {
  const words = slip.words.charAt(0).toUpperCase() + slip.words.slice(1);
  const odds = chance(slip.probability);
  if (slip.kind === 'misread' || slip.kind === 'other_strand') return h('p', {}, t`${words} (${odds}): measure again.`);
  if (slip.answer === 'read_again') return h('p', {}, t`${words} (${odds}): read the counter again.`);
  if (slip.kind === 'other_chain') return h('p', {}, t`${words} (${odds}): check the label.`);
  if (slip.answer === 'record')
    return linkButton(t`${words} (${odds}): record it`, `/chains/${encodeURIComponent(chain.chain)}/done`);
  const ofCounter = slip.kind.startsWith('counter_') || slip.kind === 'date_slipped';
  return button(ofCounter ? `${words} (${odds})` : `${words}: ${percent(slip.elongation_pct)} (${odds})`, () => take(slip),
    slip.is_chosen ? { class: 'button primary' } : {});
}
