// The desk's own words, from one language file each, and days and times as each
// language writes them.

import en from "./words.en.json";
import es from "./words.es.json";
import type { Said } from "./journal";

export type Word = keyof typeof en;
type Counted<W> = W extends `${infer P}.other` ? P : never;
/** The first part of words that have a form for one and for others. */
export type Plural = Counted<Word>;
export type Tongue = "en" | "es";
export type Places = Record<string, string | number>;

/** The language files, for the desk and for the test that holds them together. */
export const languages: Record<Tongue, Record<string, string>> = { en, es };

/** The desk's language for what a browser asks for. */
export function tongueOf(tags: readonly string[]): Tongue {
  const known = tags.map((t) => t.slice(0, 2)).find((t) => t === "en" || t === "es");
  return known === "es" ? "es" : "en";
}

export class Words {
  private readonly plurals: Intl.PluralRules;

  constructor(readonly tag: Tongue) {
    this.plurals = new Intl.PluralRules(tag);
  }

  /** A sentence with its places filled. A value that begins with @ names another one; a day is written as people do. */
  say(word: Word, places: Places = {}): string {
    return languages[this.tag][word]!.replace(/\{(\w+)\}/g, (_, name: string) => this.place(places[name]));
  }

  private place(value: string | number | undefined): string {
    if (typeof value === "string" && value.startsWith("@")) return this.say(value.slice(1) as Word);
    if (typeof value === "string" && /^\d{4}-\d\d-\d\d$/.test(value)) return this.day(value);
    return value === undefined ? "" : String(value);
  }

  /** A sentence in the form that a number asks for; its place is {n}. */
  count(word: Plural, n: number, places: Places = {}): string {
    const form = this.plurals.select(n) === "one" ? "one" : "other";
    return this.say(`${word}.${form}` as Word, { n, ...places });
  }

  /** What a journal or the ledge has to say. */
  tell(said: Said): string {
    return said.word in languages.en ? this.say(said.word as Word, said.args) : "";
  }

  /** What a language is called in the desk's own; its own name where it has none here. */
  language(l: { tag: string; name: string } | undefined): string {
    if (!l) return "";
    const name = new Intl.DisplayNames([this.tag], { type: "language" }).of(l.tag) ?? l.tag;
    return name === l.tag ? l.name : name;
  }

  /** A day: "Sep 28", "Fri, Sep 25", "Monday, September 28". */
  day(date: string, how: "short" | "weekday" | "long" = "short"): string {
    const forms: Record<typeof how, Intl.DateTimeFormatOptions> = {
      short: { month: "short", day: "numeric" },
      weekday: { weekday: "short", month: "short", day: "numeric" },
      long: { weekday: "long", month: "long", day: "numeric" },
    };
    return new Intl.DateTimeFormat(this.region(), { ...forms[how], timeZone: "UTC" }).format(new Date(`${date}T00:00:00Z`));
  }

  month(date: string): string {
    return new Intl.DateTimeFormat(this.region(), { month: "short", timeZone: "UTC" }).format(new Date(`${date}T00:00:00Z`));
  }

  /** The time of a day: "10:42". */
  time(at: number): string {
    return new Intl.DateTimeFormat(this.region(), { hour: "numeric", minute: "2-digit" }).format(new Date(at));
  }

  /** A size for people: "41 kB". */
  size(bytes: number): string {
    return `${Math.max(1, Math.round(bytes / 1000))} kB`;
  }

  /** Items as a list in a sentence: "steps, picture and story 2". */
  list(items: readonly string[]): string {
    return new Intl.ListFormat(this.region(), { type: "unit", style: "short" }).format(items);
  }

  private region(): string {
    return this.tag === "en" ? "en-US" : "es-US";
  }
}
