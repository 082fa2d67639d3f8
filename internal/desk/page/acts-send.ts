// Acts of sending. What goes home is first written down: families' stories are
// kept before anything is given away.

import { flush } from "./acts-week";
import type { Desk } from "./desk";
import { focusOn, fromHead } from "./focus";
import { bytesOf, copyText, print, save, share } from "./give";
import type { Said } from "./journal";
import type { Memory } from "./keeper";
import type { Home, Sending } from "./protocol";
import { unzip } from "./unzip";

/** Lays the two halves in the sheet's place. */
export async function goHome(desk: Desk): Promise<void> {
  await flush(desk);
  desk.set({ view: "send", line: undefined, side: "yours", given: {}, message: undefined, heavy: [] });
  focusOn("#week");
  fromHead();
  if (await prepare(desk, [])) void weigh(desk);
}

/** Weighs the pages of one language after the other, with room for what she does meanwhile. */
async function weigh(desk: Desk): Promise<void> {
  const { sending, date } = desk.state;
  for (const { language } of sending?.homes ?? []) {
    await new Promise((done) => setTimeout(done, 400));
    if (desk.state.date !== date || desk.state.view !== "send") return;
    const heavy = await desk.ask("check", { date: date!, tag: language.tag });
    if (!heavy) return;
    if (heavy.length > 0) desk.set({ heavy: [...desk.state.heavy, ...heavy] });
  }
}

export function leaveSend(desk: Desk): void {
  desk.set({ view: "week" });
  focusOn("#week");
  fromHead();
}

/** Asks what it takes to send the week, and lays down what has to be kept first. */
async function prepare(desk: Desk, tags: string[]): Promise<Sending | undefined> {
  const sending = await desk.ask("send", { date: desk.state.date!, tags });
  if (!sending) return undefined;
  if (tags.length > 0 && Object.keys(sending.changes).length > 0) {
    if (!(await desk.put(sending.changes))) return undefined;
    void desk.refresh();
  }
  desk.set({ sending });
  return sending;
}

export function chooseWay(desk: Desk, way: NonNullable<Memory["way"]>): void {
  desk.remember({ way });
}

function given(desk: Desk, key: string, said: Said): void {
  desk.set({ given: { ...desk.state.given, [key]: said } });
}

/** Saves the week in one file of a language. */
export async function saveFile(desk: Desk, tag: string): Promise<void> {
  const sending = await prepare(desk, [tag]);
  const file = sending?.homes.find((h) => h.language.tag === tag)?.file;
  if (!file) return;
  save(file);
  given(desk, `file-${tag}`, { word: "given.file", args: { name: file.name } });
}

/** Hands the week in one file of a language, with its message, to another app; where that is refused, saves it. */
export async function shareFile(desk: Desk, tag: string): Promise<void> {
  const sending = await prepare(desk, [tag]);
  const home = sending?.homes.find((h) => h.language.tag === tag);
  if (!home?.file) return;
  const { file } = home;
  const how = await share(file, home.message);
  if (how === "left") return;
  if (how === "refused") save(file);
  given(desk, `file-${tag}`, { word: how === "shared" ? "given.shared" : "given.file", args: { name: file.name } });
}

/** Copies the message that goes with it; where that is not let, shows it to be copied by hand. */
export async function copyMessage(desk: Desk, home: Home): Promise<void> {
  const { tag } = home.language;
  const copied = await copyText(home.message);
  desk.set({ message: copied ? undefined : { tag, text: home.message } });
  given(desk, `message-${tag}`, { word: copied ? "given.message" : "given.by-hand" });
}

/** Prints the paper of a language. */
export async function printPaper(desk: Desk, tag: string): Promise<void> {
  if (!(await prepare(desk, [tag]))) return;
  const page = await desk.ask("page", { date: desk.state.date!, tag, page: "paper", look: "" });
  if (page) print(page.html);
}

/** Saves all pages for the web as one zip. */
export async function saveSite(desk: Desk): Promise<void> {
  if (!(await prepare(desk, allTags(desk)))) return;
  const file = await desk.ask("site", {});
  if (!file) return;
  save(file);
  given(desk, "web", { word: "given.site", args: { name: file.name } });
}

/** Writes all pages into a folder, where the browser can. */
export async function writeFolder(desk: Desk): Promise<void> {
  try {
    const folder = await window.showDirectoryPicker!({ mode: "readwrite" });
    if (!(await prepare(desk, allTags(desk)))) return;
    const file = await desk.ask("site", {});
    if (!file) return;
    const files = await unzip(bytesOf(file));
    for (const { path, bytes } of files) await writeInto(folder, path, bytes);
    given(desk, "web", { word: "given.folder", args: { n: files.length } });
  } catch (cause) {
    if (!(cause instanceof DOMException)) throw cause;
    if (cause.name !== "AbortError") given(desk, "web", { word: "given.not-written" });
  }
}

async function writeInto(folder: FileSystemDirectoryHandle, path: string, bytes: Uint8Array<ArrayBuffer>): Promise<void> {
  const parts = path.split("/");
  const name = parts.pop()!;
  let here = folder;
  for (const part of parts) here = await here.getDirectoryHandle(part, { create: true });
  const out = await (await here.getFileHandle(name, { create: true })).createWritable();
  await out.write(bytes);
  await out.close();
}

function allTags(desk: Desk): string[] {
  const held = new Set(desk.state.sending?.homes.filter((h) => h.held.length > 0).map((h) => h.language.tag));
  return (desk.state.year?.settings.languages ?? []).filter((t) => !held.has(t));
}

/** Writes down where the pages will be. */
export async function setAddress(desk: Desk, address: string): Promise<void> {
  await desk.act({ word: "act.address" }, () => desk.ask("settings", { key: "address", value: address.trim() }));
  await prepare(desk, []);
}

/** Saves the link on paper to cut. */
export function saveSlips(desk: Desk): void {
  const slips = desk.state.sending?.slips;
  if (slips) save(slips);
}

/** Saves or prints the answer key, for the teacher alone. */
export function keyAct(desk: Desk, what: "save" | "print"): void {
  const key = desk.state.sending?.key;
  if (!key) return;
  if (what === "save") {
    save(key);
    given(desk, "key", { word: "given.key", args: { name: key.name } });
  } else print(new TextDecoder().decode(bytesOf(key)));
}

declare global {
  interface Window {
    showDirectoryPicker?(options: { mode: "readwrite" }): Promise<FileSystemDirectoryHandle>;
  }
}
