// What is said of drafts: where the form stands, politely, each with a plain way to drop it.
const draftNotes = (() => {
  let isRefusalSaid = false;

  function make(name, content, attributes = {}) {
    const element = document.createElement(name);
    element.append(...content);
    return Object.assign(element, attributes);
  }

  function button(words, press) {
    return make("button", [words], {
      type: "button", className: "quiet", onclick: press,
    });
  }

  function time(at) {
    const [when, now] = [new Date(at), new Date()];
    const clock = `${when.getHours()}:${String(when.getMinutes()).padStart(2, "0")}`;
    if (when.toDateString() === now.toDateString()) return clock;
    return `${clock} on ${when.toLocaleDateString("en-GB", { day: "numeric", month: "long" })}`;
  }

  // The region stands there before anything is said in it, so that it is read out.
  function say(form, className, ...content) {
    let region = form.querySelector(`:scope .${className}`);
    if (!region) {
      region = make("div", [], { className: `draft ${className}` });
      region.setAttribute("role", "status");
      const head = form.querySelector(":scope > :is(.editor-name, h2)");
      if (head) head.after(region);
      else form.prepend(region);
    }
    setTimeout(() => region.replaceChildren(...content));
  }

  const note = (form, ...content) => say(form, "draft-note", ...content);
  const words = (text) => make("p", [text]);
  const actions = (...buttons) => make("p", buttons, { className: "actions" });

  function here(form, draft, drop) {
    note(
      form, words(`What you typed at ${time(draft.at)} is here again, not saved yet.`),
      actions(button("Drop it", drop)),
    );
  }

  function offer(form, draft, fields, put, drop) {
    const rows = fields.map(
      ({ label, now, typed }) => make("li", [`${label}: ${now} by now, you typed ${typed}`]),
    );
    note(
      form,
      words(`This was saved anew since you typed at ${time(draft.at)}. Both are here:`),
      make("ul", rows), actions(button("Put in what I typed", put), button("Drop it", drop)),
    );
  }

  function dropped(form, bring) {
    note(form, words("What you typed is dropped."), actions(button("Bring it back", bring)));
    form.querySelector(".draft-note")?.setAttribute("tabindex", "-1");
    form.querySelector(".draft-note")?.focus();
  }

  function left(draft, drop) {
    const said = document.getElementById("said");
    const line = make("p", [`${draft.title}: what you typed is not saved, but kept here. `], {
      className: "said kept",
    });
    line.append(button("Drop it", () => {
      drop();
      said.replaceChildren(make("p", ["What you typed is dropped."], { className: "said" }));
    }));
    said.replaceChildren(line);
  }

  // It stays in sight until somebody does the next thing.
  document.addEventListener("htmx:beforeRequest", ({ detail }) => {
    if (detail.elt.matches("form, a:not([data-leaves])")) document.querySelector(".kept")?.remove();
  });

  // Drafts of forms that are not open on the page.
  function list(drafts) {
    if (!drafts.length) return;
    const box = make("section", [make("h2", ["Typed here, but not saved yet"])], {
      className: "draft drafts",
    });
    box.setAttribute("aria-label", "Typed here, but not saved yet");
    for (const { draft, goOn, drop } of drafts) {
      const said = draft.said.map(([label, value]) => `${label}: ${value}`).join("; ");
      const row = make("div", [words(`${draft.title}, typed at ${time(draft.at)}. ${said}`)]);
      const away = () => {
        row.remove();
        if (!box.querySelector("div")) box.remove();
      };
      const buttons = [button("Drop it", () => { drop(); away(); })];
      if (goOn) buttons.unshift(button("Go on", () => { away(); goOn(); }));
      row.append(actions(...buttons));
      box.append(row);
    }
    document.getElementById("fault").after(box);
  }

  function refused(form) {
    if (isRefusalSaid) return;
    isRefusalSaid = true;
    say(form, "draft-refused", words(
      "This browser can't keep what you type: its storage is full or switched off. Save before "
      + "you leave this page.",
    ));
  }

  return { here, offer, dropped, left, list, refused };
})();
