// What she did, so that it can be taken back and done again. Pure: a journal goes
// in, another one comes out.

import { type Change, type Files, join, reverse } from "./files";

/** A sentence of the language file and what goes into its places. */
export interface Said {
  word: string;
  args?: Record<string, string | number>;
}

/** One act: what it is called and which files it changed. */
export interface Act {
  /** The act's place since the desk began, from 1; never used twice. */
  id: number;
  name: Said;
  /** Milliseconds since 1970, UTC. */
  at: number;
  changes: Change[];
  /** The field that was typed into: typing in one field is one act, until a pause. */
  field?: string;
}

/** Acts in their order. Those before `done` stand, the others were taken back. */
export interface Journal {
  acts: readonly Act[];
  done: number;
}

export const empty: Journal = { acts: [], done: 0 };

/** How many acts can be taken back. */
export const reach = 200;

/** The pause after which typing is a new act, in milliseconds. */
export const pause = 2000;

/** The journal after an act. What was taken back before it is gone. */
export function record(journal: Journal, act: Omit<Act, "id">): Journal {
  const stand = journal.acts.slice(0, journal.done);
  const last = stand.at(-1);
  if (last?.field !== undefined && last.field === act.field && act.at - last.at < pause) {
    const joined = { ...last, at: act.at, changes: join(last.changes, act.changes) };
    stand[stand.length - 1] = joined;
    return { acts: stand, done: stand.length };
  }
  const acts = [...stand, { ...act, id: nextId(journal) }].slice(-reach);
  return { acts, done: acts.length };
}

function nextId(journal: Journal): number {
  return Math.max(0, ...journal.acts.map((a) => a.id)) + 1;
}

/** The act that Undo takes back next. */
export const toUndo = (journal: Journal): Act | undefined => journal.acts[journal.done - 1];

/** The act that Redo does next. */
export const toRedo = (journal: Journal): Act | undefined => journal.acts[journal.done];

/** A step through the journal: the journal and the changes to make. */
export interface Step {
  journal: Journal;
  changes: Change[];
}

/** Takes the last act back. */
export function undo(journal: Journal): Step | undefined {
  const act = toUndo(journal);
  return act && { journal: { ...journal, done: journal.done - 1 }, changes: reverse(act.changes) };
}

/** Does again what was taken back last. */
export function redo(journal: Journal): Step | undefined {
  const act = toRedo(journal);
  return act && { journal: { ...journal, done: journal.done + 1 }, changes: act.changes };
}

/** Whether changes can be made to these files: each of them is as the change met it. */
export function fits(files: Files, changes: readonly Change[]): boolean {
  return changes.every((c) => files[c.path] === c.before);
}

