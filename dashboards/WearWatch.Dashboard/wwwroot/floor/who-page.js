// Who enters: the person who is signed in. Without signal another person can take the phone: what is entered then waits, marked
// with that name, until that person has signed in.
import { decision } from './decide.js';
import { h, linkButton } from './dom.js';
import { t } from './language.js';
import { known, maker, sign, signature, takeOver, whose } from './maker.js';
import { paintHead, signInAddress } from './shell.js';

export function whoPage({ redraw }) {
  const now = h('p', { class: 'who-now', role: 'status' });
  const name = h('input', { id: 'name', autocomplete: 'name', maxlength: 80 });
  const label = h('label', { for: 'name' });
  const names = h('datalist', { id: 'known' });
  const take = decision(t`I enter now`, async () => {
    if (!name.value.trim()) return;
    const person = await maker();
    if (person.id === null) sign(name.value);
    else await takeOver(name.value);
    await paintHead();
    await redraw();
  }, { class: 'button primary big' });
  name.setAttribute('list', 'known');
  show();
  return [
    h('h1', { tabindex: '-1' }, t`Who enters?`), now,
    linkButton(t`Sign in`, signInAddress(), { class: 'button primary big' }),
    linkButton(t`Switch by PIN`, '/people/switch?back=/floor/', { class: 'button big' }),
    h('p', { class: 'hint' }, t`Both need signal. Without signal, say who enters: it waits until that person has signed in.`),
    h('div', { class: 'field' }, label, name, names), take,
  ];

  async function show() {
    const person = await maker();
    const typed = await signature();
    const words = person.id === whose ? t`${person.name} enters, not signed in: it waits for the sign-in.`
      : person.name ? t`${person.name} is signed in.` : typed ? t`${typed} enters.` : t`Nobody’s name is known.`;
    now.textContent = words;
    label.textContent = t`Your name`;
    if (person.id === null) name.value = typed;
    names.replaceChildren(...(await known()).map(each => h('option', { value: each })));
  }
}
