// Copies of the desk: taking one, and opening one.

import { addFromCopy, leaveCopy, takeCopy, useCopy } from "./acts";
import { h } from "./dom";
import type { Copied } from "./protocol";
import { type Ui, button } from "./ui";
import { copyButton } from "./view-start";
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
  return h(
    "div",
    { class: "slip", role: "status" },
    copy.older && h("p", {}, words.say("copy.older")),
    copy.leftOut.length > 0 && h("p", {}, words.say("copy.left-out", { list: words.list(copy.leftOut.slice(0, 5)) })),
    h("p", {}, words.say("copy.both", { here: here.size, there: copy.weeks.length })),
    h(
      "p",
      { class: "acts" },
      here.size > 0 && more.length > 0 && button(words.count("copy.add", more.length), () => void addFromCopy(desk, copy, more)),
      button(words.say("copy.use"), () => void useCopy(desk, copy)),
      button(words.say("own.leave"), () => leaveCopy(desk)),
    ),
  );
}
