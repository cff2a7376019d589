// Today's round, line by line in walking order: what is due at each stop and why, what is done, who has it.
import { button, h } from './dom.js';
import { count, isoDay } from './figures.js';
import { maker, signature } from './maker.js';
import { keep, State } from './outbox.js';
import { dueToday } from './pack.js';
import { conditionMark, liftingMark } from './words.js';

const verbs = { measure: 'measure', lubricate: 'lubricate', inspect: 'inspect' };

export function roundPage(context) {
  const { plant, entries } = context;
  const stops = plant.chains
    .map(chain => ({ chain, tasks: dueToday(plant, chain, entries).filter(task => task.due || task.done) }))
    .filter(stop => stop.tasks.length > 0);
  const lines = [...Map.groupBy(stops, stop => stop.chain.line)];
  return [
    h('h1', { tabindex: '-1' }, 'Today’s round'),
    lines.length === 0 && h('p', {}, 'Nothing is due today.'),
    lines.map(([line, there]) => lineRound(context, line, there)),
  ];
}

function lineRound(context, line, stops) {
  const tasks = stops.flatMap(stop => stop.tasks);
  const done = tasks.filter(task => task.done).length;
  const heading = h('h2', {}, line || 'Without a line');
  return h('section', { class: 'line' },
    heading,
    h('div', { class: 'progress' },
      h('progress', { max: tasks.length, value: done, 'aria-label': `Done on ${line}` }),
      h('span', {}, `${done} of ${count(tasks.length, 'task')} done`)),
    hand(context, line),
    h('ul', { class: 'picks' }, stops.map(stop)));
}

const stop = ({ chain, tasks }) => h('li', {}, h('a', { class: 'pick', href: `#/chain/${chain.id}` },
  conditionMark(chain.condition),
  h('span', {}, h('strong', {}, chain.chain), ' ', chain.position, liftingMark(chain),
    tasks.map(mark))));

const mark = task => h('span', { class: `hint task ${task.done ? 'done' : ''}` },
  h('span', { 'aria-hidden': 'true' }, task.done ? '✓ ' : '○ '),
  `${verbs[task.task]}${task.done ? ', done' : `: ${task.why}`}`);

// Taking a round is an entry like any other, so that it works without signal too.
function hand(context, line) {
  const { plant, entries } = context;
  const mine = entries.filter(entry => entry.kind === 'hand' && entry.line === line && entry.state === State.kept).at(-1);
  const person = mine ? (mine.body.gives_back ? null : mine.by) : plant.hands[line];
  const tell = async givesBack => {
    const by = (await maker()).name || (await signature()) || 'floor';
    await keep({
      kind: 'hand', path: '/api/v1/floor/rounds', line, chain: line, words: givesBack ? 'given back' : 'taken',
      body: { line, day: isoDay(Date.now(), plant.plant.time_zone), gives_back: givesBack, by },
    });
    await context.push();
    context.redraw();
  };
  return h('div', { class: 'choices hand' }, h('p', {}, person ? `Taken by ${person}.` : 'Nobody has taken it.'),
    person ? button('Give it back', () => tell(true)) : button('I take it', () => tell(false)));
}
