// The pack: what the phone has to know of the plant to work without signal. Fetched whenever it can be, kept until the next.
import { keepValue, value } from './store.js';
import { isoDay } from './figures.js';

const fresh = 60_000;
let pack;

/** The pack; fetched when the kept one is older than a minute, else the kept one; undefined when there never was one. */
export async function loadPack({ anew = false } = {}) {
  pack ??= await value('pack');
  if (!anew && pack && Date.now() - Date.parse(pack.fetched_at) < fresh) return pack;
  try {
    const response = await fetch('/api/v1/floor/pack', { credentials: 'same-origin', redirect: 'error' });
    if (response.ok) {
      pack = { ...(await response.json()), fetched_at: new Date().toISOString() };
      await keepValue('pack', pack);
    }
  } catch {
    // No signal: the kept pack serves.
  }

  return pack;
}

/** The chain of an id, with what the pack tells of its kind. */
export function chainOf(plant, id) {
  const chain = plant?.chains.find(c => c.id === Number(id));
  return chain && { ...chain, kind: plant.kinds[chain.family] };
}

/** What of a chain is due today, by the pack and by what was done since on this phone. */
export function dueToday(plant, chain, entries) {
  const today = isoDay(Date.now(), plant.plant.time_zone);
  return chain.tasks.map(task => ({
    ...task,
    due: task.due_at !== null && isoDay(task.due_at, plant.plant.time_zone) <= today,
    done: task.done_today || entries.some(entry => entry.chainId === chain.id && entry.kind === task.task),
  }));
}
