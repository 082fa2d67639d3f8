// The letter: a field for each language, side by side.

import { writeLetter } from "./acts";
import { h } from "./dom";
import { findingsView } from "./view-findings";
import type { Finding, Letter, Week } from "./protocol";
import { type Ui, button } from "./ui";

export function letterView(ui: Ui, week: Week): HTMLElement[] {
  const { words } = ui;
  return [
    h("p", { class: "soft" }, words.say("about.note")),
    h("div", { class: "letters" }, week.letters.map((l) => fieldView(ui, week, l))),
  ];
}

/** What families read who have no letter in their language, while there is one in another. */
function othersView({ words, state }: Ui, week: Week): HTMLElement | false {
  const written = week.letters.filter((l) => l.ink).map((l) => l.tag);
  const tag = written.includes(state.year?.class ?? "") ? state.year!.class : written[0];
  const name = words.language(state.year?.languages.find((l) => l.tag === tag));
  return name !== "" && h("p", { class: "soft" }, words.say("letter.others", { language: name }));
}

/** Whether a finding is about a letter. */
export const isOf = (f: Finding, letter: Letter): boolean => f.key === `note.${letter.tag}` || (f.key === "note" && f.tag === letter.tag);

function fieldView(ui: Ui, week: Week, letter: Letter): HTMLElement {
  const { words, state } = ui;
  const language = state.year?.languages.find((l) => l.tag === letter.tag);
  const name = language?.name ?? letter.tag;
  const id = `letter-${letter.tag}`;
  const written = week.letters.some((l) => l.ink);
  return h(
    "div",
    { class: "letter", "data-key": letter.tag },
    h("label", { for: id }, name, !letter.ink && !written && h("span", { class: "proposed" }, words.say("letter.pencil"))),
    h("textarea", {
      id,
      lang: letter.tag,
      dir: language?.rightToLeft ? "rtl" : "ltr",
      rows: 7,
      class: letter.ink ? "" : "pencil",
      ".value": state.typed[`${week.date}/note.${letter.tag}`] ?? (letter.text || (written ? "" : letter.starter)),
      readonly: ui.desk.readOnly,
      oninput: (e: InputEvent) => writeLetter(ui.desk, letter.tag, (e.target as HTMLTextAreaElement).value),
    }),
    !letter.ink && othersView(ui, week),
    findingsView(ui, week.findings.filter((f) => isOf(f, letter))),
    !letter.ink && written && button(words.say("letter.take"), () => writeLetter(ui.desk, letter.tag, letter.starter, true), { class: "quiet", label: words.say("letter.take.label", { language: name }) }),
    letter.ink && button(words.say("letter.remove"), () => writeLetter(ui.desk, letter.tag, "", true), { class: "quiet", label: words.say("letter.remove.label", { language: name }) }),
  );
}
