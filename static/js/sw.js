// Without a signal the pages that were taken along come from this phone. With one everything comes
// from the server, and a page that is here is brought up to date by that.
const PATIENCE_MS = 4000;

self.addEventListener("install", () => self.skipWaiting());
self.addEventListener("activate", (event) => event.waitUntil(self.clients.claim()));

const NOTHING = `<!doctype html><html lang="en"><meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>No connection</title><link rel="stylesheet" href="/static/css/tokens.css">
<link rel="stylesheet" href="/static/css/page.css">
<main id="main"><h1>No connection</h1><p>This page is not on this phone. What you took along is:</p>
<ul>LIST</ul></main></html>`;
const safe = (text) => text.replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`);

async function takenAlong() {
  const found = [];
  for (const name of await caches.keys()) {
    const [kind, , job] = name.split(" ");
    if (kind !== "along") continue;
    const called = await (await caches.open(name)).match("/along-name");
    found.push(`<li>${safe(called ? await called.text() : "A job")}<br>
      <a href="/jobs/${job}/fit/">Fitting</a> ·
      <a href="/jobs/${job}/measuring/">Measuring</a></li>`);
  }
  return NOTHING.replace("LIST", () => found.join("") || "<li>nothing yet</li>");
}

async function cached(request) {
  const { pathname } = new URL(request.url);
  for (const name of await caches.keys()) {
    if (!name.startsWith("along ")) continue;
    const cache = await caches.open(name);
    const held = await cache.match(pathname, { ignoreVary: true });
    if (held) return { cache, held, pathname };
  }
  return null;
}

async function answer(request) {
  const isPage = !request.headers.has("HX-Request");
  const known = isPage ? await cached(request) : null;
  const network = fetch(request).then(async (response) => {
    if (known && response.ok && !response.redirected) {
      await known.cache.put(known.pathname, response.clone());
    }
    return response;
  });
  if (!known) {
    if (request.mode !== "navigate") return network;
    return network.catch(async () => new Response(await takenAlong(), {
      status: 503, headers: { "Content-Type": "text/html" } }));
  }
  const late = new Promise((resolve) => setTimeout(() => resolve(known.held), PATIENCE_MS));
  network.catch(() => {});
  return Promise.race([network.catch(() => known.held), late]);
}

self.addEventListener("fetch", (event) => {
  const { request } = event;
  const isOurs = new URL(request.url).origin === self.location.origin;
  if (request.method === "GET" && isOurs) event.respondWith(answer(request));
});
