// The menu of a row closes by Escape, or by a click elsewhere. Where the browser does not open it
// to the side that has room for it, the page goes along until it is seen whole.
(() => {
  const IS_PLACED = CSS.supports("anchor-scope", "--more");
  const open = () => document.querySelector(".more[open]");

  document.addEventListener("toggle", ({ target }) => {
    if (IS_PLACED || !target.matches(".more[open]")) return;
    target.lastElementChild.scrollIntoView({ block: "nearest" });
  }, true);

  document.addEventListener("click", ({ target }) => {
    const menu = open();
    if (menu && !menu.contains(target)) menu.open = false;
  });

  document.addEventListener("keydown", (event) => {
    const menu = event.key === "Escape" && open();
    if (!menu || !menu.contains(document.activeElement)) return;
    menu.open = false;
    menu.firstElementChild.focus();
    event.preventDefault();
  });
})();
