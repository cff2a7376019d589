// What lists of tasks share: the mark of a task, and on top what a person has to check.
import { h, linkButton } from './dom.js';
import { t } from './language.js';
import { counted } from './phrase.js';
import { toCheck } from './today.js';

const verbs = { measure: t`measure`, lubricate: t`lubricate`, inspect: t`inspect` };
const doneVerbs = { measure: t`measure, done`, lubricate: t`lubricate, done`, inspect: t`inspect, done` };
const keptVerbs = {
  measure: t`measure, kept here, not sent yet`, lubricate: t`lubricate, kept here, not sent yet`,
  inspect: t`inspect, kept here, not sent yet`,
};

/** What is to be done and why, or that it is done. */
export const taskMark = task => h('span', { class: `hint task ${task.done ? 'done' : ''}` },
  h('span', { 'aria-hidden': 'true' }, task.done ? '✓ ' : task.kept ? '… ' : '○ '),
  task.done ? doneVerbs[task.task] : task.kept ? keptVerbs[task.task] : `${verbs[task.task]}: ${task.why}`);

/** Refused, or doubted by the server: not done until a person has answered it. Nothing where there is none. */
export function checkList(entries) {
  const open = toCheck(entries);
  return open.length > 0 && h('section', { class: 'to-check' },
    h('h2', {}, counted(open.length, t`${open.length} entry to be checked`, t`${open.length} entries to be checked`)),
    h('ul', { class: 'checks' }, open.map(entry => h('li', {},
      h('strong', {}, entry.chain), ' ', t(entry.words), ': ', t(entry.why)))),
    linkButton(t`Answer them`, '#/kept', { class: 'button' }));
}
