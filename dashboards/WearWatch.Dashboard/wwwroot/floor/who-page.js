// Who enters: the person who is signed in. Without signal another person can take the phone, by a PIN that was set on it or by a
// name alone: what is entered then waits until that person has signed in.
import { decision } from './decide.js';
import { h, linkButton } from './dom.js';
import { t } from './language.js';
import { guest, isSame, known, maker, sign, signature, takeOver, whose } from './maker.js';
import { holderList, pinDoor } from './pin-door.js';
import { holders } from './pin.js';
import { paintHead, signInAddress } from './shell.js';

export function whoPage({ redraw }) {
  const now = h('p', { class: 'who-now', role: 'status' });
  const byPin = h('div', { class: 'by-pin' });
  const name = h('input', { id: 'name', autocomplete: 'name', maxlength: 80, list: 'known' });
  const names = h('datalist', { id: 'known' });
  const taken = async () => {
    await paintHead();
    await redraw();
  };
  const take = decision(t`I enter now`, async () => {
    if (!name.value.trim()) return;
    // Who has a PIN here is not taken at a word.
    const holder = (await holders()).find(each => isSame(each.name, name.value));
    if (holder) return ask(holder);
    if ((await maker()).id === null) sign(name.value);
    else await takeOver({ name: name.value });
    await taken();
  }, { class: 'button primary big' });
  show();
  return [
    h('h1', { tabindex: '-1' }, t`Who enters?`), now, byPin,
    linkButton(t`Sign in`, signInAddress(), { class: 'button primary big' }),
    linkButton(t`Switch by PIN`, '/people/switch?back=/floor/', { class: 'button big' }),
    h('p', { class: 'hint' }, t`Both need signal. Without signal, say who enters: it waits until that person has signed in.`),
    h('div', { class: 'field' }, h('label', { for: 'name' }, t`Your name`), name, names), take,
    linkButton(t`PIN on this device`, '#/pin', { class: 'button big' }),
  ];

  async function show() {
    const [person, since, typed] = [await maker(), await guest(), await signature()];
    now.textContent = person.id === whose ? t`${person.name} enters, not signed in: it waits for the sign-in.`
      : since ? t`${person.name} enters by PIN: it waits for the sign-in.`
        : person.name ? t`${person.name} is signed in.` : typed ? t`${typed} enters.` : t`Nobody’s name is known.`;
    if (person.id === null) name.value = typed;
    names.replaceChildren(...(await known()).map(each => h('option', { value: each })));
    byPin.replaceChildren(holderList(await holders(), ask) || '');
  }

  function ask(holder) {
    const form = pinDoor(holder, taken, show);
    byPin.replaceChildren(form);
    form.scrollIntoView({ block: 'start' });
    form.querySelector('input').focus({ preventScroll: true });
  }
}
