// The pad for a PIN: keys that a glove meets, instead of the small ones that the screen would bring up.
const form = document.querySelector('.pin-form');
const field = form.querySelector('.pin');
const pad = form.querySelector('.pin-pad');
field.inputMode = 'none';
pad.hidden = false;
pad.addEventListener('click', event => {
  const key = event.target.closest('button');
  if (!key) return;
  if (key.dataset.digit === undefined) field.value = field.value.slice(0, -1);
  else if (field.value.length < field.maxLength) field.value += key.dataset.digit;
});
