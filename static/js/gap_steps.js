// − and + beside a gap: the job's step less or more, from what is planned where nothing stands.
(() => {
  const READ = /^(?:(\d+)\/(\d+)|(\d*\.?\d+|\d+\.)(?: (\d+)\/(\d+))?)$/;
  const [PARTS, DECIMALS] = [64, 100];

  function lengthOf(text) {
    const [, part, of, whole, top, bottom] = text.trim().match(READ) ?? [];
    return part ? part / of : Number(whole) + (bottom ? top / bottom : 0);
  }

  function inFractions(length) {
    let [top, bottom] = [Math.round(length * PARTS), PARTS];
    const whole = Math.floor(top / PARTS);
    top -= whole * PARTS;
    while (top && top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
    return [whole || !top ? whole : "", top ? `${top}/${bottom}` : ""].join(" ").trim();
  }

  document.addEventListener("click", ({ target }) => {
    const button = target.closest("[data-step-by]");
    const field = button?.parentElement.querySelector("input");
    if (!field) return;
    const from = field.value.trim() || field.dataset.planned || "0";
    if (!READ.test(from)) return field.focus();
    const by = button.dataset.stepBy;
    const step = by.startsWith("-") ? -lengthOf(by.slice(1)) : lengthOf(by);
    const length = Math.max(0, lengthOf(from) + step);
    const isInch = button.closest("[data-unit]").dataset.unit === "in";
    field.value = isInch ? inFractions(length) : `${Math.round(length * DECIMALS) / DECIMALS}`;
    field.dispatchEvent(new Event("input", { bubbles: true }));
  });
})();
