// What is due today and what is done: by the pack, and by what was entered on this phone since the pack was fetched. Done is what
// the server has taken today; what only this phone has is told apart, and what was refused or is doubted is not done.
import { now } from './clock.js';
import { isoDay } from './figures.js';
import { State } from './outbox.js';

const weekMs = 7 * 86_400_000;

// The links of a chain are measured, too; who inspects a chain with a lubricator sees to the lubricator.
const does = (entry, task, chain) => entry.kind === task || task === 'measure' && entry.kind === 'links'
  || task === 'lubricate' && entry.kind === 'inspect' && chain.oil?.entry === 'inspection';

/**
 * What of a chain is due: each task with due (today or before), soon (within a week), done (accepted today) and kept (entered
 * today, not sent yet).
 */
export function dueToday(plant, chain, entries) {
  const zone = plant.plant.time_zone;
  const today = isoDay(now(), zone);
  const mine = entries.filter(entry => entry.chainId === chain.id && isoDay(entry.body?.taken_at ?? entry.at, zone) === today);
  return chain.tasks.map(task => {
    const told = mine.filter(entry => does(entry, task.task, chain));
    const taken = told.some(entry => entry.state === State.sent && isNewerThanPack(entry, plant));
    return {
      ...task,
      due: task.due_at !== null && isoDay(task.due_at, zone) <= today,
      soon: task.due_at !== null && Date.parse(task.due_at) < now() + weekMs,
      done: task.done_today && isoDay(plant.made_at, zone) === today || taken,
      kept: told.some(entry => entry.state === State.kept),
    };
  });
}

/** The next chain along the route, from one on, at which something is due that nobody has done; undefined for none. */
export function nextStop(plant, from, entries) {
  const at = plant.chains.findIndex(chain => chain.id === from.id);
  const route = [...plant.chains.slice(at + 1), ...plant.chains.slice(0, Math.max(0, at))];
  return route.find(chain => dueToday(plant, chain, entries).some(task => task.due && !task.done && !task.kept));
}

/** Who has the round of a line: by the pack, and by what was entered here and not sent yet; nothing for nobody. */
export function whoHas(plant, entries, line) {
  const mine = entries.filter(entry => entry.kind === 'hand' && entry.line === line && entry.state === State.kept).at(-1);
  return mine ? (mine.body.gives_back ? null : mine.body.by) : plant.hands[line];
}

/** What is to be checked by a person, newest first: refused, or doubted by the server. */
export const toCheck = entries => entries.filter(entry => entry.state === State.check).toReversed();

// The pack tells of all that the server had taken before it was made, and of what was withdrawn since.
const isNewerThanPack = (entry, plant) => !(Date.parse(entry.sentAt) < Date.parse(plant.fetched_at));
