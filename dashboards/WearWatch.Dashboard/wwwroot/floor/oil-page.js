// The oil list: the chains whose lubrication is due, or due within a week, in walking order. What needs no question is recorded
// by one tap, with what is usual there; a lubricator, and a chain that lifts, are entered on the screen that asks for them.
import { decision } from './decide.js';
import { entryOf } from './do-entry.js';
import { methods } from './do-page.js';
import { caution, h, linkButton } from './dom.js';
import { brief, day, typed } from './figures.js';
import { t } from './language.js';
import { signature } from './maker.js';
import { keepOrTell } from './not-kept.js';
import { phrase } from './phrase.js';
import { checkList, taskMark } from './tasks.js';
import { dueToday, whoHas } from './today.js';
import { offerUndo } from './undo.js';
import { liftingMark, place } from './words.js';

export function oilPage(context) {
  const { plant, entries } = context;
  const mine = linesOf(context);
  const showsAll = mine.length === 0 || context.asked.get('lines') === 'all';
  const stops = plant.chains.filter(chain => showsAll || mine.includes(chain.line))
    .map(chain => ({ chain, task: dueToday(plant, chain, entries).find(each => each.task === 'lubricate') }))
    .filter(stop => stop.task);
  const done = stops.filter(({ task }) => task.done);
  const open = stops.filter(({ task }) => !task.done);
  const due = open.filter(({ task }) => task.due);
  // What is kept here stays where it was tapped, so that nothing moves under the finger before it was sent.
  const soon = open.filter(({ task }) => !task.due && (task.soon || task.kept));
  return [
    h('h1', { tabindex: '-1' }, t`To lubricate`),
    checkList(entries),
    mine.length > 0 && h('div', { class: 'choices hand' },
      h('p', {}, showsAll ? t`All lines.` : t`Your round: ${mine.map(line => line || t`Without a line`).join(', ')}.`),
      showsAll ? linkButton(t`My round`, '#/oil') : linkButton(t`All lines`, '#/oil?lines=all')),
    cautionOf(plant, [...due, ...soon]),
    due.length + soon.length === 0 && h('p', {}, t`No lubrication is due within a week.`),
    section(context, t`Due`, due), section(context, t`Due within a week`, soon), section(context, t`Done today`, done),
  ];
}

// Those whose round the person has taken today; none for a person who has taken none, who sees all.
const linesOf = ({ plant, entries, name }) => [...new Set(plant.chains.map(chain => chain.line))]
  .filter(line => whoHas(plant, entries, line) === (name || 'floor'));

// Where a tap records it, no other screen warns before.
function cautionOf(plant, stops) {
  const texts = stops.filter(({ chain }) => entryAt(chain) === 'tap').flatMap(({ chain }) => plant.cautions[chain.caution]);
  return texts.length > 0 && caution([...new Set(texts)]);
}

const section = (context, title, stops) => stops.length > 0 && h('section', { class: 'line' },
  h('h2', {}, title), h('ul', { class: 'picks' }, stops.map(stop => row(context, stop))));

function row(context, { chain, task }) {
  return h('li', { class: 'oil', id: `oil-${chain.id}`, tabindex: '-1' },
    h('p', {}, h('a', { href: `#/chain/${chain.id}` }, h('strong', {}, chain.chain)), ' ', place(chain), liftingMark(chain)),
    taskMark(task),
    task.due || task.done || !task.due_at ? null
      : h('span', { class: 'hint' }, t`due ${day(task.due_at, context.plant.plant.time_zone)}`),
    !task.done && !task.kept && [
      entryAt(chain) !== 'inspection' && h('span', { class: 'hint usual' }, usual(chain)),
      chain.oil_cautions.map(text => h('span', { class: 'hint oil-caution' }, text)), ways[entryAt(chain)](context, chain),
    ]);
}

// A pack of before the program was renewed does not tell it: then the form asks.
const entryAt = chain => chain.oil?.entry ?? 'form';

const ways = {
  tap: (context, chain) => decision(t`Lubricated`, () => record(context, chain),
    { class: 'button primary big', 'aria-label': t`Lubricated: ${chain.chain}` }),
  form: (_, chain) => linkButton(t`Record it`, `#/chain/${chain.id}/do?what=oiling`,
    { class: 'button big', 'aria-label': t`Record it: ${chain.chain}` }),
  inspection: (_, chain) => linkButton(t`Inspect`, `#/chain/${chain.id}/inspect`,
    { class: 'button big', 'aria-label': t`Inspect: ${chain.chain}` }),
};

function usual({ oil }) {
  if (!oil) return '';
  const method = methods.find(([key]) => key === oil.method)?.[1];
  return [method, oil.grade || t`lubricant not recorded`, oil.amount_ml && `${brief(oil.amount_ml, 2)}\u00a0ml`]
    .filter(Boolean).join(' · ');
}

async function record(context, chain) {
  const { method, grade, amount_ml: amountMl } = chain.oil;
  const form = {
    counter: '', take_up: '', note: '', oil_method: method, oil_grade: grade, oil_amount_ml: amountMl ? typed(amountMl) : '',
  };
  const by = (await signature()) || 'floor';
  const kept = await keepOrTell([entryOf('oiling', phrase`Lubricated`, { form, chain, by })], () => record(context, chain));
  if (!kept) return;
  offerUndo(kept, () => context.redraw({ stays: true }));
  await context.redraw({ stays: true });
  document.getElementById(`oil-${chain.id}`)?.focus({ preventScroll: true });
  await context.push();
}
