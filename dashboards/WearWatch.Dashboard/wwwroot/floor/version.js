// A new version of the floor: fetched and checked behind the screens, taken over when nothing is being typed.
import { h } from './dom.js';
import { decision } from './decide.js';
import { t } from './language.js';
import { ask } from './net.js';

const own = document.documentElement.dataset.build;
const workers = navigator.serviceWorker;
let waiting = null;

/** Has the worker of this page's version keep its files, and takes the next one over once it is there. */
export async function keepFiles(isFree) {
  if (!workers) return;
  // The first worker takes the page over as it is; each one after it is another version.
  let hasWorker = workers.controller !== null;
  workers.addEventListener('controllerchange', () => {
    if (hasWorker) location.reload();
    hasWorker = true;
  });
  const registration = await register(hasWorker ? own : (await served()) ?? own);
  await workers.ready;
  document.documentElement.dataset.worker = 'ready';
  await lookForNext(registration, isFree);
}

/** Looks whether the server has another version than this page, and fetches it. */
export async function lookForNext(registration, isFree) {
  const next = await served();
  const there = registration ?? await workers?.getRegistration('/floor/');
  if (next === null || !there) return;
  const found = next === own && !there.waiting ? there : await register(next);
  const take = () => {
    waiting = found.waiting;
    if (waiting && workers.controller) offer(isFree);
  };
  found.installing?.addEventListener('statechange', take);
  take();
}

/** Takes a new version over, if one waits and nothing is being typed; called wherever a screen ends. */
export function takeIfFree(isFree) {
  if (waiting && isFree()) waiting.postMessage('take over');
}

function offer(isFree) {
  const place = document.getElementById('version');
  if (isFree()) {
    waiting.postMessage('take over');
  } else if (place.childElementCount === 0) {
    place.replaceChildren(h('p', {}, t`A new version is ready. It comes when nothing is being entered.`),
      decision(t`Take it now`, () => waiting.postMessage('take over'), { class: 'button slim' }));
  }
}

const served = async () => (await ask('/floor/files'))?.body?.build ?? null;

async function register(build) {
  const how = { type: 'module', scope: '/floor/', updateViaCache: 'none' };
  return await workers.register(`/floor/sw.js?build=${build}`, how).catch(() => workers.getRegistration('/floor/'));
}
