// The stories of the week, one under the other, each with what can be done to it.

import { changeAnyway, keepStory, openStory, otherKind, putBack, showKinds, storyAct, writeOwn } from "./acts";
import { h } from "./dom";
import { toUndo } from "./journal";
import { findingsView } from "./view-findings";
import { ownView } from "./view-own";
import { picture } from "./picture";
import type { Kind, Reading, Size, Story, Week } from "./protocol";
import { type Ui, aside, button, mark } from "./ui";
import type { Word } from "./words";

export function storiesView(ui: Ui, week: Week): HTMLElement {
  const { words, state } = ui;
  const own = state.own?.date === week.date ? state.own : undefined;
  return h(
    "section",
    { class: "stories", "aria-label": words.say("region.stories"), id: "stories", tabindex: -1 },
    h("h3", {}, words.say("region.stories")),
    findingsView(ui, week.findings.filter((f) => f.story >= Math.max(1, week.stories.length))),
    h("ol", {}, week.stories.map((s) => h("li", { "data-key": `story-${s.number}`, class: `story${s.ink ? " ink" : " pencil"}`, id: `desk-story-${s.number}` }, storyView(ui, week, s)))),
    own?.story === 0 ? ownView(ui, own) : button(words.say("own.add"), () => writeOwn(ui.desk, 0), { class: "quiet add" }),
  );
}

function storyView(ui: Ui, week: Week, s: Story): (HTMLElement | false)[] {
  const { words, state } = ui;
  const open = state.story?.number === s.number;
  const name = storyName(ui, s.number);
  const findings = week.findings.filter((f) => f.story === s.number);
  const toMend = findings.filter((f) => f.mend).length;
  const head = h(
    "button",
    {
      type: "button",
      class: "shut",
      "aria-expanded": open ? "true" : "false",
      onclick: () => openStory(ui.desk, open ? undefined : s.number),
    },
    h("span", { class: "number" }, s.number === 0 ? words.say("story.worked.short") : h("span", {}, aside(words.say("region.story")), String(s.number))),
    h("span", { class: "value" }, h("span", {}, open ? "" : firstWords(s), !open && s.returns && h("span", { class: "earlier" }, ` ${words.say("story.earlier")}`)), " ", h("bdi", { class: "equation", dir: "ltr" }, s.equation)),
    toMend > 0 ? h("span", { class: "alarm" }, aside(words.say("year.mend", { n: toMend })), h("span", { "aria-hidden": "true" }, "!")) : mark(ui, s.ink),
    h("span", { class: "change", "aria-hidden": "true" }, words.say(open ? "story.shut" : "story.change")),
  );
  if (!open) return [head, findingsView(ui, findings)];
  if (state.own?.date === week.date && state.own.story === s.number) return [head, ownView(ui, state.own)];
  const p = picture(s.picture);
  return [
    head,
    h("p", { class: "tale" }, s.text.join(" ")),
    p && h("div", { class: "drawn" }, p),
    h("p", { class: "soft" }, aboutStory(ui, s)),
    findingsView(ui, findings),
    week.state === "shown" && h("p", { class: "misfit" }, words.say("story.families-have"), " ", !state.story?.anyway && button(words.say("story.anyway"), () => changeAnyway(ui.desk))),
    (week.state !== "shown" || state.story?.anyway === true) && actsView(ui, s, name, week.stories.length - 1),
    s.own === null && noStep(ui),
    wasView(ui, s),
    state.story?.kinds ? kindsView(ui, s, state.story.kinds) : false,
  ];
}

function firstWords(s: Story): string {
  return s.text[0] ?? "";
}

export function storyName(ui: Ui, n: number): string {
  return n === 0 ? ui.words.say("story.worked") : ui.words.say("story.n", { n });
}

/** What happens and what is asked, in plain words: "Some come. How many then?" */
function kindWords({ words }: Ui, kind: Kind): string {
  const plain = [words.tell({ word: `happens.${kind.happens}` }), words.tell({ word: `asks.${kind.asks}.${kind.happens}` }) || words.tell({ word: `asks.${kind.asks}` })];
  const told = words.tell({ word: `told.${kind.id.split("-").at(-1)}` });
  return plain.every(Boolean) ? [`${plain[0]}. ${plain[1]}`, told].filter(Boolean).join(" ") : `${kind.words}.`;
}

/** Kind and size in plain words: "Some come. How many then? Numbers to 60, past a ten." */
function aboutStory(ui: Ui, s: Story): string {
  const { words } = ui;
  const { within, pastTen } = s.size;
  const size = words.say(pastTen ? "size.past-ten" : "size.plain", { n: within });
  return [s.returns && words.say("story.returns", { can: s.returns }), kindWords(ui, s.kind), size, s.extra ? words.say("size.extra", { n: s.extra }) : ""].filter(Boolean).join(" ");
}

/** Where a step leads, in words: "to 10", "no ten to pass". */
function stepWords({ words }: Ui, what: "easier" | "harder", from: Size, to: Size): string {
  if (from.pastTen !== to.pastTen) return words.say(to.pastTen ? "step.ten" : "step.no-ten");
  return from.within !== to.within ? words.say("step.within", { n: to.within }) : words.say(`step.${what}`);
}

/** At the end of the way there is no step more. */
function noStep({ words, state }: Ui): HTMLElement | false {
  const steps = state.story?.steps;
  const none = (["easier", "harder"] as const).filter((what) => steps?.[what] === null).map((what) => words.say(`finding.${what}`));
  return none.length > 0 && h("p", { class: "soft" }, none.join(" "));
}

function actsView(ui: Ui, s: Story, name: string, count: number): HTMLElement {
  const { words, state } = ui;
  const act = (what: string, off = false) => {
    const text = words.say(`do.${what}` as Word);
    return !off && button(text, () => void storyAct(ui.desk, s, what), { label: `${text}, ${name}`, "data-key": what });
  };
  const hers = s.own !== null;
  const step = (what: "easier" | "harder") => {
    const to = state.story?.steps?.[what];
    if (hers || to === null) return false;
    const text = words.say(`do.${what}`) + (to ? words.say("step", { to: stepWords(ui, what, s.size, to) }) : "");
    return button(text, () => void storyAct(ui.desk, s, what), { label: `${text}, ${name}`, "data-key": what });
  };
  return h(
    "div",
    { class: "acts", "data-key": "acts" },
    act("numbers", hers),
    act("tale", hers),
    !hers && button(words.say("do.kind"), () => void showKinds(ui.desk, s), { label: `${words.say("do.kind")}, ${name}`, "data-key": "kind" }),
    step("easier"),
    step("harder"),
    act("up", s.number < 2),
    act("down", s.number === 0 || s.number === count),
    button(words.say(s.ink ? "do.release" : "do.keep"), () => void keepStory(ui.desk, s), { label: `${words.say(s.ink ? "do.release" : "do.keep")}, ${name}`, "data-key": "keep" }),
    s.number > 0 && button(words.say(hers ? "own.edit" : "own.write"), () => writeOwn(ui.desk, s.number, s.own?.texts), { label: `${words.say(hers ? "own.edit" : "own.write")}, ${name}`, "data-key": "own" }),
    act("remove", s.number === 0),
  );
}

/** What a story was before the last act on it, to be put back. */
function wasView(ui: Ui, s: Story): HTMLElement | false {
  const { words, state } = ui;
  const last = toUndo(state.journal)?.name;
  const was = state.story?.was;
  if (!was || !last?.word.startsWith("act.story.") || last.args?.["n"] !== s.number) return false;
  return h("p", { class: "acts was" }, words.say("story.was"), " ", h("bdi", { class: "equation", dir: "ltr" }, was), button(words.say("story.put-back"), () => void putBack(ui.desk)));
}

function kindsView(ui: Ui, s: Story, kinds: Reading[]): HTMLElement {
  const { words } = ui;
  if (kinds.length === 0) return h("p", {}, words.say("kinds.none"));
  return h("div", { class: "readings", "data-key": "kinds" }, kinds.map((k) => readingButton(ui, k, () => void otherKind(ui.desk, s, k))));
}

/** One meaning as a picture with its equation, to tap. */
export function readingButton(ui: Ui, r: Reading, take: () => void, chosen?: boolean): HTMLElement {
  const p = picture(r.picture);
  return h(
    "button",
    { type: "button", class: "reading", onclick: take, "data-key": r.line, ...(chosen !== undefined && { "aria-pressed": chosen ? "true" : "false" }) },
    p && h("span", { class: "drawn" }, p),
    h("bdi", { class: "equation", dir: "ltr" }, r.equation),
    h("span", { class: "about" }, kindWords(ui, r.kind)),
  );
}
