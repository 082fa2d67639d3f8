// What is to mend or to know, at the place that it is about.

import { allow, dateMeant, show, takeOut } from "./acts";
import { h } from "./dom";
import type { Finding } from "./protocol";
import { type Ui, button, upper } from "./ui";
import type { Word } from "./words";

export function findingsView(ui: Ui, findings: readonly Finding[]): HTMLElement | false {
  return findings.length > 0 && h("ul", { class: "findings" }, findings.map((f) => findingView(ui, f)));
}

function findingView(ui: Ui, f: Finding): HTMLElement {
  const { words } = ui;
  const isPrivate = f.code === "private" && f.quote !== "";
  return h(
    "li",
    { class: f.mend ? "mend" : "know" },
    h("p", {}, findingText(ui, f)),
    isPrivate && f.key.startsWith("note.")
      ? h(
          "p",
          { class: "acts" },
          button(words.say("mend.take-out"), () => void takeOut(ui.desk, f), { label: words.say("mend.take-out.label", { quote: f.quote }) }),
          button(words.say("mend.allow"), () => void allow(ui.desk, f), { label: words.say("mend.allow.label", { quote: f.quote }) }),
        )
      : f.code === "odd-date"
        ? h("p", { class: "acts" }, button(words.say("mend.date-meant"), () => void dateMeant(ui.desk, f)))
        : f.hint && !knownFinding(ui, f) && h("p", { class: "soft" }, f.hint),
  );
}

/** The desk's own words for a finding; empty where it has none. */
export function knownFinding({ words }: Ui, f: Finding): string {
  const word = f.code === "unmet" ? `finding.unmet.${f.quote}` : `finding.${f.code}`;
  return words.tell({ word, args: { quote: f.quote } });
}

/** A finding in the desk's words where it has some, otherwise in the engine's, which are English. */
export function findingText(ui: Ui, f: Finding): string {
  const { words } = ui;
  return knownFinding(ui, f) || (words.tag === "en" ? upper(f.text) + "." : words.say("finding.english", { text: f.text }));
}

/** Where a finding is, as a button that goes there. */
export function showButton(ui: Ui, f: Finding, text = ui.words.say("show-me")): HTMLElement {
  return button(text, () => void show(ui.desk, f));
}

/** The name of the place of a finding: "Letter", "Story 3". */
export function placeOf(ui: Ui, f: Finding): string {
  if (f.story >= 0) return ui.words.say("story.n", { n: f.story });
  const key = f.key.split(".")[0]!;
  return key ? ui.words.tell({ word: `line.${key}` as Word }) || key : "";
}
