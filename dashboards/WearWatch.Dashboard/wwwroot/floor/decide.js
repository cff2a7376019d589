// Buttons that keep, confirm or throw something away. A finger in a glove bounces, and the second tap falls on whatever stands
// there by then: such a button hears nothing for a moment after it appeared or acted, and acts once.
import { button } from './dom.js';

/** Milliseconds after which a second tap is meant: longer than a bounce of 400 ms. */
export const bounce = 700;

// A third tap is measured from the second: a tap on what rests lets it rest this much longer at least.
const again = 500;

const restUntil = new WeakMap();

/** Lets an element rest: it hears nothing for so long. */
export function rest(element, ms = bounce) {
  restUntil.set(element, performance.now() + ms);
  element.setAttribute('aria-disabled', 'true');
  setTimeout(() => {
    if (performance.now() >= restUntil.get(element) - 1) element.removeAttribute('aria-disabled');
  }, ms);
  return element;
}

/** What an element does, done once: not while it rests, not while it is being done, and not by the bounce after that. */
export const once = (element, act) => async (...told) => {
  const left = (restUntil.get(element) ?? 0) - performance.now();
  if (left > 0) {
    if (left < again) rest(element, again);
    return;
  }
  restUntil.set(element, Infinity);
  element.setAttribute('aria-disabled', 'true');
  try {
    await act(...told);
  } finally {
    rest(element);
  }
};

/** A button that decides. */
export function decision(text, act, { pause = bounce, ...more } = {}) {
  const made = button(text, event => decide(event), more);
  const decide = once(made, act);
  return rest(made, pause);
}
