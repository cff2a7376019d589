// When the phone's memory is full, blocked or gone: it says so in red, with all that is to be written down on paper.
import { h, linkButton } from './dom.js';
import { decision } from './decide.js';
import { moment } from './figures.js';
import { t } from './language.js';
import { keepAll } from './outbox.js';
import { freeBytes } from './store.js';

/** Keeps entries; when that fails it says so, and answers null. What a hand has typed stays where it is. */
export async function keepOrTell(all, retry) {
  try {
    return await keepAll(all);
  } catch (error) {
    console.warn(error);
    const free = await freeBytes();
    const photos = all.filter(entry => entry.bytes);
    const panel = h('section', { class: 'not-kept', role: 'alert', tabindex: '-1' },
      h('h2', {}, t`NOT kept: write it down`),
      h('p', {}, free !== null && free < 5_000_000
        ? t`The phone’s memory is full.` : t`The phone’s memory cannot be written.`),
      all.filter(entry => !entry.bytes).map(entry => h('dl', { class: 'facts' }, valuesOf(entry.body))),
      h('div', { class: 'choices' },
        decision(t`Try again`, () => { panel.remove(); return retry(all); }, { class: 'button primary' }),
        photos.length > 0 && photos.length < all.length && decision(t`Keep it without photos`, () => {
          panel.remove();
          return retry(all.filter(entry => !entry.bytes));
        })));
    document.querySelector('.not-kept')?.remove();
    document.getElementById('content').prepend(panel);
    panel.scrollIntoView({ block: 'start' });
    panel.focus();
    return null;
  }
}

/** Instead of a screen, when what was kept cannot be read. */
export const notReadable = () => [
  h('h1', { tabindex: '-1' }, t`The phone’s memory cannot be read`),
  h('p', { role: 'alert' }, t`Nothing can be kept here. Write down what you measure, and enter it at a desk.`),
  h('p', {}, t`Allow this address to store data, or leave the private window. Then load the page again.`),
  linkButton(t`Load again`, '/floor/', { class: 'button primary big' }),
];

/** What an entry tells, name by name, as it would be sent; for a person to write down. */
export const valuesOf = body => Object.entries(body)
  .filter(([name, told]) => isTold(name, told))
  .map(([name, told]) => h('div', {}, h('dt', {}, names[name] ?? name.replaceAll('_', ' ')),
    h('dd', {}, name === 'taken_at' ? moment(told) : textOf(told))));

/** The same in one line. */
export const textOfEntry = ({ body }) => Object.entries(body).filter(([name, told]) => isTold(name, told))
  .map(([name, told]) => `${name} ${textOf(told)}`).join(', ');

const isTold = (name, told) => told !== null && told !== '' && told !== false && !silent.includes(name);
const silent = ['chain_id', 'confirmed', 'told_by', 'by', 'taut'];
const names = {
  chain: t`Chain`, taken_at: t`Measured at`, counter_h: t`Hour counter`, counter_h_before: t`Hour counter`,
  counter_h_after: t`Hour counter since`, tool: t`Tool`, unit: t`Unit`, pitches: t`Pitches`, length: t`Length`, strand: t`Strand`,
  place: t`Place on the chain`, temperature_c: t`Temperature of the chain`, take_up_mm: t`Take-up position`, note: t`Note`,
  oil_grade: t`Lubricant`, oil_amount_ml: t`Amount`, pitches_out: t`Pitches taken out`, lot: t`Lot of the new chain`,
};

const textOf = told => (Array.isArray(told)
  ? told.map(each => Object.values(each).filter(value => value !== '' && value !== null).join(' ')).join('; ') : String(told));
