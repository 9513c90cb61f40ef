// A form that says in data-later what it is about need not be answered at once: without a signal
// what it says waits on this phone, and one goes on to the next page.
(() => {
  const { all, put, element } = outboxStore;
  const HOUSEHOLD = ["csrfmiddlewaretoken", "form_key", "seen", "front", "wall"];

  const isFile = (value) => value instanceof Blob;
  const typedIn = (body) => body
    .filter(([name, value]) => value && !HOUSEHOLD.includes(name))
    .map(([, value]) => (isFile(value) ? "a photo" : value));

  async function wait(form) {
    const body = [...new FormData(form)];
    // The other diagonal, taken without a signal too, goes along in the address.
    const url = form.getAttribute("action").split("?")[0] + location.search;
    // Of a size the later one holds; photos are each their own.
    const same = !body.some(([, value]) => isFile(value))
      && (await all()).find((one) => one.url === url && one.form === form.id);
    await put({
      ...(same && { id: same.id }), url, body, form: form.id, at: Date.now(),
      says: `${form.dataset.later}: ${typedIn(body).join(", ")}`, page: location.pathname,
    });
    draftStore.drop(`${draftFields.pathOf(url)} ${form.id}`);
    const { next, pair } = form.dataset;
    const typed = pair === undefined ? "" : new URLSearchParams({ pair: typedIn(body)[0] });
    if (next) location.assign(typed ? `${next.split("?")[0]}?${typed}` : next);
    else await outbox.show();
  }

  // Nothing came back: it is on its way, lost, or never left. It waits here, and comes once.
  for (const cut of ["htmx:sendError", "htmx:timeout"]) {
    document.addEventListener(cut, (event) => {
      const elt = event.detail.requestConfig?.elt ?? event.detail.elt;
      const form = elt.closest("form[data-later]");
      if (form && elt === form) {
        event.stopImmediatePropagation();
        // Where there is no room for it, what is typed stays in its form.
        wait(form).catch(({ message }) => outbox.show(`It can't be kept here (${message}).`));
      } else if (elt.matches("a[href]")) {
        event.stopImmediatePropagation();
        location.assign(elt.href); // The page as it was taken along.
      }
    }, true); // Before it is said that the server can't be reached.
  }

  // Where something waits, its link and its form say so; the form has it in it.
  document.addEventListener("outbox", ({ detail: entries }) => {
    for (const old of document.querySelectorAll(".waits-here")) old.remove();
    for (const entry of entries) {
      for (const link of document.querySelectorAll("main a[href]:not(.button)")) {
        if (link.pathname === entry.page && !link.closest("#waiting")) {
          link.append(element("span", " waits", { className: "waits-here" }));
        }
      }
      const form = document.getElementById(entry.form);
      if (form?.getAttribute("action").split("?")[0] !== entry.url.split("?")[0]) continue;
      form.prepend(element("p", `Waits to be sent: ${entry.says}`, { className: "waits-here" }));
      if (draftStore.isTyped()) continue;
      for (const [name, value] of entry.body) {
        const field = HOUSEHOLD.includes(name) || isFile(value) ? null : form.elements[name];
        if (field && "value" in field) field.value = value;
      }
    }
  });
})();
