import assert from "node:assert/strict";
import { readFileSync, readdirSync } from "node:fs";
import { test } from "node:test";
import { Words, languages, tongueOf } from "./words";

const places = (text: string) => [...text.matchAll(/\{(\w+)\}/g)].map((m) => m[1]).sort().join(" ");

test("both languages have the same words with the same places", () => {
  assert.deepEqual(Object.keys(languages.es), Object.keys(languages.en));
  for (const [word, text] of Object.entries(languages.en)) assert.equal(places(languages.es[word]!), places(text), word);
});

test("the file itself says that it is setting up, before its code runs", () => {
  const shell = readFileSync(`${process.env["DESK_PAGE"]!}/shell.html`, "utf8");
  for (const words of Object.values(languages)) assert.ok(shell.includes(words["setting-up"]!));
});

test("no word is there that nothing says", () => {
  const dir = process.env["DESK_PAGE"]!;
  const code = readdirSync(dir).filter((f) => f.endsWith(".ts") && !f.endsWith(".test.ts")).map((f) => readFileSync(`${dir}/${f}`, "utf8")).join("\n");
  const starts = [...code.matchAll(/`([a-z-]+\.)\$\{/g)].map((m) => m[1]!);
  assert.ok(starts.length > 10);
  const said = (word: string) => code.includes(`"${word.replace(/\.(one|other)$/, "")}"`) || starts.some((s) => word.startsWith(s)) || /^(undo|redo)\.label$/.test(word);
  assert.deepEqual(Object.keys(languages.en).filter((w) => !said(w)), []);
});

test("days, times and numbers are written as each language does", () => {
  const rows: [string, string, string][] = [
    ["a week", "Week of Monday, September 28", "Semana del lunes, 28 de septiembre"],
    ["waits", "waits until Fri, Oct 2", "espera hasta el vie, 2 de oct"],
    ["one", "1 story", "1 cuento"],
    ["named", "Undo: Other numbers, story 3", "Deshacer: Otros números, cuento 3"],
    ["dated", "Week off, Oct 5", "Semana libre, 5 oct"],
  ];
  for (const [i, tag] of (["en", "es"] as const).entries()) {
    const w = new Words(tag);
    const got = [
      w.say("week.of", { day: w.day("2026-09-28", "long") }),
      w.say("year.waits", { day: w.day("2026-10-02", "weekday") }),
      w.count("stories.n", 1),
      w.say("undo.label", { name: w.tell({ word: "act.story.numbers", args: { n: 3 } }) }),
      w.tell({ word: "act.off", args: { date: "2026-10-05" } }),
    ];
    assert.deepEqual(got, rows.map((r) => r[i + 1]));
  }
});

test("the desk speaks English or Spanish, whichever the browser names first", () => {
  assert.equal(tongueOf(["fr", "es-MX", "en"]), "es");
  assert.equal(tongueOf(["en-GB", "es"]), "en");
  assert.equal(tongueOf(["vi"]), "en");
});
