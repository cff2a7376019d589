// One position: what hangs there, what is known, what can be done.
import { caution, h, linkButton } from './dom.js';
import { day, hours, millimetres, moment, percent } from './figures.js';
import { t } from './language.js';
import { expectation, hoursSince, span } from './verdict.js';
import { conditionMark, liftingBanner, place } from './words.js';

export function chainPage({ plant, chain }) {
  const zone = plant.plant.time_zone;
  const expected = expectation(chain.expected, hoursSince(plant, chain, null));
  return [
    h('h1', { tabindex: '-1' }, chain.chain),
    h('p', { class: 'hint' }, [place(chain), chain.chain_type || t`chain`, t`${millimetres(chain.pitch_mm)} pitch`].join(' · ')),
    liftingBanner(chain),
    caution(plant.cautions[chain.caution]),
    chain.oil_cautions.map(text => h('p', { class: 'hint oil-caution' }, text)),
    h('nav', { class: 'doings', 'aria-label': t`At ${chain.chain}` },
      linkButton(t`Measure`, `#/chain/${chain.id}/measure`, { class: 'button primary big' }),
      linkButton(t`Parts`, `#/chain/${chain.id}/parts`, { class: 'button big' }),
      chain.links && linkButton(t`Links`, `#/chain/${chain.id}/links`, { class: 'button big' }),
      linkButton(chain.lifting ? t`Daily inspection` : t`Inspect`, `#/chain/${chain.id}/inspect`, { class: 'button big' }),
      chain.lifting && linkButton(t`Examination report`, `#/chain/${chain.id}/exam`, { class: 'button big' }),
      linkButton(t`Lubricated`, `#/chain/${chain.id}/do?what=oiling`, { class: 'button big' }),
      linkButton(t`Other work`, `#/chain/${chain.id}/do`, { class: 'button big' })),
    h('dl', { class: 'facts' },
      fact(t`Condition`, conditionMark(chain.condition, true)),
      fact(t`Elongation`, t`${percent(chain.elongation_pct)} of ${percent(chain.limit_pct)}`),
      chain.out_of_use_by && fact(t`Out of use from`, t`${day(chain.out_of_use_by, zone)} at the latest`),
      fact(t`Early date`, chain.early_date ? day(chain.early_date, zone) : t`not in sight`),
      chain.limited_by && fact(t`First at its limit`, chain.limited_by),
      chain.shorten_from && fact(t`Take out ${chain.shorten_pitches} pitches`, t`from ${day(chain.shorten_from, zone)} on`),
      chain.tension_from && fact(t`Tension anew`, t`from ${day(chain.tension_from, zone)} on`),
      chain.planned_swap && fact(t`Swap planned`, moment(chain.planned_swap, zone)),
      fact(t`Last reading`, chain.last ? `${percent(chain.last.elongation_pct)}, ${day(chain.last.taken_at, zone)}` : t`none`),
      fact(t`Hour counter`,
        chain.last_counter_h === null ? t`not recorded` : t`last ${hours(chain.last_counter_h)}`),
      fact(t`Expected`, span(expected))),
    h('p', {}, h('a', { href: `/chains/${encodeURIComponent(chain.chain)}` }, t`The chain’s whole page`),
      ` (${t`needs signal`})`),
  ];
}

const fact = (name, value) => h('div', {}, h('dt', {}, name), h('dd', {}, value));
