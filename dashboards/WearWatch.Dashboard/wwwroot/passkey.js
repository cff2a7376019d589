// Passkeys: the server asks, the browser has the device make or use one, and the form carries the answer
// (W3C Web Authentication).
// An address that is a number can have none.
const isNumber = /^[\d.]+$|:/.test(location.hostname);
const can = isSecureContext && !isNumber && !!window.PublicKeyCredential?.parseCreationOptionsFromJSON;
for (const part of document.querySelectorAll('[data-passkeys]')) part.hidden = (part.dataset.passkeys === 'can') !== can;

async function questionFor(form, button) {
  const answer = await fetch(button.dataset.passkey, { method: 'POST', body: new FormData(form) });
  if (!answer.headers.get('content-type')?.includes('json')) {
    throw new Error('The server did not take this. Load the page anew, or try again in a minute.');
  }
  const told = await answer.json();
  if (!answer.ok) throw new Error(told.detail);
  return told;
}

function inWords(error) {
  if (error.name === 'NotAllowedError') {
    return 'The device gave no passkey: it was not unlocked, has none for here, or time was up. '
      + 'Try again, or use the password.';
  }
  if (error.name === 'InvalidStateError') return 'This device has a passkey of yours for here already.';
  return error.message;
}

async function answer(form, button) {
  const question = await questionFor(form, button);
  const credentials = navigator.credentials;
  return question.user
    ? credentials.create({ publicKey: PublicKeyCredential.parseCreationOptionsFromJSON(question) })
    : credentials.get({ publicKey: PublicKeyCredential.parseRequestOptionsFromJSON(question) });
}

for (const button of document.querySelectorAll('[data-passkey]')) {
  const form = button.form;
  const line = form.querySelector('[data-passkey-told]');
  form.addEventListener('submit', async event => {
    if (event.submitter !== button) return;
    event.preventDefault();
    line.hidden = true;
    button.disabled = true; // a second tap would end what the first began
    try {
      form.elements['Form.Answer'].value = JSON.stringify(await answer(form, button));
      form.submit();
    } catch (error) {
      line.textContent = inWords(error);
      line.hidden = false;
      button.disabled = false;
    }
  });
}
