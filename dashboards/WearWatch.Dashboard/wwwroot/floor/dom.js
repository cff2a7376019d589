// Makes elements. No markup is ever parsed from text, so that no name of a chain can become code.
import { understood } from './figures.js';
import { t } from './language.js';

const svgSpace = 'http://www.w3.org/2000/svg';

/** An element with its attributes (on... are listeners, true and false switch, null leaves out) and its children. */
export const h = (tag, attributes = {}, ...children) => fill(document.createElement(tag), attributes, children);

/** The same for drawings. */
export const s = (tag, attributes = {}, ...children) => fill(document.createElementNS(svgSpace, tag), attributes, children);

function fill(element, attributes, children) {
  for (const [name, given] of Object.entries(attributes)) {
    if (name.startsWith('on')) element.addEventListener(name.slice(2), given);
    else if (name === 'value') element.value = given;
    else if (given === true) element.setAttribute(name, '');
    else if (given !== false && given !== null && given !== undefined) element.setAttribute(name, given);
  }

  element.append(...children.flat(Infinity).filter(child => child !== null && child !== undefined && child !== false));
  return element;
}

/** A button; large enough for a glove. */
export const button = (text, onclick, more = {}) => h('button', { type: 'button', class: 'button', onclick, ...more }, text);

/** A link that looks like a button. */
export const linkButton = (text, href, more = {}) => h('a', { class: 'button', href, ...more }, text);

/** A set of choices of which one holds. */
export const segments = (legend, name, choices, chosen, onchange) => h('fieldset', { class: 'field' },
  h('legend', {}, legend),
  h('div', { class: 'segments' }, choices.map(([key, label]) => h('label', {},
    h('input', { type: 'radio', name, checked: key === chosen, onchange: () => onchange(key) }), h('span', {}, label)))));

/** A field with its name, unit, hint and fault. A fault is read out as soon as it appears, and how a number was understood. */
export function field(name, input, { unit = '', hint = '', id = input.id } = {}) {
  const fault = h('p', { class: 'fault', id: `${id}-fault`, role: 'alert' });
  const note = h('p', { class: 'hint', id: `${id}-hint` }, hint);
  const read = h('p', { class: 'hint', role: 'status' });
  if (input.matches('[data-pad=plain], [inputmode=decimal]'))
    input.addEventListener('input', () => read.replaceChildren(understood(input.value)));
  input.setAttribute('aria-describedby', `${id}-hint ${id}-fault`);
  const label = h('label', { for: id }, name, unit && h('span', { class: 'unit' }, ` ${unit}`));
  return {
    whole: h('div', { class: 'field' }, label, input, note, read, fault),
    hint: text => note.replaceChildren(text),
    fault: text => {
      if (fault.textContent !== (text ?? '')) fault.replaceChildren(text ?? '');
      input.setAttribute('aria-invalid', text ? 'true' : 'false');
    },
  };
}

/** The cautions before a hand goes near a chain. */
export const caution = texts => h('aside', { class: 'caution', 'aria-label': t`Caution` },
  h('span', { class: 'sign', 'aria-hidden': 'true' }, '!'), h('div', {}, texts.map(text => h('p', {}, text))));
