// What is due today and what is done: by the pack, and by what was entered on this phone since the pack was fetched. Done is what
// the server has taken today; what only this phone has is told apart, and what was refused or is doubted is not done.
import { now } from './clock.js';
import { isoDay } from './figures.js';
import { State } from './outbox.js';

// The links of a chain are measured, too.
const does = { links: 'measure' };

/** What of a chain is due: each task with due, done (accepted today) and kept (entered today, not sent yet). */
export function dueToday(plant, chain, entries) {
  const zone = plant.plant.time_zone;
  const today = isoDay(now(), zone);
  const mine = entries.filter(entry => entry.chainId === chain.id && isoDay(entry.body?.taken_at ?? entry.at, zone) === today);
  return chain.tasks.map(task => {
    const told = mine.filter(entry => (does[entry.kind] ?? entry.kind) === task.task);
    const taken = told.some(entry => entry.state === State.sent && isNewerThanPack(entry, plant));
    return {
      ...task,
      due: task.due_at !== null && isoDay(task.due_at, zone) <= today,
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

/** What is to be checked by a person, newest first: refused, or doubted by the server. */
export const toCheck = entries => entries.filter(entry => entry.state === State.check).toReversed();

// The pack tells of all that the server had taken before it was made, and of what was withdrawn since.
const isNewerThanPack = (entry, plant) => !(Date.parse(entry.sentAt) < Date.parse(plant.fetched_at));
