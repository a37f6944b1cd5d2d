// Other pages may share this host's storage, so only caches named after our own folder are ours.
const page = self.registration.scope;
const ours = `jarwright ${page} `;
const namedForGood = ['', 'manifest.webmanifest', 'icon.svg'];

async function listOurCaches() {
  return (await caches.keys()).filter((name) => name.startsWith(ours));
}

async function readHash(text) {
  const digest = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text));
  return Array.from(new Uint8Array(digest), (byte) => byte.toString(16).padStart(2, '0')).join('');
}

// A new build has a new list of files, hence another cache, which replaces the older ones once it is complete.
async function refresh() {
  const answer = await fetch(new URL('asset-manifest.json', page), { cache: 'no-store' });
  if (!answer.ok) throw new Error(`asset-manifest.json answers ${answer.status}`);
  const text = await answer.text();
  const chunks = Object.values(JSON.parse(text));
  const built = chunks.flatMap(({ file, css = [], assets = [] }) => [file, ...css, ...assets]);
  const name = ours + (await readHash(text));
  const cache = await caches.open(name);
  const isComplete = (await cache.match(page, { ignoreVary: true })) !== undefined;
  const files = new Set(isComplete ? namedForGood : [...namedForGood, ...built]);
  // All or nothing: the page and its files must come from the same build.
  await cache.addAll([...files].map((file) => new Request(new URL(file, page), { cache: 'no-cache' })));
  for (const older of await listOurCaches()) if (older !== name) await caches.delete(older);
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
    const answer = await fetch(event.request);
    // This file stays the same from build to build, so it is each visit, not the browser, that looks for a new one.
    event.waitUntil(refresh().catch(() => undefined));
    return answer;
  } catch (error) {
    const cached = await findCached(page);
    if (cached) return cached;
    throw error;
  }
}

self.addEventListener('install', (event) => event.waitUntil(refresh().then(() => self.skipWaiting())));
self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()));
self.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || !request.url.startsWith(page)) return;
  if (request.mode === 'navigate') event.respondWith(navigate(event));
  else event.respondWith(findCached(request).then((cached) => cached ?? fetch(request)));
});
