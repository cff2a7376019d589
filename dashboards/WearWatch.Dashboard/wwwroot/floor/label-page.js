// What a scanned label leads to: the position's page, unless the label hangs in another plant.
import { h, linkButton } from './dom.js';
import { t } from './language.js';
import { chainOf } from './pack.js';

export function labelPage({ plant }, id, mark) {
  const chain = chainOf(plant, id);
  if (mark === plant.plant.mark && chain) {
    location.replace(`#/chain/${chain.id}`);
    return h('p', {}, t`Opening the position.`);
  }

  const [title, text] = mark === plant.plant.mark
    ? [t`This label’s position is not in the register`,
      t`It was taken out, or was registered after this phone last had signal.`]
    : [t`This label is of another plant`,
      t`It carries the mark ${mark}; this is ${plant.plant.name}, ${plant.plant.mark}. Nothing was opened.`];
  return [
    h('h1', { tabindex: '-1' }, title), h('p', { role: 'alert' }, text),
    linkButton(t`Find the chain by name`, '#/find', { class: 'button primary' }),
  ];
}
