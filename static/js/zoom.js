// A wall's drawing, larger or smaller; then it is gone about by touch, or by arrows while it has
// the focus. It stays as large while one is on the page.
(() => {
  const STEP = 1.5;
  const [LEAST, MOST] = [1, STEP ** 5];
  let zoom = 1;
  let fitted = 1; // How large it is where it fits, to the size that it is drawn in.

  const WAYS = { in: () => zoom * STEP, out: () => zoom / STEP, fit: () => 1 };
  const KEYS = { "+": "in", "=": "in", "-": "out", 0: "fit" };

  // Where one looks: at what is chosen; else in the middle, of what fits on the base cabinets.
  function middleOf(box, before) {
    const chosen = box.querySelector(".chosen");
    if (chosen) {
      const [here, around] = [chosen.getBoundingClientRect(), box.getBoundingClientRect()];
      return [here.left - around.left + box.scrollLeft + here.width / 2,
        here.top - around.top + box.scrollTop + here.height / 2];
    }
    return [box.scrollLeft + box.clientWidth / 2,
      box.scrollTop + box.clientHeight * (before === 1 ? 0.7 : 0.5)];
  }

  function show(way) {
    const before = zoom;
    zoom = Math.min(MOST, Math.max(LEAST, WAYS[way]()));
    const boxes = [...document.querySelectorAll("#elevations .drawing-box")];
    if (before === 1) {
      const [drawing] = boxes[0]?.getElementsByTagName("svg") ?? [];
      fitted = drawing ? drawing.getBoundingClientRect().width / drawing.width.baseVal.value : 1;
    }
    const middles = boxes.map((box) => middleOf(box, before).map((at) => at * (zoom / before)));
    document.documentElement.toggleAttribute("data-zoomed", zoom > 1);
    document.documentElement.style.setProperty("--zoom", zoom * fitted);
    boxes.forEach((box, place) => box.scrollTo(
      middles[place][0] - box.clientWidth / 2, middles[place][1] - box.clientHeight / 2));
  }

  document.addEventListener("click", ({ target }) => {
    const button = target.closest("[data-zoom]");
    if (button) show(button.dataset.zoom);
  });
  document.addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    if (!event.target.matches("#elevations .drawing-box") || !(event.key in KEYS)) return;
    event.preventDefault();
    show(KEYS[event.key]);
  });

  // A drawing that comes anew is seen where the one before it was: looked at before that goes.
  let places = [];
  document.addEventListener("htmx:oobBeforeSwap", ({ detail: { target } }) => {
    if (target.id !== "elevations") return;
    places = zoom === 1 ? [] : [...target.querySelectorAll(".drawing-box")]
      .map((box) => [box.scrollLeft, box.scrollTop]);
  }, true);
  document.addEventListener("htmx:oobAfterSwap", () => {
    document.querySelectorAll("#elevations .drawing-box").forEach((box, place) => {
      if (places[place]) box.scrollTo(...places[place]);
    });
    places = [];
  });
})();
