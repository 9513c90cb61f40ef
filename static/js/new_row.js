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
      const typed = isNew(cell) ? [...cell.form.elements].filter((one) => isIn(one)
        || ["kind", "wall"].includes(one.name)) : [cell];
      const values = Object.fromEntries(typed.map((one) => [one.name, one.value]));
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

  // A row is sent as it is entered, and the next one is typed at once: keys go into an empty row,
  // and rows that are entered before the answer came wait for their turn.
  const rowForm = () => document.querySelector("#row-new[data-typed-on]");
  const cellsIn = (form) => [...form.querySelectorAll("[data-new-cell]")];
  const read = (form) => Object.fromEntries(cellsIn(form).map((one) => [one.name, one.value]));
  const saysAny = (values) => Object.values(values).some(Boolean);
  const waiting = [];
  let sent = null;
  let meanwhile = null;

  function write(form, values) {
    for (const one of cellsIn(form)) one.value = values[one.name] ?? "";
  }

  function empty(form) {
    write(form, {});
    goTo(form.elements.width);
  }

  document.addEventListener("submit", (event) => {
    if (event.target !== rowForm() || !sent) return;
    event.preventDefault();
    event.stopImmediatePropagation();
    waiting.push(read(event.target));
    empty(event.target);
  }, true);

  document.addEventListener("htmx:beforeRequest", ({ detail: { elt } }) => {
    if (elt !== rowForm()) return;
    sent = read(elt);
    empty(elt);
  });

  document.addEventListener("htmx:beforeSwap", ({ detail: { target, requestConfig } }) => {
    if (target !== rowForm() || requestConfig.elt !== target) return;
    const at = document.activeElement;
    const isHere = target.contains(at) && at.name;
    const { value: kind } = target.elements.kind;
    meanwhile = { values: read(target), kind, isOther: kind !== requestConfig.parameters.kind,
      at: isHere && at.name, from: at.selectionStart };
  });

  document.addEventListener("htmx:afterRequest", ({ detail }) => {
    const form = rowForm();
    if (!sent || !form || detail.requestConfig.elt?.id !== "row-new") return;
    const now = meanwhile ?? { values: read(form), at: "width" };
    const row = sent;
    [sent, meanwhile] = [null, null];
    if (detail.xhr.status === 200) {
      goOn(form, now);
      if (waiting.length) next(form);
      return;
    }
    // It was refused, or did not get through: it is there again, and what was typed since waits.
    if (detail.xhr.status !== 422) write(form, row);
    const isBegun = saysAny(now.values);
    const rest = [...waiting.splice(0), ...(isBegun ? [now.values] : [])];
    const lines = document.querySelector("[data-lines]");
    if (!rest.length || !lines) return;
    const all = [lines.value.trimEnd(), rowsAsLines(rest, isBegun)].filter(Boolean).join("\n");
    lines.value = isBegun ? all : `${all}\n`;
    lines.focus(); // Whoever types on does so behind what was begun, not over what was refused.
    lines.setSelectionRange(lines.value.length, lines.value.length);
  });

  // Where one was by then, with what one had typed and chosen.
  function goOn(form, now) {
    write(form, now.values);
    const { kind } = form.elements;
    if (now.isOther && now.kind !== kind.value) {
      kind.value = now.kind;
      kind.dispatchEvent(new Event("change", { bubbles: true }));
    }
    const cell = form.elements[now.at];
    if (!cell) return;
    cell.focus();
    if (isIn(cell) && cell.value) cell.setSelectionRange(now.from, now.from);
  }

  function next(form) {
    const values = read(form);
    write(form, waiting.shift());
    form.requestSubmit();
    write(form, values);
  }

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
