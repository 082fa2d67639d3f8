// Class words: what the class calls a way or a picture. Families read it beside our word.

import { setClassWord } from "./acts";
import { h } from "./dom";
import type { ClassWord } from "./protocol";
import { type Ui, upper } from "./ui";
import { findingsView } from "./view-findings";

export function wordsView(ui: Ui): HTMLElement {
  const { words, state } = ui;
  const language = state.year?.languages.find((l) => l.tag === state.year?.class);
  return h(
    "section",
    { class: "sheet class-words", "aria-label": words.say("words"), "data-key": "words", id: "week", tabindex: -1 },
    h("h2", {}, words.say("words")),
    h("p", {}, words.say("words.about", { language: language?.name ?? "" })),
    (state.year?.words ?? []).map((w) => wordView(ui, w, language?.rightToLeft ? "rtl" : "ltr")),
  );
}

function wordView(ui: Ui, w: ClassWord, dir: string): HTMLElement {
  const { words, state, desk } = ui;
  const key = `words.${w.id}`;
  return h(
    "div",
    { class: "ask", "data-key": w.id },
    h("label", { for: `word-${w.id}` }, upper(w.name)),
    h("input", {
      id: `word-${w.id}`,
      autocomplete: "off",
      dir,
      lang: state.year?.class,
      placeholder: words.say("words.say"),
      ".value": state.typed[key] ?? w.own,
      readonly: desk.readOnly,
      onchange: (e: Event) => void setClassWord(desk, w, (e.target as HTMLInputElement).value),
    }),
    findingsView(ui, state.wrong.filter((f) => f.key === key)),
  );
}
