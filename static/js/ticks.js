// Steps that somebody ticked off stay ticked in this tab, for that person alone.
(() => {
  const { person } = document.body.dataset;
  if (!person) return;
  const name = (box) => `tick ${person} ${location.pathname} ${box.id}`;

  // A browser may refuse to keep anything; the ticks then last as long as the page.
  const kept = (work) => draftStore.attempt(() => work(sessionStorage), null);

  document.addEventListener("change", ({ target: box }) => {
    if (!box.matches("[data-tick]")) return;
    kept((tab) => (box.checked ? tab.setItem(name(box), "yes") : tab.removeItem(name(box))));
  });

  for (const box of document.querySelectorAll("[data-tick]")) {
    box.checked = kept((tab) => tab.getItem(name(box))) === "yes";
  }
})();
