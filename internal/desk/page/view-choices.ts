// The inside of an open line: what can be chosen, a sentence each. A tap acts.

import { findTargets, setLine } from "./acts";
import { h } from "./dom";
import { picture } from "./picture";
import type { Choice, Line, Target, Week } from "./protocol";
import { type Ui, button, choose, upper } from "./ui";
import type { Word } from "./words";

export function choicesView(ui: Ui, week: Week, key: string, lines: Line[]): HTMLElement[] {
  switch (key) {
    case "target":
      return targetView(ui, lines[0]!);
    case "stories":
    case "more":
      return lines.map((line) => (isSwitch(line) ? switchView(ui, line) : line.key === "warm-up" ? warmUpView(ui, line) : countView(ui, line)));
    case "show-from":
      return showFromView(ui, week, lines[0]!);
    default:
      return listView(ui, key, lines[0]!);
  }
}

const isSwitch = (line: Line) => ["extra-sentence", "review", "ladder", "number-words"].includes(line.key);

function listView(ui: Ui, key: string, line: Line): HTMLElement[] {
  const { words, state } = ui;
  const all = state.choices ?? [];
  if (!state.choices) return [h("p", { class: "soft" }, words.say("moment"))];
  const fitting = all.filter((c) => c.fits);
  const others = all.filter((c) => !c.fits);
  return [
    h("p", { class: "soft" }, words.say(`about.${key}` as Word)),
    choose(words.say(`line.${key}` as Word), fitting.map((c) => ({ value: c.value, children: choiceParts(ui, key, c), class: "choice" })), line.value || "none", (v) => void setLine(ui.desk, line, v), { class: `choices of-${key}` }),
    ...(others.length > 0 ? [h("p", { class: "soft" }, words.say("no-fit")), h("ul", { class: "nofit" }, others.map((c) => h("li", {}, h("b", {}, c.words), " ", c.why)))] : []),
    ...backToPencil(ui, line),
  ];
}

function choiceParts({ words }: Ui, key: string, c: Choice): (Node | string)[] {
  const p = picture(c.picture);
  return [h("b", {}, upper(c.words) || words.say(`none.${key}` as Word)), ...(c.about ? [h("span", { class: "about" }, c.about)] : []), ...(p ? [h("span", { class: "drawn" }, p)] : [])];
}

/** Ink can be rubbed out again: then the line follows the plan. */
function backToPencil(ui: Ui, line: Line): HTMLElement[] {
  const { words } = ui;
  return line.ink ? [button(words.say("rub-out"), () => void setLine(ui.desk, line, ""), { class: "quiet" })] : [];
}

function targetView(ui: Ui, line: Line): HTMLElement[] {
  const { words, state } = ui;
  const found = state.targets;
  const take = (t: Target) => void setLine(ui.desk, line, t.id);
  return [
    h("label", { class: "soft", for: "target-words" }, words.say("about.target")),
    h("input", {
      id: "target-words",
      type: "search",
      ".value": state.search,
      autocomplete: "off",
      oninput: (e: InputEvent) => void findTargets(ui.desk, (e.target as HTMLInputElement).value),
    }),
    found
      ? choose(
          words.say("line.target"),
          found.map((t) => ({ value: t.id, class: "choice", children: [h("b", {}, t.can), h("span", { class: "about" }, metWords(ui, t))] })),
          line.value,
          (id) => take(found.find((t) => t.id === id)!),
          { class: "choices of-target" },
        )
      : h("p", { class: "soft" }, words.say("moment")),
    ...(found?.length === 0 ? [h("p", {}, words.say("target.none"))] : []),
    ...backToPencil(ui, line),
  ];
}

/** Whether the class has met it; of another grade's it says which. */
function metWords({ words, state }: Ui, t: Target): string {
  const met = t.met ? words.say("target.met", { day: words.day(t.met) }) : words.say("target.not-yet");
  return t.grade === state.week?.grade ? met : words.say("target.grade", { grade: words.say(`grade.${t.grade as 0 | 1 | 2 | 3}`), met });
}

function switchView(ui: Ui, line: Line): HTMLElement {
  const { words } = ui;
  const on = line.value === "true";
  return h(
    "label",
    { class: "switch", "data-key": line.key },
    h("input", { type: "checkbox", ".checked": on, onchange: (e: Event) => void setLine(ui.desk, line, (e.target as HTMLInputElement).checked ? "true" : "false") }),
    h("span", {}, words.say(`long.${line.key}` as Word)),
  );
}

function countView(ui: Ui, line: Line): HTMLElement {
  const { words } = ui;
  const counts = line.key === "minutes" ? ["5", "10", "15", "20"] : ["3", "4", "5", "6"];
  if (line.value && !counts.includes(line.value)) counts.unshift(line.value);
  const name = words.say(`long.${line.key}` as Word);
  return h(
    "div",
    { class: "count", "data-key": line.key },
    h("span", {}, name),
    choose(name, counts.map((n) => ({ value: n, children: [n], class: "small" })), line.value, (v) => void setLine(ui.desk, line, v), { class: "few" }),
  );
}

function warmUpView(ui: Ui, line: Line): HTMLElement {
  const { words, state } = ui;
  const all = state.choices ?? [];
  const name = words.say("long.warm-up");
  return h(
    "div",
    { class: "count", "data-key": line.key },
    h("span", {}, name),
    choose(name, all.map((c) => ({ value: c.value, children: [upper(c.words) || words.say("none.warm-up")], class: "small" })), line.value || "none", (v) => void setLine(ui.desk, line, v), { class: "few" }),
  );
}

function showFromView(ui: Ui, week: Week, line: Line): HTMLElement[] {
  const { words } = ui;
  const value = line.value || week.usual;
  return [
    h("label", { class: "soft", for: "show-from" }, words.say("about.show-from")),
    h(
      "p",
      { class: "acts" },
      h("input", { id: "show-from", type: "date", ".value": value, onchange: (e: Event) => void setLine(ui.desk, line, (e.target as HTMLInputElement).value) }),
      button(words.say("today"), () => void setLine(ui.desk, line, ui.desk.today())),
      ...(line.ink ? [button(words.say("friday-before", { day: words.day(week.usual, "weekday") }), () => void setLine(ui.desk, line, ""))] : []),
    ),
  ];
}
