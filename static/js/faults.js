// What failed is said where one is, politely, and stays said until it is dealt with: a save at its
// form, until that is saved or left; what only follows a form beside that, until it follows again;
// anything else on top of the page.
(() => {
  const GONE = "The server can't be reached.";
  const HERE = "What you typed is still here, but not saved.";
  const AGAIN = "Try again: nothing has to be typed anew.";
  const COUNTED = [409, 422];

  const isSave = (elt) => elt.matches("form") && elt.getAttribute("method") === "post";
  const isAsked = (elt) => elt.matches("form, a, button");

  // A region that is read out stands there before anything is said in it.
  function regionIn(form) {
    const there = form.querySelector(":scope .faults");
    if (there) return there;
    const region = document.createElement("div");
    region.className = "faults";
    region.setAttribute("role", "status");
    const button = [...form.querySelectorAll("[type=submit]")].at(-1);
    const row = button?.closest(".actions") ?? button;
    if (row) row.before(region);
    else form.append(region);
    return region;
  }

  function placeOf(elt) {
    const form = elt.closest("form[method=post]");
    if (!form) return [document.getElementById("fault"), isAsked(elt) ? "asked" : "follow"];
    return [regionIn(form), isSave(elt) ? "save" : "follow"];
  }

  function words(xhr) {
    const page = new DOMParser().parseFromString(xhr.response ?? "", "text/html");
    const said = page.querySelector(".fault");
    return said ? [...said.childNodes] : [`The server failed at this (${xhr.status}).`];
  }

  function say(elt, said, isWorthAnother) {
    const [region, about] = placeOf(elt);
    const line = document.createElement("p");
    line.className = "fault";
    line.dataset.about = about;
    line.append(...said);
    const isTyped = about === "save" && draftFields.of(elt).length > 0;
    if (isTyped) line.append(` ${HERE}${isWorthAnother ? ` ${AGAIN}` : ""}`);
    else if (about === "save" && isWorthAnother) line.append(" Try again.");
    if (draftStore.isRefused) {
      for (const link of line.querySelectorAll("a")) link.target = "_blank";
    }
    const before = region.querySelector(`[data-about="${about}"]`);
    if (before?.textContent !== line.textContent) {
      before?.remove();
      region.append(line);
    }
    if (about !== "follow") region.scrollIntoView({ block: "nearest" });
  }

  function unsay(elt) {
    const [region, about] = placeOf(elt);
    region.querySelector(`[data-about="${about}"]`)?.remove();
    if (isAsked(elt)) document.getElementById("fault").replaceChildren();
  }

  // What nobody asked for must not throw the page away when the session has ended; nor must
  // anything, while what was typed can't be kept.
  document.addEventListener("htmx:configRequest", ({ detail }) => {
    if (!isAsked(detail.elt) || draftStore.isRefused) detail.headers["X-Stay"] = "yes";
    else if (draftStore.isTyped()) detail.headers["X-Kept"] = "yes";
  });

  document.addEventListener("htmx:beforeSwap", ({ detail }) => {
    const { status } = detail.xhr;
    if (status < 400 || COUNTED.includes(status)) return;
    detail.shouldSwap = false;
    say(detail.requestConfig.elt, words(detail.xhr), status >= 500);
  });

  document.addEventListener("htmx:beforeOnLoad", ({ detail }) => {
    const { status } = detail.xhr;
    if (status < 400 || COUNTED.includes(status)) unsay(detail.requestConfig.elt);
  });

  for (const cut of ["htmx:sendError", "htmx:timeout"]) {
    document.addEventListener(cut, ({ detail }) => {
      say(detail.requestConfig?.elt ?? detail.elt, [GONE], true);
    });
  }

  // While a save is under way nothing is typed that its answer would take away.
  document.addEventListener("htmx:beforeRequest", ({ detail }) => {
    const { elt } = detail;
    if (!isSave(elt)) return;
    regionIn(elt);
    if (elt.matches("[data-typed-on]")) return; // It keeps that by itself.
    detail.requestConfig.focused = document.activeElement;
    elt.inert = true;
  });

  // The focus is back before the answer is put in, and once more where its button was disabled.
  for (const over of ["htmx:beforeOnLoad", "htmx:afterRequest"]) {
    document.addEventListener(over, ({ detail }) => {
      const { elt, focused } = detail.requestConfig;
      if (!isSave(elt)) return;
      elt.inert = false;
      const isLost = document.activeElement === document.body;
      if (isLost && elt.contains(focused)) focused.focus({ preventScroll: true });
    });
  }
})();
