// For ten seconds after each save it can be taken back, on whatever screen by then; only then is it sent.
import { h } from './dom.js';
import { decision } from './decide.js';
import { t } from './language.js';
import { heldMs, undo } from './outbox.js';

const place = () => document.getElementById('undo');
let clock = 0;

/** Offers to take back what was just kept; what follows an undo is done then. */
export function offerUndo(kept, undone) {
  const [first] = kept;
  const left = h('span', { class: 'left', 'aria-hidden': 'true' });
  const bar = h('div', { class: 'undo' }, h('p', {}, `${first.chain}: ${t(first.words)}`),
    decision(t`Undo`, async () => {
      close(bar);
      const isUndone = await undo(first.group);
      place().replaceChildren(h('p', { role: 'status' }, isUndone ? t`Undone: nothing was kept.` : t`Too late: it was sent.`));
      if (isUndone) await undone();
    }, { class: 'button slim' }), left);
  clearInterval(clock);
  place().replaceChildren(bar);
  const tick = () => {
    const seconds = Math.ceil(heldMs(first) / 1000);
    left.textContent = `${seconds}`;
    if (seconds === 0) close(bar);
  };
  tick();
  clock = setInterval(tick, 250);
}

function close(bar) {
  if (!bar.isConnected) return;
  clearInterval(clock);
  place().replaceChildren();
}
