// Large keys for a size: each puts its digit or its part of an inch into its form's field.
(() => {
  const READ = /^(\d*)(?: ?\b(\d+)\/(\d+))?$/;
  const typedIn = new WeakSet();
  const divisor = (one, other) => (other ? divisor(other, one % other) : one);

  // A whole number and a part of it; what reads otherwise (a sum, a unit) is typed anew.
  function partsOf(text) {
    const [, whole = "", top = 0, bottom = 1] = text.trim().match(READ) ?? [];
    return [whole, Number(top), Number(bottom)];
  }

  function written(whole, top, bottom) {
    const all = top < bottom ? whole : `${Number(whole) + Math.floor(top / bottom)}`;
    const by = divisor(bottom, top % bottom);
    return top % bottom ? `${all} ${(top % bottom) / by}/${bottom / by}`.trim() : all;
  }

  const KEYS = {
    digit(text, digit) {
      if (text.includes(".")) return text + digit;
      const [whole, ...part] = partsOf(text);
      return written(`${whole}${digit}`.replace(/^0+(?=\d)/, ""), ...part);
    },
    point: (text) => (text.includes(".") ? text : `${text || 0}.`),
    fraction(text, part) {
      if (part.startsWith(".")) return `${text.split(".")[0] || 0}${part}`;
      return written(partsOf(text)[0], ...part.split("/").map(Number));
    },
    more(text, part) {
      const [whole, top, bottom] = partsOf(text);
      const [add, of] = part.split("/").map(Number);
      return written(whole, top * of + add * bottom, bottom * of);
    },
    back: (text) => (text.includes("/") ? partsOf(text)[0] : text.slice(0, -1)),
    clear: () => "",
    alike: (_, size) => size,
  };

  document.addEventListener("click", ({ target }) => {
    const key = target.closest("[data-key]");
    const field = key?.form?.querySelector("[data-reading]");
    if (!field) return;
    // What was there before is replaced by the first key, as it is by the first letter typed.
    const text = typedIn.has(field) || key.dataset.key === "back" ? field.value : "";
    field.value = KEYS[key.dataset.key](text, key.value);
    field.dispatchEvent(new Event("input", { bubbles: true }));
  });

  document.addEventListener("input", ({ target }) => {
    if (target.matches("[data-reading]")) typedIn.add(target);
  });

  // Where there is a keyboard it writes into the field at once; on a phone it stays away, and the
  // size's name has the focus once the one before is saved.
  document.addEventListener("htmx:load", ({ detail }) => {
    const field = detail.elt.querySelector("[data-reading]");
    const hasKeyboard = matchMedia("(pointer: fine)").matches;
    if (!field || (detail.elt === document.body && !hasKeyboard)) return;
    (hasKeyboard ? field : field.form.querySelector("h2")).focus({ preventScroll: true });
    if (hasKeyboard) field.select();
    // What is asked or wrong is seen, however far down the keys one was.
    field.form.querySelector(".question, .error")?.scrollIntoView({ block: "center" });
  });
})();
