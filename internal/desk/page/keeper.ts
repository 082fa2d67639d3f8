// What keeps a desk between two openings: the browser's own storage, or her folder.

import type { Change, Files } from "./files";
import type { Journal } from "./journal";

/** What the desk remembers that is none of her files: where she was and what she chose to see. */
export interface Memory {
  /** The Monday that lies open. */
  week?: string;
  /** The language of the family page, and its look where she chose another than the school's. */
  language?: string;
  theme?: string;
  /** How the last week went home. */
  way?: "web" | "file" | "paper";
  /** A story of her own that she has not laid into the week yet. */
  draft?: { date: string; story: number; texts: Record<string, string> };
  /** The desk's own language. */
  words?: "en" | "es";
}

export interface Kept {
  files: Files;
  journal: Journal;
  memory: Memory;
}

/** Why something could not be kept. */
export type Trouble =
  /** This browser keeps nothing for this page. */
  | "forgets"
  /** There is no room left. */
  | "full"
  /** Another tab works at the same desk. */
  | "elsewhere"
  /** Another program changed a file. */
  | "changed";

export class KeepError extends Error {
  constructor(readonly trouble: Trouble, cause?: unknown) {
    super(trouble, { cause });
  }
}

export interface Keeper {
  /** Where the work is kept, for the words of the ledge. */
  readonly place: "browser" | "folder";
  /** What is kept; nothing at a desk that is new. Fails with a KeepError. */
  load(): Promise<Kept | undefined>;
  /** Keeps the state after changes. Fails with a KeepError, and then nothing of it is kept. */
  save(kept: Kept, changes: readonly Change[]): Promise<void>;
  /** Makes this tab the one that works. */
  claim(): Promise<void>;
}
