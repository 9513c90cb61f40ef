// A wall's table is gone about like a spreadsheet: arrows and Enter go from cell to cell, typing
// replaces, F2 edits, Escape takes back; with Shift a block is chosen, which is copied, cut, filled
// or cleared; a block that is pasted fills cells, and what has none becomes lines.
(() => {
  const CELL = "[data-cell], [data-new-cell]";
  const isIn = (element) => element instanceof HTMLInputElement && element.matches(CELL);
  const isNew = (cell) => cell.matches("[data-new-cell]");
  const nameOf = (cell) => cell.name.split("-").at(-1);

  // Cells by their place: rows from the top, columns as they stand in the row.
  const rowOf = (cell) => cell.closest(".row");
  const rows = () => [...document.querySelectorAll("[data-cells] .row, #row-new .row")]
    .filter((row) => row.querySelector(CELL) && row.checkVisibility());
  const column = (cell) => [...rowOf(cell).children].findIndex((one) => one.contains(cell));
  const at = (row, place) => row?.children[place]?.querySelector?.(CELL) ?? null;

  function goTo(cell) {
    if (!cell) return false;
    cell.focus();
    cell.select();
    return true;
  }

  function below(cell, by) {
    const all = rows();
    let next = all.indexOf(rowOf(cell)) + by;
    while (all[next] && !at(all[next], column(cell))) next += by;
    return at(all[next], column(cell));
  }

  function along(cell, by) {
    const all = rows().flatMap((row) => [...row.querySelectorAll(CELL)]);
    return all[all.indexOf(cell) + by];
  }

  // A block: from the cell where one is to the corner that Shift and arrows move.
  let corner = null;
  const MARK = "data-chosen";
  const marked = () => [...document.querySelectorAll(`[${MARK}]`)];

  function choose(cell, to) {
    for (const one of marked()) one.removeAttribute(MARK);
    corner = to;
    for (const one of to ? block(cell).flat() : []) one?.setAttribute(MARK, "");
  }

  // The cell at the corner may have come anew, with its row.
  function far() {
    if (corner && !corner.isConnected) corner = document.getElementById(corner.id);
    return corner;
  }
  document.addEventListener("htmx:afterSettle", () => {
    const cell = document.activeElement;
    if (far() && isIn(cell)) choose(cell, corner);
  });

  function block(cell) {
    if (!far()) return [[cell]];
    const [all, ends] = [rows(), [cell, corner]];
    const lines = ends.map((one) => all.indexOf(rowOf(one))).sort((a, b) => a - b);
    const places = ends.map(column).sort((a, b) => a - b);
    return all.slice(lines[0], lines[1] + 1).map((row) => Array.from(
      { length: places[1] - places[0] + 1 }, (_, place) => at(row, places[0] + place)));
  }

  function fill(into, value) {
    for (const cell of into) cell.value = value(cell);
    cells.save(into.filter(cells.isCell));
  }

  // As the cell at the top of the block; one cell by itself as the one above it.
  function fillDown(cell) {
    const lines = block(cell);
    const above = lines.length > 1 ? lines[0] : lines[0].map((one) => one && below(one, -1));
    const rest = lines.length > 1 ? lines.slice(1) : lines;
    const pairs = rest.flatMap((line) => line.map((one, place) => [one, above[place]]))
      .filter((pair) => pair.every(Boolean));
    const held = new Map(pairs.map(([one, from]) => [one, from.value || from.placeholder]));
    fill([...held.keys()], (one) => held.get(one));
    return true;
  }

  const COMMANDS = {
    d: fillDown,
    // The whole block says what the cell where one is says.
    enter: (cell) => corner && (fill(block(cell).flat().filter(Boolean), () => cell.value), true),
  };

  function extend(cell, key) {
    const from = far() ?? cell;
    const next = { ArrowDown: () => below(from, 1), ArrowUp: () => below(from, -1) }[key]?.()
      ?? { ArrowLeft: () => beside(from, -1), ArrowRight: () => beside(from, 1) }[key]?.();
    if (next) choose(cell, next);
    return Boolean(next);
  }

  function beside(cell, by) {
    const next = along(cell, by);
    return next && rowOf(next) === rowOf(cell) ? next : null;
  }

  function step(event) {
    const { target: cell, key } = event;
    const whole = cell.selectionStart === 0 && cell.selectionEnd === cell.value.length;
    const first = cell.selectionEnd === 0;
    const last = cell.selectionStart === cell.value.length;
    const isUpright = key === "ArrowDown" || key === "ArrowUp";
    const isFarther = event.shiftKey && (isUpright || (whole && key.startsWith("Arrow")));
    if (isFarther) return extend(cell, key);
    if (key === "Enter" && !isNew(cell)) {
      return goTo(below(cell, event.shiftKey ? -1 : 1)) || (cells.save([cell]), true);
    }
    if (key === "ArrowDown") return goTo(below(cell, 1));
    if (key === "ArrowUp") return goTo(below(cell, -1));
    if (key === "ArrowLeft" && (whole || first)) return goTo(along(cell, -1));
    if (key === "ArrowRight" && (whole || last)) return goTo(along(cell, 1));
    if (key === "F2") {
      cell.setSelectionRange(cell.value.length, cell.value.length);
      return true;
    }
    if (key === "Insert") return insert(cell);
    if (key === "Delete" && corner) {
      fill(block(cell).flat().filter(Boolean), () => "");
      return true;
    }
    if (key === "Escape" && corner) {
      choose(cell, null);
      return true;
    }
    if (key === "Escape" && cells.differs(cell)) {
      cell.value = cell.defaultValue;
      cell.select();
      return true;
    }
    // Out of the last cell of a row that says something: it is entered.
    if (key === "Tab" && !event.shiftKey && isNew(cell) && !beside(cell, 1)
        && cell.form.elements.width.value) {
      cell.form.requestSubmit();
      return true;
    }
    return false;
  }

  // Insert begins a line that goes before the row.
  function insert(cell) {
    const link = cell.closest("[role=rowgroup]")?.querySelector("[data-inserts]");
    link?.click();
    return Boolean(link);
  }

  // With Alt the whole row goes along its wall.
  function move(cell, key) {
    const button = cell.closest("[role=rowgroup]")?.querySelector(`[data-goes="${key}"]`);
    if (!button) return false;
    cells.save([cell]);
    button.click();
    return true;
  }

  document.addEventListener("keydown", (event) => {
    if (!isIn(event.target) || event.defaultPrevented || event.isComposing) return;
    if (event.altKey) return move(event.target, event.key) && event.preventDefault();
    const isCommand = event.ctrlKey || event.metaKey;
    const done = isCommand ? COMMANDS[event.key.toLowerCase()]?.(event.target) : step(event);
    if (done) event.preventDefault();
  });

  document.addEventListener("focusin", ({ target }) => {
    if (corner) choose(target, null);
    if (isIn(target)) target.select();
  });

  // What is chosen goes along as a spreadsheet takes it: tabs between cells, a line for each row.
  function copy(event) {
    const { target: cell } = event;
    if (!isIn(cell) || !corner) return;
    event.preventDefault();
    const lines = block(cell);
    event.clipboardData.setData("text/plain", lines.map((line) => line
      .map((one) => one?.value ?? "").join("\t")).join("\n"));
    if (event.type === "cut") fill(lines.flat().filter(Boolean), () => "");
  }
  document.addEventListener("copy", copy);
  document.addEventListener("cut", copy);

  // Rows that have no cells yet, as a person would write them down.
  function written(values) {
    const row = document.getElementById("row-new");
    const [kind, isAbove] = row.elements.kind.value.split(/-(?=above$)/);
    const sizes = [["height", "high"], ["depth", "deep"], ["y", "up"]]
      .filter(([name]) => values[name]).map(([name, word]) => `${values[name]} ${word}`);
    if (values.x) sizes.push(`at ${values.x}`);
    const { placeholder } = row.elements.face;
    if (!["base", "wall", "tall"].includes(kind)) {
      const what = `${isAbove ? "upper " : ""}${kind.replace("-", " ")}`;
      return [what, values.width, ...sizes, values.face].filter(Boolean).join(" ");
    }
    return [values.label, values.width, ...sizes, values.face || placeholder].join(" ");
  }

  function asLines(block) {
    const row = document.getElementById("row-new");
    const { kind } = row.elements;
    const cabinets = { base: "base", wall: "wall cabinets", tall: "tall" }[kind.value];
    let label = row.elements.label.placeholder;
    const lines = block.map((values) => {
      const line = written({ label, ...values });
      label = (values.label || label).replace(/\d+(?!.*\d)/, (count) => Number(count) + 1);
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
      if (!row && line.some(Boolean)) more.push(values);
    });
    const words = lacking.length ? [`There is no cell for ${lacking.join(", ")}.`] : [];
    const lines = document.querySelector("[data-lines]");
    if (more.length && more.every((values) => values.width)) {
      lines.value = asLines(more);
      if (isNew(cell)) lines.form.requestSubmit();
      else {
        lines.focus();
        words.push("What stands on no row yet is written below as lines: Enter enters them.");
      }
    } else if (more.length) {
      words.push(`There is no row for ${more.flatMap(Object.values).filter(Boolean).join(", ")}.`);
    }
    cells.save(filled.filter(cells.isCell), words.join(" "));
  });

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

  // Enter enters a line; with Shift, or among several, it begins the next one.
  document.addEventListener("keydown", (event) => {
    const { target: lines } = event;
    if (event.key !== "Enter" || event.shiftKey || event.isComposing) return;
    if (!lines.matches("[data-lines]") || lines.value.includes("\n")) return;
    event.preventDefault();
    lines.form.requestSubmit();
  });
})();
