// The cells of a wall's table are saved as they are left. What comes back from the server leaves
// the cell where one is, and those that wait or are refused, as they stand.
const cells = (() => {
  const CELL = "[data-cell]";
  const WAITS = "data-waits";
  const table = () => document.querySelector("[data-cells]");
  const isCell = (element) => element instanceof HTMLInputElement && element.matches(CELL);
  let untold = "";  // What is said once the answer to what goes along with it is there.
  let isComing = false; // The table, anew: no cell is left by that.
  const differs = (cell) => cell.value !== cell.defaultValue;
  const told = (cell) => cell.getAttribute(WAITS) ?? cell.defaultValue; // As the server has it.

  // Sent together they are one step back. One save goes after the other, each to the words that
  // the server has when it goes: what was refused meanwhile it has never had.
  let sent = Promise.resolve();
  function save(some, saying = "") {
    untold = saying;
    const changed = some.filter((cell) => cell.value !== told(cell));
    if (!changed.length) return tellUntold();
    for (const cell of changed) cell.setAttribute(WAITS, cell.value);
    say(changed, "Saving …");
    const values = Object.fromEntries(changed.map((cell) => [cell.name, cell.value]));
    const to = table().dataset.cells;
    sent = sent.then(() => send(values, to));
  }

  async function send(values, to) {
    const has = Object.keys(values).map((name) => [name, document.getElementById(name)])
      .filter(([, cell]) => cell).map(([name, cell]) => [name, cell.defaultValue]);
    const asked = {
      source: document.body,
      values: { ...values, seen: JSON.stringify(Object.fromEntries(has)) },
      swap: "none",
    };
    await htmx.ajax("POST", to, asked).catch(() => {}); // faults.js says it.
  }

  function say(cells, words) {
    for (const cell of cells) cell.title = words;
  }

  document.addEventListener("focusout", ({ target }) => {
    if (isCell(target) && !isComing) save(unsaved(target));
  });

  // What did not get through goes along with the next one that is left.
  const unsaved = (left) => [...table().querySelectorAll(CELL)].filter((cell) => cell === left
    || (cell !== document.activeElement && !cell.matches(`[${WAITS}], [aria-invalid]`)));

  function tellUntold() {
    if (!untold) return;
    const line = document.createElement("p");
    line.className = "error";
    line.textContent = untold;
    document.getElementById("cell-faults").append(line);
    untold = "";
  }

  // What was sent holds now, unless somebody typed on meanwhile.
  document.addEventListener("htmx:afterRequest", ({ detail }) => {
    if (!table() || detail.requestConfig.path !== table().dataset.cells) return;
    for (const cell of table().querySelectorAll(`[${WAITS}]`)) {
      const sent = detail.requestConfig.parameters[cell.name];
      if (sent === undefined) continue;
      if (detail.xhr.status === 200) cell.defaultValue = sent;
      if (cell.getAttribute(WAITS) !== sent) continue; // Changed again since: that waits still.
      cell.removeAttribute(WAITS);
      cell.title = "";
    }
    mark();
    tellUntold();
  });

  // What was refused stays said until its cell says something else, whatever else is saved.
  const faultAt = (cell) => document.getElementById(`${cell.name}-fault`);
  let asked = {};
  document.addEventListener("htmx:beforeOnLoad", ({ detail }) => {
    asked = detail.requestConfig.parameters ?? {};
  });
  document.addEventListener("htmx:oobBeforeSwap", ({ detail: { target, fragment } }) => {
    if (target.id !== "cell-faults") return;
    see(JSON.parse(fragment.firstElementChild.dataset.theirs));
    for (const cell of table()?.querySelectorAll(`${CELL}[aria-invalid]`) ?? []) {
      const said = faultAt(cell);
      const isOld = said && differs(cell) && !Object.hasOwn(asked, cell.name);
      if (isOld) fragment.firstElementChild.append(said.cloneNode(true));
    }
  });

  // What somebody else saved meanwhile was seen once it is said: saved again, one's own holds.
  function see(theirs) {
    for (const [name, value] of Object.entries(theirs)) {
      const cell = document.getElementById(name);
      if (cell) cell.defaultValue = value;
    }
  }

  document.addEventListener("focusout", ({ target }) => {
    if (!isCell(target) || differs(target)) return;
    faultAt(target)?.remove();
    mark();
  });

  function mark() {
    for (const cell of table()?.querySelectorAll(CELL) ?? []) {
      const fault = faultAt(cell);
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
    const link = event.target.closest(".drawing a, .finding .ways a");
    const key = link && table() && keyOf(link);
    if (!key || event.ctrlKey || event.metaKey || event.shiftKey) return;
    event.preventDefault();
    const row = rowOf(link);
    if (row) goTo(row);
    else location.assign(`?at=${key}`); // It stands on another wall.
  });

  function goTo(row) {
    unfold(row.closest(".cabinet"), true);
    (row.querySelector(CELL) ?? row.querySelector("a"))?.focus();
  }

  // A front in the drawing is a link to its opening, whose row stands in the table of its wall.
  const FORM = /\/(opening|cabinet)s\/(\d+)\/(?:measured\/)?$/;
  const keyOf = (link) => FORM.exec(link.getAttribute("href"))?.slice(1).join("-");
  const rowOf = (link) => table()?.querySelector(`[id="${keyOf(link)}"]`);
  document.addEventListener("DOMContentLoaded", () => {
    const at = document.getElementById(new URLSearchParams(location.search).get("at"));
    if (at?.matches("[data-cells] :is(.cabinet, .opening)")) goTo(at);
  });

  // Where one is in the table, its fronts are marked in the drawing.
  function markFronts() {
    const at = document.activeElement?.closest("[data-cells] .opening, [data-cells] .cabinet");
    for (const link of document.querySelectorAll("#elevations .drawing a")) {
      const row = rowOf(link);
      link.classList.toggle("chosen", Boolean(at && row && at.contains(row)));
    }
  }
  // How high what stays in view is: what scrolls under it stops below.
  const heights = new ResizeObserver(([drawn]) => document.documentElement.style
    .setProperty("--drawn", `${drawn.target.offsetHeight}px`));
  function watchDrawing() {
    const drawing = document.getElementById("elevations");
    heights.disconnect();
    if (drawing) heights.observe(drawing);
  }
  document.addEventListener("DOMContentLoaded", watchDrawing);
  document.addEventListener("htmx:afterSettle", watchDrawing);
  document.addEventListener("focusin", () => requestAnimationFrame(markFronts));
  document.addEventListener("htmx:afterSettle", markFronts);

  // htmx takes leave of each element that goes, one by one; with these it has nothing to do.
  const LEFT_ALONE = "#elevations svg, #findings ol, #fronts table";
  document.addEventListener("htmx:oobBeforeSwap", ({ detail: { target } }) => {
    for (const part of target.querySelectorAll(LEFT_ALONE)) part.remove();
  });

  // What was asked for before a change says what held then, whoever follows changes.
  for (const change of ["job-drawn", "job-changed"]) {
    document.addEventListener(change, () => {
      const followers = document.querySelectorAll(`[hx-trigger*="job-"]`);
      for (const one of followers) htmx.trigger(one, "htmx:abort");
    }, true); // Before this change asks for its own.
  }

  // What is as it was stays, and so does what waits for an answer.
  const said = (part) => part.outerHTML.replace(/(csrfmiddlewaretoken" value=")\w+/g, "$1");
  const within = (part, { id }) => part.querySelector(`[id="${id}"]`);
  const stays = (old, fresh) => old.querySelector(".htmx-request") || said(old) === said(fresh);

  // A row that came anew, with what is being typed in it; or the one that there is.
  function rowFor(fresh, old, focused) {
    if (!old || old.matches("form.editor") || stays(old, fresh)) return old ?? fresh;
    for (const opening of fresh.querySelectorAll(".opening[id]")) {
      const was = within(old, opening);
      if (was && (was.matches("form.editor") || stays(was, opening))) opening.replaceWith(was);
    }
    for (const form of old.querySelectorAll("form.editor")) within(fresh, form)?.replaceWith(form);
    for (const cell of old.querySelectorAll(CELL)) {
      if (cell === focused || differs(cell)) within(fresh, cell)?.replaceWith(cell);
    }
    return fresh;
  }

  // The table comes anew: what is being typed, waits or is refused stays, and so does the focus.
  // A row that is as it was isn't touched.
  document.addEventListener("htmx:oobBeforeSwap", (event) => {
    const { target, fragment } = event.detail;
    if (target !== table() || !target) return;
    event.detail.shouldSwap = false;
    const next = fragment.firstElementChild;
    isComing = true;
    const active = target.contains(document.activeElement) ? document.activeElement : null;
    const focused = active && isCell(active) ? active : null;
    const selection = focused && [focused.selectionStart, focused.selectionEnd];
    for (const gone of target.querySelectorAll(".gone[id]")) {
      const place = gone.previousElementSibling?.id && within(next, gone.previousElementSibling);
      if (place) place.after(gone);
      else next.prepend(gone);
    }
    for (const open of target.querySelectorAll(".cabinet.open")) {
      const same = within(next, open);
      if (same) unfold(same, true);
    }
    for (const { name, value } of next.attributes) target.setAttribute(name, value);
    const old = new Map();
    for (const fresh of next.children) {
      old.set(fresh, fresh.id ? within(target, fresh)
        : [...target.children].find((one) => !one.id && said(one) === said(fresh)));
    }
    const known = new Set(old.values());
    for (const one of [...target.children]) if (!known.has(one)) one.remove();
    let at = target.firstElementChild;
    for (const [fresh, was] of old) {
      const row = rowFor(fresh, was, focused);
      if (was === at) at = at?.nextElementSibling ?? null;
      if (row !== was) {
        was?.remove();
        target.insertBefore(row, at);
        htmx.process(row);
      } else if (row.nextElementSibling !== at) target.insertBefore(row, at);
    }
    if (focused?.isConnected && focused !== document.activeElement) {
      focused.focus({ preventScroll: true });
      focused.setSelectionRange(...selection);
    }
    if (active && !focused && !active.isConnected) twinOf(active, target)?.focus();
    isComing = false;
    mark();
  });

  // The same link or button, in a row that came anew.
  function twinOf(gone, fresh) {
    const row = fresh.querySelector(`[id="${gone.closest("[id]")?.id}"]`);
    return [...row?.querySelectorAll(gone.tagName) ?? []]
      .find((one) => one.textContent === gone.textContent);
  }

  return { table, isCell, differs, save };
})();
