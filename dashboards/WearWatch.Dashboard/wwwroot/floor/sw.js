// Lets the floor open without signal: first the network, then the copy. It sees /floor/ only. Its cache is named by the
// build, which the page hands over in this worker's address: another build is another worker with another cache.
import { send } from './outbox.js';

const build = new URL(location.href).searchParams.get('build');
const name = `floor-${build}`;

addEventListener('install', event => event.waitUntil(fillCache()));
addEventListener('activate', event => event.waitUntil(takeOver()));
addEventListener('fetch', event => {
  const url = new URL(event.request.url);
  if (event.request.method !== 'GET' || url.origin !== location.origin || !url.pathname.startsWith('/floor/')) return;
  // Every address of the floor that is a page is the one document; its labels too.
  event.respondWith(answer(event.request, event.request.mode === 'navigate' ? '/floor/' : url.pathname));
});
addEventListener('sync', event => {
  if (event.tag !== 'send') return;
  event.waitUntil(send().then(outcome => {
    if (outcome.stop === 'offline' || outcome.stop === 'later') throw new Error(outcome.stop);
  }));
});

async function fillCache() {
  const { files } = await (await fetch('/floor/files', { cache: 'no-store' })).json();
  const cache = await caches.open(name);
  await Promise.all(files.map(async file => {
    const response = await fetch(file, { cache: 'reload', credentials: 'same-origin' });
    if (!isOurs(response)) throw new Error(`${file} cannot be kept`);
    await cache.put(file, response);
  }));
  await skipWaiting();
}

async function takeOver() {
  for (const old of await caches.keys()) if (old.startsWith('floor-') && old !== name) await caches.delete(old);
  await clients.claim();
}

async function answer(request, file) {
  const cache = await caches.open(name);
  try {
    const response = await fetch(request);
    if (isOurs(response) && (await cache.match(file))) await cache.put(file, response.clone());
    if (response.status < 500) return response;
    return (await cache.match(file)) ?? response;
  } catch (error) {
    const kept = await cache.match(file);
    if (kept) return kept;
    throw error;
  }
}

// A redirect may lead to a sign-in page, and that must never stand in for the floor.
const isOurs = response => response.ok && !response.redirected && response.type === 'basic';
