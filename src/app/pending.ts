// Records on their way into the device's store, noted at once: a page closed or loaded anew in the same moment loses none.

const PREFIX = 'hand-jetting-trainer/';

/** The browser's small store that writes at once, or null where it is missing or refused. */
function noteStore(): globalThis.Storage | null {
  try {
    return typeof localStorage === 'undefined' ? null : localStorage;
  } catch {
    return null;
  }
}

/**
 * Notes a record that is about to be written; returns what takes the note away once it is. A frozen state is not noted:
 * it is large, its typed arrays are no plain text, and without it the run is replayed from its log.
 */
export function notePending(store: string, id: string, record: unknown): () => void {
  if (store === 'states') return () => undefined;
  const notes = noteStore();
  const key = `${PREFIX}${store}/${id}`;
  const text = JSON.stringify(record);
  try {
    notes?.setItem(key, text);
  } catch {
    // No room for the note: the store itself still gets the record.
  }
  return () => {
    try {
      // A later record under the same name has its own note.
      if (notes?.getItem(key) === text) notes.removeItem(key);
    } catch {
      // A note that stays is written once more at the next start, which changes nothing.
    }
  };
}

/** Drops the note of a record that is removed. */
export function dropPending(store: string, id: string): void {
  try {
    noteStore()?.removeItem(`${PREFIX}${store}/${id}`);
  } catch {
    // As above.
  }
}

/** Every record that was noted but perhaps never written, with its store. */
export function pendingRecords(): { store: string; record: { id: string } }[] {
  const found: { store: string; record: { id: string } }[] = [];
  try {
    const notes = noteStore();
    for (let i = 0; notes && i < notes.length; i++) {
      const key = notes.key(i);
      if (!key?.startsWith(PREFIX)) continue;
      const record = JSON.parse(notes.getItem(key)!) as { id: string };
      found.push({ store: key.slice(PREFIX.length).split('/')[0], record });
    }
  } catch {
    // A note that cannot be read is no reason not to start.
  }
  return found;
}
