// What waits to be sent lies in this browser's own database: it is there when the tab is closed or
// the battery is empty. Each entry is the person's and shop's who typed it.
const outboxStore = (() => {
  const { person = "" } = document.body.dataset;
  const ENTRIES = "entries";
  // Whose pages the worker may answer with: nobody else's.
  if (window.isSecureContext && window.caches) {
    caches.open("whose").then((cache) => cache.put("/whose", new Response(person)), () => {});
  }
  const isOpen = Boolean(person && window.isSecureContext && window.indexedDB && navigator.locks);

  const asked = (request) => new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });

  const open = () => {
    const request = indexedDB.open("outbox", 1);
    request.onupgradeneeded = () => request.result.createObjectStore(
      ENTRIES, { keyPath: "id", autoIncrement: true });
    return asked(request);
  };
  let opened = null;

  async function within(mode, work) {
    opened ??= open();
    return work((await opened).transaction(ENTRIES, mode).objectStore(ENTRIES));
  }

  // In the order in which they were entered.
  async function all() {
    if (!isOpen) return [];
    const entries = await within("readonly", (store) => asked(store.getAll()));
    return entries.filter((entry) => entry.person === person);
  }

  // What was made of an entry that was sent: nothing of one that says something else by now.
  const settle = ({ id, at }, refused) => within("readwrite", async (store) => {
    const now = await asked(store.get(id));
    if (now?.at !== at) return null;
    return asked(refused ? store.put({ ...now, refused }) : store.delete(id));
  });

  const element = (name, text, more = {}) => Object.assign(
    document.createElement(name), { textContent: text, ...more });

  // Pages on which nothing is put there say what waits once there is anything.
  document.addEventListener("DOMContentLoaded", async () => {
    if (window.outbox || !(await all()).length) return;
    document.head.append(Object.assign(
      document.createElement("script"), { src: document.body.dataset.outbox }));
  });

  return {
    person, isOpen, element, all, settle,
    put: (entry) => within("readwrite", (store) => asked(store.put({ ...entry, person }))),
    drop: (id) => within("readwrite", (store) => asked(store.delete(id))),
  };
})();
