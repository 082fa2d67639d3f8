// Acts on a week and its lines.

import type { Desk } from "./desk";
import type { ClassWord, Finding, Line } from "./protocol";
import type { Memory } from "./keeper";
import { refreshChoices } from "./refresh";
import { type Shown, type View, choicesOf } from "./state";
import { focusOn, fromHead } from "./focus";
import { rowOf } from "./rows";

/** Lays a Monday open, with one of its lines open where one is named. */
export async function goTo(desk: Desk, date: string, line?: string): Promise<void> {
  await flush(desk);
  desk.set({ view: "week", line: undefined, side: "yours" });
  await layOpen(desk, date);
  if (line) await openLine(desk, line);
}

/** Makes a Monday the one that is worked at. */
async function layOpen(desk: Desk, date: string): Promise<void> {
  if (date !== desk.state.date) desk.set({ date, week: undefined, html: undefined, story: undefined, own: desk.state.own?.date === date ? desk.state.own : undefined, sending: undefined, given: undefined });
  desk.remember({ week: date });
  await desk.refresh();
}

/** Opens a line and shuts the others; nothing shuts all. */
export async function openLine(desk: Desk, key?: string): Promise<void> {
  await flush(desk);
  desk.set({ line: key, choices: undefined, story: undefined, targets: undefined, search: "" });
  if (key === "target") await findTargets(desk, "");
  else if (key !== undefined && key in choicesOf) await refreshChoices(desk, key);
}

let searches = 0;

/** Finds sentences by words, a grade or a code. */
export async function findTargets(desk: Desk, typed: string): Promise<void> {
  const mine = ++searches;
  desk.set({ search: typed });
  const targets = await desk.ask("targets", { words: typed.trim(), grade: desk.state.year?.grade ?? desk.state.week?.grade ?? 1 });
  if (targets && mine === searches && desk.state.line === "target") desk.set({ targets });
}

/** Writes a value on a line; nothing rubs it out. */
export async function setLine(desk: Desk, line: Line, value: string): Promise<void> {
  const date = desk.state.date!;
  const word = value === "" ? "act.rub-out" : "act.line";
  if (value !== "") desk.set({ taken: { ...desk.state.taken, [line.key]: value } });
  await desk.act({ word, args: { line: `@line.${line.key}` } }, () => desk.ask("set", { date, key: line.key, value }));
  desk.set({ taken: without(desk.state.taken, line.key, value) });
  if (desk.state.line === "target") await findTargets(desk, desk.state.search);
}

/** What waits, without an entry that was done; another one that came meanwhile stays. */
function without(waiting: Record<string, string>, key: string, done: string): Record<string, string> {
  return waiting[key] === done ? Object.fromEntries(Object.entries(waiting).filter(([k]) => k !== key)) : waiting;
}
/** Typing that is not written down yet: it waits for a short pause. */
const waiting = new Map<Desk, { timer: number; write: () => Promise<unknown> }>();

/** Writes what is typed into a letter, after a short pause or at once. */
export function writeLetter(desk: Desk, tag: string, text: string, now = false): void {
  const date = desk.state.date!;
  const field = `${date}/note.${tag}`;
  desk.set({ typed: { ...desk.state.typed, [field]: text } });
  const write = async () => {
    const done = await desk.act({ word: "act.letter", args: { language: languageName(desk, tag) } }, () => desk.ask("set", { date, key: `note.${tag}`, value: text }), now ? undefined : field);
    if (done) desk.set({ typed: without(desk.state.typed, field, text) });
  };
  later(desk, write, now ? 0 : 300);
}

function languageName(desk: Desk, tag: string): string {
  return desk.state.year?.languages.find((l) => l.tag === tag)?.name ?? tag;
}

/** Does something after a pause, in place of what waited before. */
export function later(desk: Desk, write: () => Promise<unknown>, pause: number): void {
  const before = waiting.get(desk);
  if (before) clearTimeout(before.timer);
  const timer = window.setTimeout(() => void flush(desk), pause);
  waiting.set(desk, { timer, write });
}

/** Writes down what waits. */
export async function flush(desk: Desk): Promise<void> {
  const w = waiting.get(desk);
  if (!w) return;
  clearTimeout(w.timer);
  waiting.delete(desk);
  await w.write();
}

/** Takes words that may not be public out of a letter. */
export async function takeOut(desk: Desk, f: Finding): Promise<void> {
  const tag = f.key.slice("note.".length);
  const text = desk.state.week?.letters.find((l) => l.tag === tag)?.text ?? "";
  const value = text.replace(f.quote, "").replace(/ {2,}/g, " ");
  await desk.act({ word: "act.take-out" }, () => desk.ask("set", { date: desk.state.date!, key: f.key, value }));
}

/** Allows words that look private: they are the school's. */
export async function allow(desk: Desk, f: Finding): Promise<void> {
  await desk.act({ word: "act.allow" }, () => desk.ask("set", { date: desk.state.date!, key: "allow", value: f.quote }));
}

/** Says that a week's day is meant as it is. */
export async function dateMeant(desk: Desk, f: Finding): Promise<void> {
  await desk.act({ word: "act.date-meant" }, () => desk.ask("set", { date: f.date || desk.state.date!, key: "odd-date", value: "true" }));
}

/** Goes to the place of a finding. */
export async function show(desk: Desk, f: Finding): Promise<void> {
  if (f.date && f.date !== desk.state.date) await goTo(desk, f.date);
  desk.set({ view: "week", side: "yours" });
  if (f.story >= 0) {
    desk.set({ story: { number: f.story }, line: undefined });
    return focusOn(`#desk-story-${f.story} button`);
  }
  const [, tag] = f.key.split(".");
  const row = rowOf(f.key);
  if (row === undefined) return focusOn("#week");
  await openLine(desk, row);
  focusOn(row === "note" ? `#letter-${tag ?? f.tag}` : `#line-${row}`);
}

/** Opens the row of a line, to choose another there. */
export async function openRow(desk: Desk, key: string): Promise<void> {
  await openLine(desk, rowOf(key));
  focusOn(`#line-${rowOf(key)}`);
}

/** Takes a letter out that nobody reads: no family has its language. */
export async function takeLetterOut(desk: Desk, f: Finding): Promise<void> {
  await desk.act({ word: "act.take-out" }, () => desk.ask("set", { date: desk.state.date!, key: f.key, value: "" }));
}

/** Keeps the stories that can be told; what cannot is left out. */
export async function keepOthers(desk: Desk): Promise<void> {
  await desk.act({ word: "act.keep-others" }, () => desk.ask("story", { date: desk.state.date!, story: 0, do: "keep", kind: "" }));
}

/** Goes to the first thing to mend. */
export function mendNext(desk: Desk): void {
  const f = desk.state.week?.findings.find((f) => f.mend);
  if (f) void show(desk, f);
}

/** Does something to a whole week. */
export async function calendar(desk: Desk, date: string, what: string, to = ""): Promise<void> {
  const name = { word: `act.${what}`, args: { date } };
  const { view } = desk.state;
  const target = what === "again" && !to ? (desk.state.year?.next ?? "") : to;
  const done = await desk.act(name, () => desk.ask("calendar", { date, do: what, to: target }));
  const next = desk.state.year?.next;
  if (done && what === "off" && next && desk.state.date === date) await layOpen(desk, next); // nothing is sent for a week off
  const stayed = desk.state.view === view; // she may have gone on meanwhile
  if (done && stayed && (what === "take" || what === "again")) desk.set({ view: "week" });
}

/** Chooses what families' frame shows. */
export async function choosePage(desk: Desk, what: { language?: string; theme?: string; shown?: Shown }): Promise<void> {
  const { shown, ...memory } = what;
  if (shown) desk.set({ shown });
  if (Object.keys(memory).length > 0) desk.remember(memory satisfies Partial<Memory>);
  await desk.refreshPage();
}

/** On a phone: looks at one of the two papers. */
export function turnTo(desk: Desk, side: "yours" | "families"): void {
  desk.set({ side, ...(side === "families" && { unseen: false }) });
}

/** Lays one of the papers of the top in the sheet's place, or the week again. */
export function openTop(desk: Desk, view: View): void {
  const again = desk.state.view === view;
  desk.set({ view: again ? "week" : view, side: "yours", line: undefined });
  fromHead();
}

/** Chooses the desk's own language. */
export async function chooseWords(desk: Desk, words: "en" | "es"): Promise<void> {
  desk.remember({ words });
  await desk.open();
}

/** Writes down what the class calls a way or a picture; nothing for our word. */
export async function setClassWord(desk: Desk, word: ClassWord, own: string): Promise<void> {
  const key = `words.${word.id}`;
  const others = Object.entries(desk.state.typed).filter(([k]) => !k.startsWith("words.")); // one that was refused goes with the words of why
  desk.set({ typed: { ...Object.fromEntries(others), [key]: own } });
  const done = await desk.act({ word: "act.words", args: { name: word.name } }, () => desk.ask("settings", { key, value: own.trim() }));
  if (!done) return;
  const year = await desk.ask("year", {});
  desk.set({ ...(year && { year }), typed: without(desk.state.typed, key, own) });
}

/** Chooses the languages that families have at home, the class's own first. */
export async function setLanguages(desk: Desk, tags: readonly string[]): Promise<void> {
  const value = tags.join(" ");
  desk.set({ typed: { ...desk.state.typed, languages: value } });
  const done = await desk.act({ word: "act.languages" }, () => desk.ask("settings", { key: "languages", value }));
  if (!done) return;
  const year = await desk.ask("year", {});
  desk.set({ ...(year && { year }), typed: without(desk.state.typed, "languages", value) });
}
