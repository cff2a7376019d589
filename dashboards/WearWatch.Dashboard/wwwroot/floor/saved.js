// What a form tells is saved: kept on the phone first, said so, open to an undo for ten seconds, then sent; and what came of it.
import { h, linkButton } from './dom.js';
import { dropDraft, keepDraft } from './draft.js';
import { t } from './language.js';
import { keepOrTell } from './not-kept.js';
import { State } from './outbox.js';
import { dropEntries, entries, keepEntry } from './store.js';
import { nextStop } from './today.js';
import { offerUndo } from './undo.js';
import { chainHead } from './words.js';

/**
 * Saves what belongs together. What is told of it: words, and more below them; screen and form are what an undo brings back;
 * earlier is the entry that it puts right. Afterwards is told, once it was sent, with the panel and the entry.
 */
export async function save(context, all, how) {
  const kept = await keepOrTell(all, again => save(context, again, how));
  if (!kept) return;
  const { chain } = context;
  const { words, more = [], screen, form, earlier, afterwards } = how;
  dropDraft(chain, screen);
  if (earlier) await settle(earlier);
  const panel = keptPanel(context, words, more, await entries());
  offerUndo(kept, async () => {
    if (earlier) await keepEntry(earlier);
    keepDraft(chain, screen, form);
    if (panel.isConnected) await context.redraw();
  });
  const tell = async () => {
    const now = (await entries()).find(entry => entry.seq === kept[0].seq);
    if (now?.state === State.check) refused(panel, now);
    else if (now?.state === State.sent) await taken(panel, now, afterwards);
  };
  addEventListener('floor-sent', tell);
  context.onLeave(() => removeEventListener('floor-sent', tell));
  await context.push();
}

// What was put right needs no check any more: the server replaces a reading that it has; one that it refused it never had.
const settle = earlier => (earlier.readingId
  ? keepEntry({ ...earlier, state: State.sent, why: '' }) : dropEntries([earlier.seq]));

function keptPanel(context, words, more, all) {
  const { chain, plant } = context;
  const next = nextStop(plant, chain, all);
  const result = h('section', { class: 'saved', role: 'status' },
    h('p', {}, t`${words}. It is safe here, and is sent as soon as there is signal.`), more);
  const main = document.getElementById('content');
  main.replaceChildren(chainHead(chain, t`Kept on this phone`), result, h('div', { class: 'choices' },
    next && linkButton(t`Next: ${next.chain}`, `#/chain/${next.id}`, { class: 'button primary big' }),
    linkButton(t`Round`, '#/', { class: next ? 'button' : 'button primary big' }),
    linkButton(t`This chain`, `#/chain/${chain.id}`)));
  main.querySelector('h1').focus();
  return result;
}

function refused(panel, entry) {
  document.querySelector('#content h1').textContent = t`To be checked`;
  panel.classList.add('refused');
  panel.replaceChildren(h('p', {}, t(entry.why)), linkButton(t`Answer it`, '#/kept', { class: 'button primary' }));
}

async function taken(panel, entry, afterwards) {
  document.querySelector('#content h1').textContent = t`Sent`;
  await afterwards?.(panel, entry);
}
