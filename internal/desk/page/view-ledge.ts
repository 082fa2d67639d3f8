// The ledge at the bottom: whether all is kept, what to mend, the last change,
// Undo, and the way home.

import { goHome, keepMine, mendNext, takeCopy, takeTheirs } from "./acts";
import { h } from "./dom";
import { type Said, toRedo, toUndo } from "./journal";
import type { Finding, Moved } from "./protocol";
import { type Ui, aside, button } from "./ui";
import { findingText, knownFinding } from "./view-findings";
import type { Word } from "./words";

export function ledgeView(ui: Ui): HTMLElement {
  const { words, state } = ui;
  const { week, year, date } = state;
  const toMend = week && week.date === date ? week.findings.filter((f) => f.mend).length : (year?.weeks.find((w) => w.date === date)?.mend ?? 0);
  const back = toUndo(state.journal);
  const again = toRedo(state.journal);
  return h(
    "section",
    { class: "ledge", "aria-label": words.say("region.ledge"), id: "ledge", tabindex: -1 },
    savingView(ui),
    toMend > 0 && h("button", { type: "button", class: "alarm", "data-key": "mend", onclick: () => mendNext(ui.desk) }, h("span", { class: "long" }, words.say("year.mend", { n: toMend })), h("span", { class: "short", "aria-hidden": "true" }, `${toMend} !`)),
    h("p", { class: "last", role: "status", "data-key": "last" }, lastWords(ui)),
    back && undoButton(ui, "undo", back.name, () => void ui.desk.undo()),
    again && undoButton(ui, "redo", again.name, () => void ui.desk.redo()),
    state.phase === "desk" && button(words.say("send"), () => void goHome(ui.desk), { class: "go", "data-key": "send", "aria-pressed": state.view === "send" ? "true" : undefined }),
    state.busy && h("progress", { "aria-label": words.say("moment"), "data-key": "busy" }),
  );
}

function undoButton(ui: Ui, what: "undo" | "redo", name: Said, act: () => void): HTMLElement {
  const { words } = ui;
  const label = words.say(`${what}.label`, { name: words.tell(name) });
  return h("button", { type: "button", onclick: act, title: label, "data-key": what, class: "walk" }, words.say(what), aside(":"), " ", h("span", { class: "of" }, words.tell(name)));
}

function savingView(ui: Ui): HTMLElement {
  const { words, state, desk } = ui;
  const { saving } = state;
  const time = saving.at === undefined ? "" : words.time(saving.at);
  const alert = (text: string, ...acts: HTMLElement[]) => h("p", { class: "saving alert", role: "alert", "data-key": `saving-${saving.state}` }, text, " ", acts);
  const copy = () => button(words.say("copy.take"), () => void takeCopy(desk));
  switch (saving.state) {
    case "forgets":
      return saving.copied === undefined ? alert(words.say("saving.forgets"), copy()) : quiet(words.say("saving.copied", { time: words.time(saving.copied) }));
    case "full":
      return saving.copied === undefined ? alert(words.say("saving.full", { time }), copy()) : quiet(words.say("saving.copied", { time: words.time(saving.copied) }));
    case "elsewhere":
      return alert(words.say("saving.elsewhere"), button(words.say("saving.work-here"), () => void desk.workHere()));
    case "changed":
      return alert(words.say("saving.changed"), button(words.say("saving.take-that"), () => void takeTheirs(desk)), button(words.say("saving.keep-mine"), () => void keepMine(desk)));
    case "saving":
      return quiet(words.say("saving"));
    case "saved":
      return h("p", { class: "saving", "data-key": "saving" }, h("span", { class: "long" }, words.say(desk.keeper.place === "folder" ? "saved.folder" : "saved.browser", { time })), h("span", { class: "short", "aria-hidden": "true" }, words.say("saved.short")));
    default:
      return quiet("");
  }
}

function quiet(text: string): HTMLElement {
  return h("p", { class: "saving", "data-key": "saving" }, text);
}

/** The last change, what moved with it and what stayed; or what stood in its way. */
function lastWords(ui: Ui): string {
  const { words, state } = ui;
  if (state.engine === "again") return words.say("engine.again");
  const wrong = state.wrong[0];
  if (wrong) return knownFinding(ui, wrong) || inFile(ui, wrong);
  if (!state.said) return "";
  return [words.tell(state.said) + ".", state.moved && !/^act\.(story|own)/.test(state.said.word) && movedWords(ui, state.moved, state.said)].filter(Boolean).join(" ");
}

/** What is wrong in a file, for whoever has it open in an editor; elsewhere the words alone. */
function inFile(ui: Ui, finding: Finding): string {
  const { file, line, text, hint } = finding;
  return line > 0 ? `${ui.words.say("finding.at", { file, line })}: ${text}${hint && ` (${hint})`}` : findingText(ui, finding);
}

function movedWords({ words }: Ui, moved: Moved, said: Said): string {
  const itself = words.tell(said);
  const lines = moved.lines.map((k) => words.tell({ word: `line.${k.split(".")[0]}` as Word })).filter((l) => l && l !== itself);
  const changed = moved.stories.filter((n) => n > 0).length;
  const stories = changed > 0 ? [words.count("moved.stories", changed)] : [];
  const all = [...new Set([...lines, ...stories])];
  if (all.length === 0) return "";
  const kept = moved.kept.filter((n) => n > 0);
  return [
    words.say("moved.new", { list: words.list(all) }),
    kept.length > 0 && words.say("moved.kept", { list: words.list(kept.map((n) => words.say("story.n.small", { n }))) }),
  ]
    .filter(Boolean)
    .join(" ");
}
