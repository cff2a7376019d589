// Measuring: the caution, where and how, what is expected, big fields, and at once what the length means.
import { caution, h } from './dom.js';
import { percent } from './figures.js';
import { fieldsOf, nominal } from './measure-fields.js';
import { begin, bodyOf, readForm, take } from './measure-form.js';
import { keepReading } from './measure-kept.js';
import { pad } from './pad.js';
import { slipList, watch } from './slips.js';
import { expectation, hoursSince, judge, span } from './verdict.js';
import { chainHead } from './words.js';

export function measurePage(context) {
  const { plant, chain, asked, entries } = context;
  const earlier = entries.find(entry => entry.seq === Number(asked.get('entry')));
  const form = begin(chain, earlier?.form && structuredClone(earlier.form));
  const root = h('form', { class: 'measure', novalidate: true, onsubmit: event => { event.preventDefault(); save(); } });
  const status = h('div', { class: 'verdict', role: 'status', 'aria-live': 'polite' });
  const slips = h('div', { class: 'slips' });
  const submit = h('button', { type: 'submit', class: 'button primary big' }, 'Save');
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
  let asking = false;
  let doubt = null;
  let judged = null;
  context.onLeave(question.stop);

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
    fields.pitches.hint(`new: ${nominal(form, chain)}`);
    asking = false;
    judged = { read, verdict };
    paint(read, verdict);
    const worthAsking = read.canBeAsked && (read.counterH !== null || verdict.judgement !== 'fits');
    question.ask(worthAsking ? bodyOf(form, chain, read, '', false) : null, earlier?.readingId);
    return { read, verdict };
  }

  function paint(read, verdict) {
    const judgement = doubt ? 'doubtful' : verdict?.judgement ?? '';
    // Nothing is green of a chain that lifts: that a reading fits releases nothing.
    status.className = chain.holds_load && judgement === 'fits' ? 'verdict' : `verdict ${judgement}`;
    submit.disabled = !read.canBeSaved;
    submit.textContent = asking ? 'It is right: save it' : 'Save';
    status.replaceChildren(...verdict ? told(read, verdict) : [h('p', {}, 'Count the pitches and read off the length.')]);
  }

  const told = (read, verdict) => [
    h('p', { class: 'figure' }, percent(read.gauged.percent), ' ',
      h('span', {}, `±\u00a0${percent(2 * read.gauged.standardUncertaintyPercent)}`)),
    h('p', {},
      h('span', { 'aria-hidden': 'true' }, verdict.judgement !== 'fits' || doubt ? '! ' : chain.holds_load ? '' : '✓ '),
      doubt && doubt.column !== 'length' ? doubt.question : verdict.words,
      asking && ' Is it right all the same?'),
  ];

  async function save() {
    const [yes, asked] = [asking, doubt];
    const { read, verdict } = judgeNow();
    if (!read.canBeSaved) return;
    doubt = asked;
    const doubted = verdict.judgement === 'doubtful' || doubt !== null;
    // With signal the person is asked here and now; without, the entry is kept as it is, and the server's question comes back.
    if (doubted && !yes && navigator.onLine) {
      asking = true;
      paint(read, verdict);
      return;
    }

    question.stop();
    await keepReading(context, { form, read, earlier, doubted, confirmed: yes });
  }

  draw();
  return [chainHead(chain, earlier ? 'Put a reading right' : 'Measure'), caution(plant.cautions[chain.caution]), root];
}
