// Writing a story of her own.

import { later } from "./acts-week";
import type { Desk } from "./desk";
import { focusOn } from "./focus";
import type { OwnDraft } from "./state";

/** Opens the field for her own story, in the place of a story or as the next. */
export function writeOwn(desk: Desk, story: number, texts: Record<string, string> = {}): void {
  const date = desk.state.date!;
  const kept = desk.state.memory.draft;
  const mine = kept?.date === date && kept.story === story ? kept.texts : texts;
  setOwn(desk, { date, story, texts: mine });
  if (story > 0) desk.set({ story: { number: story } });
  if (Object.keys(mine).length > 0) void readOwn(desk);
  focusOn(".own textarea");
}

function setOwn(desk: Desk, own: OwnDraft): void {
  desk.set({ own });
}

/** Takes up what is typed. What she writes is kept as a draft, though it is no act yet. */
export function writeOwnText(desk: Desk, tag: string, text: string): void {
  const own = desk.state.own;
  if (!own) return;
  const texts = { ...own.texts, [tag]: text };
  setOwn(desk, { ...own, texts, numbers: undefined });
  desk.remember({ draft: { date: own.date, story: own.story, texts } });
  later(desk, () => readOwn(desk), 300);
}

/** Asks what the text could mean. What she tapped stays as long as it is offered. */
async function readOwn(desk: Desk): Promise<void> {
  const own = desk.state.own;
  if (!own) return;
  const offer = await desk.ask("own", { date: own.date, texts: own.texts, numbers: own.numbers ?? [] });
  const now = desk.state.own;
  if (!offer || !now || now.date !== own.date || now.story !== own.story) return;
  const line = offer.readings.some((r) => r.line === now.line) ? now.line : undefined;
  const happens = offer.readings.some((r) => r.kind.happens === now.happens) ? now.happens : undefined;
  setOwn(desk, { ...now, offer, numbers: offer.numbers, line, happens });
}

/** Puts a number aside that does not count, or takes it back. */
export function putAside(desk: Desk, at: number): void {
  const own = desk.state.own;
  if (!own?.offer) return;
  const numbers = own.offer.numbers.map((n, i) => (i === at ? { ...n, counts: !n.counts } : n));
  setOwn(desk, { ...own, numbers, offer: { ...own.offer, numbers } });
  void readOwn(desk);
}

export function pickHappens(desk: Desk, happens: string): void {
  if (desk.state.own) setOwn(desk, { ...desk.state.own, happens, line: undefined });
}

export function pickReading(desk: Desk, line: string): void {
  if (desk.state.own) setOwn(desk, { ...desk.state.own, line });
}

/** Lays her story into the week. */
export async function useOwn(desk: Desk): Promise<void> {
  const own = desk.state.own;
  if (!own) return;
  const { date, story, texts } = own;
  const use = { date, story, texts, numbers: own.numbers ?? [], line: own.line ?? "", answer: "" };
  const owns = desk.state.week?.stories.filter((s) => s.own !== null).length ?? 0;
  if (await desk.act({ word: "act.own", args: { n: story > 0 && story <= owns ? story : owns + 1 } }, () => desk.ask("use", use))) leaveOwn(desk);
}

/** Puts the field away; what she wrote is gone only now. */
export function leaveOwn(desk: Desk): void {
  desk.set({ own: undefined });
  desk.remember({ draft: undefined });
}
