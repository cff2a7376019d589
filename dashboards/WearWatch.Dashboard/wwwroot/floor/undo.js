// For ten seconds after each save it can be taken back, on whatever screen by then; only then is it sent. Each save has a line of
// its own, the newest on top, so that no line moves when another one's time is over.
import { h } from './dom.js';
import { decision, rest } from './decide.js';
import { t } from './language.js';
import { heldMs, undo, undoMs } from './outbox.js';

const place = () => document.getElementById('undo');

/** Offers to take back what was just kept; what follows an undo is done then. */
export function offerUndo(kept, undone) {
  const [first] = kept;
  const id = `undo-${first.group}`;
  const left = h('span', { class: 'left', 'aria-hidden': 'true' });
  const row = h('div', { class: 'undo' }, h('p', { id }, `${first.chain}: ${t(first.words)}`),
    decision(t`Undo`, async () => {
      clearInterval(clock);
      row.replaceChildren();
      const isUndone = await undo(first.group);
      row.replaceChildren(h('p', { role: 'status' }, isUndone ? t`Undone: nothing was kept.` : t`Too late: it was sent.`));
      row.classList.add('told');
      setTimeout(() => row.remove(), undoMs);
      if (isUndone) await undone();
    }, { class: 'button slim', 'aria-describedby': id }), left);
  for (const told of place().querySelectorAll('.told')) told.remove();
  // What stood there moves down: a second tap of the same finger must not fall on another's undo.
  for (const other of place().querySelectorAll('button')) rest(other);
  place().prepend(row);
  const tick = () => {
    const seconds = Math.ceil(heldMs(first) / 1000);
    left.textContent = `${seconds}`;
    if (seconds > 0) return;
    clearInterval(clock);
    row.remove();
  };
  const clock = setInterval(tick, 250);
  tick();
}
