// The desk's page begins here.

import { choosePage, goTo } from "./acts";
import { flush } from "./acts-week";
import { localDay } from "./days";
import { Desk } from "./desk";
import { h, renew } from "./dom";
import { Engine, type Listener, type Transport } from "./engine";
import { focusOn, keepingFocus, nextRegion } from "./focus";
import type { Keeper } from "./keeper";
import { reached } from "./moments";
import { loopbackTransport, onNews, workerTransport } from "./transports";
import { preparePictures } from "./picture";
import { Store, Turn, forgetful } from "./store";
import { deskView } from "./view";
import { Frame } from "./view-families";
import { centre } from "./view-line";
import { Words, tongueOf } from "./words";

/** The name under which a browser keeps the desk. */
const name = "homebuild-desk";

/** Starts a desk in the page, for files in a folder or in the browser. */
export async function start(transport: (listener: Listener) => Transport, folder?: string): Promise<Desk> {
  const key = folder === undefined ? name : `${name} ${folder}`;
  const keeper = await keeperFor(key, folder === undefined ? "browser" : "folder");
  const desk: Desk = new Desk(new Engine(transport), keeper, () => new Date(), () => wordsOf(desk).tag);
  show(desk);
  listen(desk);
  await takeTurns(desk, key);
  await desk.open();
  return desk;
}

async function keeperFor(key: string, place: "browser" | "folder"): Promise<Keeper> {
  try {
    const tab = `${Date.now()} ${Math.random()}`;
    const store = await Store.open(key, tab, place);
    void navigator.storage?.persist?.();
    return store;
  } catch {
    return forgetful(place);
  }
}

/** Two tabs do not write over each other: one works, the other only shows. */
async function takeTurns(desk: Desk, key: string): Promise<void> {
  const turn = new Turn(key);
  turn.onTaken = () => desk.set({ saving: { ...desk.state.saving, state: "elsewhere" } });
  desk.onWorkHere = () => turn.take();
  if (await turn.another()) return desk.set({ saving: { state: "elsewhere" } });
  await desk.keeper.claim();
  turn.take();
}

function wordsOf(desk: Desk): Words {
  return new Words(desk.state.memory.words ?? tongueOf(navigator.languages));
}

/** Draws the desk after every change, once for all changes of a moment. */
function show(desk: Desk): void {
  const root = h("div");
  document.getElementById("desk")!.replaceChildren(root);
  const frame = new Frame((href) => follow(desk, href), (e) => pressed(desk, e));
  let due = false;
  let line = "";
  const draw = () => {
    due = false;
    const words = wordsOf(desk);
    const { opened, html, year, memory, shown, date, moved } = desk.state;
    document.documentElement.lang = words.tag;
    document.title = words.say("title", { name: year?.name ?? "" });
    if (opened) preparePictures(opened.style, opened.patterns);
    keepingFocus(() => renew(root, h("div", {}, deskView({ desk, state: desk.state, words }))));
    const tag = memory.language ?? year?.class ?? "";
    if (desk.state.week) reached("sheet");
    frame.show(html, words.say("region.families"), `${date}/${shown}/${tag}`, moved?.stories ?? []);
    if (line !== `${date}${year?.weeks.length}`) centre();
    line = `${date}${year?.weeks.length}`;
  };
  desk.onChange(() => {
    if (!due) requestAnimationFrame(draw);
    due = true;
  });
  draw();
}

/** A link in families' page: to another page of the week, another week or another language. */
function follow(desk: Desk, href: string): void {
  const [, tag, date, page] = /(?:\.\.\/)?(?:([a-zA-Z-]+)\/)?(\d{4}-\d\d-\d\d)(?:-(\w+))?\.html/.exec(href) ?? [];
  if (!date) return;
  if (date !== desk.state.date) return void goTo(desk, date);
  void choosePage(desk, { shown: page === "try" ? "try" : page === "print" ? "paper" : "learn", ...(tag && { language: tag }) });
}

/** The desk's own keys, on its page and in families'. */
function pressed(desk: Desk, e: KeyboardEvent): void {
  const inField = (e.target as Element).matches?.("input, textarea, select");
  if (e.key === "F6") {
    e.preventDefault();
    nextRegion(e.shiftKey);
  } else if (e.key === "Escape") shut(desk);
  else if ((e.ctrlKey || e.metaKey) && e.key.toLowerCase() === "z" && !inField) {
    e.preventDefault();
    void (e.shiftKey ? desk.redo() : desk.undo());
  }
}

function listen(desk: Desk): void {
  addEventListener("keydown", (e) => pressed(desk, e));
  addEventListener("visibilitychange", () => document.visibilityState === "hidden" && void flush(desk));
  addEventListener("beforeunload", (e) => {
    void flush(desk);
    if (["full", "forgets"].includes(desk.state.saving.state) && desk.state.saving.copied === undefined && desk.state.phase === "desk") e.preventDefault();
  });
}

/** Shuts what lies open; the focus goes back to where it was opened. */
function shut(desk: Desk): void {
  const { line, story } = desk.state;
  if (line) {
    desk.set({ line: undefined });
    document.getElementById(`line-${line}`)?.focus();
  } else if (story) {
    desk.set({ story: undefined });
    document.querySelector<HTMLElement>(`#desk-story-${story.number} button`)?.focus();
  } else if (desk.state.view !== "week") {
    desk.set({ view: "week" });
    focusOn("#week");
  }
}

const token = document.querySelector<HTMLMetaElement>("meta[name=desk-token]")?.content;
if (document.getElementById("engine")) void start(workerTransport);
else if (token) void startServed(token);

/** Starts a desk whose files are in a folder: which one, the program says first. */
async function startServed(token: string): Promise<void> {
  const transport = (l: Listener) => loopbackTransport(l, token);
  const { folder } = await new Engine(transport).call("open", { files: {}, today: localDay(new Date()), words: "en" });
  const begun = start(transport, folder);
  onNews(token, () => void begun.then((desk) => desk.follow()), () => void begun.then((desk) => desk.look()));
  await begun;
}
