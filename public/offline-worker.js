// Other pages may share this host's storage, so only caches named after our own folder are ours.
const page = self.registration.scope;
const ours = `jarwright ${page} `;
const pictures = ['icon.svg', 'icon-192.png', 'icon-512.png', 'icon-maskable-512.png', 'apple-touch-icon.png'];
const namedForGood = ['', 'manifest.webmanifest', 'licences.txt', ...pictures];
// A signal too weak to bring the page is no better than none, and a cook does not wait for it.
const longestWait = 5000;
const pausesBeforeForgetting = [0, 200, 1000, 4000];

/** Newest first. */
async function listOurCaches() {
  return (await caches.keys()).filter((name) => name.startsWith(ours)).reverse();
}

async function readHash(text) {
  const digest = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text));
  return Array.from(new Uint8Array(digest), (byte) => byte.toString(16).padStart(2, '0')).join('');
}

/**
 * Fetches the build that the host has now, and names its cache. A new build has a new list of files, hence another
 * cache. The older ones stay for as long as a page is open that may be of one of them: such a page still loads parts of
 * itself, and is never reloaded from here, since a cook may be typing in it.
 */
async function refresh() {
  const answer = await fetch(new URL('asset-manifest.json', page), { cache: 'no-store' });
  if (!answer.ok) throw new Error(`asset-manifest.json answers ${answer.status}`);
  const text = await answer.text();
  const chunks = Object.values(JSON.parse(text));
  const built = chunks.flatMap(({ file, css = [], assets = [] }) => [file, ...css, ...assets]);
  const name = ours + (await readHash(text));
  // A build that comes back after another has to be the newest again.
  if ((await listOurCaches()).indexOf(name) > 0) await caches.delete(name);
  const cache = await caches.open(name);
  const isComplete = (await cache.match(page, { ignoreVary: true })) !== undefined;
  const files = new Set(isComplete ? namedForGood : [...namedForGood, ...built]);
  // All or nothing: the page and its files must come from the same build.
  await cache.addAll([...files].map((file) => new Request(new URL(file, page), { cache: 'no-cache' })));
  return name;
}

/** A page that makes way for the one that opens takes a moment to go, longer than a near host takes to answer. */
async function forgetOlder(newest, opening) {
  for (const pause of pausesBeforeForgetting) {
    await new Promise((resolve) => setTimeout(resolve, pause));
    const kept = await listOurCaches();
    const older = kept.includes(newest) ? kept.slice(kept.indexOf(newest) + 1) : [];
    if (older.length === 0) return;
    const windows = await self.clients.matchAll({ includeUncontrolled: true, type: 'window' });
    if (windows.some(({ id, url }) => id !== opening && url.startsWith(page))) continue;
    for (const name of older) await caches.delete(name);
    return;
  }
}

async function findCached(request) {
  for (const cacheName of await listOurCaches()) {
    // The preview server varies by Origin, which a page and its scripts send differently.
    const cached = await caches.match(request, { cacheName, ignoreVary: true });
    if (cached) return cached;
  }
  return undefined;
}

async function navigate(event) {
  try {
    const answer = await fetchInTime(event.request);
    if (isRefusal(answer) && isPage(event.request)) return (await findCached(page)) ?? answer;
    // This file stays the same from build to build, so it is each visit, not the browser, that looks for a new one.
    const refreshed = refresh().then((newest) => forgetOlder(newest, event.resultingClientId));
    event.waitUntil(refreshed.catch(() => undefined));
    return answer;
  } catch (error) {
    const cached = (await findCached(event.request)) ?? (await findCached(page));
    if (cached) return cached;
    throw error;
  }
}

/** A host that is overloaded or being repaired answers too, and so does a network that lets nobody through. */
function isRefusal({ status }) {
  return status >= 400;
}

/** Whether the page itself is asked for; of another address in its folder the host knows best that it has none. */
function isPage({ url }) {
  const { origin, pathname } = new URL(url);
  return [page, `${page}index.html`].includes(origin + pathname);
}

/** Rejects where the host gives no answer in time and the page is there without it. */
async function fetchInTime(request) {
  const answer = fetch(request);
  const late = new Promise((resolve) => setTimeout(resolve, longestWait, 'late'));
  if ((await Promise.race([answer, late])) !== 'late') return answer;
  if ((await findCached(page)) === undefined) return answer;
  answer.catch(() => undefined);
  throw new Error('no answer in time');
}

self.addEventListener('install', (event) => event.waitUntil(refresh().then(() => self.skipWaiting())));
self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()));
self.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || !request.url.startsWith(page)) return;
  if (request.mode === 'navigate') event.respondWith(navigate(event));
  else event.respondWith(findCached(request).then((cached) => cached ?? fetch(request)));
});
