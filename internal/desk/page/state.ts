// What the desk shows at a moment. Views read it; only the desk changes it.

import type { StopError } from "./engine";
import type { Files } from "./files";
import type { Journal, Said } from "./journal";
import type { Memory, Trouble } from "./keeper";
import type { Begin, Choice, Copied, Finding, Moved, Offer, Opened, OwnNumber, Reading, Sending, Steps, Target, Week, Year } from "./protocol";

/** What lies in the sheet's place. */
export type View = "week" | "year" | "words" | "send" | "copies" | "help";

/** What of the week families' frame shows. */
export type Shown = "learn" | "try" | "paper";

/** How keeping stands. */
export interface Saving {
  state: "new" | "saving" | "saved" | Trouble;
  /** When all was kept last. */
  at?: number | undefined;
  /** When a copy was taken that holds all that there is. */
  copied?: number;
}

/** A story of her own while she writes it. */
export interface OwnDraft {
  date: string;
  /** The story whose place it takes; 0 for the next place. */
  story: number;
  texts: Record<string, string>;
  numbers?: OwnNumber[];
  offer?: Offer;
  /** What happens and what is asked, as she tapped them; nothing is picked for her. */
  happens?: string;
  line?: string;
}

/** What lies open in the stories: other kinds, or the field for her own. */
export interface OpenStory {
  number: number;
  kinds?: Reading[];
  /** Where easier and harder lead. */
  steps?: Steps | undefined;
  /** Its equation before the last act on it. */
  was?: string;
  /** She changes it although families have it. */
  anyway?: boolean;
}

export interface State {
  /** "setting-up" until it is known what is kept; "start" at a desk that is new. */
  phase: "setting-up" | "start" | "desk";
  /** "gone" when the program that it runs in has ended. */
  engine: "starting" | "ready" | "again" | "gone" | StopError;
  /** How much of the engine has been read, up to 1. */
  loaded: number;
  opened?: Opened;
  files: Files;
  journal: Journal;
  memory: Memory;
  saving: Saving;
  /** What she has answered at the first start so far; no Monday is the next one, no grade is -1. */
  answers: Begin;

  year?: Year;
  week?: Week;
  date?: string;
  html?: string;
  shown: Shown;
  view: View;
  /** On a phone, the paper that is looked at, and whether the other one changed meanwhile. */
  side: "yours" | "families";
  unseen: boolean;

  line?: string;
  /** What she took on lines that the engine does not answer for yet, by their keys. */
  taken: Record<string, string>;
  /** What she wrote into letters that is not laid down yet, by day and line. */
  typed: Record<string, string>;
  /** The words that she looks for among the sentences. */
  search: string;
  choices?: Choice[];
  targets?: Target[];
  story?: OpenStory;
  own?: OwnDraft;
  sending?: Sending;
  /** What takes long to arrive of the week that is sent. */
  heavy: Finding[];
  /** What was handed to the browser lately, in words, by way and language. */
  given?: Record<string, Said>;
  /** A message that could not be copied: it is shown, to be copied by hand. */
  message?: { tag: string; text: string };
  copy?: Copied;

  /** The last change in words, what moved with it, and what stood in its way. */
  said?: Said;
  moved?: Moved;
  wrong: Finding[];
  /** What takes longer than half a second. */
  busy: boolean;
}

export const beginning: State = {
  phase: "setting-up",
  engine: "starting",
  loaded: 0,
  files: {},
  journal: { acts: [], done: 0 },
  memory: {},
  saving: { state: "new" },
  answers: { name: "", grade: -1, languages: ["en"], monday: "" },
  shown: "learn",
  view: "week",
  side: "yours",
  unseen: false,
  taken: {},
  typed: {},
  search: "",
  wrong: [],
  heavy: [],
  busy: false,
};

/** The lines of the sheet with a list to choose from, and the key of that list. */
export const choicesOf: Record<string, string> = { focus: "focus", picture: "picture", place: "place", more: "warm-up" };
