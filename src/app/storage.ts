// Keeps learners, runs and settings on the device. Where the browser cannot, they live in memory until the page is closed,
// and the app says so: saving a run to a file works all the same.
import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import { dropPending, notePending, pendingRecords } from './pending';
import type { KeptExercise, KeptResult, Learner, RunState, SavedRun, Settings } from './records';

interface Stores {
  learners: Learner;
  runs: SavedRun;
  states: RunState;
  settings: Settings;
  exercises: KeptExercise;
  results: KeptResult;
}
export type StoreName = keyof Stores;

interface Schema extends DBSchema {
  learners: { key: string; value: Learner };
  runs: { key: string; value: SavedRun };
  states: { key: string; value: RunState };
  settings: { key: string; value: Settings };
  exercises: { key: string; value: KeptExercise };
  results: { key: string; value: KeptResult };
}

/** Why the device does not keep things: no such store, it refuses, it has no room left. */
export type StorageTrouble = 'missing' | 'blocked' | 'full';

export interface Storage {
  get<S extends StoreName>(store: S, id: string): Promise<Stores[S] | undefined>;
  all<S extends StoreName>(store: S): Promise<Stores[S][]>;
  put<S extends StoreName>(store: S, record: Stores[S]): Promise<void>;
  remove(store: StoreName, id: string): Promise<void>;
}

const NAMES: readonly StoreName[] = ['learners', 'runs', 'states', 'settings', 'exercises', 'results'];
/** A browser that neither opens its store nor says no within this time counts as one that refuses. */
const PATIENCE_ms = 4000;

/** Opens the device's store, or one in memory; `tell` hears of every trouble, now and later. Never throws. */
export async function openStorage(tell: (trouble: StorageTrouble) => void): Promise<Storage> {
  const memory = memoryStorage();
  const database = await openDatabase(tell);
  if (!database) return memory;
  const storage = deviceStorage(database, memory, tell);
  // What the last page had no time to write.
  for (const { store, record } of pendingRecords()) {
    if ((NAMES as readonly string[]).includes(store)) await storage.put(store as StoreName, record as never);
  }
  return storage;
}

async function openDatabase(tell: (trouble: StorageTrouble) => void): Promise<IDBPDatabase<Schema> | null> {
  try {
    if (typeof indexedDB === 'undefined' || indexedDB === null) {
      tell('missing');
      return null;
    }
    const opening = openDB<Schema>('hand-jetting-trainer', 2, {
      upgrade(database) {
        for (const name of NAMES) {
          if (!database.objectStoreNames.contains(name)) database.createObjectStore(name, { keyPath: 'id' });
        }
      },
      blocking: (_current, _blocked, event) => (event.target as IDBDatabase).close(),
    });
    const late = new Promise<null>((resolve) => setTimeout(() => resolve(null), PATIENCE_ms));
    const database = await Promise.race([opening, late]);
    if (!database) tell('blocked');
    return database;
  } catch (error) {
    tell(troubleOf(error));
    return null;
  }
}

function troubleOf(error: unknown): StorageTrouble {
  return error instanceof DOMException && error.name === 'QuotaExceededError' ? 'full' : 'blocked';
}

/** Writes to the device; what the device does not take is kept in memory and wins when read. */
function deviceStorage(
  database: IDBPDatabase<Schema>,
  memory: Storage,
  tell: (trouble: StorageTrouble) => void,
): Storage {
  const attempt = async <T>(work: () => Promise<T>): Promise<T | undefined> => {
    try {
      return await work();
    } catch (error) {
      tell(troubleOf(error));
      return undefined;
    }
  };
  return {
    async get(store, id) {
      return (
        (await memory.get(store, id)) ??
        (await attempt(() => database.get(store, id) as Promise<Stores[typeof store] | undefined>))
      );
    },
    async all(store) {
      const kept = (await attempt(() => database.getAll(store) as Promise<Stores[typeof store][]>)) ?? [];
      const fresh = await memory.all(store);
      const ids = new Set(fresh.map((record) => record.id));
      return [...kept.filter((record) => !ids.has(record.id)), ...fresh];
    },
    async put(store, record) {
      const written = notePending(store, record.id, record);
      try {
        await database.put(store, record);
        written();
        await memory.remove(store, record.id);
      } catch (error) {
        tell(troubleOf(error));
        await memory.put(store, record);
      }
    },
    async remove(store, id) {
      dropPending(store, id);
      await memory.remove(store, id);
      await attempt(() => database.delete(store, id));
    },
  };
}

export function memoryStorage(): Storage {
  const stores = Object.fromEntries(NAMES.map((name) => [name, new Map<string, unknown>()])) as Record<
    StoreName,
    Map<string, never>
  >;
  return {
    get: (store, id) => Promise.resolve(stores[store].get(id)),
    all: (store) => Promise.resolve([...stores[store].values()]),
    put: (store, record) => {
      stores[store].set(record.id, record as never);
      return Promise.resolve();
    },
    remove: (store, id) => {
      stores[store].delete(id);
      return Promise.resolve();
    },
  };
}
