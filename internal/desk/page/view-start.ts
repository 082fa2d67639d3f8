// The first start: four answers, and the first week lies there.

import { answer, begin } from "./acts";
import { h } from "./dom";
import { type Ui, loadingBar, upper } from "./ui";
import { nextMonday } from "./days";
import { findingsView } from "./view-findings";
import { copyButton, copyView } from "./view-copies";
import type { Words } from "./words";

/** What a language is called in the desk's words, where that is another name: a list to tick is read by a teacher. */
export function otherName(words: Words, l: { tag: string; name: string }): HTMLElement | false {
  const name = upper(words.language(l));
  return name !== upper(l.name) && h("span", { class: "about" }, ` ${name}`);
}

/** The four questions. English and Spanish stand first among the languages. */
export function startView(ui: Ui): HTMLElement {
  const { words, state, desk } = ui;
  const { answers } = state;
  const first = ["es", "en"];
  const languages = (state.opened?.languages ?? []).slice().sort((a, b) => first.indexOf(b.tag) - first.indexOf(a.tag));
  const grades = [0, 1, 2, 3];
  const monday = nextMonday(desk.today());
  return h(
    "main",
    { class: "start", id: "week", tabindex: -1 },
    h("h1", {}, words.say("start.welcome")),
    h("p", { class: "lead" }, words.say("start.lead")),
    state.opened?.folder && h("p", { class: "soft" }, words.say("start.folder", { folder: state.opened.folder })),
    h(
      "form",
      { novalidate: true, oninput: (e: InputEvent) => answer(desk, e.currentTarget as HTMLFormElement), onsubmit: (e: SubmitEvent) => (e.preventDefault(), void begin(desk, e.target as HTMLFormElement)) },
      h("p", { class: "ask" }, h("label", { for: "start-name" }, words.say("start.name")), h("input", { id: "start-name", name: "name", autocomplete: "off", required: true, ".value": answers.name })),
      h("fieldset", { class: "ask" }, h("legend", {}, words.say("start.grade")), h("div", { class: "few" }, grades.map((g) => h("label", { class: "pick" }, h("input", { type: "radio", name: "grade", value: g, required: true, ".checked": g === answers.grade }), h("span", {}, words.say(`grade.${g as 0 | 1 | 2 | 3}`)))))),
      h("fieldset", { class: "ask" }, h("legend", {}, words.say("start.languages")), languages.length > 0
        ? h("div", { class: "few" }, languages.map((l) => h("label", { class: "pick", "data-key": l.tag }, h("input", { type: "checkbox", name: "language", value: l.tag, ".checked": answers.languages.includes(l.tag) }), h("span", {}, h("span", { lang: l.tag }, l.name), otherName(words, l)))))
        : h("p", { class: "soft" }, words.say("setting-up"), " ", loadingBar(ui))),
      h("p", { class: "ask" }, h("label", { for: "start-monday" }, words.say("start.monday")), h("input", { id: "start-monday", name: "monday", type: "date", ".value": answers.monday || monday }), (!answers.monday || answers.monday === monday) && h("span", { class: "proposed" }, words.say("proposed"))),
      findingsView(ui, state.wrong),
      h("p", { class: "acts" }, h("button", { class: "go", type: "submit", ".disabled": languages.length === 0 }, words.say("start.lay")), copyButton(ui)),
    ),
    state.copy && copyView(ui, state.copy),
  );
}
