// Beginning a desk, taking copies and opening them, and choosing between two
// versions of the work.

import type { Desk } from "./desk";
import { differences } from "./files";
import { base64, save } from "./give";
import type { Changes, Copied } from "./protocol";
import type { State } from "./state";

/** Takes up what she has answered so far. */
export function answer(desk: Desk, form: HTMLFormElement): void {
  const given = new FormData(form);
  const asked = form.querySelector("[name=language]"); // the engine says which languages there are
  const languages = asked ? given.getAll("language").map(String) : desk.state.answers.languages;
  desk.set({ answers: { name: String(given.get("name") ?? ""), grade: Number(given.get("grade") ?? -1), languages, monday: String(given.get("monday") ?? "") } });
}

/** Makes a new desk from the four answers. */
export async function begin(desk: Desk, form: HTMLFormElement): Promise<void> {
  answer(desk, form);
  const { answers } = desk.state;
  const wish = { ...answers, name: answers.name.trim() };
  desk.set({ wrong: [] });
  const missing = !wish.name ? "#start-name" : wish.grade < 0 ? "[name=grade]" : wish.languages.length === 0 ? "[name=language]" : undefined;
  if (missing) return form.querySelector<HTMLElement>(missing)?.focus();
  desk.set({ phase: "desk" });
  if (!(await desk.act({ word: "act.begin" }, () => desk.ask("begin", wish)))) desk.set({ phase: "start" });
}

/** Saves all files of the desk as one zip of plain files. */
export async function takeCopy(desk: Desk): Promise<void> {
  const file = await desk.ask("copy", {});
  if (!file) return;
  save(file);
  desk.set({ saving: { ...desk.state.saving, copied: desk.nowAt() } });
}

/** Whether a copy was taken that holds all there is. */
export const copyShown = (state: State): boolean => state.saving.copied !== undefined;

/** Looks into a copy from a file; nothing of it is laid down yet. */
export async function openCopyFile(desk: Desk, input: HTMLInputElement): Promise<void> {
  const file = input.files?.[0];
  if (!file) return;
  const tooLarge = file.size > 64_000_000;
  const copy = tooLarge ? refused("large") : await desk.ask("openCopy", { bytes: base64(new Uint8Array(await file.arrayBuffer())) });
  input.value = "";
  if (!copy) return;
  desk.set({ copy });
  if (desk.state.phase === "start" && !copy.refused && !isOld(desk, copy)) await useCopy(desk, copy);
  else if (desk.state.phase === "desk") desk.set({ view: "copies" });
}

/** Whether a copy may be last year's: its last week is months ago. */
export function isOld(desk: Desk, copy: Copied): boolean {
  const last = copy.weeks.at(-1);
  return last !== undefined && Date.parse(desk.today()) - Date.parse(last) > 30 * 86_400_000;
}

const refused = (why: string): Copied => ({ files: {}, weeks: [], leftOut: [], older: false, refused: why });

/** Lays the copy down in the place of all that is here. Undo brings it back. */
export async function useCopy(desk: Desk, copy: Copied): Promise<void> {
  const changes: Changes = Object.fromEntries(differences(desk.state.files, copy.files).map((c) => [c.path, c.after ?? null]));
  await lay(desk, "act.copy", changes);
}

/** Adds weeks of the copy that are not here. */
export async function addFromCopy(desk: Desk, copy: Copied, weeks: readonly string[]): Promise<void> {
  const of = (path: string) => weeks.some((date) => path.startsWith(`weeks/${date}.`));
  await lay(desk, "act.copy-add", Object.fromEntries(Object.entries(copy.files).filter(([path]) => of(path))));
}

/** Lays the weeks of the copy on new Mondays, as this year's. */
export async function bringLastYear(desk: Desk, copy: Copied): Promise<void> {
  if (await desk.act({ word: "act.last-year" }, () => desk.ask("lastYear", { files: copy.files }))) {
    leaveCopy(desk);
    desk.set({ phase: "desk", view: "year" });
  }
}

async function lay(desk: Desk, word: string, changes: Changes): Promise<void> {
  desk.set({ phase: "desk", view: "week", date: undefined, week: undefined });
  const done = await desk.act({ word }, async () => ({ changes, moved: { lines: [], stories: [], kept: [] } }));
  if (done) leaveCopy(desk);
  if (!desk.state.week) await desk.refresh();
}

export function leaveCopy(desk: Desk): void {
  desk.set({ copy: undefined });
}

/** Takes what another program wrote into the folder. */
export async function takeTheirs(desk: Desk): Promise<void> {
  desk.set({ saving: { state: "saved" } });
  await desk.open();
}

/** Writes over what another program wrote. */
export async function keepMine(desk: Desk): Promise<void> {
  const changes: Changes = { ...desk.state.files };
  if (await desk.ask("put", { changes })) desk.set({ saving: { state: "saved", at: desk.nowAt() } });
}
