// What families see: the real page at the width of a phone, in any language and
// look. The frame runs nothing; the page in it is the one that is sent.

import { choosePage } from "./acts";
import { h } from "./dom";
import { reached } from "./moments";
import type { Shown } from "./state";
import { type Ui, choose } from "./ui";
import { findingText } from "./view-findings";

export function familiesView(ui: Ui): HTMLElement {
  const { words, state } = ui;
  const languages = state.year?.languages ?? [];
  const tag = state.memory.language ?? state.year?.class;
  const looks = state.opened?.looks ?? [];
  const pages: Shown[] = ["learn", "try", "paper"];
  return h(
    "section",
    { class: "families", "aria-label": words.say("region.families"), id: "families", tabindex: -1 },
    h("h2", {}, words.say("region.families")),
    h(
      "div",
      { class: "views" },
      languages.length > 4 ? languageList(ui, tag) : choose(words.say("families.language"), languages.map((l) => ({ value: l.tag, children: [h("span", { lang: l.tag }, l.name)], class: "tab" })), tag, (language) => void choosePage(ui.desk, { language }), { class: "tabs" }),
      choose(words.say("families.page"), pages.map((p) => ({ value: p, children: [words.say(`page.${p}`)], class: "tab" })), state.shown, (shown) => void choosePage(ui.desk, { shown }), { class: "tabs" }),
      looks.length > 1 &&
        h(
          "select",
          { "aria-label": words.say("families.look"), onchange: (e: Event) => void choosePage(ui.desk, { theme: (e.target as HTMLSelectElement).value }) },
          looks.map((l) => h("option", { value: l.value, selected: l.value === (state.memory.theme ?? (state.year?.settings.look || "paper")) }, words.say("families.look.of", { look: l.words }))),
        ),
    ),
    heldBackView(ui, tag),
    h("div", { class: `phone ${state.shown}`, "data-key": "phone", "data-whole": true }),
    !state.html && h("p", { class: "wait" }, waiting(ui)),
  );
}

/** What families of the language get otherwise than the others. */
function heldBackView(ui: Ui, tag?: string): HTMLElement | false {
  const found = ui.state.year?.heldBack.filter((f) => f.tag === tag) ?? [];
  return found.length > 0 && h("p", { class: "soft" }, found.map((f) => findingText(ui, f)).join(" "));
}

/** Many languages are a list to open. */
function languageList({ words, state, desk }: Ui, tag?: string): HTMLElement {
  return h(
    "select",
    { "aria-label": words.say("families.language"), onchange: (e: Event) => void choosePage(desk, { language: (e.target as HTMLSelectElement).value }) },
    state.year!.languages.map((l) => h("option", { value: l.tag, lang: l.tag, selected: l.tag === tag }, l.name)),
  );
}

function waiting({ words, state }: Ui): string {
  if (state.engine === "gone") return "";
  if (state.engine !== "ready") return words.say("engine.starting");
  return [...state.wrong, ...(state.week?.findings ?? [])].some((f) => f.mend) ? words.say("families.mend") : words.say("moment");
}

/** The frames of the page: the new one comes in place when it is ready, where the old one was scrolled to. */
export class Frame {
  private shown = "";
  private frame: HTMLIFrameElement | undefined;
  private about = "";

  constructor(
    private readonly follow: (href: string) => void,
    private readonly pressed: (e: KeyboardEvent) => void,
  ) {}

  /** Shows a page. About names what it is: the place scrolled to is kept while that stays the same. */
  show(html: string | undefined, title: string, about: string, moved: readonly number[]): void {
    const phone = document.querySelector(".phone");
    if (!phone || html === undefined) return;
    if (html === this.shown && this.frame?.parentElement === phone) return;
    const old = this.frame;
    const keep = about === this.about;
    [this.shown, this.about] = [html, about];
    const next = document.createElement("iframe");
    next.setAttribute("sandbox", "allow-same-origin");
    next.title = title;
    next.srcdoc = html;
    next.className = "coming";
    next.onload = () => this.arrive(next, old, keep, moved);
    this.frame = next;
    for (const f of [...phone.children]) if (f !== old) f.remove();
    phone.append(next);
  }

  private arrive(next: HTMLIFrameElement, old: HTMLIFrameElement | undefined, keep: boolean, moved: readonly number[]): void {
    if (next !== this.frame) return;
    const doc = next.contentDocument;
    const top = keep ? (old?.contentDocument?.scrollingElement?.scrollTop ?? 0) : 0;
    if (doc?.scrollingElement) doc.scrollingElement.scrollTop = top;
    next.classList.remove("coming");
    if (old && document.activeElement === old) next.focus();
    old?.remove();
    reached("families");
    if (!doc) return;
    doc.addEventListener("click", (e) => this.clicked(e), true);
    doc.addEventListener("keydown", (e) => this.pressed(e));
    markMoved(doc, moved);
  }

  /** Links to other pages are followed by the desk: the frame itself goes nowhere. */
  private clicked(e: Event): void {
    const link = (e.target as Element | null)?.closest?.("a[href]");
    const href = link?.getAttribute("href") ?? "#";
    if (href.startsWith("#")) return;
    e.preventDefault();
    this.follow(href);
  }
}

/** A still line at the margin of what changed, for three seconds. */
function markMoved(doc: Document, moved: readonly number[]): void {
  const places = moved.map((n) => doc.getElementById(`story-${n}`)).filter((e): e is HTMLElement => e !== null);
  for (const e of places) e.style.boxShadow = "-6px 0 0 currentColor";
  setTimeout(() => {
    for (const e of places) e.style.boxShadow = "";
  }, 3000);
}
