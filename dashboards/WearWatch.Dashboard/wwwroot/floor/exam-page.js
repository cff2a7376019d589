// The report of a thorough examination, point by point, by the appointed competent person: kept here, sent when there is signal.
import { now } from './clock.js';
import { once, rest } from './decide.js';
import { caution, field, h, segments } from './dom.js';
import { number } from './figures.js';
import { t } from './language.js';
import { signature } from './maker.js';
import { phrase } from './phrase.js';
import { save } from './saved.js';
import { chainHead } from './words.js';

const outcomes = [['not_examined', t`not examined`], ['nothing_found', t`nothing found`], ['found', t`found`]];
const results = {
  nothing_found: phrase`All points examined, nothing found. That is no release for use.`,
  remedy_by_date: phrase`Defect, to be put right by the day below.`,
  out_of_use: phrase`Out of use at once, until a competent person has released it by name.`,
  incomplete: phrase`Not all points examined: it says nothing of those, and moves no date.`,
};

export function examPage(context) {
  const { plant, chain } = context;
  const points = plant.checklists[chain.caution]
    .map(point => ({ ...point, outcome: 'not_examined', measured: '', note: '' }));
  const input = (id, more = {}) => h('input', { id, autocomplete: 'off', maxlength: 200, ...more });
  const [examiner, reportNumber, remarks] =
    [input('examiner', { maxlength: 80 }), input('report-number'), input('remarks')];
  const counter = input('counter', { inputmode: 'decimal' });
  const remedy = input('remedy', { type: 'date', oninput: () => tell() });
  const stop = h('input', { id: 'stop', type: 'checkbox', onchange: () => tell() });
  const remedyField = field(t`To be put right by`, remedy);
  const said = h('p', { class: 'report-says', role: 'status' });
  const submit = rest(h('button', { type: 'submit', class: 'button primary big', disabled: true }, t`Keep the report`));
  const tell = () => {
    const result = resultOf(points, stop.checked);
    said.replaceChildren(h('strong', {}, t`The report says:`), ' ', t(results[result]));
    remedyField.whole.hidden = result !== 'remedy_by_date';
    submit.disabled = points.every(point => point.outcome === 'not_examined') && !stop.checked
      || result === 'remedy_by_date' && !remedy.value;
  };
  signature().then(name => { examiner.value ||= name; });
  const trySave = once(submit, () => keepReport(context, points, {
    examiner: examiner.value.trim(), report_number: reportNumber.value.trim(), remarks: remarks.value.trim(),
    counter: counter.value, remedy: remedy.value, result: resultOf(points, stop.checked),
  }));
  tell();
  return [
    chainHead(chain, t`Thorough examination`), caution(plant.cautions[chain.caution]),
    h('p', { class: 'hint' },
      t`Only the report of an appointed competent person is taken. A daily inspection is no examination.`),
    h('form', { class: 'inspect', novalidate: true, onsubmit: event => { event.preventDefault(); trySave(); } },
      h('ol', { class: 'points' }, points.map(point => pointItem(point, tell))),
      h('label', { class: 'tick' }, stop, t`Out of use, whatever the points say`),
      said, remedyField.whole,
      field(t`Examiner`, examiner, { hint: t`as appointed` }).whole, field(t`Remarks`, remarks).whole,
      field(t`Report number`, reportNumber).whole, field(t`Hour counter`, counter, { unit: 'h', hint: t`if you pass it` }).whole,
      h('div', { class: 'foot' }, submit)),
  ];
}

/** What the outcomes of the points come to. What stops the chain goes first; what was not examined is never in order. */
export function resultOf(points, isStopped) {
  const found = points.filter(point => point.outcome === 'found');
  if (isStopped || found.some(point => point.stops_the_chain)) return 'out_of_use';
  if (points.some(point => point.outcome === 'not_examined')) return 'incomplete';
  return found.length > 0 ? 'remedy_by_date' : 'nothing_found';
}

function pointItem(point, changed) {
  const text = (name, key) => h('label', { class: 'field' }, name,
    h('input', { maxlength: 200, oninput: event => { point[key] = event.target.value; } }));
  const more = h('div', { class: 'found', hidden: true }, text(t`Value, place, method`, 'measured'), text(t`Note`, 'note'));
  return h('li', { class: 'point' }, segments(point.ask, point.point, outcomes, point.outcome, outcome => {
    point.outcome = outcome;
    more.hidden = outcome === 'not_examined';
    changed();
  }), h('p', { class: 'hint' },
    point.stops_the_chain && `${t`Stops the chain.`} `, t`Source: ${point.source}`), more);
}

async function keepReport(context, points, told) {
  const { plant, chain } = context;
  const by = await signature();
  const examined = points.filter(point => point.outcome !== 'not_examined');
  const found = examined.filter(point => point.outcome === 'found').length;
  const words = phrase`${examined.length} of ${points.length} points examined, ${found} found`;
  const report = {
    kind: 'exam', path: `/api/v1/lifting/${encodeURIComponent(chain.chain)}/examinations`, chain: chain.chain, chainId: chain.id,
    words,
    body: {
      // The day where the plant is; the Swedish form of a date is the one of the files.
      on: new Date(now()).toLocaleDateString('sv-SE', { timeZone: plant.plant.time_zone }),
      examiner: told.examiner, occasion: 'periodic', result: told.result, remarks: told.remarks,
      report_number: told.report_number, counter_h: number(told.counter),
      remedy_by: told.result === 'remedy_by_date' ? told.remedy : null, told_by: by || told.examiner,
      points: examined.map(({ point, outcome, measured, note }) => (
        { point, outcome, measured: measured.trim(), note: note.trim() })),
    },
  };
  await save(context, [report], { words, more: h('p', {}, t(results[told.result])), screen: 'exam', form: {} });
}
