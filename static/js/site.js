// Says so when the server can't be reached; what was typed stays where it is.
document.addEventListener("htmx:sendError", () => {
  const fault = document.getElementById("fault");
  const words = document.createElement("p");
  words.className = "fault";
  words.textContent =
    "The server can't be reached. What you typed is still here, but not saved. " +
    "Try again when there is a connection.";
  fault.replaceChildren(words);
  show(fault);
});

// A fault is seen from wherever one is on the page.
document.addEventListener("htmx:afterSwap", (event) => {
  if (event.detail.target.id === "fault") show(event.detail.target);
});

function show(element) {
  element.scrollIntoView({ block: "nearest" });
}

// A fault that was answered for one try is not left standing after the next.
document.addEventListener("htmx:beforeRequest", () => {
  document.getElementById("fault").replaceChildren();
});

// What is typed or ticked in a field marked data-keep outlives the page and the session: it stays
// in this tab until it is recorded, or until somebody signs out.
const keeping = (field) => `keep ${location.pathname} ${field.id}`;

document.addEventListener("input", (event) => {
  const field = event.target;
  if (!field.matches("[data-keep]")) return;
  const value = field.type === "checkbox" ? String(field.checked) : field.value;
  sessionStorage.setItem(keeping(field), value);
});

document.addEventListener("DOMContentLoaded", () => {
  for (const field of document.querySelectorAll("[data-keep]")) {
    const kept = sessionStorage.getItem(keeping(field));
    if (kept === null) continue;
    if (field.type === "checkbox") {
      field.checked = kept === "true";
    } else if (field.value !== kept) {
      field.value = kept;
      const folded = field.closest("details");
      if (folded) folded.open = true;
    }
  }
  const place = decodeURIComponent(location.hash.slice(1));
  if (place) document.getElementById(place)?.scrollIntoView();
});

document.addEventListener("htmx:beforeSwap", (event) => {
  const { requestConfig, xhr } = event.detail;
  if (xhr.status < 200 || xhr.status > 299) return;
  forget(requestConfig.elt.querySelectorAll("[data-keep]"));
});

document.addEventListener("submit", (event) => {
  if (event.target.matches(".site-person")) sessionStorage.clear();
});

function forget(fields) {
  for (const field of fields) sessionStorage.removeItem(keeping(field));
}

// A field marked data-when="other: this that" is of use only while the other field of its form says
// this or that. Else it is put away, unless something in it is wrong.
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

document.addEventListener("DOMContentLoaded", () => {
  for (const form of document.forms) putAway(form);
});

document.addEventListener("htmx:load", (event) => {
  const part = event.detail.elt;
  const within = part.closest("form");
  for (const form of within ? [within] : part.querySelectorAll("form")) putAway(form);
});
