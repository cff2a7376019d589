// Measuring: the caution, where and how, what is expected, big fields, and at once what the length means.
import { confirmation } from './confirm.js';
import { once, rest } from './decide.js';
import { caution, h, linkButton } from './dom.js';
import { draft, keepDraft } from './draft.js';
import { percent } from './figures.js';
import { t } from './language.js';
import { cautionsOf, fieldsOf, nominal } from './measure-fields.js';
import { begin, bodyOf, readForm, take } from './measure-form.js';
import { keepReading } from './measure-kept.js';
import { pad } from './pad.js';
import { slipList, watch } from './slips.js';
import { expectation, hoursSince, judge, sameAsOther, span } from './verdict.js';
import { chainHead } from './words.js';

export function measurePage(context) {
  const { plant, chain, asked, entries } = context;
  const earlier = entries.find(entry => entry.seq === Number(asked.get('entry')));
  const told = earlier?.form && { ...structuredClone(earlier.form), taken_at: earlier.body.taken_at };
  const form = begin(chain, told ?? draft(chain, 'measure'));
  const submit = rest(h('button', { type: 'submit', class: 'button primary big' }, t`Save`));
  const root = h('form', { class: 'measure', novalidate: true });
  const status = h('div', { class: 'verdict', role: 'status', 'aria-live': 'polite' });
  const slips = h('div', { class: 'slips' });
  const question = watch(answer => {
    doubt = answer?.is_doubted ? answer : null;
    if (judged) paint(judged.read, judged.verdict);
    slipList(slips, answer, chain, slip => {
      take(form, readForm(form, chain), slip);
      draw();
    });
    // What is listed covers more of the fields: the one that is typed into stays in sight.
    if (slips.childElementCount > 0) document.activeElement?.closest('.field')?.scrollIntoView({ block: 'start' });
  });
  let fields = {};
  let asking = null;
  let doubt = null;
  let judged = null;
  context.onLeave(question.stop);
  const trySave = once(submit, save);
  root.addEventListener('submit', event => { event.preventDefault(); trySave(); });

  function draw() {
    fields = fieldsOf(form, chain, plant, judgeNow, draw);
    root.replaceChildren(...fields.all.filter(Boolean), h('div', { class: 'foot' }, slips, status, pad(root), submit));
    judgeNow();
  }

  function judgeNow() {
    const read = readForm(form, chain);
    const expected = expectation(chain.expected, hoursSince(plant, chain, read.counterH));
    const verdict = read.gauged && !read.gauged.refused ? judge(read.gauged, expected, !chain.last) : null;
    for (const [name, fault] of Object.entries(read.faults)) fields[name]?.fault(fault);
    fields.expected.replaceChildren(span(expected));
    fields.pitches.hint(t`new: ${nominal(form, chain)}`);
    stopAsking();
    judged = { read, verdict };
    paint(read, verdict);
    if (!earlier) keepDraft(chain, 'measure', form);
    const worthAsking = read.canBeAsked && (read.counterH !== null || verdict.judgement !== 'fits');
    question.ask(worthAsking ? bodyOf(form, chain, read, '', false) : null, earlier?.readingId);
  }

  function paint(read, verdict) {
    const judgement = doubt ? 'doubtful' : verdict?.judgement ?? '';
    // Nothing is green of a chain that lifts: that a reading fits releases nothing.
    status.className = chain.holds_load && judgement === 'fits' ? 'verdict' : `verdict ${judgement}`;
    submit.disabled = !read.canBeSaved;
    status.replaceChildren(...(verdict ? [
      h('p', { class: 'figure' }, percent(read.gauged.percent), ' ',
        h('span', {}, `±\u00a0${percent(2 * read.gauged.standardUncertaintyPercent)}`)),
      h('p', {}, h('span', { 'aria-hidden': 'true' }, judgement !== 'fits' ? '! ' : chain.holds_load ? '' : '✓ '),
        why(verdict)),
      judgement !== 'fits' && otherChain(read),
    ] : [h('p', {}, t`Count the pitches and read off the length.`)]).filter(Boolean));
  }

  const why = verdict => (doubt && doubt.column !== 'length' ? doubt.question : verdict.words);

  function otherChain(read) {
    const other = sameAsOther(plant, chain, read);
    return other && h('p', {}, linkButton(t`It is the last length of ${other.chain}: is this the right chain?`,
      `#/chain/${other.id}/measure`, { class: 'button slim' }));
  }

  function stopAsking() {
    asking?.remove();
    asking = null;
  }

  async function save() {
    const { read, verdict } = judged;
    if (!read.canBeSaved) return;
    const doubted = verdict.judgement === 'doubtful' || doubt !== null;
    const keep = ({ confirmed }) => {
      question.stop();
      return keepReading(context, { form, read, earlier, doubted, confirmed });
    };
    // With signal the person is asked here and now; without, the entry is kept as it is, and the server's question comes back.
    // What no chain can be is asked about in any case.
    if (!read.gauged.doubted && !(doubted && navigator.onLine)) return keep({ confirmed: false });
    stopAsking();
    asking = confirmation(read.gauged, why(verdict), keep, () => {
      stopAsking();
      fields.length.whole.querySelector('input').focus();
    });
    root.prepend(asking);
    asking.scrollIntoView({ block: 'start' });
    asking.focus({ preventScroll: true });
  }

  draw();
  return [chainHead(chain, earlier ? t`Put a reading right` : t`Measure`), caution(cautionsOf(plant, chain)[0]), root];
}
