// Without a signal the pages that were taken along come from this phone, each to the person who
// took it. With one everything comes from the server, and brings what is here up to date.
self.addEventListener("install", () => self.skipWaiting());
self.addEventListener("activate", (event) => event.waitUntil(self.clients.claim()));

const NOTHING = `<!doctype html><html lang="en"><meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>No connection</title><link rel="stylesheet" href="STYLES">
<main id="main"><h1>No connection</h1><p>This page is not on this phone. What you took along is:</p>
<ul>LIST</ul></main></html>`;
const safe = (text) => text.replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`);

// Whoever opened a page of the site here last; nobody on the page where one signs in.
async function ours() {
  const said = await (await caches.open("whose")).match("/whose");
  const person = said ? await said.text() : "";
  const names = person ? await caches.keys() : [];
  return names.filter((name) => name.startsWith(`along ${person} `));
}

async function takenAlong() {
  const found = [];
  let styles;
  for (const name of await ours()) {
    const job = name.split(" ")[2];
    const cache = await caches.open(name);
    styles ||= (await cache.keys()).map(({ url }) => new URL(url).pathname)
      .find((one) => one.startsWith("/styles/"));
    const called = await cache.match("/along-name");
    found.push(`<li>${safe(called ? await called.text() : "A job")}<br>
      <a href="/jobs/${job}/fit/">Fitting</a> ·
      <a href="/jobs/${job}/measuring/">Measuring</a></li>`);
  }
  const page = NOTHING.replace("STYLES", styles ?? "")
    .replace("LIST", () => found.join("") || "<li>nothing yet</li>");
  return new Response(page, { status: 503, headers: { "Content-Type": "text/html" } });
}

async function held(pathname) {
  for (const name of await ours()) {
    const cache = await caches.open(name);
    const answer = await cache.match(pathname, { ignoreVary: true });
    if (answer) return { cache, answer };
  }
  return null;
}

// A page says that it is none of now.
async function asOf(answer) {
  const isPage = answer.headers.get("Content-Type")?.startsWith("text/html");
  if (!isPage) return answer;
  const at = new Date(answer.headers.get("Date") ?? Date.now());
  const said = at.toLocaleString([], { dateStyle: "medium", timeStyle: "short" });
  const html = (await answer.text()).replace("<body", () => `<body data-held-at="${safe(said)}"`);
  return new Response(html, { headers: { "Content-Type": "text/html; charset=utf-8" } });
}

async function answer(request) {
  const { pathname } = new URL(request.url);
  const isWhole = !request.headers.has("HX-Request");
  try {
    const response = await fetch(request);
    const isSound = response.status === 200 && !response.redirected;
    const known = isWhole && isSound && await held(pathname);
    if (known) await known.cache.put(pathname, response.clone()).catch(() => {});
    return response;
  } catch (error) {
    const known = isWhole && await held(pathname);
    if (known) return asOf(known.answer);
    if (request.mode === "navigate") return takenAlong();
    throw error;
  }
}

self.addEventListener("fetch", (event) => {
  const { request } = event;
  const isOurs = new URL(request.url).origin === self.location.origin;
  if (request.method === "GET" && isOurs) event.respondWith(answer(request));
});
