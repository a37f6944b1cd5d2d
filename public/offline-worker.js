// Other pages may share this host's storage, so only caches named after our own folder are ours.
const page = self.registration.scope;
const ours = `jarwright ${page} `;
const pictures = ['icon.svg', 'icon-192.png', 'icon-512.png', 'icon-maskable-512.png', 'apple-touch-icon.png'];
const namedForGood = ['manifest.webmanifest', 'licences.txt', ...pictures];
const pausesBeforeForgetting = [0, 200, 1000, 4000];

/** Newest first. */
async function listOurCaches() {
  return (await caches.keys()).filter((name) => name.startsWith(ours)).reverse();
}

async function readHash(text) {
  const digest = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text));
  return Array.from(new Uint8Array(digest), (byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** The addresses of the scripts, styles and pictures that a page names. */
function readNames(text) {
  const names = text.matchAll(/<(?:script|link)\b[^>]*?\s(?:src|href)="([^"]+)"/g);
  return Array.from(names, ([, name]) => new URL(name, page).href);
}

/**
 * Fetches the build that the host has now, and names its cache. A new build has a new list of files, hence another
 * cache. The older ones stay for as long as a page is open that may be of one of them: such a page still loads parts of
 * itself, and is never reloaded from here, since a cook may be typing in it. Rejects where the host changes its build
 * meanwhile: the next visit looks again.
 */
async function refresh() {
  const answer = await fetch(new URL('asset-manifest.json', page), { cache: 'no-store' });
  if (!answer.ok) throw new Error(`asset-manifest.json answers ${answer.status}`);
  const text = await answer.text();
  const chunks = Object.values(JSON.parse(text));
  const built = chunks.flatMap(({ file, css = [], assets = [] }) => [file, ...css, ...assets]);
  const files = new Set([...namedForGood, ...built].map((file) => new URL(file, page).href));
  const opening = await fetch(page, { cache: 'no-cache' });
  if (!opening.ok) throw new Error(`the page answers ${opening.status}`);
  const strangers = readNames(await opening.clone().text()).filter((name) => !files.has(name));
  if (strangers.length > 0) throw new Error(`the page is of another build than its files: ${strangers}`);
  const name = ours + (await readHash(text));
  // A build that comes back after another has to be the newest again.
  if ((await listOurCaches()).indexOf(name) > 0) await caches.delete(name);
  const cache = await caches.open(name);
  const isComplete = (await cache.match(page, { ignoreVary: true })) !== undefined;
  const wanted = isComplete ? namedForGood.map((file) => new URL(file, page).href) : [...files];
  await cache.addAll(wanted.map((file) => new Request(file, { cache: 'no-cache' })));
  // The page comes last: a cache that holds it holds all of its build.
  await cache.put(page, opening);
}

/**
 * Drops the builds older than one that a page has just opened of. A page that makes way for it takes a moment to go,
 * longer than a near host takes to answer.
 */
async function forgetOlder(current, opening) {
  for (const pause of pausesBeforeForgetting) {
    await new Promise((resolve) => setTimeout(resolve, pause));
    const kept = await listOurCaches();
    const older = kept.includes(current) ? kept.slice(kept.indexOf(current) + 1) : [];
    if (older.length === 0) return;
    const windows = await self.clients.matchAll({ includeUncontrolled: true, type: 'window' });
    if (windows.some(({ id, url }) => id !== opening && url.startsWith(page))) continue;
    for (const name of older) await caches.delete(name);
    return;
  }
}

/** What the newest build that has it answers, and the cache of that build. */
async function findCached(request) {
  for (const cacheName of await listOurCaches()) {
    // The preview server varies by Origin, which a page and its scripts send differently.
    const answer = await caches.match(request, { cacheName, ignoreVary: true });
    if (answer) return { answer, cacheName };
  }
  return undefined;
}

/** The page as it is kept; whatever the host has in its place is fetched for the next visit. */
async function openPage(event) {
  const kept = await findCached(page);
  event.waitUntil(refresh().catch(() => undefined));
  if (kept) event.waitUntil(forgetOlder(kept.cacheName, event.resultingClientId));
  return kept?.answer ?? fetch(event.request);
}

/** Of another address in its folder the host knows best whether it has it. */
async function openOther({ request }) {
  try {
    return await fetch(request);
  } catch (error) {
    const kept = (await findCached(request)) ?? (await findCached(page));
    if (kept) return kept.answer;
    throw error;
  }
}

/** Whether the page itself is asked for. */
function isPage({ url }) {
  const { origin, pathname } = new URL(url);
  return [page, `${page}index.html`].includes(origin + pathname);
}

self.addEventListener('install', (event) => event.waitUntil(refresh().then(() => self.skipWaiting())));
self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()));
self.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || !request.url.startsWith(page)) return;
  if (request.mode === 'navigate') event.respondWith(isPage(request) ? openPage(event) : openOther(event));
  else event.respondWith(findCached(request).then((kept) => kept?.answer ?? fetch(request)));
});
