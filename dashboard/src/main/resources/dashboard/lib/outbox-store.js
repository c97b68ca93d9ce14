// What outlives the proctor's page: presses that wait for the gateway, refusals that wait for the
// person, and the last frame. Nothing else is kept, and all of it can be erased.
//
// One IndexedDB database; every change is one transaction, complete only when the browser says it is
// on the disk ("strict": a tablet's battery may end the next moment). Each method returns a promise
// that fails where the browser keeps nothing.
const NAME = "yardclock-post";
const STORES = {
  waiting: { keyPath: "seq", autoIncrement: true },
  answered: { keyPath: "key" },
  last: {},
};

let opened = null;

function open() {
  opened ??= new Promise((resolve, reject) => {
    const asked = indexedDB.open(NAME, 1);
    asked.onupgradeneeded = () => {
      for (const [name, how] of Object.entries(STORES)) asked.result.createObjectStore(name, how);
    };
    asked.onsuccess = () => resolve(asked.result);
    asked.onerror = () => reject(asked.error);
  });
  return opened;
}

/** @param work gets the stores by name; what it returns is given back once all of it is on disk */
async function change(names, work) {
  const database = await open();
  return new Promise((resolve, reject) => {
    const all = database.transaction(names, "readwrite", { durability: "strict" });
    const asked = work(...names.map((name) => all.objectStore(name)));
    all.oncomplete = () => resolve(asked?.result);
    all.onerror = all.onabort = () => reject(all.error);
  });
}

async function read(name, ask) {
  const database = await open();
  return new Promise((resolve, reject) => {
    const asked = ask(database.transaction(name).objectStore(name));
    asked.onsuccess = () => resolve(asked.result);
    asked.onerror = () => reject(asked.error);
  });
}

export const store = {
  /** Everything that waits, in the order it was pressed. */
  waiting: () => read("waiting", (waiting) => waiting.getAll()),

  answered: () => read("answered", (answered) => answered.getAll()),

  /** Gives the press its place in the order. */
  keep: (entry) => change(["waiting"], (waiting) => waiting.add(entry)),

  /** Takes a press out; what became of it is kept in the same moment, unless that is null. */
  settle: (seq, answered) =>
    change(["waiting", "answered"], (waiting, refusals) => {
      waiting.delete(seq);
      if (answered) refusals.put(answered);
    }),

  /** The person has taken note. */
  noted: (key) => change(["answered"], (answered) => answered.delete(key)),

  lastFrame: () => read("last", (last) => last.get("frame")),

  keepFrame: (kept) => change(["last"], (last) => last.put(kept, "frame")),

  forgetFrame: () => change(["last"], (last) => last.delete("frame")),

  /** The tablet is given back, or enrolled anew. */
  erase: () =>
    change(Object.keys(STORES), (...all) => {
      for (const one of all) one.clear();
    }),
};
