// Writing a story of her own: a text for each language, what happens, what is
// asked. Nothing is picked for her.

import { leaveOwn, pickHappens, pickReading, putAside, useOwn, writeOwnText } from "./acts";
import { h } from "./dom";
import { findingText } from "./view-findings";
import type { Reading } from "./protocol";
import type { OwnDraft } from "./state";
import { readingButton } from "./view-stories";
import { type Ui, button, choose } from "./ui";
import type { Word } from "./words";

export function ownView(ui: Ui, own: OwnDraft): HTMLElement {
  const { words } = ui;
  const offer = own.offer;
  const readings = offer?.readings ?? [];
  const chosen = readings.find((r) => r.line === own.line);
  // That nothing is chosen yet goes without saying while there is nothing to choose.
  const wrong = (offer?.findings ?? []).filter((f) => f.code !== "unchosen");
  const written = Object.values(own.texts).some((t) => t.trim() !== "");
  return h(
    "div",
    { class: "own", "data-key": "own" },
    h("p", { class: "soft" }, words.say("own.about", { language: words.language(ui.state.year?.languages.find((l) => l.tag === ui.state.year?.class)) })),
    h("div", { class: "letters" }, (ui.state.year?.languages ?? []).map((l) => {
      const id = `own-${l.tag}`;
      return h(
        "div",
        { class: "letter", "data-key": l.tag },
        h("label", { for: id }, l.name),
        h("textarea", { id, rows: 4, lang: l.tag, dir: l.rightToLeft ? "rtl" : "ltr", ".value": own.texts[l.tag] ?? "", oninput: (e: InputEvent) => writeOwnText(ui.desk, l.tag, (e.target as HTMLTextAreaElement).value) }),
      );
    })),
    written && offer && offer.numbers.length > 0 && numbersView(ui, own),
    wrong.length > 0 && h("ul", { class: "findings" }, wrong.map((f) => h("li", { class: "mend" }, h("p", {}, findingText(ui, f))))),
    written && readings.length > 0 && meaningsView(ui, own, readings),
    written && offer && readings.length === 0 && wrong.length === 0 && h("p", { role: "status" }, words.say("own.no-kind")),
    chosen && h("p", { class: "answer", role: "status" }, chosen.answer ? words.say("own.answer", { n: chosen.answer }) : words.say("own.any")),
    h(
      "div",
      { class: "acts" },
      chosen && button(words.say("own.use"), () => void useOwn(ui.desk), { class: "go" }),
      button(words.say("own.leave"), () => leaveOwn(ui.desk)),
    ),
  );
}

function numbersView(ui: Ui, own: OwnDraft): HTMLElement {
  const { words } = ui;
  return h(
    "p",
    { class: "numbers" },
    own.offer!.numbers.map((n, i) =>
      h("button", { type: "button", class: "small", "aria-pressed": n.counts ? "true" : "false", onclick: () => putAside(ui.desk, i), "data-key": `n${i}` }, n.words),
    ),
    h("span", { class: "soft" }, words.say("own.numbers")),
  );
}

function meaningsView(ui: Ui, own: OwnDraft, readings: Reading[]): HTMLElement {
  const { words } = ui;
  const happens = [...new Set(readings.map((r) => r.kind.happens))];
  const asked = readings.filter((r) => r.kind.happens === own.happens);
  return h(
    "div",
    { class: "meanings" },
    h("h4", {}, words.say("own.happens")),
    choose(words.say("own.happens"), happens.map((w) => ({ value: w, children: [words.say(`happens.${w}` as Word)], class: "small" })), own.happens, (v) => pickHappens(ui.desk, v), { class: "few" }),
    own.happens !== undefined && h("h4", {}, words.say("own.asked")),
    own.happens !== undefined && h("div", { class: "readings", "data-key": "readings" }, asked.map((r) => readingButton(ui, r, () => pickReading(ui.desk, r.line), r.line === own.line))),
  );
}
