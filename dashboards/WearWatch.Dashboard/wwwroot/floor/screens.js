// Every screen of the floor by what stands behind the hash. A test opens all that are listed here.
import { findPage } from './find-page.js';
import { chainPage } from './chain-page.js';
import { doPage } from './do-page.js';
import { measurePage } from './measure-page.js';
import { examPage } from './exam-page.js';
import { keptPage } from './kept-page.js';
import { linksPage } from './links-page.js';
import { labelPage } from './label-page.js';
import { inspectPage } from './inspect-page.js';
import { oilPage } from './oil-page.js';
import { partsPage } from './parts-page.js';
import { pinPage } from './pin-page.js';
import { roundPage } from './round-page.js';
import { scanPage } from './scan-page.js';
import { whoPage } from './who-page.js';

/** Of one chain: #/chain/7/measure; without a word, or with another, its own page. */
export const ofChain = {
  '': chainPage, measure: measurePage, inspect: inspectPage, look: inspectPage, do: doPage, links: linksPage, parts: partsPage,
  exam: examPage,
};

/** The others: #/find; without a word, or with another, today's rounds. A label leads on to its chain. */
export const others = {
  '': roundPage, oil: oilPage, find: findPage, kept: keptPage, label: labelPage, pin: pinPage, scan: scanPage, who: whoPage,
};
