// A reading is saved: kept on the phone first, then sent; and what came of it is told.
import { h, linkButton } from './dom.js';
import { day, percent } from './figures.js';
import { signature } from './maker.js';
import { bodyOf } from './measure-form.js';
import { keep, State } from './outbox.js';
import { loadPack } from './pack.js';
import { dropEntry, entries, keepEntry } from './store.js';
import { keptPanel, moveWords } from './words.js';

/** Keeps a reading, says so, sends it and says what came of it. */
export async function keepReading({ chain, plant, push }, { form, read, earlier, doubted, confirmed }) {
  const words = `${percent(read.gauged.percent)} over ${read.pitches} pitches${doubted ? ', doubted' : ''}`;
  const entry = await keep({
    kind: 'measure', chain: chain.chain, chainId: chain.id, words, form,
    path: earlier?.readingId ? `/api/v1/readings/${earlier.readingId}/corrections` : '/api/v1/readings',
    body: bodyOf(form, chain, read, await signature(), confirmed),
  });
  if (earlier) await settle(earlier);
  const result = keptPanel(chain, words);
  await push();
  await tell(result, entry, chain, plant);
}

// What was put right needs no check any more: the server replaces a reading that it has; one that it refused it never had.
const settle = earlier => (earlier.readingId ? keepEntry({ ...earlier, state: State.sent, why: '' }) : dropEntry(earlier.seq));

async function tell(result, { seq }, chain, plant) {
  const now = (await entries()).find(entry => entry.seq === seq);
  const title = document.querySelector('#content h1');
  if (now?.state === State.check) {
    title.textContent = 'To be checked';
    result.replaceChildren(h('p', {}, now.why), linkButton('Answer it', '#/kept', { class: 'button primary' }));
  } else if (now?.state === State.sent) {
    const after = (await loadPack())?.chains.find(each => each.id === chain.id);
    const inPlant = at => day(at, plant.plant.time_zone);
    title.textContent = 'Sent';
    result.replaceChildren(h('p', {}, now.words), h('p', {}, moveWords(chain.early_date, after?.early_date, inPlant)));
  }
}
