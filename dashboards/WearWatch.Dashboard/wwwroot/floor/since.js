// A chain as it is by now: as the pack tells it, and by what was told on this phone since. After a replacement the readings of
// the earlier chain say nothing of the new one; after another counter the earlier counts do not.
import { State } from './outbox.js';

/** The chain with what this phone has told of it since its pack was fetched. */
export function chainNow({ plant, entries }, chain) {
  const told = entries.filter(entry => entry.chainId === chain.id && isSince(entry, plant) && entry.body);
  return told.reduce((now, { body }) => after(now, body), chain);
}

const isSince = (entry, plant) => entry.state === State.kept
  || entry.state === State.sent && !(Date.parse(entry.sentAt) < Date.parse(plant.fetched_at));

function after(chain, body) {
  const counter = body.counter_h_after ?? body.counter_h ?? body.counter_h_before ?? null;
  if (body.event === 'replacement') {
    return { ...chain, last: null, expected: null, last_counter_h: counter, fitted_at: body.taken_at };
  }

  if (body.event === 'meter_reset') return { ...chain, last_counter_h: counter };
  return counter === null || counter < (chain.last_counter_h ?? 0) ? chain : { ...chain, last_counter_h: counter };
}
