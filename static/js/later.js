// A form that says in data-later what it is about need not be answered at once: without a signal
// what it says waits on this phone, and one goes on to the next page.
(() => {
  const { isOpen, all, put, drop, element } = outboxStore;
  if (!isOpen) return;
  const TOKEN = "csrfmiddlewaretoken";
  const HOUSEHOLD = [
    "form_key", "seen", "front", "wall", "hung", "sure", "here", "on", "who"];
  const isFile = (value) => value instanceof Blob;
  // Photos, and things that do not exist yet, are each their own; of all else the later one holds.
  const isEach = (form, body) => form?.matches("[data-new]")
    || body.some(([, value]) => isFile(value));
  const typedIn = (body) => body
    .filter(([name, value]) => value && !HOUSEHOLD.includes(name))
    .map(([, value]) => (isFile(value) ? "a photo" : value));
  const pathOf = (url) => url.split("?")[0];
  // Of a list's steps each is its own, too.
  const eachOf = (form, body) => ("each" in form.dataset ? typedIn([...body]).join() : undefined);

  // Of two diagonals neither is kept alone: what waits of the other goes along in the address.
  function withPair(url, form, entries) {
    const { pair } = form.dataset;
    if (!pair) return { url };
    const other = entries.find((one) => pathOf(one.url) === pair);
    const mine = entries.find((one) => pathOf(one.url) === url);
    const typed = other ? typedIn(other.body)[0]
      : new URLSearchParams(mine?.url.split("?")[1]).get("pair");
    return typed ? { url: `${url}?${new URLSearchParams({ pair: typed })}`, other }
      : { url, wants: true };
  }

  // `sent` is what the form sent, the button that was pressed with it.
  async function wait(form, sent) {
    const body = [...sent].filter(([name, value]) => name !== TOKEN
      && !(isFile(value) && !value.size));
    const entries = await all();
    const address = pathOf(form.getAttribute("action"));
    const { other, ...where } = withPair(address, form, entries);
    const each = eachOf(form, body);
    const same = !isEach(form, body) && entries.find((one) =>
      pathOf(one.url) === address && one.form === form.id && one.each === each);
    await put({
      ...(same && { id: same.id }), ...where, body, form: form.id, each, at: Date.now(),
      says: `${form.dataset.later}: ${typedIn(body).join(", ")}`, page: location.pathname,
    });
    if (other) await drop(other.id);
    if (form.matches("[data-new]")) form.reset();
    draftStore.drop(`${draftFields.pathOf(form.getAttribute("action"))} ${form.id}`);
    if (form.dataset.next) return location.assign(form.dataset.next);
    await window.outbox.show();
    form.querySelector(".waits-here")?.scrollIntoView({ block: "center" });
  }

  // Nothing came back: it is on its way, lost, or never left. It waits here, and comes once.
  for (const cut of ["htmx:sendError", "htmx:timeout"]) {
    document.addEventListener(cut, (event) => {
      const { requestConfig } = event.detail;
      const elt = requestConfig?.elt ?? event.detail.elt;
      if (elt.matches("form[data-later]")) {
        event.stopImmediatePropagation();
        // Where there is no room for it, what is typed stays in its form.
        wait(elt, requestConfig.formData).catch(
          ({ message }) => window.outbox.show(`What you typed can't be kept here (${message}).`));
      } else if (elt.matches("a[href]")) {
        event.stopImmediatePropagation();
        location.assign(elt.href); // The page as it was taken along.
      }
    }, true); // Before it is said that the server can't be reached.
  }

  // What is saved at its form needs to wait no longer.
  document.addEventListener("htmx:afterRequest", async ({ detail }) => {
    const { elt, successful, requestConfig } = detail;
    if (!successful || !elt.matches("form[data-later]")) return;
    const each = eachOf(elt, [...requestConfig.formData].filter(([name]) => name !== TOKEN));
    const address = pathOf(elt.getAttribute("action"));
    for (const entry of await all()) {
      const isOther = pathOf(entry.url) !== address || entry.form !== elt.id
        || entry.each !== each;
      if (!isOther && !isEach(elt, entry.body)) await drop(entry.id);
    }
    await window.outbox.show();
  });

  // A step that waits is shown as it will be; pressed again it waits the other way round.
  function mark(form, { each, body }) {
    const button = [...form.elements].find((one) => one.type === "submit" && one.value === each);
    if (!button) return;
    const isTicked = body.some(([name]) => name === "tick");
    button.name = isTicked ? "untick" : "tick";
    button.setAttribute("aria-pressed", isTicked);
    button.querySelector(".box").textContent = isTicked ? "✓" : "";
  }

  // A link says once that something waits where it leads: at its own form, if it is about one.
  function markLinks(entries) {
    const known = [...document.querySelectorAll("main a[href]:not(.button, .ways a, #waiting a)")];
    for (const link of known) {
      const { about } = link.dataset;
      const isAt = ({ page, form }) => page === link.pathname && (!about || about === form);
      if (entries.some(isAt)) {
        link.append(element("span", " waits", { className: "waits-here" }));
      }
    }
  }

  // On to the next front of which no record waits here.
  function goOn(entries) {
    const way = document.querySelector("[data-to-do]");
    if (!way) return;
    const open = way.dataset.open.split(" ");
    const isOpen = ([name, value]) => name === "state" && open.includes(value);
    const passed = entries.filter(({ refused, body }) => !refused && !body.some(isOpen));
    const next = JSON.parse(way.dataset.toDo)
      .find(([about]) => !passed.some(({ form }) => form === about));
    const [, label, href] = next ?? [null, "", "../"];
    way.href = href;
    way.textContent = label ? `Next: ${label}` : "All recorded";
    way.setAttribute("aria-label", label ? `Next not done: ${label}` : "All recorded");
  }

  // Where something waits, its link and its form say so; the form has it in it as long.
  const filled = new Map();
  document.addEventListener("outbox", ({ detail: entries }) => {
    for (const old of document.querySelectorAll(".waits-here")) old.remove();
    markLinks(entries);
    goOn(entries);
    for (const [field, value] of filled) {
      if (field.value === value) field.value = field.defaultValue;
    }
    filled.clear();
    for (const entry of entries) {
      const form = document.getElementById(entry.form);
      if (pathOf(form?.getAttribute("action") ?? "") !== pathOf(entry.url)) continue;
      form.prepend(element("p", `Waits to be sent: ${entry.says}`, { className: "waits-here" }));
      if (entry.each) mark(form, entry);
      if (form.matches("[data-new]")) continue;
      for (const [name, value] of entry.body) {
        const field = HOUSEHOLD.includes(name) || isFile(value) ? null : form.elements[name];
        if (!field || !("defaultValue" in field)) continue;
        if (!draftStore.isTyped()) field.value = value;
        if (field.value === value) filled.set(field, value);
      }
    }
  });
})();
