// Where the keyboard is.

/** Brings the focus to a place once it is drawn. */
export function focusOn(selector: string): void {
  requestAnimationFrame(() =>
    requestAnimationFrame(() => {
      const e = document.querySelector<HTMLElement>(selector);
      e?.focus();
      e?.scrollIntoView({ block: "nearest" });
    }),
  );
}

/** Brings a place into sight once it is drawn: what shut above it has moved it. */
export function bringIn(selector: string): void {
  requestAnimationFrame(() => requestAnimationFrame(() => document.querySelector(selector)?.scrollIntoView({ block: "nearest" })));
}

/** Shows a paper that was just laid there from its head. */
export function fromHead(): void {
  requestAnimationFrame(() =>
    requestAnimationFrame(() => {
      const paper = document.getElementById("week");
      const head = Math.max(0, paper?.parentElement?.getBoundingClientRect().top ?? 0);
      if (paper && paper.getBoundingClientRect().top < head) paper.scrollIntoView({ block: "start" });
    }),
  );
}

/** The papers of the desk in their order, for F6. */
const regions = ["line", "week", "stories", "families", "ledge"];

/** Brings the focus to the next paper, or the one before. */
export function nextRegion(back: boolean): void {
  const there = regions.map((id) => document.getElementById(id)).filter((e): e is HTMLElement => e !== null && e.offsetParent !== null || e?.id === "ledge");
  const inside = there.filter((e) => e.contains(document.activeElement)).at(-1);
  const at = inside ? there.indexOf(inside) : -1;
  const to = there[(at + (back ? -1 : 1) + there.length) % there.length] ?? there[0];
  to?.focus();
}
