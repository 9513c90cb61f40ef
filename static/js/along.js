// A job is taken along: its pages and sheets for the site lie on this phone, and are there without
// a signal. They are this person's alone, and go when somebody else signs in here.
(() => {
  const { person } = document.body.dataset;
  const box = document.querySelector("[data-along]");
  if (!("serviceWorker" in navigator) || !person || !window.caches) return;
  const AT_ONCE = 4;
  const cacheOf = (job) => `along ${person} ${job}`;

  caches.keys().then((names) => Promise.all(names
    .filter((name) => name.startsWith("along ") && !name.startsWith(`along ${person} `))
    .map((name) => caches.delete(name))));

  if (!box) return;
  const { along, job } = box.dataset;
  const [take, leave, said] = ["take", "leave", "said"]
    .map((name) => box.querySelector(`[data-along-${name}]`));

  async function show(words) {
    const kept = await caches.has(cacheOf(job));
    box.hidden = false;
    take.textContent = kept ? "Take it along anew" : "Take this job along";
    leave.hidden = !kept;
    said.textContent = words ?? (kept ? "On this phone, also without a signal." : "");
  }

  // Styles and scripts of the pages that come along.
  const filesIn = (html) => [...html.matchAll(/(?:href|src)="(\/(?:static|styles)\/[^"]+)"/g)]
    .map(([, file]) => file);

  async function bring() {
    take.disabled = true;
    const { pages } = await (await fetch(along)).json();
    const cache = await caches.open(cacheOf(job));
    const name = document.querySelector(".above").textContent.trim().replace(/\s+/g, " ");
    await cache.put("/along-name", new Response(name));
    const files = new Set();
    const [left, again] = [[...pages], []];
    let done = 0;
    const one = async (address) => {
      const answer = await fetch(address);
      if (!answer.ok || answer.redirected) throw new Error(address);
      await cache.put(address, answer.clone());
      if (answer.headers.get("Content-Type").startsWith("text/html")) {
        for (const file of filesIn(await answer.text())) files.add(file);
      }
    };
    const came = () => {
      done += 1;
      said.textContent = `${done} of ${pages.length} …`;
    };
    const some = async () => {
      while (left.length) {
        const address = left.shift();
        await one(address).then(came, () => again.push(address));
      }
    };
    await Promise.all(Array.from({ length: AT_ONCE }, some));
    // What the server was too busy for, one after the other.
    for (const address of again) await one(address).then(came, () => {});
    const lost = pages.length - done;
    const wanted = new Set([...pages, ...files, "/along-name"]);
    for (const { url } of lost ? [] : await cache.keys()) {
      if (!wanted.has(new URL(url).pathname)) await cache.delete(url);
    }
    await Promise.all([...files].map((file) => cache.add(file).catch(() => {})));
    take.disabled = false;
    await show(lost ? `${lost} of ${pages.length} could not be brought. Try again.` : undefined);
  }

  navigator.serviceWorker.register("/sw.js").then(() => show());
  take.addEventListener("click", () => bring().catch(() => {
    take.disabled = false;
    show("There is no connection. Try again.");
  }));
  leave.addEventListener("click", async () => {
    await caches.delete(cacheOf(job));
    await show();
  });
})();
