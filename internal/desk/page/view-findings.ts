// What is to mend or to know, at the place that it is about.

import { allow, dateMeant, keepOthers, openRow, show, takeLetterOut, takeOut } from "./acts";
import { h } from "./dom";
import type { Finding } from "./protocol";
import { rowOf } from "./rows";
import { type Ui, button, upper } from "./ui";
import type { Word } from "./words";

export function findingsView(ui: Ui, findings: readonly Finding[]): HTMLElement | false {
  return findings.length > 0 && h("ul", { class: "findings" }, findings.map((f) => findingView(ui, f)));
}

function findingView(ui: Ui, f: Finding): HTMLElement {
  const acts = actsOf(ui, f);
  return h(
    "li",
    { class: f.mend ? "mend" : "know" },
    h("p", {}, findingText(ui, f)),
    acts.length > 0 ? h("p", { class: "acts" }, acts) : f.hint && !knownFinding(ui, f) && h("p", { class: "soft" }, upper(f.hint)),
  );
}

/** What a tap can do about a finding. */
function actsOf({ words, desk }: Ui, f: Finding): HTMLElement[] {
  const inLetter = f.key.startsWith("note.");
  switch (f.code) {
    case "private-mail":
    case "private-phone":
    case "private-id":
    case "private-number":
    case "link-outside":
      if (!inLetter) return [];
      return [
        button(words.say("mend.take-out"), () => void takeOut(desk, f), { label: words.say("mend.take-out.label", { quote: f.quote }) }),
        button(words.say("mend.allow"), () => void allow(desk, f), { label: words.say("mend.allow.label", { quote: f.quote }) }),
      ];
    case "odd-date":
      return [button(words.say("mend.date-meant"), () => void dateMeant(desk, f))];
    case "unknown":
      if (inLetter) return [button(words.say("mend.letter"), () => void takeLetterOut(desk, f))];
      return rowOf(f.key) ? [button(words.say("mend.choose"), () => void openRow(desk, f.key), { label: words.say("mend.choose.label", { line: `@line.${rowOf(f.key)}` }) })] : [];
    case "misfit":
      return [button(words.say("mend.keep-others"), () => void keepOthers(desk))];
    default:
      return [];
  }
}

/** The desk's own words for a finding; empty where it has none. */
export function knownFinding({ words }: Ui, f: Finding): string {
  const [line] = f.key.split(".");
  const likeliest = f.code === "unmet" ? f.quote : line;
  return [`finding.${f.code}.${likeliest}`, `finding.${f.code}`].map((word) => words.tell({ word, args: { quote: f.quote } })).find(Boolean) ?? "";
}

/** A finding in the desk's words where it has some, otherwise in the engine's, which are English. */
export function findingText(ui: Ui, f: Finding): string {
  const { words } = ui;
  const known = knownFinding(ui, f);
  if (known) return known;
  const text = words.tag === "en" ? upper(f.text) + "." : words.say("finding.english", { text: f.text });
  return f.line > 0 ? `${words.say("finding.at", { file: f.file, line: f.line })}: ${text}` : text;
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
