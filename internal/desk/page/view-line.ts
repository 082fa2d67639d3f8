// The line: the year's Mondays as a number line, as the children draw it.

import { goTo } from "./acts";
import { h } from "./dom";
import type { YearWeek } from "./protocol";
import type { Ui } from "./ui";

export function lineView(ui: Ui): HTMLElement {
  const { words, state } = ui;
  const weeks = state.year?.weeks ?? [];
  return h(
    "nav",
    { class: "line", "aria-label": words.say("region.year"), id: "line", tabindex: -1 },
    h("ol", {}, weeks.map((w, i) => mondayView(ui, w, weeks[i - 1]))),
  );
}

function mondayView(ui: Ui, week: YearWeek, before?: YearWeek): HTMLElement {
  const { words, state } = ui;
  const open = week.date === state.date && (state.view === "week" || state.view === "send");
  const month = words.month(week.date);
  const newMonth = !before || words.month(before.date) !== month;
  return h(
    "li",
    { class: `monday ${week.state}${week.mend > 0 ? " mend" : ""}`, "data-key": week.date },
    h(
      "button",
      {
        type: "button",
        "aria-current": open && "date",
        title: week.can,
        onclick: () => void goTo(ui.desk, week.date),
      },
      h("span", { class: "tick", "aria-hidden": "true" }),
      h("span", { class: "when" }, h("b", { class: newMonth ? undefined : "hide" }, month), " ", String(Number(week.date.slice(8)))),
      h("span", { class: "hide" }, [week.can, stateOf(ui, week)].filter(Boolean).join(", ")),
    ),
  );
}

/** How a week stands, in words. */
export function stateOf(ui: Ui, week: YearWeek): string {
  const { words } = ui;
  if (week.mend > 0) return words.say("year.mend", { n: week.mend });
  switch (week.state) {
    case "shown":
      return words.say("year.shown");
    case "waits":
      return week.showFrom > ui.desk.today() ? words.say("year.waits", { day: words.day(week.showFrom, "weekday") }) : words.say("year.ready");
    case "proposed":
      return words.say("proposed");
    case "off":
      return words.say("year.off");
    default:
      return words.say("year.empty");
  }
}

/** Brings the Monday that lies open into the middle of the line. */
export function centre(): void {
  const list = document.querySelector<HTMLElement>(".line ol");
  const open = list?.querySelector<HTMLElement>("[aria-current]")?.parentElement;
  if (list && open) list.scrollLeft = open.offsetLeft - (list.clientWidth - open.offsetWidth) / 2;
}
