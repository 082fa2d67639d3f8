// The year: every Monday with its sentence and how it stands, and what the class
// has met.

import { calendar, goTo } from "./acts";
import { h } from "./dom";
import type { Target, YearWeek } from "./protocol";
import { type Ui, aside, button } from "./ui";
import { stateOf } from "./view-line";

export function yearView(ui: Ui): HTMLElement {
  const { words, state } = ui;
  const year = state.year;
  if (!year) return h("section", { class: "sheet outline", "aria-label": words.say("year.title"), id: "week", tabindex: -1 });
  return h(
    "section",
    { class: "sheet year", "aria-label": words.say("year.title"), "data-key": "year", id: "week", tabindex: -1 },
    h("h2", {}, words.say("year.title")),
    h("ol", { class: "mondays" }, year.weeks.map((w) => rowView(ui, w))),
    h("p", {}, words.say("year.met", { n: year.met.length, all: year.met.length + year.notYet.length })),
    year.notYet.length > 0 && h("details", {}, h("summary", {}, words.say("year.not-yet", { n: year.notYet.length })), targetsView(year.notYet)),
    year.lacks.length > 0 && h("ul", { class: "lacks" }, year.lacks.map((l) => h("li", {}, l))),
  );
}

function targetsView(targets: Target[]): HTMLElement {
  return h("ul", {}, targets.map((t) => h("li", {}, t.can)));
}

function rowView(ui: Ui, w: YearWeek): HTMLElement {
  const { words, desk, state } = ui;
  const next = state.year?.next;
  const day = words.day(w.date);
  const act = (what: string, text: string) => button(text, () => void calendar(desk, w.date, what), { label: `${text}, ${day}`, "data-key": what });
  const acts = {
    shown: [act("again", words.say("year.again"))],
    waits: [moveView(ui, w), act("again", words.say("year.again")), act("remove", words.say("year.remove"))],
    proposed: w.date !== next ? [act("off", words.say("year.day-off"))] : [act("take", words.say("year.take")), button(words.say("year.choose"), () => void goTo(desk, w.date, "target"), { label: `${words.say("year.choose")}, ${day}`, "data-key": "choose" }), act("off", words.say("year.day-off"))],
    empty: [act("off", words.say("year.day-off"))],
    off: [act("open", words.say("year.open"))],
  }[w.state];
  return h(
    "li",
    { class: `${w.state}${w.mend > 0 ? " mend" : ""}`, "data-key": w.date },
    h("button", { type: "button", class: "monday", onclick: () => void goTo(desk, w.date) }, day, aside(`, ${words.say("open")}`)),
    h("span", { class: w.state === "proposed" ? "can pencil" : "can" }, w.can || words.say(w.state === "off" ? "year.off" : "year.empty")),
    h("span", { class: "state" }, w.state === "off" || (w.state === "empty" && w.mend === 0) ? "" : stateOf(ui, w)),
    h("span", { class: "acts" }, acts),
  );
}

/** Another Monday for a week: one of those that have none yet. */
function moveView({ words, state, desk }: Ui, w: YearWeek): HTMLElement {
  const free = state.year!.weeks.filter((o) => o.state === "proposed" || o.state === "empty");
  const name = words.say("year.move");
  return h(
    "select",
    { "aria-label": `${name}, ${words.day(w.date)}`, "data-key": "move", onchange: (e: Event) => void calendar(desk, w.date, "move", (e.target as HTMLSelectElement).value) },
    h("option", { value: "" }, name),
    free.map((o) => h("option", { value: o.date }, words.day(o.date))),
  );
}
