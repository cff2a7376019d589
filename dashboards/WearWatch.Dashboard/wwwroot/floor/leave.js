// Somebody signed out on this device: what it knew of the plant and of that person leaves with them, what was half typed too.
// Entries that were not sent yet stay for their maker, who has to sign in to send or see them; the others' PINs stay for them.
import { dropPin } from './pin.js';
import { dropEntries, entries, keepValue, value } from './store.js';

const left = await value('maker');
for (const name of ['pack', 'maker', 'guest', 'drafts']) await keepValue(name, undefined);
await dropEntries((await entries()).filter(entry => entry.state === 'sent').map(entry => entry.seq));
if (left?.id) await dropPin(left.id);
// The company's provider too, where the session was begun there.
document.querySelector('[data-leave-next]')?.click();
