// A wall's table is typed like a spreadsheet: each cell is saved as it is left, arrows and Enter go
// from cell to cell, typing replaces, F2 edits, Escape takes back. What comes back from the server
// leaves the cell where one is, and those that wait or are refused, as they stand.
(() => {
  const CELL = "[data-cell]";
  const WAITS = "data-waits";
  const table = () => document.querySelector("[data-cells]");
  const isCell = (element) => element instanceof HTMLInputElement && element.matches(CELL);
  let untold = "";
  let isComing = false; // The table, anew: no cell is left by that.
  const differs = (cell) => cell.value !== cell.defaultValue;

  // Cells by their place: rows from the top, columns as they stand in the row.
  const lines = () => [...table().querySelectorAll("[role=row]")]
    .filter((row) => row.querySelector(CELL) && row.checkVisibility());
  const column = (cell) => [...cell.closest("[role=row]").children]
    .findIndex((one) => one.contains(cell));
  const at = (row, place) => row?.children[place]?.querySelector?.(CELL) ?? null;

  function goTo(cell) {
    if (!cell) return false;
    cell.focus();
    cell.select?.();
    return true;
  }

  function down(cell, by) {
    const rows = lines();
    const place = column(cell);
    let next = rows.indexOf(cell.closest("[role=row]")) + by;
    while (rows[next] && !at(rows[next], place)) next += by;
    return goTo(at(rows[next], place));
  }

  function along(cell, by) {
    const cells = [...table().querySelectorAll(CELL)]
      .filter((one) => one.checkVisibility());
    return goTo(cells[cells.indexOf(cell) + by]);
  }

  // Sent together they are one step back.
  function save(cells) {
    const changed = cells.filter(differs);
    if (!changed.length) return;
    const values = { seen: JSON.stringify(Object.fromEntries(
      changed.map((cell) => [cell.name, cell.defaultValue]))) };
    for (const cell of changed) {
      values[cell.name] = cell.value;
      cell.setAttribute(WAITS, cell.value);
    }
    say(changed, "Saving …");
    htmx.ajax("POST", table().dataset.cells, { source: document.body, values, swap: "none" });
  }

  function say(cells, words) {
    for (const cell of cells) cell.title = words;
  }

  document.addEventListener("focusin", ({ target }) => {
    if (isCell(target)) target.select();
  });
  document.addEventListener("focusout", ({ target }) => {
    if (isCell(target) && !isComing) save(unsaved(target));
  });

  // What did not get through goes along with the next one that is left.
  const unsaved = (left) => [...table().querySelectorAll(CELL)].filter((cell) => cell === left
    || (cell !== document.activeElement && !cell.matches(`[${WAITS}], [aria-invalid]`)));

  function step(event) {
    const { target: cell, key } = event;
    const whole = cell.selectionStart === 0 && cell.selectionEnd === cell.value.length;
    const first = cell.selectionEnd === 0;
    const last = cell.selectionStart === cell.value.length;
    if (key === "Enter") return down(cell, event.shiftKey ? -1 : 1) || (save([cell]), true);
    if (key === "ArrowDown") return down(cell, 1);
    if (key === "ArrowUp") return down(cell, -1);
    if (key === "ArrowLeft" && (whole || first)) return along(cell, -1);
    if (key === "ArrowRight" && (whole || last)) return along(cell, 1);
    if (key === "F2") {
      cell.setSelectionRange(cell.value.length, cell.value.length);
      return true;
    }
    if (key === "Escape" && differs(cell)) {
      cell.value = cell.defaultValue;
      cell.select();
      return true;
    }
    return false;
  }

  // As in the cell above it.
  function fillDown(cell) {
    const rows = lines();
    const above = rows.slice(0, rows.indexOf(cell.closest("[role=row]"))).reverse()
      .map((row) => at(row, column(cell))).find(Boolean);
    if (!above) return false;
    cell.value = above.value || above.placeholder;
    save([cell]);
    return true;
  }

  document.addEventListener("keydown", (event) => {
    if (!isCell(event.target) || event.defaultPrevented) return;
    if (event.isComposing || event.altKey) return;
    const command = event.ctrlKey || event.metaKey;
    if (command ? event.key.toLowerCase() === "d" && fillDown(event.target) : step(event)) {
      event.preventDefault();
    }
  });

  // A block from a spreadsheet goes into the cells from this one on, to the right and down.
  document.addEventListener("paste", (event) => {
    const { target: cell } = event;
    const text = event.clipboardData?.getData("text/plain") ?? "";
    if (!isCell(cell) || !/[\t\n]/.test(text.trimEnd())) return;
    event.preventDefault();
    const rows = lines();
    const top = rows.indexOf(cell.closest("[role=row]"));
    const left = column(cell);
    const filled = [];
    const missing = [];
    text.trimEnd().split(/\r?\n/).forEach((line, below) => {
      line.split("\t").forEach((value, beside) => {
        const into = at(rows[top + below], left + beside);
        if (into) {
          into.value = value.trim();
          filled.push(into);
        } else if (value.trim()) missing.push(value.trim());
      });
    });
    if (missing.length) untold = `There is no cell for ${missing.join(", ")}.`;
    save(filled);
  });

  // Enter enters a line; with Shift, or among several, it begins the next one.
  document.addEventListener("keydown", (event) => {
    const { target: lines } = event;
    if (event.key !== "Enter" || event.shiftKey || event.isComposing) return;
    if (!lines.matches("[data-lines]") || lines.value.includes("\n")) return;
    event.preventDefault();
    lines.form.requestSubmit();
  });

  function tell(words) {
    const line = document.createElement("p");
    line.className = "error";
    line.textContent = words;
    document.getElementById("cell-faults").append(line);
  }

  // What was sent holds now, unless somebody typed on meanwhile.
  document.addEventListener("htmx:afterRequest", ({ detail }) => {
    if (!table() || detail.requestConfig.path !== table().dataset.cells) return;
    for (const cell of table().querySelectorAll(`[${WAITS}]`)) {
      if (!Object.hasOwn(detail.requestConfig.parameters, cell.name)) continue;
      if (detail.successful) cell.defaultValue = cell.getAttribute(WAITS);
      cell.removeAttribute(WAITS);
      cell.title = "";
    }
    mark();
    if (untold) tell(untold);
    untold = "";
  });

  function mark() {
    for (const cell of table()?.querySelectorAll(CELL) ?? []) {
      const fault = document.getElementById(`${cell.name}-fault`);
      if (fault) {
        cell.setAttribute("aria-invalid", "true");
        cell.setAttribute("aria-describedby", fault.id);
      } else cell.removeAttribute("aria-invalid");
    }
  }

  // A cabinet's openings are shown where they are wanted.
  function unfold(group, open) {
    group.classList.toggle("open", open);
    group.querySelector("[data-opens-row]")?.setAttribute("aria-expanded", open);
  }

  document.addEventListener("click", (event) => {
    const button = event.target.closest("[data-opens-row]");
    if (button) {
      const group = button.closest(".cabinet");
      return unfold(group, !group.classList.contains("open"));
    }
    const front = event.target.closest(".drawing a");
    const row = front && rowOf(front);
    if (!row || event.ctrlKey || event.metaKey || event.shiftKey) return;
    event.preventDefault();
    unfold(row.closest(".cabinet"), true);
    goTo(row.querySelector(CELL) ?? row.querySelector("a"));
  });

  // A front in the drawing is a link to its opening, whose row stands in the table.
  function rowOf(link) {
    const found = /\/openings\/(\d+)\//.exec(link.getAttribute("href"));
    return found && table()?.querySelector(`[id="opening-${found[1]}"]`);
  }

  // Where one is in the table, its fronts are marked in the drawing.
  function markFronts() {
    const at = document.activeElement?.closest("[data-cells] .opening, [data-cells] .cabinet");
    for (const link of document.querySelectorAll("#elevations .drawing a")) {
      const row = rowOf(link);
      link.classList.toggle("chosen", Boolean(at && row && at.contains(row)));
    }
  }
  document.addEventListener("focusin", markFronts);
  document.addEventListener("htmx:afterSettle", markFronts);

  // What is as it was stays, and so does what waits for an answer.
  const said = (part) => part.outerHTML.replace(/(csrfmiddlewaretoken" value=")\w+/g, "$1");
  function keep(old, fresh) {
    if (!old || old === fresh) return;
    if (old.querySelector(".htmx-request") || said(old) === said(fresh)) fresh.replaceWith(old);
  }

  // The table comes anew: what is being typed, waits or is refused stays, and so does the focus.
  document.addEventListener("htmx:oobBeforeSwap", (event) => {
    const { target, fragment } = event.detail;
    if (target !== table() || !target) return;
    event.detail.shouldSwap = false;
    const next = fragment.firstElementChild;
    isComing = true;
    const focused = isCell(document.activeElement) ? document.activeElement : null;
    const selection = focused && [focused.selectionStart, focused.selectionEnd];
    for (const form of target.querySelectorAll("form.editor")) {
      next.querySelector(`[id="${form.id}"]`)?.replaceWith(form);
    }
    for (const cell of target.querySelectorAll(CELL)) {
      if (cell === focused || differs(cell)) {
        next.querySelector(`[id="${cell.id}"]`)?.replaceWith(cell);
      }
    }
    for (const gone of target.querySelectorAll(".gone[id]")) {
      const before = gone.previousElementSibling?.id;
      const place = before && next.querySelector(`[id="${before}"]`);
      if (place) place.after(gone);
      else next.prepend(gone);
    }
    for (const open of target.querySelectorAll(".cabinet.open")) {
      const same = next.querySelector(`[id="${open.id}"]`);
      if (same) unfold(same, true);
    }
    for (const group of next.querySelectorAll("[role=rowgroup][id], .opening[id]")) {
      keep(target.querySelector(`[id="${group.id}"]`), group);
    }
    target.replaceWith(next);
    htmx.process(next);
    if (focused?.isConnected) {
      focused.focus({ preventScroll: true });
      focused.setSelectionRange(...selection);
    }
    isComing = false;
    mark();
  });
})();
