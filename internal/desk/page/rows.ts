// The lines of the sheet.

/** The rows that the sheet shows, each with the keys of the lines that it holds. */
export const rows: readonly { key: string; holds: readonly string[] }[] = [
  { key: "target", holds: ["target", "own-target"] },
  { key: "focus", holds: ["focus"] },
  { key: "picture", holds: ["picture"] },
  { key: "place", holds: ["place"] },
  { key: "stories", holds: ["stories", "extra-sentence", "review", "ladder"] },
  { key: "note", holds: [] },
  { key: "show-from", holds: ["show-from"] },
  { key: "more", holds: ["warm-up", "minutes", "number-words"] },
];

/** The row that holds a line, a part of it or a letter; nothing for what has no row. */
export function rowOf(key: string): string | undefined {
  const [line = ""] = key.split(".");
  return line === "note" ? "note" : rows.find((row) => row.holds.includes(line))?.key;
}
