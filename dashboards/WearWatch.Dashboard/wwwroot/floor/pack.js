// The pack: what the phone has to know of the plant to work without signal. Screens take the kept one; another is fetched behind
// them whenever it can be.
import { nowIso } from './clock.js';
import { language } from './language.js';
import { ask, limit } from './net.js';
import { keepValue, value } from './store.js';

const fresh = 60_000;
let pack;
let fetching;

/** The pack that is kept; undefined when there never was one. */
export async function keptPack() {
  return pack ??= await value('pack');
}

/**
 * Fetches another pack when the kept one is older than a minute or in another language: whether one came. Where nothing has
 * changed, only that is sent, and the kept one is as of now. One request serves all who ask meanwhile.
 */
export async function renewPack({ anew = false } = {}) {
  const kept = await keptPack();
  const age = Date.now() - Date.parse(kept?.fetched_at);
  if (!anew && kept?.language === language.code && age >= 0 && age < fresh) return false;
  return await (fetching ??= fetchPack().finally(() => { fetching = undefined; }));
}

async function fetchPack() {
  const kept = await keptPack();
  const has = kept?.tag && kept.language === language.code;
  const answer = await ask('/api/v1/floor/pack', { ms: limit.pack, headers: has ? { 'If-None-Match': kept.tag } : {} });
  const isSame = answer?.status === 304;
  if (!isSame && !(answer?.ok && answer.body?.chains)) return false;
  const told = isSame ? { ...kept, made_at: nowIso() } : { ...answer.body, tag: answer.tag };
  pack = { ...told, fetched_at: new Date().toISOString(), language: language.code };
  await keepValue('pack', pack);
  return !isSame;
}

/** The pack, a new one where it is due and there is signal. */
export async function loadPack(asked) {
  await renewPack(asked);
  return keptPack();
}

/** The chain of an id, with what the pack tells of its kind. */
export function chainOf(plant, id) {
  const chain = plant?.chains.find(c => c.id === Number(id));
  return chain && { ...chain, kind: plant.kinds[chain.family] };
}
