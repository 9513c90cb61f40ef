// − and + beside a gap: the job's step less or more, from what is planned where nothing stands.
// What is only nearly so ("≈1/8") is taken as the step that is nearest to it.
(() => {
  const READ = /^≈?\s*(?:(\d+)\/(\d+)|(\d*[.,]?\d+|\d+[.,])(?:(?:-| +)(\d+)\/(\d+))?)\s*(\D*)$/;
  const SAID = { in: ["", "in", "in.", "\"", "″", "”", "inch", "inches"], mm: ["", "mm"] };
  const [PARTS, DECIMALS] = [128, 100];

  // In the job's unit; NaN is what only the server can read, such as a sum.
  function lengthOf(text, unit) {
    const [, part, of, whole, top, bottom, said] = text.trim().match(READ) ?? [];
    if (!SAID[unit].includes(said?.toLowerCase())) return NaN;
    if (part) return part / of;
    return Number(whole.replace(",", ".")) + (bottom ? top / bottom : 0);
  }

  function inFractions(length) {
    let [top, bottom] = [Math.round(length * PARTS), PARTS];
    const whole = Math.floor(top / PARTS);
    top -= whole * PARTS;
    while (top && top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
    return [whole || !top ? whole : "", top ? `${top}/${bottom}` : ""].join(" ").trim();
  }

  const inDecimals = (length) => `${Math.round(length * DECIMALS) / DECIMALS}`;

  // Out of the button's sight, but heard: which gap, and what it is now.
  function tell(field, place) {
    const name = field.labels[0].firstChild.textContent.trim();
    place.querySelector("output").textContent = `${name}: ${field.value}`;
  }

  document.addEventListener("click", ({ target }) => {
    const button = target.closest("[data-step-by]");
    const field = button?.parentElement.querySelector("input");
    if (!field) return;
    const place = button.closest("[data-unit]");
    const { unit } = place.dataset;
    const said = field.value.trim() || field.dataset.planned || "0";
    const by = button.dataset.stepBy;
    const step = lengthOf(by.replace("-", ""), unit);
    let from = lengthOf(said, unit);
    if (!Number.isFinite(from)) return field.focus();
    if (said.startsWith("≈")) from = Math.round(from / step) * step;
    const length = Math.max(0, by.startsWith("-") ? from - step : from + step);
    field.value = unit === "in" ? inFractions(length) : inDecimals(length);
    field.dispatchEvent(new Event("input", { bubbles: true }));
    tell(field, place);
  });
})();
