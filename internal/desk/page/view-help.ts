// A few sentences on how the desk works, and its own language.

import { chooseWords } from "./acts";
import { h } from "./dom";
import { type Ui, choose } from "./ui";
import type { Tongue } from "./words";

export function helpView(ui: Ui): HTMLElement {
  const { words } = ui;
  const parts = ["pencil", "page", "stories", "class-words", "sending", "keeping", "keys"] as const;
  return h(
    "section",
    { class: "sheet help", "aria-label": words.say("help"), "data-key": "help", id: "week", tabindex: -1 },
    h("h2", {}, words.say("help")),
    h("dl", {}, parts.flatMap((p) => [h("dt", {}, words.say(`help.${p}`)), h("dd", {}, words.say(`help.${p}.text`))])),
    h("h3", {}, words.say("help.words")),
    choose<Tongue>(words.say("help.words"), [{ value: "en", children: [h("span", { lang: "en" }, "English")], class: "small" }, { value: "es", children: [h("span", { lang: "es" }, "Español")], class: "small" }], words.tag, (w) => void chooseWords(ui.desk, w), { class: "few" }),
  );
}
