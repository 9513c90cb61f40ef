// Control or Command with Z presses Undo of the page's bar, with Y or Shift and Z Redo. Where text
// is being edited the browser's own undo holds. The page comes back at the place where one was.
(() => {
  const PLACE = "undo place";
  const NO_TEXT = "button, [type=checkbox], [type=radio], [type=range], [type=file], select";

  function stepOf(event) {
    if (event.altKey || event.ctrlKey === event.metaKey) return null;
    const key = event.key.toLowerCase();
    if (key === "z") return event.shiftKey ? "redo" : "undo";
    return key === "y" && event.ctrlKey && !event.shiftKey ? "redo" : null;
  }

  function isTextEdited(element) {
    return element.matches("input, textarea, [contenteditable]") && !element.matches(NO_TEXT);
  }

  // A browser may keep nothing, or refuse to say: then the page comes back at its top.
  const inStore = (use) => draftStore.attempt(() => use(sessionStorage), null);

  let isGoing = false;

  const formOf = (step) => document.querySelector(`#undo-bar [data-step="${step}"]`);

  function say(words) {
    const line = document.createElement("div");
    line.className = "said";
    line.textContent = words;
    document.getElementById("said").replaceChildren(line);
    keepInSight();
  }

  // What is said stands on top of the page: it floats there while one is further down.
  function keepInSight() {
    const said = document.getElementById("said");
    said.classList.add("afloat");
    const settle = () => said.classList.remove("afloat");
    for (const sign of ["pointerdown", "keydown"]) {
      document.addEventListener(sign, settle, { once: true });
    }
  }

  document.addEventListener("keydown", (event) => {
    const step = stepOf(event);
    if (!step || event.repeat || event.defaultPrevented || isTextEdited(event.target)) return;
    if (!document.getElementById("undo-bar")) return;
    event.preventDefault();
    const form = formOf(step);
    if (form) form.requestSubmit();
    else say(step === "undo" ? "There is nothing to undo." : "There is nothing to do again.");
  });

  document.addEventListener("submit", (event) => {
    const { target: form } = event;
    const { step } = form.dataset;
    if (!step) return;
    // A step that is on its way is not taken twice.
    if (isGoing) return event.preventDefault();
    isGoing = true;
    const held = document.activeElement;
    inStore((store) => store.setItem(PLACE, JSON.stringify({
      page: location.pathname,
      asked: new URL(form.action).pathname,
      top: scrollY,
      step: form.contains(held) ? step : null,
      id: held.id,
    })));
  });

  // A page between, that asks whether somebody else's change may go, leaves the place waiting.
  function comeBack() {
    const kept = inStore((store) => store.getItem(PLACE));
    if (!kept) return;
    const place = JSON.parse(kept);
    if (location.pathname === place.asked) return;
    inStore((store) => store.removeItem(PLACE));
    if (location.pathname !== place.page) return;
    scrollTo(0, place.top);
    const other = place.step === "undo" ? "redo" : "undo";
    const held = place.step
      ? (formOf(place.step) ?? formOf(other))?.querySelector("button")
      : document.getElementById(place.id);
    held?.focus({ preventScroll: true });
    const said = document.getElementById("said");
    if (!said.children.length) return;
    keepInSight();
    // Put in anew, so that it is read out.
    setTimeout(() => said.replaceChildren(...said.children));
  }

  window.addEventListener("pageshow", () => {
    isGoing = false;
  });
  comeBack();
})();
