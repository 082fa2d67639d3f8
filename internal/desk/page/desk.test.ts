import assert from "node:assert/strict";
import { test } from "node:test";
import { nextMonday } from "./days";
import { Desk } from "./desk";
import { Engine, GoneError } from "./engine";
import { Fake } from "./fake";
import { KeepError, type Kept, type Keeper, type Trouble } from "./keeper";

/** A keeper in memory, which can be in trouble. */
class Memo implements Keeper {
  readonly place = "browser";
  kept: Kept | undefined;
  trouble: Trouble | undefined;
  async load() {
    return this.kept && structuredClone(this.kept);
  }
  async save(kept: Kept) {
    if (this.trouble) throw new KeepError(this.trouble);
    this.kept = structuredClone(kept);
  }
  async claim() {
    this.trouble = undefined;
  }
}

const date = "2026-09-28";
const path = `weeks/${date}.toml`;

async function aDesk(memo = new Memo()) {
  let now = new Date(2026, 8, 23, 10, 42).getTime();
  const fakes: Fake[] = [];
  const engine = new Engine((l) => (fakes.push(new Fake(l)), fakes.at(-1)!));
  const desk = new Desk(engine, memo, () => new Date((now += 10)), () => "en");
  await desk.open();
  const set = (key: string, value: string, field?: string) => desk.act({ word: "act.line" }, () => desk.ask("set", { date, key, value }), field);
  const begin = () => desk.act({ word: "act.begin" }, () => desk.ask("begin", { name: "Quarry Hill", grade: 2, languages: ["en", "es"], monday: date }));
  return { desk, memo, fakes, set, begin, wait: (ms: number) => void (now += ms) };
}

test("a new desk starts with questions, and what is begun is kept and found again", async () => {
  const { desk, memo, begin } = await aDesk();
  assert.equal(desk.state.phase, "start");
  assert.ok(await begin());
  assert.equal(desk.state.date, date);
  assert.equal(desk.state.week?.can, "I can add past ten.");
  const again = (await aDesk(memo)).desk;
  assert.equal(again.state.phase, "desk");
  assert.deepEqual(again.state.files, desk.state.files);
  assert.equal(again.state.date, date);
});

test("what another program wrote is taken up, but for an act that it stands in the way of", async () => {
  const { desk, fakes, begin } = await aDesk();
  await begin();
  const log = fakes[0]!.log;
  log.length = 0;
  await desk.follow();
  assert.deepEqual([log[0], desk.state.said?.word], ["open", "did.followed"]);
  log.length = 0;
  desk.set({ saving: { state: "changed" } });
  await desk.follow();
  assert.deepEqual(log, []);
});

test("undo reaches over a closing, to the empty desk and back", async () => {
  const first = await aDesk();
  await first.begin();
  await first.set("focus", "count-on");
  await first.set("place", "market");
  const files = first.desk.state.files;
  const { desk } = await aDesk(first.memo);
  await desk.undo();
  await desk.undo();
  assert.equal(desk.state.files[path], "");
  assert.equal(desk.state.said?.word, "did.undone");
  await desk.undo();
  assert.deepEqual(desk.state.files, {});
  assert.equal(desk.state.phase, "start");
  for (let i = 0; i < 3; i++) await desk.redo();
  assert.deepEqual(desk.state.files, files);
  await desk.redo();
  assert.deepEqual(desk.state.files, files, "there is nothing more to do again");
});

test("acts asked for at once are done one after the other", async () => {
  const { desk, begin, set } = await aDesk();
  await begin();
  await Promise.all([set("focus", "count-on"), set("place", "market"), set("picture", "ten-frame")]);
  assert.equal(desk.state.files[path], "focus=count-on\nplace=market\npicture=ten-frame\n");
  assert.equal(desk.state.journal.done, 4);
});

test("an act that changes nothing is none", async () => {
  const { desk, begin, set } = await aDesk();
  await begin();
  await set("focus", "count-on");
  await set("focus", "count-on");
  assert.equal(desk.state.journal.done, 2);
});

test("a full or forgetful storage is said, and the next save keeps all that was not kept", async () => {
  for (const trouble of ["full", "forgets"] as const) {
    const { desk, memo, begin, set } = await aDesk();
    await begin();
    const at = desk.state.saving.at;
    memo.trouble = trouble;
    await set("focus", "count-on");
    assert.deepEqual(desk.state.saving, { state: trouble, at });
    memo.trouble = undefined;
    await set("place", "market");
    assert.equal(desk.state.saving.state, "saved");
    assert.deepEqual(memo.kept?.files, desk.state.files);
  }
});

test("a tab that only shows changes nothing until she works here", async () => {
  const { desk, memo, begin, set } = await aDesk();
  await begin();
  memo.trouble = "elsewhere";
  await set("focus", "count-on");
  assert.equal(desk.state.saving.state, "elsewhere");
  const before = desk.state.files;
  assert.equal(await set("place", "market"), false);
  await desk.undo();
  assert.deepEqual(desk.state.files, before);
  await desk.workHere();
  assert.equal(desk.state.saving.state, "saved");
  assert.deepEqual(desk.state.files, memo.kept?.files, "what the other tab left is taken up");
});

test("a worker that dies once changes nothing for her; twice, the act before can be put back", async () => {
  const { desk, fakes, begin, set } = await aDesk();
  await begin();
  fakes.at(-1)!.dies = "set";
  assert.ok(await set("focus", "count-on"));
  assert.equal(desk.state.files[path], "focus=count-on\n");
  assert.equal(desk.state.engine, "ready");
  assert.equal(fakes.length, 2);
});

test("typing is one act, and another field another", async () => {
  const { desk, begin, set, wait } = await aDesk();
  await begin();
  await set("note.en", "Dear", "en");
  await set("note.en", "Dear families", "en");
  assert.equal(desk.state.journal.done, 2);
  wait(5000);
  await set("note.en", "Dear families, hello", "en");
  assert.equal(desk.state.journal.done, 3);
});

test("nextMonday", () => {
  const rows: Record<string, string> = { "2026-09-27": "2026-09-28", "2026-09-28": "2026-10-05", "2026-12-31": "2027-01-04" };
  for (const [day, want] of Object.entries(rows)) assert.equal(nextMonday(day), want);
});

test("a program that has ended is told apart from an engine that stops", async () => {
  const { desk, fakes, begin, set } = await aDesk();
  await begin();
  const works = Fake.prototype.send;
  Fake.prototype.send = function () {
    this.refuses(new GoneError("no answer"));
  };
  await set("focus", "count-on");
  assert.equal(desk.state.engine, "gone");
  Fake.prototype.send = works;
  assert.equal(fakes.length > 1, true);
  await set("focus", "count-on");
  assert.equal(desk.state.engine, "ready");
});
