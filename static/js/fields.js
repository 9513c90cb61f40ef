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

document.addEventListener("htmx:load", (event) => {
  const part = event.detail.elt;
  const within = part.closest("form");
  for (const form of within ? [within] : part.querySelectorAll("form")) putAway(form);
});
