// Your sheet: the week's lines, shut or open, one open at a time.

import { openLine, setLine } from "./acts";
import { choicesView } from "./view-choices";
import { h } from "./dom";
import { findingsView } from "./view-findings";
import { isOf, letterView } from "./view-letter";
import type { Finding, Line, Week } from "./protocol";
import { rowOf, rows } from "./rows";
import { storiesView } from "./view-stories";
import { type Ui, aside, button, mark, upper } from "./ui";
import type { Word } from "./words";

export function sheetView(ui: Ui): HTMLElement {
  const { words, state } = ui;
  const { week, date } = state;
  if (!week || !date) return h("section", { class: "sheet outline", "aria-label": words.say("region.week"), id: "week", tabindex: -1 }, h("p", { class: "soft" }, words.say("setting-up")));
  if (week.state === "empty" && week.lines.length === 0) return emptyView(ui, date);
  return h(
    "section",
    { class: "sheet", "aria-label": words.say("region.week"), id: "week", tabindex: -1, "data-key": "week" },
    h("h2", {}, words.say("week.of", { day: words.day(week.date, "long") })),
    findingsView(ui, [...(state.year?.wrong ?? []), ...week.findings.filter((f) => f.story < 0 && rowOf(f.key) === undefined)]),
    h("div", { class: "rows" }, rows.map((row) => rowView(ui, week, row))),
    storiesView(ui, week),
  );
}

function emptyView(ui: Ui, date: string): HTMLElement {
  const { words } = ui;
  return h(
    "section",
    { class: "sheet", "aria-label": words.say("region.week"), id: "week", tabindex: -1, "data-key": "week" },
    h("h2", {}, words.say("week.of", { day: words.day(date, "long") })),
    h("p", {}, words.say("week.none"), " ", button(words.say("week.lay"), () => void openLine(ui.desk, "target"), { class: "go" })),
  );
}

function rowView(ui: Ui, week: Week, { key, holds }: (typeof rows)[number]): HTMLElement | false {
  const { words, state } = ui;
  const lines = holds.map((k) => week.lines.find((l) => l.key === k)).filter((l): l is Line => l !== undefined);
  if (holds.length > 0 && lines.length === 0) return false;
  const findings = week.findings.filter((f) => f.story < 0 && rowOf(f.key) === key);
  const toMend = findings.filter((f) => f.mend).length;
  const open = state.line === key;
  const name = words.say(`line.${key}` as Word);
  const ink = key === "note" ? week.letters.some((l) => l.ink) : lines.some((l) => l.ink);
  const value = key === "note" ? letterSummary(ui, week) : lines.map((l) => valueOf(ui, week, l)).filter(Boolean).join(", ");
  const misfit = lines.find((l) => l.misfit);
  return h(
    "div",
    { class: `row${open ? " open" : ""}${ink ? " ink" : " pencil"}`, "data-key": key },
    h(
      "button",
      {
        type: "button",
        class: "shut",
        id: `line-${key}`,
        "aria-expanded": open ? "true" : "false",
        onclick: () => void openLine(ui.desk, open ? undefined : key),
      },
      h("span", { class: "name" }, name, aside(":")),
      h("span", { class: "value" }, value, aside(",")),
      toMend > 0 ? h("span", { class: "alarm" }, aside(words.say("year.mend", { n: toMend })), h("span", { "aria-hidden": "true" }, "!")) : mark(ui, ink),
    ),
    misfit && misfitView(ui, misfit),
    findingsView(ui, key === "note" ? lettersFindings(week, findings, open) : findings),
    open && h("div", { class: "inside", "data-key": "inside" }, key === "note" ? letterView(ui, week) : choicesView(ui, week, key, lines.map((l) => ({ ...l, value: state.taken[l.key] ?? l.value })))),
  );
}

/** What is said of letters while they are shut; while they are open, what is about none of their fields. */
function lettersFindings(week: Week, findings: Finding[], open: boolean): Finding[] {
  return open ? findings.filter((f) => !week.letters.some((l) => isOf(f, l))) : findings;
}

/** Ink that fits no more stays, and says so. */
function misfitView(ui: Ui, line: Line): HTMLElement {
  const { words, desk } = ui;
  const text = words.say(`misfit.${line.key}` as Word, { value: upper(line.words), why: line.misfit });
  return h("p", { class: "misfit" }, text, " ", button(words.say("rub-out"), () => void setLine(desk, line, "")));
}

/** The value of a line in words. */
export function valueOf(ui: Ui, week: Week, line: Line): string {
  const { words } = ui;
  if (line.words) return upper(line.words);
  switch (line.key) {
    case "stories":
      return line.value && words.count("stories.n", week.stories.length > 1 ? week.stories.length - 1 : Number(line.value)); // her own are among them
    case "review":
      return line.value === "true" && earlier(ui, week) ? words.say("short.review") : "";
    case "show-from":
      return words.day(line.value || week.usual, "weekday");
    case "minutes":
      return line.value && words.say("minutes.n", { n: line.value });
    case "extra-sentence":
    case "ladder":
    case "number-words":
      return line.value === "true" ? words.say(`short.${line.key}` as Word) : "";
    case "focus":
      return line.value || words.say("none.focus");
    default:
      return line.value;
  }
}

/** Whether there is a week before this one whose story could come back. */
function earlier({ state }: Ui, week: Week): boolean {
  return state.year?.weeks.some((w) => w.date < week.date && (w.state === "shown" || w.state === "waits")) ?? false;
}

function letterSummary(ui: Ui, week: Week): string {
  const { words, state } = ui;
  const name = (tag: string) => state.year?.languages.find((l) => l.tag === tag)?.name ?? tag;
  const written = week.letters.filter((l) => l.ink).map((l) => name(l.tag));
  return written.length > 0 ? words.list(written) : words.say("letter.starter");
}
