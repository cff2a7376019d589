// The number pad: keys for a glove, under the fields, in place of the phone's keyboard. A real keyboard works all the same.
import { button, h } from './dom.js';
import { language, t } from './language.js';

const rows = ['123', '456', '789', `${language.decimal_sign}0`];
const names = { ' ': t`space`, '/': t`fraction stroke`, '.': t`decimal point`, ',': t`decimal comma` };
const labels = { ' ': '␣', '/': '∕' };

/** A pad for the marked inputs of a form; those marked for fractions get the keys of an inch rule too. */
export function pad(root) {
  let input = null;
  const keys = h('div', { class: 'pad', role: 'group', 'aria-label': t`Number pad`, hidden: true });

  const type = text => {
    const [from, to] = [input.selectionStart ?? input.value.length, input.selectionEnd ?? input.value.length];
    input.setRangeText(text, from, to, 'end');
    input.dispatchEvent(new Event('input', { bubbles: true }));
  };
  const back = () => {
    const at = input.selectionStart;
    if (at === input.selectionEnd && at > 0) input.setSelectionRange(at - 1, at);
    type('');
  };
  const next = () => {
    const all = [...root.querySelectorAll('input[data-pad]')].filter(each => each.offsetParent);
    // What stands there already, such as the number of pitches, is seldom changed.
    const following = all.slice(all.indexOf(input) + 1).find(each => !each.value);
    if (following) {
      following.focus();
      return;
    }

    input.blur();
    keys.hidden = true;
  };
  const key = (text, act, name, more = '') => button(labels[text] ?? text, act, {
    class: `button key ${more}`, 'aria-label': name ?? names[text] ?? text, tabindex: '-1',
    onpointerdown: event => event.preventDefault(),
  });

  const show = () => {
    const fractions = input.dataset.pad === 'fractions';
    const beside = [
      key('⌫', back, t`Delete one`), fractions && key(' ', () => type(' ')), fractions && key('/', () => type('/')),
      key(t`Next`, next, t`Next field`, fractions ? 'next' : 'next tall'),
    ];
    const digits = rows.map(row => [...row].map(text => key(text, () => type(text))));
    keys.replaceChildren(...digits.flatMap((row, i) => [...row, beside[i]]).filter(Boolean));
    keys.hidden = false;
  };
  root.addEventListener('focusin', event => {
    // It stays for buttons, or they would move away from under the finger; a field of text brings the phone's own keys.
    if (!event.target.matches('input[data-pad]')) {
      if (event.target.matches('input:not([type=radio], [type=checkbox]), select')) keys.hidden = true;
      return;
    }

    input = event.target;
    show();
    // The keys cover the lower half: the field goes to the top of what is left.
    input.closest('.field').scrollIntoView({ block: 'start' });
  });
  return keys;
}

/** Whether the phone's own keyboard stays away: where a finger types. */
export const padMode = matchMedia('(pointer: coarse)').matches ? 'none' : 'decimal';
