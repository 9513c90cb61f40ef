// A field marked data-when="other: this that" is of use only while the other field of its form
// says this or that. Else it is put away, unless something in it is wrong.
function putAway(form) {
  for (const cell of form.querySelectorAll("[data-when]")) {
    const [name, words] = cell.dataset.when.split(": ");
    const said = form.elements[name]?.value ?? "";
    cell.hidden = !words.split(" ").includes(said) && !cell.querySelector(".error");
  }
}

document.addEventListener("change", (event) => {
  if (event.target.form) putAway(event.target.form);
});

// Links that choose among boxes that stand on the page do so without asking for it again.
document.addEventListener("click", (event) => {
  const link = event.target.closest("[data-chooses]");
  if (!link) return;
  event.preventDefault();
  const { chooses } = link.dataset;
  for (const box of document.querySelectorAll("input[data-kind]")) {
    box.checked = chooses === "all" || box.dataset.kind === chooses;
  }
});

document.addEventListener("htmx:load", (event) => {
  const part = event.detail.elt;
  const within = part.closest("form");
  for (const form of within ? [within] : part.querySelectorAll("form")) putAway(form);
});
