// The whole desk at a moment.

import { openTop, turnTo } from "./acts";
import { h } from "./dom";
import { copiesView } from "./view-copies";
import { familiesView } from "./view-families";
import { helpView } from "./view-help";
import { ledgeView } from "./view-ledge";
import { lineView } from "./view-line";
import { sendView } from "./view-send";
import { sheetView } from "./view-sheet";
import { startView } from "./view-start";
import { wordsView } from "./view-words";
import { yearView } from "./view-year";
import type { View } from "./state";
import { StopError } from "./engine";
import { type Ui, button, loadingBar } from "./ui";

const papers: Record<View, (ui: Ui) => HTMLElement> = { week: sheetView, year: yearView, words: wordsView, send: sendView, copies: copiesView, help: helpView };

export function deskView(ui: Ui): HTMLElement {
  const { words, state } = ui;
  if (state.phase === "setting-up") return h("div", { class: "desk setting-up" }, h("p", { role: "status" }, words.say("setting-up")), h("div", { class: "sheet outline" }), h("div", { class: "families outline" }));
  if (state.phase === "start") return h("div", { class: "desk first" }, state.engine !== "starting" && engineView(ui), startView(ui), state.saving.state === "new" ? false : ledgeView(ui));
  return h(
    "div",
    { class: `desk ${state.side}` },
    skips(ui),
    topView(ui),
    lineView(ui),
    sidesView(ui),
    h("main", { "data-key": "main" }, engineView(ui), papers[state.view](ui)),
    familiesView(ui),
    ledgeView(ui),
  );
}

function skips({ words }: Ui): HTMLElement {
  return h("a", { class: "skip", href: "#week", onclick: (e: Event) => (e.preventDefault(), document.getElementById("week")?.focus()) }, words.say("skip"));
}

function topView(ui: Ui): HTMLElement {
  const { words, state, desk } = ui;
  const views = ["year", "words", "copies", "help"] as const;
  const name = state.year?.name ?? "";
  const grade = state.year === undefined ? "" : words.say(`grade.${state.year.grade as 0 | 1 | 2 | 3}`);
  return h(
    "header",
    { class: "top" },
    h("h1", {}, [name, grade].filter(Boolean).join(", ")),
    h("nav", { "aria-label": words.say("region.top") }, views.map((v) => button(words.say(v), () => openTop(desk, v), { "aria-pressed": state.view === v ? "true" : "false", "data-key": v, class: "tab" }))),
  );
}

/** On a phone one paper lies there at a time. */
function sidesView({ words, state, desk }: Ui): HTMLElement {
  const one = (side: "yours" | "families", changed: boolean) =>
    button(words.say(`side.${side}`) + (changed ? " •" : ""), () => turnTo(desk, side), { "aria-pressed": state.side === side ? "true" : "false", label: words.say(`side.${side}`) + (changed ? `, ${words.say("side.changed")}` : ""), class: "tab" });
  return h("div", { class: "sides" }, one("yours", false), one("families", state.unseen && state.side === "yours"));
}

function engineView(ui: Ui): HTMLElement | false {
  const { words, state, desk } = ui;
  if (state.engine === "starting" && !state.week) return false; // the sheet says that it is being set up
  if (state.engine === "starting") return h("p", { class: "engine", role: "status", "data-key": "engine" }, words.say("engine.starting"), " ", loadingBar(ui));
  if (state.engine === "gone") return h("p", { class: "engine", role: "alert", "data-key": "engine" }, words.say("engine.gone"));
  if (!(state.engine instanceof StopError)) return false;
  const args = state.engine.args as { story?: number } | undefined;
  const text = args?.story ? words.say("engine.stops-at", { n: args.story }) : words.say("engine.stops");
  return h("p", { class: "engine", role: "alert", "data-key": "engine" }, text, " ", button(words.say("engine.back"), () => void desk.undo()));
}
