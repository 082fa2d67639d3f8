// Keeping in the browser: each file, each act and what the desk remembers in a
// table of IndexedDB, written together or not at all.

import type { Change, Files } from "./files";
import type { Act } from "./journal";
import { KeepError, type Kept, type Keeper, type Memory } from "./keeper";

const version = 1;

/** What the table "desk" holds besides the writer. */
interface Row {
  done: number;
  memory: Memory;
}

export class Store implements Keeper {
  private saved: ReadonlyMap<number, Act> = new Map();

  private constructor(private readonly db: IDBDatabase, private readonly tab: string, readonly place: "browser" | "folder") {}

  /**
   * Opens the browser's storage of a name for a tab; fails where the browser keeps
   * nothing. For a desk whose files are in a folder it keeps the way back.
   */
  static async open(name: string, tab: string, place: "browser" | "folder"): Promise<Store> {
    try {
      const request = indexedDB.open(name, version);
      request.onupgradeneeded = () => {
        for (const table of ["files", "acts", "desk"]) request.result.createObjectStore(table);
      };
      return new Store(await answer(request), tab, place);
    } catch (cause) {
      throw new KeepError("forgets", cause);
    }
  }

  async load(): Promise<Kept | undefined> {
    const t = this.db.transaction(["files", "acts", "desk"]);
    const files = t.objectStore("files");
    const [paths, texts, acts, row] = await Promise.all([
      answer(files.getAllKeys()),
      answer(files.getAll()),
      answer<Act[]>(t.objectStore("acts").getAll()),
      answer<Row | undefined>(t.objectStore("desk").get("state")),
    ]);
    if (!row) return undefined;
    this.saved = new Map(acts.map((a) => [a.id, a]));
    const all: Files = Object.fromEntries(paths.map((path, i) => [path, texts[i]]));
    return { files: all, journal: { acts, done: row.done }, memory: row.memory };
  }

  async save({ journal, memory }: Kept, changes: readonly Change[]): Promise<void> {
    const acts = new Map(journal.acts.map((a) => [a.id, a]));
    await this.write(async (t) => {
      const desk = t.objectStore("desk");
      const writer = await answer<string | undefined>(desk.get("writer"));
      if (writer !== undefined && writer !== this.tab) throw new KeepError("elsewhere");
      for (const c of changes) put(t.objectStore("files"), c.path, c.after);
      for (const id of this.saved.keys()) if (!acts.has(id)) put(t.objectStore("acts"), id, undefined);
      for (const [id, act] of acts) if (this.saved.get(id) !== act) put(t.objectStore("acts"), id, act);
      put(desk, "state", { done: journal.done, memory } satisfies Row);
      put(desk, "writer", this.tab);
    });
    this.saved = acts;
  }

  async claim(): Promise<void> {
    await this.write(async (t) => put(t.objectStore("desk"), "writer", this.tab));
  }

  /** Runs one transaction that is kept whole or not at all. */
  private async write(work: (t: IDBTransaction) => Promise<void>): Promise<void> {
    try {
      const t = this.db.transaction(["files", "acts", "desk"], "readwrite");
      const end = ending(t);
      try {
        await work(t);
      } catch (cause) {
        t.abort();
        await end.catch(() => undefined);
        throw cause;
      }
      await end;
    } catch (cause) {
      throw cause instanceof KeepError ? cause : new KeepError(isFull(cause) ? "full" : "forgets", cause);
    }
  }
}

function put(table: IDBObjectStore, key: string | number, value: unknown): void {
  if (value === undefined) table.delete(key);
  else table.put(value, key);
}

function isFull(cause: unknown): boolean {
  return cause instanceof DOMException && cause.name === "QuotaExceededError";
}

function answer<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

function ending(t: IDBTransaction): Promise<void> {
  return new Promise((resolve, reject) => {
    t.oncomplete = () => resolve();
    t.onabort = () => reject(t.error);
  });
}

/** A keeper for a browser that keeps nothing: all is in the page alone, or in her folder. */
export function forgetful(place: "browser" | "folder"): Keeper {
  return {
    place,
    load: async () => undefined,
    save: async () => {
      if (place === "browser") throw new KeepError("forgets");
    },
    claim: async () => undefined,
  };
}

/**
 * Which tab works at the desk: the one that holds the browser's lock of its name.
 * A page from an insecure address has no locks; there the tab that opened last
 * works, and another one finds out when it wants to save.
 */
export class Turn {
  /** Called when another tab took the desk. */
  onTaken: () => void = () => undefined;
  private readonly locks: LockManager | undefined = navigator.locks;

  constructor(private readonly name: string) {}

  /** Whether another tab works at the desk. */
  async another(): Promise<boolean> {
    const { held = [] } = (await this.locks?.query().catch(() => undefined)) ?? {};
    return held.some((l) => l.name === this.name);
  }

  /** Makes this tab the one that works, until it is closed or another one takes over. */
  take(): void {
    this.locks?.request(this.name, { steal: true }, () => new Promise(() => undefined)).catch(() => this.onTaken());
  }
}
