// What holds for the class all year: its families' languages, and what it calls a strategy or
// a picture, which families read beside our word.

import { setClassWord, setLanguages } from "./acts";
import { h } from "./dom";
import type { ClassWord } from "./protocol";
import { type Ui, upper } from "./ui";
import { findingsView } from "./view-findings";
import { otherName } from "./view-start";

export function wordsView(ui: Ui): HTMLElement {
  const { words, state } = ui;
  const language = state.year?.languages.find((l) => l.tag === state.year?.class);
  return h(
    "section",
    { class: "sheet class-words", "aria-label": words.say("words"), "data-key": "words", id: "week", tabindex: -1 },
    languagesView(ui),
    h("h2", {}, words.say("words.title")),
    h("p", {}, words.say("words.about", { language: language?.name ?? "" })),
    (state.year?.words ?? []).map((w) => wordView(ui, w, language?.rightToLeft ? "rtl" : "ltr")),
  );
}

/** The class's own language stays; each of the others is ticked or not. */
function languagesView(ui: Ui): HTMLElement {
  const { words, state, desk } = ui;
  const chosen = state.typed["languages"]?.split(" ") ?? state.year?.settings.languages ?? [];
  const toggled = (tag: string, on: boolean) => (on ? [...chosen, tag] : chosen.filter((t) => t !== tag));
  return h(
    "fieldset",
    { class: "ask", "data-key": "languages" },
    h("legend", {}, words.say("start.languages")),
    h("p", {}, words.say("languages.about")),
    h("div", { class: "few" }, (state.opened?.languages ?? []).map((l) =>
      h("label", { class: "pick", "data-key": l.tag },
        h("input", { type: "checkbox", ".checked": chosen.includes(l.tag), disabled: desk.readOnly || l.tag === state.year?.class, onchange: (e: Event) => void setLanguages(desk, toggled(l.tag, (e.target as HTMLInputElement).checked)) }),
        h("span", {}, h("span", { lang: l.tag }, l.name), otherName(words, l)),
      ),
    )),
    findingsView(ui, state.wrong.filter((f) => f.key === "languages")),
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
