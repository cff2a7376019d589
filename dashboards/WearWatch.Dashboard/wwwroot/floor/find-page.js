// The chains of the plant by line and place, to be found by a few letters.
import { h, linkButton } from './dom.js';
import { t } from './language.js';
import { conditionMark, liftingMark } from './words.js';

export const findPage = ({ plant }) => [
  h('h1', { tabindex: '-1' }, t`Which chain?`),
  linkButton(t`Scan label`, '#/scan', { class: 'button primary big' }),
  h('p', { class: 'hint' }, t`Scan the label with the phone’s camera, or type a part of the name, line or place.`),
  ...chainList(plant),
];

/** A field for a few letters, and the chains that they fit. */
export function chainList(plant) {
  const list = h('div', { class: 'lines' });
  const draw = text => {
    const words = text.toLowerCase().split(' ').filter(Boolean);
    const found = plant.chains.filter(chain => {
      const about = `${chain.chain} ${chain.line} ${chain.position} ${chain.chain_type}`.toLowerCase();
      return words.every(word => about.includes(word));
    });
    list.replaceChildren(...(found.length === 0 ? [h('p', {}, t`No chain is called so.`)] : byLine(found.slice(0, most))),
      found.length > most ? h('p', { class: 'hint' }, t`${most} of ${found.length} are shown: type a few letters more.`) : '');
  };
  draw('');
  return [
    h('label', { for: 'find', class: 'unseen' }, t`Part of the name, line or place`),
    h('input', { id: 'find', type: 'search', autocomplete: 'off', class: 'find', oninput: event => draw(event.target.value) }),
    list,
  ];
}

const most = 100;

const byLine = chains => [...Map.groupBy(chains, chain => chain.line)].map(([line, there]) => h('section', {},
  h('h2', {}, line || t`Without a line`),
  h('ul', { class: 'picks' }, there.map(chain => h('li', {}, h('a', { class: 'pick', href: `#/chain/${chain.id}` },
    conditionMark(chain.condition),
    h('span', {}, h('strong', {}, chain.chain), liftingMark(chain),
      h('span', { class: 'hint' }, `${chain.position} · ${chain.chain_type}`))))))));
