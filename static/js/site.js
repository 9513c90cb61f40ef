// Says so when the server can't be reached; what was typed stays where it is.
document.addEventListener("htmx:sendError", () => {
  const fault = document.getElementById("fault");
  const words = document.createElement("p");
  words.className = "fault";
  words.textContent = "The server can't be reached. What you typed is still here, but not saved. Try again when there is a connection.";
  fault.replaceChildren(words);
});

// A fault that was answered for one try is not left standing after the next.
document.addEventListener("htmx:beforeRequest", () => {
  document.getElementById("fault").replaceChildren();
});
