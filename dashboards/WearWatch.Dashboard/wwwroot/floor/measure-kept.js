// A reading on its way: what is kept of it, and what came of it once it was sent.
import { h } from './dom.js';
import { day } from './figures.js';
import { t } from './language.js';
import { signature } from './maker.js';
import { bodyOf } from './measure-form.js';
import { keptPack } from './pack.js';
import { phrase } from './phrase.js';
import { save } from './saved.js';
import { moveWords } from './words.js';

/** Keeps a reading, says so, sends it and says what came of it. */
export async function keepReading(context, { form, read, earlier, doubted, confirmed }) {
  const { chain, plant } = context;
  const { percent } = read.gauged;
  const words = doubted ? phrase`${{ percent }} over ${read.pitches} pitches, doubted`
    : phrase`${{ percent }} over ${read.pitches} pitches`;
  const reading = {
    kind: 'measure', chain: chain.chain, chainId: chain.id, words, form,
    path: earlier?.readingId ? `/api/v1/readings/${earlier.readingId}/corrections` : '/api/v1/readings',
    body: bodyOf(form, chain, read, await signature(), confirmed),
  };
  await save(context, [reading], { words, screen: 'measure', form, earlier, afterwards: (panel, entry) => tell(panel, entry) });

  async function tell(panel, entry) {
    const after = (await keptPack())?.chains.find(each => each.id === chain.id);
    const inPlant = at => day(at, plant.plant.time_zone);
    panel.replaceChildren(h('p', {}, t(entry.words)), h('p', {}, moveWords(chain.early_date, after?.early_date, inPlant)));
  }
}
