// One position: what hangs there, what is known, what can be done.
import { caution, h, linkButton } from './dom.js';
import { day, hours, millimetres, moment, percent } from './figures.js';
import { expectation, hoursSince, span } from './verdict.js';
import { conditionMark, liftingBanner, place } from './words.js';

export function chainPage({ plant, chain }) {
  const zone = plant.plant.time_zone;
  const expected = expectation(chain.expected, hoursSince(plant, chain, null));
  return [
    h('h1', { tabindex: '-1' }, chain.chain),
    h('p', { class: 'hint' }, `${place(chain)} · ${chain.chain_type || 'chain'} · ${millimetres(chain.pitch_mm)} pitch`),
    liftingBanner(chain),
    caution(plant.cautions[chain.caution]),
    h('nav', { class: 'doings', 'aria-label': `At ${chain.chain}` },
      linkButton('Measure', `#/chain/${chain.id}/measure`, { class: 'button primary big' }),
      chain.links && linkButton('Links', `#/chain/${chain.id}/links`, { class: 'button big' }),
      linkButton(chain.lifting ? 'Daily inspection' : 'Inspect', `#/chain/${chain.id}/inspect`, { class: 'button big' }),
      chain.lifting && linkButton('Examination report', `#/chain/${chain.id}/exam`, { class: 'button big' }),
      linkButton('Lubricated', `#/chain/${chain.id}/do?what=oiling`, { class: 'button big' }),
      linkButton('Other work', `#/chain/${chain.id}/do`, { class: 'button big' })),
    h('dl', { class: 'facts' },
      fact('Condition', conditionMark(chain.condition, true)),
      fact('Elongation', `${percent(chain.elongation_pct)} of ${percent(chain.limit_pct)}`),
      chain.out_of_use_by && fact('Out of use from', `${day(chain.out_of_use_by, zone)} at the latest`),
      fact('Early date', chain.early_date ? `${day(chain.early_date, zone)}` : 'not in sight'),
      chain.planned_swap && fact('Swap planned', moment(chain.planned_swap, zone)),
      fact('Last reading', chain.last ? `${percent(chain.last.elongation_pct)}, ${day(chain.last.taken_at, zone)}` : 'none'),
      fact('Hour counter', chain.last_counter_h === null ? 'not recorded' : `last ${hours(chain.last_counter_h)}`),
      fact('Expected', span(expected))),
    h('p', {}, h('a', { href: `/chains/${encodeURIComponent(chain.chain)}` }, 'The chain’s whole page'), ' (needs signal)'),
  ];
}

const fact = (name, value) => h('div', {}, h('dt', {}, name), h('dd', {}, value));
