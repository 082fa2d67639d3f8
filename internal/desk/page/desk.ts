// The desk: what is kept, what the engine says of it, and every act in between.
// Acts go one after the other; what an act came to is kept before the next.

import { localDay } from "./days";
import { type Args, type Call, type Engine, GoneError, StopError, type Value, WrongError } from "./engine";
import { type Change, apply, changesOf, toChanges } from "./files";
import { type Said, type Step, fits, record, redo, toRedo, toUndo, undo } from "./journal";
import { KeepError, type Keeper, type Memory } from "./keeper";
import { reached } from "./moments";
import type { Act, Changes, Open } from "./protocol";
import { refreshChoices, refreshSteps } from "./refresh";
import { type State, beginning } from "./state";

export class Desk {
  state: State = beginning;
  /** Tells the other tabs that this one works now. */
  onWorkHere: () => void = () => undefined;
  private listeners: (() => void)[] = [];
  private queue: Promise<unknown> = Promise.resolve();
  private refreshes = 0;
  private unsaved: Change[] = [];

  constructor(
    readonly engine: Engine,
    readonly keeper: Keeper,
    private readonly now: () => Date,
    private readonly words: () => string,
    private readonly pause = 200,
  ) {
    engine.reopen = () => (this.state.opened ? this.asKept() : undefined);
    engine.onRestart = () => this.set({ engine: "again", loaded: 0 });
    engine.onLoading = (loaded) => loaded - this.state.loaded >= 0.05 && this.set({ loaded });
  }

  /** Calls back after every change of the state. */
  onChange(listener: () => void): void {
    this.listeners.push(listener);
  }

  /** Changes what is shown. */
  set(part: Partial<State>): void {
    this.state = { ...this.state, ...part };
    for (const l of this.listeners) l();
  }

  /** Today, where she is. */
  today(): string {
    return localDay(this.now());
  }

  /** This moment, in milliseconds since 1970. */
  nowAt(): number {
    return this.now().getTime();
  }

  private asKept(): Open {
    return { files: { ...this.state.files }, today: this.today(), words: this.words() };
  }

  /** Takes up what is kept. Where there is nothing yet, the first start comes. */
  async open(): Promise<void> {
    try {
      const kept = await this.keeper.load();
      if (kept) this.set({ files: kept.files, journal: kept.journal, memory: kept.memory, saving: this.readOnly ? this.state.saving : { state: "saved", at: kept.journal.acts.at(-1)?.at } });
    } catch (cause) {
      this.troubled(cause);
    }
    const fresh = Object.keys(this.state.files).length === 0;
    if (this.keeper.place === "browser") this.set({ phase: fresh ? "start" : "desk" });
    const opened = await this.ask("open", this.asKept());
    if (!opened) return;
    reached("engine");
    this.set({ opened, files: opened.files, engine: "ready", phase: opened.new ? "start" : "desk" });
    if (!opened.new) await this.refresh();
    else void this.ask("targets", { words: "", grade: 1 }); // while she answers, the engine reads what the first week needs
  }

  /** Asks the engine. What is wrong with the question is shown, and nothing comes back. */
  async ask<K extends Call>(call: K, args: Args<K>): Promise<Value<K> | undefined> {
    const slow = setTimeout(() => this.set({ busy: true }), 500);
    try {
      const value = await this.engine.call(call, args);
      if (this.state.engine !== "ready" && this.state.opened) this.set({ engine: "ready" });
      return value;
    } catch (cause) {
      if (cause instanceof WrongError) {
        this.set({ wrong: cause.findings });
        if (cause.findings.some((f) => f.code === "changed")) this.troubled(new KeepError("changed"));
      } else if (cause instanceof StopError) this.set({ engine: cause.cause instanceof GoneError ? "gone" : cause });
      else throw cause;
      return undefined;
    } finally {
      clearTimeout(slow);
      if (this.state.busy) this.set({ busy: false });
    }
  }

  /** Finds out whether the engine is still there. */
  async look(): Promise<void> {
    if (this.state.engine !== "gone") await this.ask("put", { changes: {} });
  }

  /** Does one thing after the other. */
  private inTurn<T>(work: () => Promise<T>): Promise<T> {
    const next = this.queue.then(work, work);
    this.queue = next.catch(() => undefined);
    return next;
  }

  /** Whether she can change anything: another tab may work at the desk. */
  get readOnly(): boolean {
    return this.state.saving.state === "elsewhere";
  }

  /** An act: the engine says what it changes; that is laid down, named, kept and shown. */
  act(name: Said, ask: () => Promise<Act | undefined>, field?: string): Promise<boolean> {
    return this.inTurn(async () => {
      if (this.readOnly) return false;
      this.set({ wrong: [] });
      const act = await ask();
      if (!act) return false;
      const changes = changesOf(this.state.files, act.changes);
      if (changes.length === 0) return true;
      const journal = record(this.state.journal, { name, at: this.now().getTime(), changes, ...(field !== undefined && { field }) });
      if (!(await this.lay({ journal, changes }))) return false;
      if (act.monday) this.remember({ week: act.monday });
      this.set({ said: name, moved: act.moved, ...(act.monday && { date: act.monday }) });
      await this.refresh();
      return true;
    });
  }

  /** Lays files down that are no act of hers, such as stories that families have now. */
  put(written: Changes): Promise<boolean> {
    return this.inTurn(async () => this.lay({ journal: this.state.journal, changes: changesOf(this.state.files, written) }));
  }

  undo(): Promise<void> {
    return this.step("undone", undo, toUndo(this.state.journal)?.name);
  }

  redo(): Promise<void> {
    return this.step("redone", redo, toRedo(this.state.journal)?.name);
  }

  private step(word: string, walk: typeof undo, name?: Said): Promise<void> {
    return this.inTurn(async () => {
      const step = walk(this.state.journal);
      if (!step || this.readOnly) return;
      if (!fits(this.state.files, step.changes)) return this.set({ saving: { ...this.state.saving, state: "changed" } });
      if (!(await this.lay(step))) return;
      this.set({ said: { word: `did.${word}`, args: { name: name!.word, ...name!.args } }, moved: undefined, wrong: [] });
      if (Object.keys(this.state.files).length === 0) return this.set({ phase: "start", year: undefined, date: undefined, week: undefined });
      this.set({ phase: "desk" });
      await this.refresh();
    });
  }

  private async lay({ journal, changes }: Step): Promise<boolean> {
    const put = { changes: toChanges(changes, "after"), before: toChanges(changes, "before") };
    if (changes.length > 0 && !(await this.ask("put", put))) return false;
    this.set({ files: apply(this.state.files, changes), journal, sending: undefined });
    this.unsaved.push(...changes);
    await this.save();
    return true;
  }

  /** Remembers something that is no act: it is kept with the next save, or at once. */
  remember(part: Partial<Memory>): void {
    this.set({ memory: { ...this.state.memory, ...part } });
    void this.save();
  }

  private async save(): Promise<void> {
    if (this.readOnly || this.state.journal.acts.length === 0) return;
    const { files, journal, memory } = this.state;
    const changes = this.unsaved;
    const slow = setTimeout(() => this.set({ saving: { ...this.state.saving, state: "saving" } }), 500);
    try {
      await this.keeper.save({ files, journal, memory }, changes);
      this.unsaved = this.unsaved.slice(changes.length);
      this.set({ saving: { state: "saved", at: this.now().getTime() } });
    } catch (cause) {
      this.troubled(cause);
    } finally {
      clearTimeout(slow);
    }
  }

  private troubled(cause: unknown): void {
    if (!(cause instanceof KeepError)) throw cause;
    const { at } = this.state.saving;
    this.set({ saving: { state: cause.trouble, ...(at !== undefined && { at }) } });
  }

  /** Makes this tab the one that works: it takes up what the other one left. */
  async workHere(): Promise<void> {
    await this.keeper.claim();
    this.onWorkHere();
    this.unsaved = [];
    this.set({ saving: { state: "saved" } });
    await this.open();
  }

  /** Takes up what another program wrote into the folder. Where it stands in the way of an act of hers, she decides first. */
  follow(): Promise<void> {
    return this.inTurn(async () => {
      const opened = this.state.saving.state === "changed" ? undefined : await this.ask("open", this.asKept());
      if (!opened) return;
      this.set({ opened, files: opened.files, phase: opened.new ? "start" : "desk", said: { word: "did.followed" }, moved: undefined, wrong: [] });
      if (!opened.new) await this.refresh();
    });
  }

  /** Asks the engine anew for all that is shown: first the families' page. */
  async refresh(): Promise<void> {
    const mine = ++this.refreshes;
    const current = () => mine === this.refreshes;
    if (!this.state.year || !this.state.date || this.state.view === "year") { // what she looks at comes first
      const year = await this.ask("year", {});
      if (!year || !current()) return;
      this.set({ year, date: this.state.date ?? this.state.memory.week ?? (year.next || year.newest) });
    }
    await this.refreshPage();
    const week = await this.ask("week", { date: this.state.date! });
    if (!current()) return;
    if (week) this.set({ week });
    if (this.state.line) await refreshChoices(this, this.state.line);
    void this.refreshAround(current);
  }

  /** Asks for what can wait, when nothing else was done for a moment: it takes longest. */
  private async refreshAround(current: () => boolean): Promise<void> {
    await new Promise((done) => setTimeout(done, this.pause));
    if (current()) await refreshSteps(this);
    const year = current() && (await this.ask("year", {}));
    if (year && current()) this.set({ year });
  }

  /** Asks for the page in families' frame. */
  async refreshPage(): Promise<void> {
    const { date, shown, memory, year } = this.state;
    const tag = memory.language ?? year?.class ?? "en";
    const page = await this.ask("page", { date: date!, tag, page: shown, look: memory.theme ?? "" });
    if (date !== this.state.date || shown !== this.state.shown) return;
    const changed = page?.html !== this.state.html;
    this.set({ html: page?.html, unseen: this.state.unseen || (changed && this.state.side === "yours") });
  }
}
