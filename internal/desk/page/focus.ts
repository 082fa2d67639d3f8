// Where the keyboard is.

/** Brings the focus to a place once it is drawn: the first of those that are there. */
export function focusOn(...places: string[]): void {
  requestAnimationFrame(() =>
    requestAnimationFrame(() => {
      const e = places.map((selector) => document.querySelector<HTMLElement>(selector)).find((found) => found !== null);
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

const takesFocus = "button:not(:disabled), input, select, textarea, summary, a[href], [tabindex]";

/** Draws. What has the focus stays in sight; where it is gone then, the focus goes to what is nearest to it and still there. */
export function keepingFocus(draw: () => void): void {
  const had = document.activeElement;
  const seen = had !== null && inSight(had);
  const around: Element[] = [];
  for (let e = had; e && e !== document.body; e = e.parentElement) around.push(e);
  draw();
  if (had?.isConnected && had.matches(":focus-visible") && seen && !inSight(had)) had.scrollIntoView({ block: "nearest" });
  if (!had || had.isConnected || document.activeElement !== document.body) return;
  const still = around.find((e) => e.isConnected && !e.matches(".desk, .desk *:has(#week), #desk, #desk > div"));
  const near = [...(still?.querySelectorAll<HTMLElement>(takesFocus) ?? [])].find((e) => e.checkVisibility());
  (near ?? document.getElementById("week"))?.focus();
}

function inSight(e: Element): boolean {
  const { top, bottom } = e.getBoundingClientRect();
  return bottom > 0 && top < innerHeight;
}
