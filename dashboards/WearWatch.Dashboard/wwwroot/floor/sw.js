// Lets the floor open at once, with signal or without: its files come from the copy, and the network is asked for a new version
// behind them. It sees /floor/ only. Its cache is named by the build, which the page hands over in this worker's address: another
// build is another worker with another cache. It waits until the page says that nothing is being typed.
import { limit } from './net.js';
import { send } from './outbox.js';

const build = new URL(location.href).searchParams.get('build');
const name = `floor-${build}`;
const list = '/floor/files'; // which there are: asked of the server alone

addEventListener('install', event => event.waitUntil(fillCache()));
addEventListener('activate', event => event.waitUntil(takeOver()));
addEventListener('message', event => {
  if (event.data === 'take over') skipWaiting();
});
addEventListener('fetch', event => {
  const url = new URL(event.request.url);
  if (event.request.method !== 'GET' || url.origin !== location.origin || !url.pathname.startsWith('/floor/')) return;
  if (url.pathname === list) return;
  // Every address of the floor that is a page is the one document; its labels too.
  event.respondWith(answer(event.request, event.request.mode === 'navigate' ? '/floor/' : url.pathname));
});
addEventListener('sync', event => {
  if (event.tag !== 'send') return;
  event.waitUntil(send().then(outcome => {
    if (outcome.stop === 'offline' || outcome.stop === 'later' || outcome.held) throw new Error('later');
  }));
});

const answer = async (request, file) => (await (await caches.open(name)).match(file)) ?? fetch(request);

async function fillCache() {
  const told = await (await fetch(list, { cache: 'no-store', signal: AbortSignal.timeout(limit.pack) })).json();
  if (told.build !== build) throw new Error(`The server has build ${told.build} by now.`);
  const files = await Promise.all(told.files.map(async file => [file, await fetched(file, told.sums[file])]));
  const cache = await caches.open(name);
  for (const [file, response] of files) await cache.put(file, response);
}

// A file is kept only when it is whole and of this build: one that is empty or a sign-in page must never stand in for the floor.
async function fetched(file, sum) {
  const response = await fetch(file, { cache: 'reload', credentials: 'same-origin', signal: AbortSignal.timeout(limit.pack) });
  if (!response.ok || response.redirected || response.type !== 'basic') throw new Error(`${file} cannot be kept.`);
  const bytes = await response.clone().arrayBuffer();
  const isWhole = sum ? await sumOf(bytes) === sum
    : file.endsWith('.json') ? JSON.parse(new TextDecoder().decode(bytes)).code === /([^/]+)\.json$/.exec(file)[1]
      : new TextDecoder().decode(bytes).includes(`data-build="${build}"`);
  if (!isWhole) throw new Error(`${file} is not the one of build ${build}.`);
  return response;
}

const sumOf = async bytes => [...new Uint8Array(await crypto.subtle.digest('SHA-256', bytes))]
  .map(byte => byte.toString(16).padStart(2, '0')).join('');

async function takeOver() {
  for (const old of await caches.keys()) if (old.startsWith('floor-') && old !== name) await caches.delete(old);
  await clients.claim();
}
