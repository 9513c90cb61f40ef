// Every form keeps what is typed in it as a draft until it is saved or dropped. A form that comes
// up again has its draft in it and says so; one that says otherwise by now, where somebody typed,
// only offers it.
(() => {
  if (!draftStore.isOpen) {
    draftStore.sent();
    return;
  }
  const states = new WeakMap();
  const typedHere = new Set();
  const WAS_REFUSED = ".summary, .error";

  const { pathOf } = draftFields;
  const same = (one, other) => JSON.stringify(one) === JSON.stringify(other);

  function nameOf(form) {
    const id = form.getAttribute("id");
    const isKept = id && form.getAttribute("method") === "post" && draftFields.of(form).length;
    return isKept ? `${pathOf(form.getAttribute("action") ?? location.pathname)} ${id}` : null;
  }

  const touched = (draft) => Object.keys(draft.values).filter(
    (key) => draft.values[key] !== draft.base[key],
  );

  function titleOf(form) {
    const place = form.closest("[aria-labelledby]");
    const named = place && document.getElementById(place.getAttribute("aria-labelledby"));
    const head = named ?? form.querySelector("h2") ?? document.querySelector("h1");
    return head.textContent.trim().replace(/\s+/g, " ");
  }

  function keep(form, at = Date.now()) {
    const { name, base, offered } = states.get(form);
    const values = draftFields.now(form);
    if (same(values, base) && !offered) return draftStore.drop(name);
    const fields = draftFields.of(form).filter(
      (field) => values[draftFields.nameOf(field)] !== base[draftFields.nameOf(field)],
    );
    const isKept = draftStore.write(name, {
      at, base, values, earlier: offered,
      key: form.elements.form_key?.value,
      tab: draftStore.tab,
      title: titleOf(form),
      page: location.pathname,
      address: form.getAttribute("action") ?? location.pathname,
      opens: form.matches(".editor") ? form.getAttribute("id") : null,
      said: fields.map((field) => [
        draftFields.label(field), draftFields.said(field, values[draftFields.nameOf(field)]),
      ]),
    });
    if (!isKept) draftNotes.refused(form);
  }

  function put(form, draft, keys) {
    const state = states.get(form);
    for (const field of draftFields.of(form)) {
      const key = draftFields.nameOf(field);
      if (keys.includes(key)) draftFields.put(field, draft.values[key]);
    }
    // What is new keeps its key: if it was saved, and only the answer got lost, it stays one.
    if (form.matches("[data-new]") && draft.key) form.elements.form_key.value = draft.key;
    state.offered = undefined;
    keep(form, draft.at);
    form.dispatchEvent(new Event("input", { bubbles: true }));
  }

  function dropped(form, draft) {
    const { name, base } = states.get(form);
    states.get(form).offered = undefined;
    for (const field of draftFields.of(form)) {
      const key = draftFields.nameOf(field);
      if (draftFields.value(field) !== base[key]) draftFields.put(field, base[key]);
    }
    draftStore.drop(name);
    typedHere.delete(name);
    form.dispatchEvent(new Event("input", { bubbles: true }));
    draftNotes.dropped(form, () => bring(form, draft));
  }

  // All of what is new, what was typed of what is there.
  function putAll(form, draft) {
    put(form, draft, form.matches("[data-new]") ? Object.keys(draft.values) : touched(draft));
  }

  function bring(form, draft) {
    putAll(form, draft);
    draftNotes.here(form, draft, () => dropped(form, draft));
  }

  // Fields of a thing that is changed are put in one by one, so that what others saved meanwhile
  // stays; a thing that is new is taken as it was typed.
  function restore(form, draft) {
    const state = states.get(form);
    const now = state.base;
    if (same(draft.values, now)) return draftStore.drop(state.name);
    const clashes = form.matches("[data-new]") ? [] : touched(draft).filter(
      (key) => key in now && now[key] !== draft.base[key] && now[key] !== draft.values[key],
    );
    if (clashes.length) {
      state.offered = draft;
      const fields = draftFields.of(form)
        .filter((field) => clashes.includes(draftFields.nameOf(field)))
        .map((field) => ({
          label: draftFields.label(field),
          now: draftFields.said(field, now[draftFields.nameOf(field)]),
          typed: draftFields.said(field, draft.values[draftFields.nameOf(field)]),
        }));
      draftNotes.offer(form, draft, fields, () => bring(form, draft), () => dropped(form, draft));
    } else if (typedHere.has(state.name)) {
      putAll(form, draft);
    } else bring(form, draft);
  }

  function take(form) {
    const name = nameOf(form);
    if (!name || states.has(form)) return;
    const draft = draftStore.read(name);
    const wasRefused = form.querySelector(WAS_REFUSED) !== null;
    states.set(form, { name, base: wasRefused && draft ? draft.base : draftFields.made(form) });
    if (!draft) return;
    // A form that was refused has it all; where theirs was taken, it has that.
    if (wasRefused) keep(form, draft.at);
    else restore(form, draft.earlier ?? draft);
  }

  document.addEventListener("input", ({ target }) => {
    const form = target.form;
    if (!form) return;
    take(form); // Who types at once is ahead of the page's own look at a form that opened.
    if (!states.has(form)) return;
    typedHere.add(states.get(form).name);
    keep(form);
  });

  // Saved in place: the answer says so. Else the next page does: by what it says on top.
  document.addEventListener("htmx:beforeOnLoad", ({ detail }) => {
    const { xhr, requestConfig } = detail;
    const state = states.get(requestConfig.elt);
    if (requestConfig.verb !== "post" || !state || xhr.status > 299) return;
    draftStore.drop(state.name);
    typedHere.delete(state.name);
  });

  document.addEventListener("submit", ({ target: form }) => {
    if (states.has(form) && !form.hasAttribute("hx-post")) draftStore.send(states.get(form).name);
  });

  // Left: the draft waits for whoever opens the form again.
  document.addEventListener("click", ({ target }) => {
    const form = target.closest("a[data-leaves][hx-get]")?.closest("form");
    const name = form && states.get(form)?.name;
    const draft = name && draftStore.read(name);
    if (!draft) return;
    typedHere.delete(name);
    draftStore.write(name, { ...draft, tab: null });
    draftNotes.left(draft, () => draftStore.drop(name));
  });

  function isAbout(draft) {
    return draft.page === location.pathname
      || (draft.opens && draft.address.startsWith(location.pathname)
        && document.getElementById(draft.opens));
  }

  function open(draft) {
    const place = document.getElementById(draft.opens);
    if (place) htmx.ajax("GET", draft.address, { target: place, swap: "outerHTML" });
    else location.assign(draft.address);
  }

  function offerOthers() {
    const shown = new Set([...document.forms].map((form) => states.get(form)?.name));
    const others = draftStore.all().filter(
      ({ name, draft }) => !shown.has(name) && isAbout(draft),
    );
    const mine = others.filter(
      ({ draft }) => draft.tab === draftStore.tab && document.getElementById(draft.opens),
    );
    for (const { draft } of mine) open(draft);
    draftNotes.list(others.filter((other) => !mine.includes(other)).map(({ name, draft }) => ({
      draft,
      goOn: draft.opens ? () => open(draft) : null,
      drop: () => draftStore.drop(name),
    })));
  }

  const isSaved = document.querySelector("#said .said:not(.error)")
    && !document.querySelector("main :is(.summary, .fault)");
  const sent = draftStore.sent();
  if (sent && isSaved) draftStore.drop(sent);

  document.addEventListener("htmx:load", ({ detail }) => {
    const part = detail.elt;
    const forms = part.matches("form") ? [part] : part.querySelectorAll("form");
    for (const form of forms) take(form);
    if (part === document.body) offerOthers();
  });
})();
