// Today's round, line by line in walking order: what is due at each stop and why, what is done, who has it.
import { now } from './clock.js';
import { decision } from './decide.js';
import { h } from './dom.js';
import { isoDay, whole } from './figures.js';
import { t } from './language.js';
import { maker, signature } from './maker.js';
import { keepOrTell } from './not-kept.js';
import { counted, phrase } from './phrase.js';
import { checkList, taskMark } from './tasks.js';
import { dueToday, whoHas } from './today.js';
import { offerUndo } from './undo.js';
import { conditionMark, liftingMark } from './words.js';

export function roundPage(context) {
  const { plant, entries } = context;
  const stops = plant.chains
    .map(chain => ({ chain, tasks: dueToday(plant, chain, entries).filter(task => task.due || task.done || task.kept) }))
    .filter(stop => stop.tasks.length > 0);
  const lines = [...Map.groupBy(stops, stop => stop.chain.line)];
  return [
    h('h1', { tabindex: '-1' }, t`Today’s round`),
    checkList(entries),
    lines.length === 0 && h('p', {}, t`Nothing is due today.`),
    lines.map(([line, there]) => lineRound(context, line, there)),
  ];
}

function lineRound(context, line, stops) {
  const tasks = stops.flatMap(stop => stop.tasks);
  const all = whole(tasks.length);
  const done = tasks.filter(task => task.done).length;
  const kept = tasks.filter(task => task.kept && !task.done).length;
  const heading = h('h2', {}, line || t`Without a line`);
  return h('section', { class: 'line' },
    heading,
    h('div', { class: 'progress' },
      h('progress', { max: tasks.length, value: done, 'aria-label': t`Done on ${line || t`Without a line`}` }),
      h('span', {}, counted(tasks.length, t`${done} of ${all} task done`, t`${done} of ${all} tasks done`)),
      kept > 0 && h('span', {}, t`${kept} not sent yet`)),
    hand(context, line),
    h('ul', { class: 'picks' }, stops.map(stop)));
}

const stop = ({ chain, tasks }) => h('li', {}, h('a', { class: 'pick', href: `#/chain/${chain.id}` },
  conditionMark(chain.condition),
  h('span', {}, h('strong', {}, chain.chain), ' ', chain.position, liftingMark(chain),
    tasks.map(taskMark))));

// Taking a round is an entry like any other, so that it works without signal too.
function hand(context, line) {
  const { plant, entries } = context;
  const person = whoHas(plant, entries, line);
  const tell = async givesBack => {
    const by = (await maker()).name || (await signature()) || 'floor';
    const told = {
      kind: 'hand', path: '/api/v1/floor/rounds', line, chain: line, words: givesBack ? phrase`given back` : phrase`taken`,
      body: { line, day: isoDay(now(), plant.plant.time_zone), gives_back: givesBack, by },
    };
    const kept = await keepOrTell([told], () => tell(givesBack));
    if (!kept) return;
    offerUndo(kept, () => context.redraw({ stays: true }));
    await context.redraw({ stays: true });
    await context.push();
  };
  return h('div', { class: 'choices hand' }, h('p', {}, person ? t`Taken by ${person}.` : t`Nobody has taken it.`),
    person ? decision(t`Give it back`, () => tell(true)) : decision(t`I take it`, () => tell(false)));
}
