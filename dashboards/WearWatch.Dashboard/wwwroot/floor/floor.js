// The technician's floor: one small document that works without signal. Addresses behind the hash are screens of it.
import { button, h } from './dom.js';
import { entries } from './store.js';
import { chainOf, loadPack } from './pack.js';
import { whoIsHere } from './maker.js';
import { send, sendLater, State } from './outbox.js';
import { ofChain, others } from './screens.js';

const every = 20_000;
const main = document.getElementById('content');
const $ = id => document.getElementById(id);
let leave = () => {};
let turn = 0;

async function show() {
  const mine = ++turn;
  const [where, id, what] = location.hash.replace(/^#\/?/, '').split('?')[0].split('/');
  const asked = new URLSearchParams(location.hash.split('?')[1] ?? '');
  const plant = await loadPack();
  const context = { plant, asked, entries: await entries(), push, redraw: show, onLeave: act => { leave = act; } };
  if (mine !== turn) return;
  leave();
  leave = () => {};
  main.replaceChildren(...draw(context, where, id, what));
  const heading = main.querySelector('h1');
  document.title = `${heading?.textContent ?? 'Floor'} · WearWatch`;
  heading?.focus({ preventScroll: true });
  scrollTo(0, 0);
  for (const link of document.querySelectorAll('.tabs a')) {
    if (link.hash === `#/${where ?? ''}`) link.setAttribute('aria-current', 'page');
    else link.removeAttribute('aria-current');
  }

  document.documentElement.dataset.shown = location.hash || '#/';
}

// A screen that cannot be drawn says so; what was kept stays kept.
function draw(...asked) {
  try {
    return [screen(...asked)].flat(Infinity).filter(Boolean);
  } catch (error) {
    console.error(error);
    const title = h('h1', { tabindex: '-1' }, 'This screen could not be drawn');
    return [title, h('p', {}, 'Nothing that was kept is lost. Load the page again.')];
  }
}

function screen(context, where, id, what) {
  if (!context.plant && where !== 'kept') return nothingYet();
  if (where !== 'chain') return (others[where] ?? others[''])(context, id, what);
  const chain = chainOf(context.plant, id);
  if (!chain) return notThere(context);
  const isNot = what === 'links' && !chain.links || what === 'exam' && !chain.lifting;
  const page = isNot ? ofChain[''] : ofChain[what] ?? ofChain[''];
  return page({ ...context, chain });
}

const nothingYet = () => [
  h('h1', { tabindex: '-1' }, 'Nothing is on this phone yet'),
  h('p', {}, 'Open this page once with signal, signed in: then it works without.'),
  button('Try again', () => loadPack({ anew: true }).then(show), { class: 'button primary' }),
];

const notThere = () => [
  h('h1', { tabindex: '-1' }, 'This chain is not registered'),
  h('p', {}, 'It may have been taken in after this phone last had signal.'),
  button('Try again', () => loadPack({ anew: true }).then(show), { class: 'button primary' }),
];

// Sends what is kept, and says how that went. Whatever happens, nothing leaves the phone's own memory before the server has it.
async function push() {
  const outcome = await send();
  paintNet(outcome.stop);
  await paintKept();
  if (outcome.sent > 0) await loadPack({ anew: true });
  return outcome;
}

function paintNet(stop) {
  const [state, words] = stop === 'offline' || !navigator.onLine ? ['off', 'No signal: kept on this phone']
    : stop === 'sign-in' ? ['sign', 'Sign in, then it is sent']
      : stop === 'later' ? ['off', 'The server does not answer: kept here'] : ['on', 'Connected'];
  $('net').dataset.state = state;
  $('net').replaceChildren(state === 'sign' ? h('a', { href: signIn() }, words) : words);
}

const signIn = () => `/people/sign-in?back=${encodeURIComponent(location.pathname + location.hash)}`;

async function paintKept() {
  const all = await entries();
  const [kept, check] = [State.kept, State.check].map(state => all.filter(entry => entry.state === state).length);
  $('kept').textContent = check > 0 ? `Kept ${kept} · check ${check}` : `Kept ${kept}`;
  $('kept').dataset.check = check > 0;
}

// A label's address holds the plant's mark and the position; what follows is a screen like any other.
function readLabel() {
  const label = /^\/floor\/at\/([^/]+)\/(\d+)$/.exec(location.pathname);
  if (label) history.replaceState(null, '', `/floor/#/label/${label[2]}/${label[1]}`);
}

async function start() {
  readLabel();
  document.documentElement.dataset.look = /wearwatch-look=software-dark/.test(document.cookie) ? 'dark' : 'light';
  const build = document.documentElement.dataset.build;
  navigator.serviceWorker?.register(`/floor/sw.js?build=${build}`, { type: 'module', scope: '/floor/', updateViaCache: 'none' })
    .then(() => navigator.serviceWorker.ready).then(() => { document.documentElement.dataset.worker = 'ready'; });
  navigator.storage?.persist?.();
  addEventListener('hashchange', show);
  addEventListener('online', push);
  addEventListener('offline', () => { paintNet('offline'); sendLater(); });
  document.addEventListener('visibilitychange', () => document.visibilityState === 'visible' && push());
  setInterval(push, every);
  await show();
  $('switch').hidden = !(await whoIsHere()).shared;
  await push();
}

await start();
