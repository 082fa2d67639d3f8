// An engine for development and for the tests of the page's code: it answers
// every call with a small invented desk, from the files that were put.

import type { Listener, Transport } from "./engine";
import type { Act, Calls, Changes, Choice, File, Finding, Line, Moved, Opened, Reading, Request, Story, Target, Week, Year, YearWeek } from "./protocol";

type Answers = { [K in keyof Calls]: (args: Parameters<Calls[K]>[0]) => ReturnType<Calls[K]> };

const sentences = ["I can add past ten.", "I can take away past ten.", "I can find the missing part.", "I can compare two amounts.", "I can add tens and ones."];
const targets: Target[] = sentences.map((can, i) => ({ id: `target-${i}`, can, about: "", grade: 2, codes: [], met: i === 0 ? "2026-09-14" : "" }));
const mondays = Array.from({ length: 36 }, (_, i) => new Date(Date.UTC(2026, 8, 7 + 7 * i)).toISOString().slice(0, 10));
const languages = [
  { tag: "en", name: "English", rightToLeft: false },
  { tag: "es", name: "español", rightToLeft: false },
  { tag: "ar", name: "العربية", rightToLeft: true },
];

const bar = (a: number, b: number) =>
  `<svg viewBox="0 0 200 60" role="img" aria-label="${a} + ${b}"><rect x="2" y="10" width="${(196 * a) / (a + b)}" height="30" fill="#dfebf2" stroke="#1f5c85"/><rect x="${2 + (196 * a) / (a + b)}" y="10" width="${(196 * b) / (a + b)}" height="30" fill="#f8e3d5" stroke="#a4471a"/><text x="20" y="30" font-size="16">${a}</text><text x="170" y="30" font-size="16">${b}</text></svg>`;

/** What a fake week file holds: a key and its value a line. */
const read = (text = ""): Record<string, string> => Object.fromEntries(text.split("\n").filter(Boolean).map((l) => l.split("=", 2) as [string, string]));
const write = (values: Record<string, string>) => Object.entries(values).map(([k, v]) => `${k}=${v}\n`).join("");

export class Fake implements Transport {
  files: Record<string, string> = {};
  readonly log: string[] = [];
  /** A call at which the engine stops. */
  dies: string | undefined;

  constructor(private readonly listener: Listener, private readonly delay = 0) {}

  send({ id, call, args }: Request): void {
    this.log.push(call);
    setTimeout(() => {
      if (this.dies === call) return this.listener.stopped("killed");
      this.listener.answered({ id, value: (this.answers[call as keyof Calls] as (a: unknown) => unknown)(args) });
    }, this.delay);
  }

  close(): void {}

  /** Stops, and says why. */
  refuses(why: unknown): void {
    setTimeout(() => this.listener.stopped(why), this.delay);
  }

  private path = (date: string) => `weeks/${date}.toml`;
  private settings = () => read(this.files["site.toml"]);
  private file = (name: string, text: string, type = "text/html"): File => ({ name, type, bytes: btoa(text) });

  private act(date: string, change: (values: Record<string, string>) => void, moved: Partial<Moved> = {}): Act {
    const values = read(this.files[this.path(date)]);
    change(values);
    return { changes: { [this.path(date)]: write(values) }, monday: date, moved: { lines: [], stories: [], kept: [], ...moved } };
  }

  private week(date: string): Week {
    const values = read(this.files[this.path(date)]);
    const line = (key: string, value: string, words: string): Line => ({ key, value: values[key] ?? value, words: key in values && key !== "target" ? "" : words, ink: key in values, misfit: "" });
    const target = targets.find((t) => t.id === values["target"]) ?? targets[0]!;
    const letters = languages.map(({ tag }) => ({ tag, text: values[`note.${tag}`] ?? "", ink: `note.${tag}` in values, starter: `Dear families (${tag}), ten quiet minutes are plenty.` }));
    const findings: Finding[] = letters
      .filter((l) => /\d{3}-\d{4}/.test(l.text))
      .map((l) => ({ date, key: `note.${l.tag}`, story: -1, tag: l.tag, text: "a phone number", hint: "", code: "private-phone", quote: /\d{3}-\d{4}/.exec(l.text)![0], file: this.path(date), line: 1, mend: true }));
    const stories = [0, 1, 2, 3, 4].map((n): Story => this.story(n, Number(values[`story.${n}`] ?? 0), `keep.${n}` in values));
    return {
      date, state: this.path(date) in this.files ? "waits" : "proposed", can: target.can, about: "", grade: 2, usual: date, letters, stories, findings,
      lines: [line("target", target.id, target.can), line("focus", "make-ten", "Make a ten first"), line("picture", "bar-model", "Bars"), line("place", "harbour", "The harbor"), line("stories", "4", ""), line("extra-sentence", "true", ""), line("review", "false", ""), line("ladder", "false", ""), line("show-from", "", ""), line("warm-up", "", ""), line("minutes", "10", ""), line("number-words", "false", "")],
    };
  }

  private story(number: number, turn: number, ink: boolean): Story {
    const [a, b] = [8 + number, 5 + turn];
    return { number, event: "harbour.board", text: ["The last ferry is about to leave.", `${a} passengers were on board.`, `At the lighthouse ${b} more got on.`, "How many passengers were on board then?"], picture: bar(a, b), equation: `${a} + ${b} = ?`, answer: `${a + b}`, kind: { id: "joins-result", happens: "joins", asks: "result", words: "Some come. How many then" }, size: { within: 20, pastTen: true, steps: 1 }, extra: 0, returns: "", ink, own: null };
  }

  private year(): Year {
    const weeks = mondays.map((date, i): YearWeek => {
      const has = this.path(date) in this.files;
      const target = targets.find((t) => t.id === read(this.files[this.path(date)])["target"]) ?? targets[i % 5]!;
      return { date, state: has ? (i < 1 ? "shown" : "waits") : i === 12 ? "off" : "proposed", can: i === 12 ? "" : target.can, showFrom: date, mend: has ? this.week(date).findings.length : 0 };
    });
    const { name = "", languages: tags = "en" } = this.settings();
    return { name, settings: { name, class: "", address: this.settings()["address"] ?? "", languages: tags.split(/[ ,]/), look: "paper", answers: "foot", index: false, daysOff: [] }, grade: 2, languages: languages.filter((l) => tags.split(/[ ,]/).includes(l.tag)), class: "en", weeks, words: [{ id: "make-ten", name: "make a ten first", own: this.settings()["words.make-ten"] ?? "" }], met: targets.slice(0, 1), notYet: targets.slice(1), lacks: [], newest: "", heldBack: [], next: mondays.find((d) => !(this.path(d) in this.files))!, wrong: [], unread: [] };
  }

  private readings: Reading[] = ["joins", "leaves", "compared"].flatMap((happens) => ["result", "change"].map((asks) => ({ line: `${happens}/${asks}`, kind: { id: happens, happens, asks, words: `${happens}, ${asks}` }, equation: "58 - 36 = ?", picture: bar(58, 36), answer: "22" })));

  private readonly answers: Answers = {
    open: ({ files }): Opened => ((this.files = { ...files }), { files, new: Object.keys(files).length === 0, folder: "", style: "", patterns: "", languages, looks: [] }),
    begin: ({ name, languages: tags, monday }): Act => ({ changes: { "site.toml": write({ name, languages: tags.join(",") }), [this.path(monday)]: write({}) }, monday, moved: { lines: [], stories: [], kept: [] } }),
    put: ({ changes }) => {
      for (const [path, text] of Object.entries(changes)) if (text === null) delete this.files[path];
        else this.files[path] = text;
      return {};
    },
    year: () => this.year(),
    targets: ({ words }) => targets.filter((t) => t.can.toLowerCase().includes(words.toLowerCase())),
    week: ({ date }) => this.week(date),
    choices: ({ key }): Choice[] => ["make-ten", "count-on"].map((value) => ({ value, words: key === "focus" ? value.replace("-", " ") : value, about: "8 + 2 = 10, 10 + 3 = 13", picture: key === "picture" ? bar(8, 5) : "", fits: true, why: "", met: "", grade: 2 })),
    set: ({ date, key, value }) => this.act(date, (v) => (value === "" ? delete v[key] : (v[key] = value.replace(/\n/g, " "))), { lines: key === "target" ? ["focus"] : [], stories: key === "target" ? [1, 3] : [], kept: key === "target" ? [2] : [] }),
    story: ({ date, story, do: what }) => this.act(date, (v) => (what === "keep" ? (v[`keep.${story}`] = "1") : what === "release" ? delete v[`keep.${story}`] : (v[`story.${story}`] = String(Number(v[`story.${story}`] ?? 0) + 1))), { stories: [story] }),
    steps: ({ story }) => ({ easier: story === 1 ? null : { within: 20, pastTen: false, steps: 1 }, harder: { within: 100, pastTen: true, steps: 1 } }),
    kinds: () => this.readings,
    own: ({ texts, numbers }) => ({ numbers: numbers?.length ? numbers : [...(texts["en"] ?? "").matchAll(/\d+ \w+/g)].map(([w]) => ({ words: w, value: parseInt(w), counts: true })), readings: /\d+\D+\d+/.test(texts["en"] ?? "") ? this.readings : [], findings: [] }),
    use: ({ date, story, line }) => this.act(date, (v) => (v[`own.${story}`] = line), { stories: [story] }),
    calendar: ({ date, do: what }): Act => ({ changes: { [this.path(date)]: what === "take" ? "" : null } as Changes, monday: date, moved: { lines: [], stories: [], kept: [] } }),
    settings: ({ key, value }): Act => ({ changes: { "site.toml": write({ ...this.settings(), [key]: value }) }, moved: { lines: [], stories: [], kept: [] } }),
    page: ({ date, tag, page }) => ({ html: `<!doctype html><html lang="${tag}"><title>p</title><body style="font:18px serif;padding:1rem"><h1>${this.week(date).can}</h1><p>${page} ${tag}</p><p>${(this.week(date).letters.find((l) => l.tag === tag)?.text ?? "").replace(/</g, "&lt;")}</p><p><a href="../es/${date}.html">es</a></p><div id="story-1">${this.week(date).stories[1]!.text.join(" ")}</div></body></html>` }),
    check: () => [],
    send: ({ date, tags }) => ({ changes: {}, homes: this.year().languages.map((language) => ({ language, file: tags.includes(language.tag) ? this.file(`week-${date}-${language.tag}.html`, "<p>home") : null, message: `Our week (${language.tag})`, texts: 1, link: "", held: this.week(date).findings.filter((f) => f.tag === language.tag) })), waits: [], key: this.file(`TEACHER-ONLY-key-${date}.html`, "<p>For the teacher. Do not send."), slips: null }),
    site: () => this.file("web-pages.zip", "PK", "application/zip"),
    copy: () => this.file("TEACHER-ONLY-copy-2026-09-28.zip", JSON.stringify(this.files), "application/zip"),
    lastYear: ({ files }): Act => ({ changes: Object.fromEntries(Object.entries(files).filter(([path]) => path.startsWith("weeks/")).map(([, text], i) => [this.path(mondays[20 + i]!), text])), monday: mondays[20]!, moved: { lines: [], stories: [], kept: [] } }),
    openCopy: ({ bytes }) => {
      const text = atob(bytes);
      if (!text.startsWith("{")) return { files: {}, weeks: [], leftOut: [], older: false, refused: "strange" };
      const files = JSON.parse(text) as Record<string, string>;
      return { files, weeks: Object.keys(files).filter((p) => p.startsWith("weeks/")).map((p) => p.slice(6, 16)), leftOut: [], older: false, refused: "" };
    },
  };
}
