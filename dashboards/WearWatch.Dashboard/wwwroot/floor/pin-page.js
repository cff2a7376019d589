// A person's own PIN on this device: set with signal by whoever is signed in, taken off by whoever enters.
import { decision } from './decide.js';
import { h, linkButton } from './dom.js';
import { t } from './language.js';
import { whoIsHere, whose } from './maker.js';
import { pinField, pinKeys } from './pin-pad.js';
import { dropPin, faultOf, holders, setPin } from './pin.js';
import { signInAddress } from './shell.js';

export function pinPage({ me, redraw }) {
  const isPerson = me.id !== null && me.id !== whose;
  const off = h('div', {});
  if (isPerson) showOff();
  return [
    h('h1', { tabindex: '-1' }, t`PIN on this device`),
    h('p', {}, t`For a device that several people use: without signal you tap your name and type it.`, ' ',
      t`What you enter then waits for your sign-in.`),
    h('p', { class: 'hint' }, t`Take digits that you use nowhere else: whoever takes this device apart can find them out.`),
    isPerson ? settingForm(me) : [
      h('p', {}, t`A PIN is for people who sign in.`),
      linkButton(t`Sign in`, signInAddress(), { class: 'button primary big' }),
    ],
    off,
  ];

  async function showOff() {
    if (!(await holders()).some(each => each.id === me.id)) return;
    off.replaceChildren(h('h2', {}, t`Leave this device`),
      decision(t`Remove my PIN`, () => dropPin(me.id).then(() => redraw()), { class: 'button big' }));
  }
}

function settingForm(me) {
  const chosen = pinField('new-pin', t`New PIN`);
  const again = pinField('same-pin', t`The same again`);
  const told = h('p', { role: 'status' });
  const set = decision(t`Set the PIN`, async () => {
    const wrong = faultOf(chosen.input.value);
    const differs = wrong === null && chosen.input.value !== again.input.value;
    chosen.fault(wrong === null ? '' : t(wrong));
    again.fault(differs ? t`The two PINs differ.` : '');
    told.replaceChildren();
    if (wrong !== null || differs) return;
    // Only whom the server knows at this moment has a name to give: the digits are nobody's proof by themselves.
    const here = await whoIsHere();
    if (here.stop || here.id !== me.id) {
      told.replaceChildren(t`To set it, be signed in yourself, with signal.`, ' ',
        linkButton(t`Sign in`, signInAddress(), { class: 'button slim' }));
      return;
    }

    await setPin(here, chosen.input.value);
    form.replaceChildren(h('p', { role: 'status' }, t`The PIN is set on this device.`),
      linkButton(t`Who enters?`, '#/who', { class: 'button big' }));
  }, { class: 'button primary big' });
  const submit = event => {
    event.preventDefault();
    set.click();
  };
  const form = h('form', { class: 'pin-door', autocomplete: 'off', onsubmit: submit },
    chosen.whole, again.whole, pinKeys([chosen.input, again.input]), set, told);
  return form;
}
