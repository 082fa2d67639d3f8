// Made from protocol*.go by: go test ./internal/desk -run Protocol -update

/** Calls are what the page can ask. Each takes one value and gives one value, or
 * what is wrong with what was asked ([Reply]). An act changes nothing by itself:
 * it gives the files as they should be, and the page, which keeps the files and
 * the way back, lays them down with put. Days are written 2026-09-14; a language
 * is its tag; a picture is an <svg> element. */
export interface Calls {
  /** Open takes up a desk. Over loopback the files are those of the folder, and
   * what is sent is passed over. */
  open(args: Open): Opened;
  /** Begin makes the files of a new desk from four answers. They are not laid
   * down yet. */
  begin(args: Begin): Act;
  /** Put lays files down. Everything after it is answered from them. */
  put(args: Put): None;
  /** Year is the line of Mondays and what the class has met. */
  year(args: None): Year;
  /** Targets are the sentences that a week can be about: those that a search
   * finds, the likeliest first, or all of a grade. */
  targets(args: Search): Target[];
  /** Week is the sheet of a Monday. One without a file is laid out in pencil. */
  week(args: Monday): Week;
  /** Choices are what can be chosen on a line of the sheet. */
  choices(args: LineOf): Choice[];
  /** Set writes a value on a line, in ink; an empty value rubs it out, and the
   * line is in pencil again. */
  set(args: Set): Act;
  /** Story does something to one story. */
  story(args: StoryWish): Act;
  /** Steps are the sizes of the stories that easier and harder lead to. */
  steps(args: StoryOf): Steps;
  /** Kinds are the other kinds of story that one could be, each with a picture. */
  kinds(args: StoryOf): Reading[];
  /** Own says what a story of her own could mean. */
  own(args: OwnStory): Offer;
  /** Use lays her own story into the week, in the place of one or as the next. */
  use(args: UseOwn): Act;
  /** Calendar does something to a whole week. */
  calendar(args: CalendarWish): Act;
  /** Settings writes something that holds all year; see [Settings]. */
  settings(args: Setting): Act;
  /** Page is one page as families get it. */
  page(args: PageOf): Page;
  /** Check says which pages of a week take long to arrive in a language: all that a
   * check knows and the sheet and the year do not. It makes every page. */
  check(args: CheckOf): Finding[];
  /** Send is what it takes to send a week home in some languages. Its changes
   * are to be put before anything is given away: families' stories are kept. */
  send(args: SendWish): Sending;
  /** Site is the zip of all pages for the web; it takes seconds. */
  site(args: None): File;
  /** Copy is the zip of all files of the desk. */
  copy(args: None): File;
  /** OpenCopy looks into the zip of a copy. Nothing is laid down yet. */
  openCopy(args: Zip): Copied;
  /** LastYear lays the weeks of a copy on new Mondays, in their order. */
  lastYear(args: LastYear): Act;
}

/** Request is a call as a message. */
export interface Request {
  id: number;
  call: string; // the name of a call, its first letter small: "openCopy"
  args: unknown;
}

/** Reply answers the request of its number, with one of the three. */
export interface Reply {
  id: number;
  value?: unknown;
  wrong?: Finding[]; // what to mend first
  fault?: string; // a bug of ours: the engine is to be started again
}

/** None is no value. */
export interface None {
}

/** Files are texts by their path: "site.toml", "weeks/2026-09-14.toml". */
export type Files = Record<string, string>;

/** Changes are files that are to be laid down; null takes one away. */
export type Changes = Record<string, string | null>;

/** Open is a desk as the page keeps it. */
export interface Open {
  files: Files;
  today: string; // the page knows the clock
  words: string; // the language of the desk itself, such as "es"
}

/** Opened is a desk that was taken up. */
export interface Opened {
  files: Files; // as they are kept
  new: boolean; // there is nothing yet: begin
  folder: string; // what the folder is called; empty in a browser
  style: string; // CSS that pictures need, and the colors of the plain look
  patterns: string; // a hidden <svg>, needed once before the first picture
  languages: Language[]; // those that families can have
  looks: Choice[];
}

/** Language is one that pages can be in. */
export interface Language {
  tag: string;
  name: string; // its own: "español"
  rightToLeft: boolean;
}

/** Begin is a new desk. */
export interface Begin {
  name: string;
  grade: number; // 0 is kindergarten, up to 3
  languages: string[]; // the class's own first
  monday: string; // empty for the next one
}

/** Put lays files down. */
export interface Put {
  changes: Changes;
  /** Before are the files as the page believes them to be, by path: over
   * loopback a file that is another by now is not written over ("changed").
   * Without it whatever is there makes room. */
  before?: Changes;
}

/** Act is what an act comes to. */
export interface Act {
  changes: Changes;
  monday?: string; // the week that it is about
  moved: Moved;
}

/** Moved says what of a week is another one now. */
export interface Moved {
  lines: string[]; // keys
  stories: number[]; // numbers; 0 is the worked one
  kept: number[]; // in ink, so that they did not follow
}

/** Monday names a week. */
export interface Monday {
  date: string;
}

/** LineOf names a line of a week. */
export interface LineOf {
  date: string;
  key: string;
}

/** StoryOf names a story of a week. */
export interface StoryOf {
  date: string;
  story: number; // 0 is the worked one
}

/** PageOf names a page. */
export interface PageOf {
  date: string;
  tag: string;
  page: string; // "learn", "try", "invent", "paper"; "key" is the teacher's own
  look: string; // empty for the desk's
}

/** CheckOf names the pages of a week in a language. */
export interface CheckOf {
  date: string;
  tag: string;
}

/** Page is a page, whole: it asks for nothing, and runs nothing. */
export interface Page {
  html: string;
}

/** File is a file to give away or to keep. */
export interface File {
  name: string;
  type: string; // such as "text/html"
  bytes: string; // in base64
}

/** SendWish asks for what goes home. */
export interface SendWish {
  date: string;
  tags: string[]; // the languages to make files in; none for the messages alone
}

/** Sending is a week ready to be sent. What goes home and what stays are never in
 * one list. */
export interface Sending {
  changes: Changes; // to be put first
  homes: Home[];
  waits: YearWeek[]; // weeks that the pages do not hold yet
  key: File; // for the teacher alone
  slips: File | null; // the link on paper to cut; null without an address
}

/** Home is what goes to the families of one language. */
export interface Home {
  language: Language;
  file: File | null; // the week in one file; null where it was not asked for
  message: string; // to go with it
  texts: number; // how many text messages it takes
  link: string; // empty without an address
  held: Finding[]; // what holds this language back
}

/** Zip is a zip from outside. */
export interface Zip {
  bytes: string; // in base64
}

/** LastYear is a copy of an earlier year. */
export interface LastYear {
  files: Files;
}

/** Copied is what a copy holds. */
export interface Copied {
  files: Files;
  weeks: string[]; // dates
  leftOut: string[]; // paths that are no file of a desk
  older: boolean; // brought up to date
  refused: string; // "strange", "broken", "large", "newer"; empty for fine
}

/** Week is a sheet. */
export interface Week {
  date: string;
  state: State;
  can: string;
  about: string; // what the child learns, for a parent
  grade: number;
  usual: string; // the day from which families would see it
  lines: Line[]; // in the order of the sheet
  letters: Letter[];
  stories: Story[]; // the worked one first; none while something is to mend
  findings: Finding[];
}

/** Line is a line of a sheet that holds one choice. */
export interface Line {
  key: string;
  value: string; // as Set takes it; empty for none
  words: string; // the value in words; empty for the page to word numbers, days and switches
  ink: boolean; // she chose it
  misfit: string; // why it does not fit what stands above it; empty where it does
}

/** Choice is something to choose on a line. */
export interface Choice {
  value: string;
  words: string;
  about: string; // one sentence, or a sum done this way
  picture: string; // empty for none
  fits: boolean;
  why: string; // why it does not fit
  met: string; // of a sentence: the newest Monday that was about it
  grade: number;
}

/** Letter is what the teacher writes to families, in one language. */
export interface Letter {
  tag: string;
  text: string;
  ink: boolean;
  starter: string; // what families read while nobody wrote a letter
}

/** Set writes a value on a line. */
export interface Set {
  date: string;
  key: string; // of a line, "note.es", or "allow" with a text that may be shown
  value: string; // empty rubs it out
}

/** Story is a story of a week as the desk shows it, in the class's language. */
export interface Story {
  number: number; // as on the page to try; 0 is the worked one
  event: string; // "harbour.board"; empty for her own
  text: string[]; // sentence by sentence
  picture: string;
  equation: string; // "8 + ? = 14"
  answer: string;
  kind: Kind;
  size: Size;
  extra: number; // a number that nobody needs; 0 for none
  returns: string; // the sentence of the earlier week that it brings back
  ink: boolean;
  own: OwnText | null; // null for a story of ours
}

/** Kind is what happens in a story and what is asked. */
export interface Kind {
  id: string;
  happens: string; // "joins", "leaves", "parts", "compared", "steps"
  asks: string; // "result", "change", "start", "total", "part", "difference", "bigger", "smaller", "pairs"
  words: string; // its name in the desk's language
}

/** Size is what numbers a story has. */
export interface Size {
  within: number; // 10, 20, 100 or 1000
  pastTen: boolean;
  steps: number; // 1 or 2
}

/** Steps are one step in each direction from a story; null where there is none. */
export interface Steps {
  easier: Size | null;
  harder: Size | null;
}

/** StoryWish is an act on a story. */
export interface StoryWish {
  date: string;
  story: number;
  do: string; // "numbers", "tale", "kind", "easier", "harder", "up", "down", "keep", "release", "remove"
  kind: string; // of kind: its id
}

/** OwnText is a story of her own, by language. */
export interface OwnText {
  texts: Record<string, string>;
  answer: string; // in the class's language; may be empty
  reading: string;
}

/** OwnStory is a text of her own, to be read. */
export interface OwnStory {
  date: string;
  texts: Record<string, string>; // the class's language is needed
  numbers: OwnNumber[]; // as shown before, with those that she put aside; null the first time
}

/** OwnNumber is a number in her text. */
export interface OwnNumber {
  words: string; // as it stands there
  value: number;
  counts: boolean;
}

/** Offer is what a text could mean. */
export interface Offer {
  numbers: OwnNumber[];
  readings: Reading[]; // none: it can be drawn in no way
  findings: Finding[]; // other languages that tell other numbers, and what may not be shown
}

/** Reading is one meaning. */
export interface Reading {
  line: string; // as Use takes it; of Kinds, the id of the kind
  kind: Kind;
  equation: string;
  picture: string;
  answer: string; // "22"; empty where any pair is right
}

/** UseOwn lays a story of her own into the week. */
export interface UseOwn extends OwnStory {
  story: number; // whose place it takes; 0 for the next place
  line: string; // of the reading that she chose
  answer: string; // in her words; may be empty
}

/** Finding is something to mend, or to know, at the place that it is about. */
export interface Finding {
  date: string; // of the week; empty for what holds all year
  key: string; // of the line, such as "note.es"; empty for all of it
  story: number; // the number of a story; -1 for none
  tag: string; // of the language that alone is held back; empty for all
  text: string; // in English
  hint: string;
  code: string; // "private", "odd-date", ...: see the codes of diag; empty for those without
  quote: string; // the words, the number or the setting that it is about
  file: string;
  line: number;
  mend: boolean; // it keeps pages from being made
}

/** State is how a week stands. */
export type State = "shown" | "waits" | "proposed" | "empty" | "off";

/** Year is the line of Mondays. */
export interface Year {
  name: string;
  settings: Settings;
  grade: number;
  languages: Language[]; // of the families, the largest first
  class: string; // the tag of the class's own
  weeks: YearWeek[];
  words: ClassWord[]; // ways and pictures of the grade
  met: Target[]; // of the grade
  notYet: Target[]; // of the grade
  lacks: string[]; // in words
  newest: string; // the week that families see first; empty for none
  next: string; // the Monday that is proposed
  wrong: Finding[]; // of the settings, or of files that are no week
  heldBack: Finding[]; // what families of a language get otherwise than the others
  unread: string[]; // paths that nothing here reads
}

/** ClassWord is a way or a picture, and what the class calls it. */
export interface ClassWord {
  id: string;
  name: string; // in the desk's language
  own: string; // in the class's language; empty where it has no word of its own
}

/** YearWeek is a Monday. */
export interface YearWeek {
  date: string;
  state: State;
  can: string; // "I can add past ten."
  showFrom: string; // the day from which families see it
  mend: number; // how many things are to mend
}

/** Settings hold all year. Setting writes them by the names that they have here. */
export interface Settings {
  name: string;
  class: string;
  address: string; // where the pages are; empty for nowhere
  languages: string[];
  look: string;
  answers: string; // "foot" of the paper, or a "link" on it
  index: boolean; // search engines are welcome
  daysOff: string[]; // "2026-11-26", "2026-12-21 to 2027-01-01"
}

/** Setting is one of Settings. */
export interface Setting {
  key: string;
  value: string; // lists: one a line; true or false
}

/** Search looks for a sentence. */
export interface Search {
  words: string; // words, a grade, a published code; empty for all of the grade
  grade: number;
}

/** Target is a sentence that a week can be about. */
export interface Target {
  id: string;
  can: string;
  about: string;
  grade: number;
  codes: string[]; // of published standards
  met: string; // the newest Monday that was about it; empty for not yet
}

/** CalendarWish is an act on a week. */
export interface CalendarWish {
  date: string;
  do: string; // "take", "remove", "off", "open", "move", "again"
  to: string; // the other Monday of move and again
}
