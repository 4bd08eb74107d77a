// Keeps pages for when there is no network. EDITION and FILES stand before this text (offline.rs).
// It answers for its own folder and what its pages load from the same site, and for nothing else.
const OWN = `homeground ${self.registration.scope} `;
const CACHE = OWN + EDITION;
// The name that a page is kept by: a folder is its front page; what stands after ? or # is no part of it.
const nameOf = (address) => {
  const url = new URL(address, self.registration.scope);
  if (url.pathname.endsWith("/")) url.pathname += "index.html";
  return url.origin + url.pathname;
};
const FIRST = FILES.map(nameOf);
// Sheets of paper are large and change seldom: they are left to the browser.
const isKept = (url) => url.origin === self.location.origin && /\/$|\.(html|css|js|svg|woff2|png|jpe?g|txt)$/i.test(url.pathname);

async function fetchInto(cache, name) {
  const answer = await fetch(name, { cache: "no-cache" });
  if (!answer.ok) throw new Error(name);
  await cache.put(name, answer);
}

async function oldCaches() {
  return (await caches.keys()).filter((key) => key.startsWith(OWN) && key !== CACHE);
}

// What a family has looked at before stays at hand in the new edition; where it can’t be fetched, as it was.
async function begin() {
  const cache = await caches.open(CACHE);
  await Promise.all(FIRST.map((name) => fetchInto(cache, name)));
  for (const key of await oldCaches()) {
    const old = await caches.open(key);
    for (const request of await old.keys()) {
      if (await cache.match(request.url)) continue;
      await fetchInto(cache, request.url).catch(async () => cache.put(request.url, await old.match(request.url)));
    }
  }
  await self.skipWaiting();
}

async function takeOver() {
  await Promise.all((await oldCaches()).map((key) => caches.delete(key)));
  await self.clients.claim();
}

async function answer(request) {
  const cache = await caches.open(CACHE);
  const name = nameOf(request.url);
  const kept = await cache.match(name);
  if (kept) return kept;
  try {
    const fresh = await fetch(request);
    if (fresh.ok && fresh.type === "basic") await cache.put(name, fresh.clone());
    return fresh;
  } catch (fault) {
    const front = request.mode === "navigate" && await cache.match(nameOf("index.html"));
    if (front) return front;
    throw fault;
  }
}

// A page that was open before the worker tells what it is made of.
async function keep(addresses) {
  const cache = await caches.open(CACHE);
  for (const address of addresses) {
    if (!isKept(new URL(address))) continue;
    const name = nameOf(address);
    if (!await cache.match(name)) await fetchInto(cache, name).catch(() => {});
  }
}

self.addEventListener("install", (event) => event.waitUntil(begin()));
self.addEventListener("activate", (event) => event.waitUntil(takeOver()));
self.addEventListener("message", (event) => event.waitUntil(keep(event.data.keep || [])));
self.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method === "GET" && isKept(new URL(request.url))) event.respondWith(answer(request));
});
