// The empty row of a wall's table shows what holds for its kind; it is drawn as it is typed, and so
// is a face in its cell.
(() => {
  const { isIn, isNew, nameOf, goTo } = grid;

  // What closes a cabinet is drawn as it is typed, and so is the empty row.
  const WAITS_MS = 150;
  let typing;
  document.addEventListener("input", ({ target: cell }) => {
    const box = document.querySelector("[data-as-typed]");
    if (!box || !isIn(cell) || !(isNew(cell) || nameOf(cell) === "face")) return;
    clearTimeout(typing);
    typing = setTimeout(() => {
      const values = isNew(cell) ? Object.fromEntries(new FormData(cell.form))
        : { [cell.name]: cell.value };
      const { ofRow, ofCells } = box.dataset;
      htmx.ajax("GET", isNew(cell) ? ofRow : ofCells,
        { source: box, target: box, values }).catch(() => {});
    }, WAITS_MS);
  });
  // Where it stands in the wall's drawing, it is drawn.
  document.addEventListener("focusout", ({ target }) => {
    if (!isIn(target)) return;
    clearTimeout(typing);
    for (const id of ["as-typed", "as-typed-not-yet"]) {
      document.getElementById(id)?.replaceChildren();
    }
  });

  // What the empty row shows is that of the kind that is chosen; what is typed in it stays.
  document.addEventListener("htmx:afterRequest", ({ detail: { elt, xhr, successful } }) => {
    if (!successful || !elt.matches("[data-row-kind]")) return;
    const page = new DOMParser().parseFromString(xhr.response, "text/html");
    for (const fresh of page.querySelectorAll("[data-new-cell]")) {
      elt.form.elements[fresh.name].placeholder = fresh.placeholder;
    }
  });
  document.addEventListener("keydown", (event) => {
    if (event.key !== "Enter" || !event.target.matches("[data-row-kind]")) return;
    event.preventDefault();
    goTo(event.target.form.elements.width);
  });
})();
