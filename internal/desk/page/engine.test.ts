import assert from "node:assert/strict";
import { test } from "node:test";
import { Engine, type Listener, StopError, WrongError } from "./engine";
import type { Finding, Open, Reply, Request } from "./protocol";

/** An engine that answers by a script and counts its starts. */
function scripted(answer: (r: Request, start: number) => Omit<Reply, "id"> | "dies") {
  const log: string[] = [];
  let starts = 0;
  const engine = new Engine((listener: Listener) => {
    const mine = ++starts;
    return {
      send(r) {
        log.push(`${mine} ${r.call}`);
        queueMicrotask(() => {
          const a = answer(r, mine);
          if (a === "dies") listener.stopped("killed");
          else listener.answered({ id: r.id, ...a });
        });
      },
      close() {},
    };
  });
  return { engine, log };
}

const desk: Open = { files: { "site.toml": "" }, today: "2026-09-14", words: "en" };

test("answers find their questions, in whatever order they come", async () => {
  const kept: Request[] = [];
  let listener: Listener;
  const engine = new Engine((l) => ((listener = l), { send: (r) => void kept.push(r), close() {} }));
  const both = Promise.all([engine.call("copy", {}), engine.call("site", {})]);
  listener!.answered({ id: kept[1]!.id, value: "site" });
  listener!.answered({ id: kept[0]!.id, value: "copy" });
  listener!.answered({ id: 99, value: "of nobody" });
  assert.deepEqual(await both, ["copy", "site"]);
});

test("what is wrong comes as findings", async () => {
  const finding = { text: "a phone number" } as Finding;
  const { engine } = scripted(() => ({ wrong: [finding] }));
  await assert.rejects(engine.call("year", {}), (e) => e instanceof WrongError && e.findings[0] === finding);
});

test("an engine that stops once starts again, takes up the desk and answers", async () => {
  for (const end of ["dies", { fault: "panic" }] as const) {
    const { engine, log } = scripted((r, start) => (start === 1 ? end : { value: r.call }));
    let told = 0;
    engine.onRestart = () => void told++;
    engine.reopen = () => desk;
    assert.equal(await engine.call("year", {}), "year");
    assert.deepEqual(log, ["1 open", "1 year", "2 open", "2 year"]);
    assert.equal(told, 1);
  }
});

test("an engine that stops twice at the same call says at which", async () => {
  const { engine, log } = scripted((r) => (r.call === "week" ? "dies" : { value: r.call }));
  engine.reopen = () => desk;
  const args = { date: "2026-09-14" };
  await assert.rejects(engine.call("week", args), (e) => e instanceof StopError && e.call === "week" && e.args === args);
  assert.equal(await engine.call("year", {}), "year", "the next call has a fresh engine");
  assert.deepEqual(log, ["1 open", "1 week", "2 open", "2 week", "3 open", "3 year"]);
});

test("an engine that says nothing has stopped", async () => {
  let starts = 0;
  const engine = new Engine((l) => ({ send: ({ id }) => void (starts > 1 && l.answered({ id, value: ++starts })), close: () => void starts++ }), 5);
  starts = 1;
  assert.equal(await engine.call("copy", {}), 3);
});

test("whoever waits when the engine stops is asked for again", async () => {
  const { engine } = scripted((r, start) => (start === 1 ? "dies" : { value: r.call }));
  engine.reopen = () => desk;
  assert.deepEqual(await Promise.all([engine.call("copy", {}), engine.call("site", {})]), ["copy", "site"]);
});
