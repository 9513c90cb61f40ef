// A wall's table is gone about like a spreadsheet: arrows and Enter go from cell to cell, typing
// replaces, F2 edits, Escape takes back; with Shift a block is chosen, which is copied, cut, filled
// or cleared.
const grid = (() => {
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
  let start = null;
  const MARK = "data-chosen";
  const marked = () => [...document.querySelectorAll(`[${MARK}]`)];

  function choose(cell, to) {
    for (const one of marked()) one.removeAttribute(MARK);
    [start, corner] = [cell, to];
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
    if (key === "Enter" && isNew(cell)) {
      cell.form.requestSubmit(); // Its button may wait for an answer; whoever types does not.
      return true;
    }
    if (key === "Enter") {
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
    if (key !== "ArrowUp" && key !== "ArrowDown") return false;
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
    if (corner && target === start) return; // The table came anew around it.
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

  return { isIn, isNew, nameOf, rowOf, rows, column, at, goTo };
})();
