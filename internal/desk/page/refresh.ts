// What the engine is asked only when it lies open.

import type { Desk } from "./desk";
import { choicesOf } from "./state";

/** Asks what can be chosen on a line. */
export async function refreshChoices(desk: Desk, line: string): Promise<void> {
  const key = choicesOf[line];
  const choices = key && (await desk.ask("choices", { date: desk.state.date!, key }));
  if (choices && desk.state.line === line) desk.set({ choices });
}

/** Asks where easier and harder lead for the story that lies open. */
export async function refreshSteps(desk: Desk): Promise<void> {
  const number = desk.state.story?.number;
  if (number === undefined) return;
  const steps = await desk.ask("steps", { date: desk.state.date!, story: number });
  if (steps && desk.state.story?.number === number) desk.set({ story: { ...desk.state.story, steps } });
}
