// Drafts: what was typed and is not saved yet. They stay on this device, each under the person and
// shop that typed it, until they are saved or dropped; nobody else who signs in here sees them.
// Where the browser refuses to keep them they last as long as the page, and `isRefused` says so.
const draftStore = (() => {
  const { person } = document.body.dataset;
  const prefix = `draft ${person} `;
  const onPage = new Map();

  const attempt = (work, otherwise) => {
    try {
      return work();
    } catch {
      return otherwise;
    }
  };

  const tab = attempt(() => {
    const known = sessionStorage.getItem("tab") ?? String(Math.random()).slice(2);
    sessionStorage.setItem("tab", known);
    return known;
  }, "this page");

  function read(name) {
    const text = onPage.get(name) ?? attempt(() => localStorage.getItem(prefix + name), null);
    return text === null ? null : attempt(() => JSON.parse(text), null);
  }

  function write(name, draft) {
    const text = JSON.stringify(draft);
    const isKept = attempt(() => {
      localStorage.setItem(prefix + name, text);
      return true;
    }, false);
    if (isKept) onPage.delete(name);
    else onPage.set(name, text);
    return isKept;
  }

  function drop(name) {
    onPage.delete(name);
    attempt(() => localStorage.removeItem(prefix + name));
  }

  function all() {
    const kept = attempt(() => Object.keys(localStorage), []);
    return kept
      .filter((key) => key.startsWith(prefix))
      .map((key) => key.slice(prefix.length))
      .map((name) => ({ name, draft: read(name) }))
      .filter(({ draft }) => draft !== null)
      .sort((one, other) => one.draft.at - other.draft.at);
  }

  // Whether something typed in this tab is kept.
  const isTyped = () => all().some(({ draft }) => draft.tab === tab);

  // A form that another page answers: the next page takes note of what became of it.
  const send = (name) => attempt(() => sessionStorage.setItem("sent", name));
  const sent = () => attempt(() => {
    const name = sessionStorage.getItem("sent");
    sessionStorage.removeItem("sent");
    return name;
  }, null);

  // What can't be kept would be gone with the page: the browser asks before it goes.
  addEventListener("beforeunload", (event) => {
    if (onPage.size) event.preventDefault();
  });

  return {
    isOpen: Boolean(person),
    get isRefused() {
      return onPage.size > 0;
    },
    attempt, tab, read, write, drop, all, isTyped, send, sent,
  };
})();
