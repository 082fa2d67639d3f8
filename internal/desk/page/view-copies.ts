// Copies of the desk: taking one, and opening one.

import { addFromCopy, bringLastYear, isOld, leaveCopy, openCopyFile, takeCopy, useCopy } from "./acts";
import { h } from "./dom";
import type { Copied } from "./protocol";
import { type Ui, button } from "./ui";
import type { Word } from "./words";

export function copiesView(ui: Ui): HTMLElement {
  const { words, state, desk } = ui;
  return h(
    "section",
    { class: "sheet copies stays", "aria-label": words.say("copies"), "data-key": "copies", id: "week", tabindex: -1 },
    h("h2", {}, words.say("copies")),
    h("p", {}, words.say("copies.about")),
    h("p", { class: "acts" }, button(words.say("copy.take"), () => void takeCopy(desk), { class: "go" }), copyButton(ui)),
    state.copy && copyView(ui, state.copy),
    h("p", { class: "soft" }, words.say("send.never")),
  );
}

/** What a copy holds and what can be done with it; nothing of it is laid down yet. */
export function copyView(ui: Ui, copy: Copied): HTMLElement {
  const { words, state, desk } = ui;
  if (copy.refused) return h("p", { class: "misfit", role: "alert" }, words.say(`copy.${copy.refused}` as Word));
  const here = new Set(state.year?.weeks.filter((w) => `weeks/${w.date}.toml` in state.files).map((w) => w.date));
  const more = copy.weeks.filter((d) => !here.has(d));
  const old = isOld(desk, copy);
  return h(
    "div",
    { class: "slip", role: "status" },
    copy.older && h("p", {}, words.say("copy.older")),
    copy.leftOut.length > 0 && h("p", {}, words.say("copy.left-out", { list: words.list(copy.leftOut.slice(0, 5)) })),
    h("p", {}, here.size > 0 ? words.count("copy.both", here.size, { there: copy.weeks.length }) : words.count("copy.there", copy.weeks.length)),
    old && h("p", {}, words.say("copy.last-year.about")),
    h(
      "p",
      { class: "acts" },
      here.size > 0 && more.length > 0 && button(words.count("copy.add", more.length), () => void addFromCopy(desk, copy, more)),
      old && button(words.say("copy.last-year"), () => void bringLastYear(desk, copy), { class: "go" }),
      button(words.say("copy.use"), () => void useCopy(desk, copy)),
      button(words.say("own.leave"), () => leaveCopy(desk)),
    ),
  );
}

/** Opens a copy from a file. */
export function copyButton(ui: Ui): HTMLElement {
  const input = h("input", { type: "file", accept: ".zip", class: "hide", "aria-label": ui.words.say("copy.have"), tabindex: -1, onchange: (e: Event) => void openCopyFile(ui.desk, e.target as HTMLInputElement) });
  return h("span", {}, button(ui.words.say("copy.have"), () => document.querySelector<HTMLInputElement>("input[type=file]")?.click()), input);
}
