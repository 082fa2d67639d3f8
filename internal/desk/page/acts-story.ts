// Acts on one story.

import type { Desk } from "./desk";
import { focusOn } from "./focus";
import type { Reading, Story } from "./protocol";
import { bringIn } from "./focus";
import { refreshSteps } from "./refresh";

export function openStory(desk: Desk, number?: number): void {
  desk.set({ story: number === undefined ? undefined : { number }, line: undefined });
  if (number !== undefined) bringIn(`#desk-story-${number} > .shut`);
  void refreshSteps(desk);
}

/** Lets a story be changed that families have. */
export function changeAnyway(desk: Desk): void {
  if (desk.state.story) desk.set({ story: { ...desk.state.story, anyway: true } });
}

/** Asks the engine to do something to a story. */
export async function storyAct(desk: Desk, s: Story, what: string, kind = ""): Promise<void> {
  const date = desk.state.date!;
  const word = `act.story.${what}`;
  const done = await desk.act({ word, args: { n: s.number } }, () => desk.ask("story", { date, story: s.number, do: what, kind }));
  if (!done) return;
  const now = desk.state.week?.stories.find((o) => o.number === s.number);
  if (desk.state.story?.number === s.number && now && now.equation !== s.equation) desk.set({ story: { ...desk.state.story, was: s.equation } });
  const moved = { up: -1, down: 1 }[what];
  if (moved !== undefined) {
    desk.set({ story: { ...desk.state.story, number: s.number + moved } });
    focusOn(`#desk-story-${s.number + moved} [data-key=${what}]`, `#desk-story-${s.number + moved} .shut`);
  }
  else if (what === "remove") desk.set({ story: undefined });
}

/** Puts a story back as it was before the last act on it. */
export async function putBack(desk: Desk): Promise<void> {
  await desk.undo();
  if (desk.state.story) desk.set({ story: { ...desk.state.story, was: undefined } });
}

/** Makes a story ink, or pencil again. */
export function keepStory(desk: Desk, s: Story): Promise<void> {
  return storyAct(desk, s, s.ink ? "release" : "keep");
}

/** Shows the other kinds that a story could be. */
export async function showKinds(desk: Desk, s: Story): Promise<void> {
  if (desk.state.story?.kinds) return desk.set({ story: { ...desk.state.story, kinds: undefined } });
  const kinds = await desk.ask("kinds", { date: desk.state.date!, story: s.number });
  if (kinds && desk.state.story?.number === s.number) desk.set({ story: { ...desk.state.story, kinds } });
}

export async function otherKind(desk: Desk, s: Story, kind: Reading): Promise<void> {
  await storyAct(desk, s, "kind", kind.line);
  if (desk.state.story?.number === s.number) desk.set({ story: { ...desk.state.story, kinds: undefined } });
}
