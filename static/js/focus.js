// The focus goes into a form that opens in place, and back to the link that opened it when one
// leaves it: by its link, or by Escape.
(() => {
  const { pathOf } = draftFields;
  const openers = new WeakMap();

  function intoForm(form) {
    if (form.contains(document.activeElement)) return;
    const first = draftFields.of(form).find((field) => field.checkVisibility());
    (first ?? form.querySelector("button"))?.focus();
  }

  // The same link, where several open the form.
  function backTo(part, form) {
    const address = pathOf(form.getAttribute("hx-post") ?? "");
    const links = [...part.querySelectorAll("a[hx-get]")]
      .filter((one) => pathOf(one.getAttribute("hx-get")) === address);
    const opener = openers.get(form);
    const link = links.find((one) => one.getAttribute("hx-get") === opener) ?? links[0];
    if (!link) return;
    const fold = link.closest("details");
    if (fold) fold.open = true;
    link.focus();
  }

  document.addEventListener("htmx:afterSettle", ({ detail }) => {
    const { verb, elt: asked } = detail.requestConfig ?? {};
    if (verb !== "get" || !asked.matches("a, body")) return;
    const part = detail.elt;
    const left = asked.closest("form");
    if (part.matches("form")) {
      openers.set(part, asked.getAttribute("hx-get"));
      intoForm(part);
    } else if (left) backTo(part, left);
  });

  document.addEventListener("keydown", (event) => {
    if (event.key !== "Escape" || event.defaultPrevented || event.isComposing) return;
    document.activeElement.closest("form")?.querySelector("a[data-leaves][hx-get]")?.click();
  });
})();
