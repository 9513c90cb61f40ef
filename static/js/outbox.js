// What waits on this phone is sent once there is a signal, in its order, each entry once: its
// form's key is kept by the server. What can't be saved as it is stays until somebody settles it.
window.outbox = (() => {
  const { person, isOpen, all, settle, drop, element } = outboxStore;
  if (!isOpen) return { show: async () => {} };
  const place = document.getElementById("waiting");
  const [SOON_MS, EVERY_MS, LONGEST_MS] = [2000, 30000, 75000];
  const NOT_NOW = [401, 429, 502, 503, 504];
  let [trouble, waits, shown] = ["", 0, null];
  let told = ""; // What is to be known of what was saved: somebody else was at it meanwhile.

  async function token() {
    const answer = await fetch("/waiting/", { headers: { Accept: "application/json" } });
    const said = answer.ok && !answer.redirected ? await answer.json() : {};
    return said.person === person ? said.token : null;
  }

  const wordsIn = (html) => [...new DOMParser().parseFromString(html, "text/html")
    .querySelectorAll(".error, .question p, .summary li, .fault")]
    .map((one) => one.textContent.trim().replace(/\s+/g, " ")).filter(Boolean).join(" ");

  // As the form would send it.
  function bodyOf(entries) {
    if (!entries.some(([, value]) => value instanceof Blob)) return new URLSearchParams(entries);
    const data = new FormData();
    for (const [name, value] of entries) data.append(name, value);
    return data;
  }

  async function sendOne(entry, key) {
    const answer = await fetch(entry.url, {
      method: "POST", body: bodyOf(entry.body), signal: AbortSignal.timeout(LONGEST_MS),
      headers: {
        "HX-Request": "true", "X-CSRFToken": key, "X-Stay": "yes",
        "X-Entered": new Date(entry.at).toISOString(),
      },
    });
    if (answer.ok) {
      told = [told, wordsIn(await answer.text())].filter(Boolean).join(" ");
      return settle(entry);
    }
    if (NOT_NOW.includes(answer.status)) throw new Error(`the server says ${answer.status}`);
    const said = wordsIn(await answer.text()) || `The server says ${answer.status}.`;
    return settle(entry, answer.status === 404 ? "It is no longer there." : said);
  }

  // One tab sends at a time.
  const send = () => navigator.locks.request("outbox", { ifAvailable: true }, async (lock) => {
    const waiting = lock ? (await all()).filter((entry) => !entry.refused && !entry.wants) : [];
    if (!waiting.length) return;
    try {
      const key = await token();
      trouble = key ? "" : "Sign in to send them.";
      for (const entry of key ? waiting : []) await sendOne(entry, key);
    } catch (error) {
      const isCut = error instanceof TypeError || error.name === "TimeoutError";
      trouble = isCut ? "" : `Not now: ${error.message}.`;
      if (isCut && navigator.onLine) setTimeout(send, SOON_MS); // The signal is just back, or weak.
    }
    trouble = [trouble, told].filter(Boolean).join(" ");
    await show();
    if (!told && (await all()).length < waiting.length) refresh();
    told = "";
  });

  // Back on the line: what this page shows may be old.
  const again = () => send().then(() => document.body.dataset.heldAt && refresh());

  // The page as it is now, unless somebody is at something on it.
  function refresh() {
    const isTyped = (field) => !["hidden", "file", "checkbox", "radio"].includes(field.type)
      && field.value !== field.defaultValue;
    const isBusy = document.activeElement.matches("input, textarea, select")
      || [...document.querySelectorAll("main :is(input, textarea)")].some(isTyped);
    if (!isBusy) location.reload();
    else htmx.trigger(document.body, "job-changed");
  }

  function line(entry) {
    const item = element("li", "");
    item.append(element("a", entry.says, { href: entry.page }));
    if (entry.wants) item.append(" wants the other diagonal.");
    if (entry.refused) {
      item.append(" ", element("strong", "can't be saved as it is."), ` ${entry.refused} `);
    }
    const away = element("button", "Drop it", { type: "button", className: "link grave" });
    away.addEventListener("click", async () => { // Once to ask, once to do it.
      if (away.dataset.sure) {
        await drop(entry.id);
        await show();
      } else {
        away.dataset.sure = "yes";
        away.textContent = "Drop it for good";
      }
    });
    item.append(" ", away);
    return item;
  }

  async function show() {
    const entries = await all();
    waits = entries.length;
    const now = JSON.stringify([trouble, entries.map((one) => [one.id, one.at, one.refused])]);
    if (now === shown) return;
    shown = now;
    document.dispatchEvent(new CustomEvent("outbox", { detail: entries }));
    const { heldAt } = document.body.dataset;
    const old = heldAt ? `Without a connection: this page is as of ${heldAt}. ` : "";
    place.replaceChildren();
    place.classList.toggle("waits", waits > 0 || Boolean(trouble || old));
    const stuck = entries.filter((entry) => entry.refused).length;
    const few = waits === 1 ? "1 entry waits" : `${waits} entries wait`;
    const said = element("p", `${old}${waits ? `${few} to be sent. ` : ""}`);
    said.setAttribute("role", "status");
    if (stuck) said.append(element("strong", `${stuck} to settle. `));
    said.append(trouble);
    place.append(said);
    if (!waits) return;
    const button = element("button", "Send now", { type: "button", className: "link" });
    button.addEventListener("click", send);
    const list = element("ul", "");
    list.append(...entries.map(line));
    const more = element("details", "");
    more.open = stuck > 0;
    more.append(element("summary", "Which"), list);
    place.append(button, more);
  }

  // Signing out asks while something waits: it stays here, for the same person alone.
  document.addEventListener("submit", (event) => {
    const form = event.target;
    if (!waits || !form.matches(".site-person") || form.dataset.sure) return;
    event.preventDefault();
    form.dataset.sure = "yes";
    trouble = "Sign out all the same? They stay on this phone until you are back; press again.";
    show();
  }, true);

  show().then(send).catch(() => {});
  addEventListener("online", again);
  document.addEventListener("visibilitychange", () => document.hidden || send());
  setInterval(() => document.hidden || send(), EVERY_MS);

  return {
    show: (words = "") => {
      trouble = words;
      return show();
    },
  };
})();
