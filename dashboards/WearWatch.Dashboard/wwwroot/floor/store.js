// What the phone keeps: entries until long after they were sent, the pack, small settings. A write counts once it is on disk.
const open = () => new Promise((done, failed) => {
  const request = indexedDB.open('wearwatch-floor', 1);
  request.onupgradeneeded = () => {
    const made = request.result.createObjectStore('entries', { keyPath: 'seq', autoIncrement: true });
    made.createIndex('id', 'id', { unique: true });
    request.result.createObjectStore('values');
  };
  request.onsuccess = () => done(request.result);
  request.onerror = () => failed(request.error);
});

async function work(store, mode, ask) {
  const db = await open();
  try {
    return await new Promise((done, failed) => {
      const transaction = db.transaction(store, mode, { durability: 'strict' });
      const asked = ask(transaction.objectStore(store));
      transaction.oncomplete = () => done(Array.isArray(asked) ? asked.map(each => each.result) : asked?.result);
      transaction.onerror = transaction.onabort = () => failed(transaction.error);
    });
  } finally {
    db.close();
  }
}

/** Keeps an entry; its number in the order of making is given by the database, whichever tab made it. */
export const keepEntry = entry => work('entries', 'readwrite', store => store.put(entry));

/** Keeps several entries, all or none: their numbers. */
export const keepEntries = all => work('entries', 'readwrite', store => all.map(entry => store.put(entry)));

/** All entries, oldest first. */
export const entries = () => work('entries', 'readonly', store => store.getAll());

/** Drops entries by their numbers. */
export const dropEntries = seqs => work('entries', 'readwrite', store => seqs.map(seq => store.delete(seq)));

/** Keeps a value under a name. */
export const keepValue = (name, value) => work('values', 'readwrite', store => store.put(value, name));

/** The value of a name; undefined for none. */
export const value = name => work('values', 'readonly', store => store.get(name));

/** Bytes that this browser leaves free for the phone's memory; null where it does not say. */
export async function freeBytes() {
  const told = await navigator.storage?.estimate?.().catch(() => null);
  return told?.quota === undefined ? null : Math.max(0, told.quota - (told.usage ?? 0));
}
