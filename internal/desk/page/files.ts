// The teacher's files as plain values, and what changes in them.

import type { Changes } from "./protocol";

/** A desk's files: each path with its text. */
export type Files = Readonly<Record<string, string>>;

/** What became of one file. A side that is missing says that there was no such file. */
export interface Change {
  path: string;
  before?: string;
  after?: string;
}

/** The changes that lead from one set of files to another, sorted by path. */
export function differences(before: Files, after: Files): Change[] {
  const paths = new Set([...Object.keys(before), ...Object.keys(after)]);
  return [...paths]
    .sort()
    .filter((path) => before[path] !== after[path])
    .map((path) => change(path, before[path], after[path]));
}

/** The changes that an engine's answer makes: texts by path, null for a file that is gone. */
export function changesOf(files: Files, written: Readonly<Record<string, string | null>>): Change[] {
  return Object.keys(written)
    .sort()
    .map((path) => change(path, files[path], written[path] ?? undefined))
    .filter((c) => c.before !== c.after);
}

function change(path: string, before?: string, after?: string): Change {
  return { path, ...(before !== undefined && { before }), ...(after !== undefined && { after }) };
}

/** The files after the changes. */
export function apply(files: Files, changes: readonly Change[]): Files {
  const out: Record<string, string> = { ...files };
  for (const c of changes) {
    if (c.after === undefined) delete out[c.path];
    else out[c.path] = c.after;
  }
  return out;
}

/** The changes that take changes back. */
export function reverse(changes: readonly Change[]): Change[] {
  return changes.map((c) => change(c.path, c.after, c.before)).reverse();
}

/** Two runs of changes as one: each path from its first before to its last after. */
export function join(first: readonly Change[], second: readonly Change[]): Change[] {
  const befores = new Map<string, string | undefined>();
  const afters = new Map<string, string | undefined>();
  for (const c of [...first, ...second]) {
    if (!befores.has(c.path)) befores.set(c.path, c.before);
    afters.set(c.path, c.after);
  }
  return [...afters.keys()]
    .sort()
    .map((path) => change(path, befores.get(path), afters.get(path)))
    .filter((c) => c.before !== c.after);
}

/** One side of changes, as the engine takes them. */
export function toChanges(changes: readonly Change[], side: "before" | "after"): Changes {
  return Object.fromEntries(changes.map((c) => [c.path, c[side] ?? null]));
}
