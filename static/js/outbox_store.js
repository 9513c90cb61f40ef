// What waits to be sent lies in this browser's own database: it is there when the tab is closed or
// the battery is empty. Each entry is the person's and shop's who typed it.
const outboxStore = (() => {
  const { person } = document.body.dataset;
  const ENTRIES = "entries";

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
    const store = (await opened).transaction(ENTRIES, mode).objectStore(ENTRIES);
    return asked(work(store));
  }

  // In the order in which they were entered.
  async function all() {
    if (!person || !window.indexedDB) return [];
    const entries = await within("readonly", (store) => store.getAll());
    return entries.filter((entry) => entry.person === person);
  }

  const element = (name, text, more = {}) => Object.assign(
    document.createElement(name), { textContent: text, ...more });

  return {
    person,
    element,
    all,
    put: (entry) => within("readwrite", (store) => store.put({ ...entry, person })),
    drop: (id) => within("readwrite", (store) => store.delete(id)),
  };
})();
