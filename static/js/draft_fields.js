// What the fields of a form say, as it was made and as it is now, by the names of the fields.
// Passwords, files, hidden fields, and cells that are saved as they are left are never among them.
const draftFields = (() => {
  const NEVER = ["hidden", "password", "file", "submit", "button", "reset", "image"];
  const isTicked = (field) => field.type === "checkbox" || field.type === "radio";
  const nameOf = (field) => (isTicked(field) ? `${field.name}=${field.value}` : field.name);

  const pathOf = (address) => address.split("?")[0];

  function of(form) {
    return [...form.elements].filter(
      (field) => field.matches("input, select, textarea") && field.name
        && !NEVER.includes(field.type) && !field.matches("[data-cell]"),
    );
  }

  function now(field) {
    if (isTicked(field)) return field.checked;
    if (field.type !== "select-multiple") return field.value;
    return [...field.selectedOptions].map((option) => option.value).join("\n");
  }

  function made(field) {
    if (isTicked(field)) return field.defaultChecked;
    if (!field.options) return field.defaultValue;
    const chosen = [...field.options].filter((option) => option.defaultSelected);
    if (field.type === "select-multiple") return chosen.map((option) => option.value).join("\n");
    return (chosen.at(-1) ?? field.options[0])?.value ?? "";
  }

  const all = (form, say) => Object.fromEntries(
    of(form).map((field) => [nameOf(field), say(field)]),
  );

  // A list whose choices follow another field gets them anew once that is put in: it says then
  // what it said, unless somebody types meanwhile.
  function put(field, value) {
    if (isTicked(field)) field.checked = value;
    else if (field.type === "select-multiple") {
      const chosen = value.split("\n");
      for (const option of field.options) option.selected = chosen.includes(option.value);
    } else {
      field.value = value;
      if (field.options) field.dataset.awaits = value;
    }
    for (let fold = field.closest("details"); fold; fold = fold.parentElement.closest("details")) {
      fold.open = true;
    }
    if (field.options || isTicked(field)) {
      field.dispatchEvent(new Event("change", { bubbles: true }));
    }
  }

  document.addEventListener("htmx:afterSettle", ({ target }) => {
    const list = target.closest?.("select[data-awaits]");
    if (!list) return;
    const value = list.dataset.awaits;
    delete list.dataset.awaits;
    list.value = value;
    list.dispatchEvent(new Event("input", { bubbles: true }));
  });

  document.addEventListener("input", ({ isTrusted, target }) => {
    if (!isTrusted || !target.form) return;
    for (const list of target.form.querySelectorAll("[data-awaits]")) delete list.dataset.awaits;
  });

  function label(field) {
    const said = field.labels?.[0]?.textContent ?? field.getAttribute("aria-label") ?? field.name;
    return said.trim().replace(/\s+/g, " ");
  }

  function said(field, value) {
    if (isTicked(field)) return value ? "ticked" : "not ticked";
    const options = [...(field.options ?? [])];
    const words = options.find((option) => option.value === value)?.textContent ?? value;
    return words.trim() || "nothing";
  }

  return {
    of, nameOf, put, label, said, pathOf, value: now,
    made: (form) => all(form, made),
    now: (form) => all(form, now),
  };
})();
