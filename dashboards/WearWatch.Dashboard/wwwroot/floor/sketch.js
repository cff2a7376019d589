// How to measure, drawn: pin to pin with a tape, inside and outside of the end rollers with a caliper, over 11 links.
import { s } from './dom.js';
import { t } from './language.js';

const joints = [40, 100, 160, 220, 280];
const middle = 70;

/** The drawing for a kind of chain and a tool, with a text for those who do not see it. */
export function sketch(kind, tool) {
  const [parts, text] = kind.measured === 'link_edges'
    ? [links(), t`Over 11 links, from the inner edge of the first to the inner edge of the twelfth.`]
    : tool === 'caliper'
      ? [[chain(), across(48, 272, 24, t`inside`), across(32, 288, 120, t`outside`)],
        t`Between the inner sides of the two end rollers, then over their outer sides.`]
      : [[chain(), across(40, 280, 120, t`pin to pin`)],
        t`From the middle of one pin to the middle of another of the same kind.`];
  return s('svg', { class: 'sketch', viewBox: '0 0 320 140', role: 'img', 'aria-label': text }, parts);
}

const chain = () => [
  joints.slice(1).map((x, i) => bar(i % 2 === 0 ? 'plate inner' : 'plate', joints[i] - 14, x - joints[i] + 28, 32)),
  joints.map(x => [circle('roller', x, 9), circle('pin', x, 3)]),
];

const links = () => [
  [0, 1, 2, 3, 4].map(i => bar('link', 24 + 54 * i, 66, i % 2 === 0 ? 36 : 12)),
  across(34, 296, 120, t`11 links`),
];

const bar = (kind, x, width, height) => s('rect', { class: kind, x, y: middle - height / 2, width, height, rx: height / 2 });
const circle = (kind, cx, r) => s('circle', { class: kind, cx, cy: middle, r });

function across(from, to, y, words) {
  const [near, far] = y < middle ? [middle - 26, y - 6] : [middle + 26, y + 6];
  return s('g', { class: 'dimension' },
    s('path', { d: `M${from} ${near}V${far}M${to} ${near}V${far}M${from} ${y}H${to}` }),
    s('path', { d: `M${from + 7} ${y - 4}L${from} ${y}l7 4M${to - 7} ${y - 4}L${to} ${y}l-7 4` }),
    s('text', { x: (from + to) / 2, y: y - 5, 'text-anchor': 'middle' }, words));
}
