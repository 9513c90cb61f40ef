// What waits on this phone is sent once there is a signal, in its order, each entry once: its
// form's key is kept by the server. What can't be saved as it is stays until somebody settles it.
const outbox = (() => {
  const { person, all, put, drop, element } = outboxStore;
  if (!person || !window.indexedDB) return { show: async () => {} };
  const place = document.getElementById("waiting");
  const EVERY_MS = 30000;
  let trouble = "";
  let waits = 0;

  async function token() {
    const answer = await fetch("/waiting/", { headers: { Accept: "application/json" } });
    const said = answer.ok && !answer.redirected ? await answer.json() : {};
    return said.person === person ? said.token : null;
  }

  const wordsIn = (html) => [...new DOMParser().parseFromString(html, "text/html")
    .querySelectorAll(".error, .question p, .summary li, .fault")]
    .map((one) => one.textContent.trim().replace(/\s+/g, " ")).filter(Boolean);

  // As the form would send it.
  function bodyOf(entries) {
    if (!entries.some(([, value]) => value instanceof Blob)) return new URLSearchParams(entries);
    const data = new FormData();
    for (const [name, value] of entries) data.append(name, value);
    return data;
  }

  // One tab sends at a time.
  const send = () => navigator.locks.request("outbox", { ifAvailable: true }, async (lock) => {
    if (!lock) return;
    const waiting = (await all()).filter((entry) => !entry.refused);
    if (!waiting.length) return;
    let sent = 0;
    try {
      const key = await token();
      trouble = key ? "" : "Sign in to send them.";
      for (const entry of key ? waiting : []) {
        const answer = await fetch(entry.url, {
          method: "POST", body: bodyOf(entry.body),
          headers: { "HX-Request": "true", "X-CSRFToken": key, "X-Stay": "yes" },
        });
        if (answer.ok) {
          await drop(entry.id);
          sent += 1;
        } else if ([404, 409, 422].includes(answer.status)) {
          const said = wordsIn(await answer.text()).join(" ");
          await put({ ...entry, refused: said || "It is no longer there." });
        } else throw new Error(`the server says ${answer.status}`);
      }
    } catch (error) {
      if (navigator.onLine && !(error instanceof TypeError)) trouble = `Not now: ${error.message}.`;
    }
    await show();
    if (sent && !draftStore.isTyped()) location.reload();
    else if (sent) htmx.trigger(document.body, "job-changed");
  });

  function line(entry) {
    const item = element("li", "");
    item.append(element("a", entry.says, { href: entry.page }));
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
    document.dispatchEvent(new CustomEvent("outbox", { detail: entries }));
    place.replaceChildren();
    place.classList.toggle("waits", entries.length > 0 || Boolean(trouble));
    if (!entries.length && !trouble) return;
    const stuck = entries.filter((entry) => entry.refused).length;
    const few = entries.length === 1 ? "1 entry waits" : `${entries.length} entries wait`;
    const said = element("p", entries.length ? `${few} to be sent. ` : "");
    if (stuck) said.append(element("strong", `${stuck} to settle. `));
    said.append(trouble);
    const now = element("button", "Send now", { type: "button", className: "link" });
    now.addEventListener("click", send);
    const list = element("ul", "");
    list.append(...entries.map(line));
    const more = element("details", "");
    more.open = stuck > 0;
    more.append(element("summary", "Which"), list);
    place.append(said, ...(entries.length ? [now, more] : []));
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

  const begin = () => {
    show().then(send).catch(() => {});
  };
  document.addEventListener("DOMContentLoaded", begin);
  addEventListener("online", () => send());
  document.addEventListener("visibilitychange", () => document.hidden || send());
  setInterval(() => document.hidden || send(), EVERY_MS);

  return {
    show: (words = "") => {
      trouble = words;
      return show();
    },
  };
})();
