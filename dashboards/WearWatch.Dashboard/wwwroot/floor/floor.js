// The technician's floor: one small document that works without signal. Addresses behind the hash are screens of it. A screen is
// drawn from what the phone keeps; the network is asked behind it.
import { h, linkButton } from './dom.js';
import { decision } from './decide.js';
import { readDrafts } from './draft.js';
import { entries } from './store.js';
import { chainNow } from './since.js';
import { chainOf, keptPack, renewPack } from './pack.js';
import { positionOf, screenOf } from './label-address.js';
import { follow, language, t } from './language.js';
import { maker, signature, whoIsHere } from './maker.js';
import { send, sendLater } from './outbox.js';
import { ofChain, others } from './screens.js';
import { paintHead, paintTabs, signInAddress } from './shell.js';
import { notReadable } from './not-kept.js';
import { keepFiles, lookForNext, takeIfFree } from './version.js';

const every = 20_000;
const soon = [2_000, 4_000, 8_000, 16_000];
const main = document.getElementById('content');
let leave = [];
let turn = 0;
let vain = 0;
let again = 0;

async function show({ stays = false } = {}) {
  const mine = ++turn;
  const [where, id, what] = location.hash.replace(/^#\/?/, '').split('?')[0].split('/');
  const asked = new URLSearchParams(location.hash.split('?')[1] ?? '');
  let context;
  try {
    context = {
      plant: await keptPack(), entries: await entries(), me: await maker(), name: await signature(), asked, push, redraw: show,
      onLeave: act => leave.push(act),
    };
    if (!context.plant) context.plant = await firstPack();
  } catch (error) {
    console.error(error);
    main.replaceChildren(...notReadable());
    shown();
    return;
  }

  if (mine !== turn) return;
  for (const act of leave) act();
  leave = [];
  takeIfFree(isFree);
  main.replaceChildren(...draw(context, where, id, what));
  const heading = main.querySelector('h1');
  document.title = `${heading?.textContent ?? t`Floor`} · WearWatch`;
  if (!stays) {
    heading?.focus({ preventScroll: true });
    scrollTo(0, 0);
  }

  paintTabs(where ?? '');
  await paintHead();
  shown();
  renewBehind();
}

function shown() {
  document.documentElement.dataset.shown = location.hash || '#/';
  performance.mark('shown');
}

// Nothing is being entered or scanned and nothing was just told: the screen may be drawn anew under the person's eyes.
const isFree = () => !main.querySelector('form, .saved, .not-kept, .confirm, .scanner')
  && !main.contains(document.activeElement?.closest('input, select'));

async function renewBehind() {
  const came = await renewPack().catch(() => false);
  if (came && isFree()) await show({ stays: true });
  else await paintHead();
}

async function firstPack() {
  main.replaceChildren(h('h1', { tabindex: '-1' }, t`Opening the floor`),
    h('p', {}, t`The phone fetches what it needs to work without signal.`));
  await renewPack({ anew: true });
  return keptPack();
}

// A screen that cannot be drawn says so; what was kept stays kept.
function draw(...asked) {
  try {
    return [screen(...asked)].flat(Infinity).filter(Boolean);
  } catch (error) {
    console.error(error);
    const title = h('h1', { tabindex: '-1' }, t`This screen could not be drawn`);
    return [title, h('p', {}, t`Nothing that was kept is lost. Load the page again.`)];
  }
}

function screen(context, where, id, what) {
  if (!context.plant && where !== 'kept' && where !== 'who') return nothingYet();
  if (where !== 'chain') return (others[where] ?? others[''])(context, id, what);
  const chain = chainOf(context.plant, id);
  if (!chain) return notThere(context);
  const isNot = what === 'links' && !chain.links || what === 'exam' && !chain.lifting;
  const page = isNot ? ofChain[''] : ofChain[what] ?? ofChain[''];
  return page({ ...context, chain: chainNow(context, chain) });
}

const nothingYet = () => [
  h('h1', { tabindex: '-1' }, t`Nothing is on this phone yet`),
  h('p', {}, t`Open this page once with signal, signed in: then it works without.`),
  linkButton(t`Sign in`, signInAddress(), { class: 'button primary big' }), tryAgain(),
];

const notThere = () => [
  h('h1', { tabindex: '-1' }, t`This chain is not registered`),
  h('p', {}, t`It may have been taken in after this phone last had signal.`), tryAgain(),
];

const tryAgain = () => decision(t`Try again`, () => renewPack({ anew: true }).then(() => show()), { class: 'button big' });

// Sends what is kept, and says how that went. Whatever happens, nothing leaves the phone's own memory before the server has it.
async function push(how = {}) {
  clearTimeout(again);
  const outcome = await send({ ...how, tell: left => paintHead({ sending: left }) });
  vain = outcome.stop === 'offline' || outcome.stop === 'later' ? vain + 1 : 0;
  if (outcome.sent > 0) await renewPack({ anew: true });
  await paintHead({ sending: 0, stop: outcome.stop ?? null, others: outcome.others ?? [], shared: outcome.shared });
  dispatchEvent(new Event('floor-sent'));
  if (outcome.sent > 0 && isFree()) await show({ stays: true });
  again = setTimeout(push, outcome.held ? outcome.held + 50 : soon[vain - 1] ?? every);
  return outcome;
}

// A label's address holds the plant's mark and the position; what follows is a screen like any other.
function readLabel() {
  const position = positionOf(location);
  if (position) history.replaceState(null, '', `/floor/${screenOf(position)}`);
}

async function start() {
  readLabel();
  document.documentElement.lang = language.code;
  document.documentElement.dataset.look = localStorage.getItem('wearwatch-floor-look')
    ?? (/wearwatch-look=software-dark/.test(document.cookie) ? 'dark' : 'light');
  navigator.storage?.persist?.();
  addEventListener('hashchange', () => show());
  addEventListener('online', () => push());
  addEventListener('offline', () => { paintHead({ stop: 'offline' }); sendLater(); });
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState !== 'visible') return;
    push();
    lookForNext(undefined, isFree);
  });
  await readDrafts();
  await show();
  keepFiles(isFree);
  await push();
  await follow(await whoIsHere());
}

await start();
