// What is typed and not saved yet, by chain and screen: kept over back, reload and a killed page, for half a day.
import { keepValue, value } from './store.js';

const lasts = 12 * 3_600_000;
const nameOf = (chain, screen) => `${chain.id} ${screen}`;
let drafts = {};
let writing = Promise.resolve();

/** Reads what was typed before this page was loaded. */
export async function readDrafts() {
  drafts = (await value('drafts').catch(() => undefined)) ?? {};
}

/** What was typed; null for nothing, or for what is too old to be meant. */
export function draft(chain, screen) {
  const kept = drafts[nameOf(chain, screen)];
  return kept && Date.now() - kept.at < lasts ? structuredClone(kept.form) : null;
}

/** Keeps what is typed. */
export function keepDraft(chain, screen, form) {
  drafts[nameOf(chain, screen)] = { at: Date.now(), form: structuredClone(form) };
  write();
}

/** Forgets it, once it is saved. */
export function dropDraft(chain, screen) {
  delete drafts[nameOf(chain, screen)];
  write();
}

// One after the other; what cannot be written is still in the fields, and saving says so when the phone's memory is full.
function write() {
  const now = structuredClone(drafts);
  writing = writing.then(() => keepValue('drafts', now)).catch(() => {});
}
