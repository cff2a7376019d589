// A person of this device says who enters now by a PIN, with signal or without.
import { decision } from './decide.js';
import { button, h } from './dom.js';
import { t } from './language.js';
import { takeOver } from './maker.js';
import { pinField, pinKeys } from './pin-pad.js';
import { tryPin } from './pin.js';

/** Who has a PIN here, to choose from. */
export const holderList = (all, choose) => all.length > 0 && h('section', {},
  h('h2', {}, t`Take over by PIN`),
  h('ul', { class: 'picks' },
    all.map(holder => h('li', {}, button(holder.name, () => choose(holder), { class: 'button big' })))));

/** Asks for the PIN of the one who was chosen; what follows a right one is done then, as is what goes back to the names. */
export function pinDoor(holder, done, back) {
  const { input, whole, fault } = pinField('pin', t`PIN`);
  const goOn = decision(t`Go on`, async () => {
    const { person, left, waitMs, isEarly } = await tryPin(holder.id, input.value);
    input.value = '';
    if (person) {
      await takeOver(person);
      await done();
    } else if (left > 0) {
      fault([!isEarly && t`Wrong PIN. Tries left: ${left}.`, waitMs > 0 && t`Wait ${Math.ceil(waitMs / 1000)} s.`]
        .filter(Boolean).join(' '));
      input.focus();
    } else {
      form.replaceChildren(title, h('p', { role: 'alert' }, t`Too many wrong PINs. Sign in with signal, then set a new one.`),
        elsewhere);
    }
  }, { class: 'button primary big' });
  const title = h('h2', {}, holder.name);
  const elsewhere = button(t`Somebody else`, back, { class: 'button big' });
  const submit = event => {
    event.preventDefault();
    goOn.click();
  };
  const form = h('form', { class: 'pin-door', autocomplete: 'off', onsubmit: submit },
    title, whole, pinKeys([input]), goOn, elsewhere);
  return form;
}
