// Where a PIN is typed: dots in the field, and keys that a glove meets in place of the phone's own.
import { button, field, h } from './dom.js';
import { t } from './language.js';
import { longest } from './pin.js';

const digits = '1234567890';

/** A field for a PIN. It is no password field: a browser would offer to keep it, on a device that several people use. */
export const pinField = (id, name, hint) => {
  const input = h('input', {
    id, class: 'pin', autocomplete: 'off', maxlength: longest,
    inputmode: matchMedia('(pointer: coarse)').matches ? 'none' : 'numeric',
  });
  return { input, ...field(name, input, { hint }) };
};

/** The keys of the fields of a form: they type into the one that was touched last. */
export function pinKeys(inputs) {
  let [into] = inputs;
  for (const input of inputs) input.addEventListener('focus', () => { into = input; });
  const type = change => {
    into.value = change(into.value).slice(0, longest);
    into.focus();
  };
  const key = (text, name, change) => button(text, () => type(change), { class: 'button key', 'aria-label': name });
  return h('div', { class: 'pin-keys', role: 'group', 'aria-label': t`Number pad` },
    [...digits].map(digit => key(digit, digit, value => value + digit)), key('⌫', t`Delete one`, value => value.slice(0, -1)));
}
