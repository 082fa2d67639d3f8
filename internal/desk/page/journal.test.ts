import assert from "node:assert/strict";
import { test } from "node:test";
import { type Files, apply, changesOf, differences, join, reverse } from "./files";
import { type Journal, empty, fits, pause, reach, record, redo, toRedo, toUndo, undo } from "./journal";

const act = (before: Files, after: Files, at = 0, field?: string) => ({
  name: { word: "act.way" },
  at,
  changes: differences(before, after),
  ...(field !== undefined && { field }),
});

test("differences and reverse lead there and back", () => {
  const rows: { why: string; a: Files; b: Files; paths: string[] }[] = [
    { why: "nothing changed", a: { x: "1" }, b: { x: "1" }, paths: [] },
    { why: "a text", a: { x: "1", y: "2" }, b: { x: "1", y: "3" }, paths: ["y"] },
    { why: "a new file", a: {}, b: { x: "1" }, paths: ["x"] },
    { why: "a file is gone", a: { x: "1" }, b: {}, paths: ["x"] },
    { why: "an empty file is a file", a: {}, b: { x: "" }, paths: ["x"] },
  ];
  for (const { why, a, b, paths } of rows) {
    const changes = differences(a, b);
    assert.deepEqual(changes.map((c) => c.path), paths, why);
    assert.deepEqual(apply(a, changes), b, why);
    assert.deepEqual(apply(b, reverse(changes)), a, why);
  }
});

test("an engine's null removes a file, and what is as it was is no change", () => {
  const files = { x: "1", y: "2" };
  const changes = changesOf(files, { x: null, y: "2", z: "3" });
  assert.deepEqual(apply(files, changes), { y: "2", z: "3" });
  assert.equal(changes.length, 2);
});

test("joined changes are one way from the first to the last", () => {
  const a = { x: "1" }, b = { x: "2", y: "n" }, c = { x: "3" };
  const joined = join(differences(a, b), differences(b, c));
  assert.deepEqual(apply(a, joined), c);
  assert.deepEqual(joined.map((d) => d.path), ["x"], "what came and went is no change");
});

test("undo and redo walk through the acts, and a new act ends the way forward", () => {
  const states: Files[] = [{}, { x: "1" }, { x: "2" }, { x: "2", y: "1" }];
  let journal: Journal = empty;
  for (let i = 1; i < states.length; i++) journal = record(journal, act(states[i - 1]!, states[i]!));
  let files = states[3]!;
  for (let i = 2; i >= 0; i--) {
    const step = undo(journal)!;
    assert.ok(fits(files, step.changes));
    [journal, files] = [step.journal, apply(files, step.changes)];
    assert.deepEqual(files, states[i]);
  }
  assert.equal(undo(journal), undefined);
  const again = redo(journal)!;
  assert.deepEqual(apply(files, again.changes), states[1]);
  journal = record(again.journal, act(states[1]!, { x: "other" }));
  assert.equal(toRedo(journal), undefined);
  assert.equal(toUndo(journal)!.id, 4, "an id is never used twice");
});

test("typing in one field is one act, until a pause or another field", () => {
  let journal = record(empty, act({ n: "" }, { n: "a" }, 0, "note.en"));
  journal = record(journal, act({ n: "a" }, { n: "ab" }, pause - 1, "note.en"));
  assert.equal(journal.acts.length, 1);
  assert.deepEqual(undo(journal)!.changes, [{ path: "n", before: "ab", after: "" }]);
  journal = record(journal, act({ n: "ab" }, { n: "abc" }, 3 * pause, "note.en"));
  journal = record(journal, act({ n: "abc" }, { n: "abcd" }, 3 * pause + 1, "note.es"));
  assert.equal(journal.acts.length, 3);
  assert.equal(toUndo(record(journal, act({ n: "abcd" }, { n: "" }, 3 * pause + 2)))!.id, 4, "an act without a field stands alone");
});

test("the journal reaches back as far as it says, and no farther", () => {
  let journal: Journal = empty;
  for (let i = 0; i < reach + 5; i++) journal = record(journal, act({ n: `${i}` }, { n: `${i + 1}` }, i));
  assert.equal(journal.acts.length, reach);
  assert.equal(journal.acts[0]!.id, 6);
  assert.equal(journal.done, reach);
});

test("changes do not fit files that another program changed", () => {
  assert.equal(fits({ x: "strange" }, differences({ x: "1" }, { x: "2" })), false);
});
