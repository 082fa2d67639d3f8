// What every view is given, and the small parts that they share.

import type { Desk } from "./desk";
import { type Attributes, h } from "./dom";
import type { State } from "./state";
import type { Words } from "./words";

/** What a view is made from: the state at this moment, and the desk to act on it. */
export interface Ui {
  desk: Desk;
  state: State;
  words: Words;
}

/** A button that acts at once. Its label for a screen reader may say more than its text. */
export function button(text: string, onclick: () => void, more: Attributes & { label?: string } = {}): HTMLButtonElement {
  const { label, ...attributes } = more;
  return h("button", { type: "button", onclick, ...(label && label !== text && { "aria-label": label }), ...attributes }, text);
}

/** A pencil mark, or nothing where it is ink. */
export function mark(ui: Ui, ink: boolean): HTMLElement | false {
  return !ink && h("span", { class: "proposed" }, ui.words.say("proposed"));
}

/** A name as a sentence begins: "The harbor". */
export function upper(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}

/** How far the engine is, once it takes longer than half a second. */
export function loadingBar({ words, state }: Ui): HTMLElement | false {
  return state.busy && h("progress", { "aria-label": words.say("moment"), "data-key": "loading", ...(state.loaded < 1 && { value: state.loaded }) });
}

/** Words for a screen reader alone. */
export function aside(text: string): HTMLElement {
  return h("span", { class: "hide" }, text);
}

/** One of several: arrows move among them, Enter or Space takes. */
export function choose<T extends string>(
  name: string,
  options: readonly { value: T; children: (Node | string)[]; label?: string; class?: string; off?: boolean }[],
  chosen: T | undefined,
  take: (value: T) => void,
  more: Attributes = {},
): HTMLElement {
  const at = Math.max(0, options.findIndex((o) => o.value === chosen));
  const move = (e: KeyboardEvent) => {
    const step = { ArrowDown: 1, ArrowRight: 1, ArrowUp: -1, ArrowLeft: -1 }[e.key];
    if (!step) return;
    e.preventDefault();
    const all = [...(e.currentTarget as HTMLElement).querySelectorAll<HTMLElement>("[role=radio]")];
    const from = all.indexOf(document.activeElement as HTMLElement);
    const to = all[(from + step + all.length) % all.length]!;
    for (const e of all) e.tabIndex = e === to ? 0 : -1;
    to.focus();
  };
  return h(
    "div",
    { role: "radiogroup", "aria-label": name, onkeydown: move, ...more },
    options.map((o, i) =>
      h(
        "button",
        {
          type: "button",
          role: "radio",
          "aria-checked": o.value === chosen ? "true" : "false",
          "aria-label": o.label,
          tabindex: i === at ? 0 : -1,
          class: o.class,
          onclick: () => take(o.value),
          "data-key": `choice-${o.value}`,
        },
        o.children,
      ),
    ),
  );
}
