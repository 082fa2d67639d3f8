// The moments of opening, as marks on the browser's timeline: docs/speed.md tells
// how they are measured.

/** The engine answered, the sheet is drawn, families' page stands in its frame. */
export type Moment = "engine" | "sheet" | "families";

/** Marks a moment the first time that it is reached. */
export function reached(moment: Moment): void {
  if (performance.getEntriesByName(moment, "mark").length === 0) performance.mark(moment);
}
