// A block from a spreadsheet fills the cells of a wall's table from where one is; what has none yet
// becomes lines of a notebook.
const rowsAsLines = (() => {
  const { isIn, isNew, nameOf, rowOf, rows, column, at } = grid;

  const CABINETS = { base: "base", wall: "wall cabinets", tall: "tall" };
  const isCabinet = () => document.querySelector("[data-row-kind]").value in CABINETS;

  // Rows that have no cells yet, as a person would write them down.
  function written(values) {
    const row = document.getElementById("row-new");
    const [kind, isAbove] = row.elements.kind.value.split(/-(?=above$)/);
    const sizes = [["height", "high"], ["depth", "deep"], ["y", "up"]]
      .filter(([name]) => values[name]).map(([name, word]) => `${values[name]} ${word}`);
    if (values.x) sizes.push(`at ${values.x}`);
    const { placeholder } = row.elements.face;
    if (!isCabinet()) {
      const what = `${isAbove ? "upper " : ""}${kind.replace("-", " ")}`;
      return [what, values.width, ...sizes, values.face].filter(Boolean).join(" ");
    }
    return [values.label, values.width, ...sizes, values.face || placeholder].join(" ");
  }

  // With `isBegun` the last one is as far as it is typed.
  function asLines(block, isBegun = false) {
    const row = document.getElementById("row-new");
    const cabinets = CABINETS[row.elements.kind.value];
    let label = row.elements.label.placeholder;
    const lines = block.map((values, place) => {
      const named = values.label || label;
      const line = isBegun && place === block.length - 1
        ? [isCabinet() && named, values.width, values.face].filter(Boolean).join(" ")
        : written({ ...values, label: named });
      label = named.replace(/\d+(?!.*\d)/, (count) => Number(count) + 1);
      return line;
    });
    return [...(cabinets ? [cabinets] : []), ...lines].join("\n");
  }

  // A block from a spreadsheet goes into the cells from this one on, to the right and down.
  document.addEventListener("paste", (event) => {
    const { target: cell } = event;
    const text = (event.clipboardData?.getData("text/plain") ?? "").replace(/[\r\n]+$/, "");
    if (!isIn(cell) || !/[\t\n]/.test(text)) return;
    event.preventDefault();
    const pasted = text.split(/\r?\n/).map((line) => line.split("\t").map((one) => one.trim()));
    const old = rows().filter((row) => !row.closest("#row-new"));
    const top = isNew(cell) ? old.length : old.indexOf(rowOf(cell));
    const fresh = document.querySelector("#row-new .row");
    const left = column(cell);
    const lines = document.querySelector("[data-lines]");
    const [filled, lacking, more] = [[], [], []];
    pasted.forEach((line, under) => {
      const row = old[top + under] ?? (pasted.length === 1 ? fresh : null);
      const values = {};
      line.forEach((value, place) => {
        const into = at(row ?? fresh, left + place);
        if (!into) return value && lacking.push(value);
        if (!row) values[nameOf(into)] = value;
        else {
          into.value = value;
          filled.push(into);
        }
      });
      if (row || !line.some(Boolean)) return;
      more.push(values);
      if (values.label && lines && !isCabinet()) lacking.push(values.label);
    });
    const words = lacking.length ? [`There is no cell for ${lacking.join(", ")}.`] : [];
    const isWall = document.querySelector("[data-row-kind]")?.value === "new-wall";
    if (more.length && !lines) {
      const { form } = fresh.querySelector("input"); // Rows of their own are entered with the row.
      const names = [...fresh.querySelectorAll("input")].map(nameOf);
      form.elements.more.value = more.map((values) => names
        .map((name) => values[name] ?? "").join("\t")).join("\n");
      form.requestSubmit();
    } else if (more.length && !isWall && more.every((values) => values.width)) {
      const isFree = !lines.value.trim() && !lines.form.elements.before;
      lines.value = [lines.value.trimEnd(), asLines(more)].filter(Boolean).join("\n");
      if (isNew(cell) && isFree) lines.form.requestSubmit();
      else {
        lines.focus();
        words.push("What stands on no row yet is written below as lines: Enter enters them.");
      }
    } else if (more.length) {
      words.push(`There is no row for ${more.flatMap(Object.values).filter(Boolean).join(", ")}.`);
    }
    cells.save(filled.filter(cells.isCell), words.join(" "));
  });

  // Enter enters a line; with Shift, or among several, it begins the next one.
  document.addEventListener("keydown", (event) => {
    const { target: lines } = event;
    if (event.key !== "Enter" || event.shiftKey || event.isComposing) return;
    if (!lines.matches("[data-lines]") || lines.value.includes("\n")) return;
    event.preventDefault();
    lines.form.requestSubmit();
  });

  return asLines;
})();
