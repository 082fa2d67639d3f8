// Asking the engine: numbered messages there, answers back, and a new start when
// it stops.

import type { Calls, Finding, Open, Reply, Request } from "./protocol";

/** A running engine, wherever it runs. */
export interface Transport {
  send(request: Request): void;
  close(): void;
}

/** What a transport tells: an answer, or that the engine stopped. */
export interface Listener {
  answered(reply: Reply): void;
  stopped(why: unknown): void;
  /** How much of the engine has been read, up to 1. */
  loading(part: number): void;
}

export type Call = keyof Calls;
export type Args<K extends Call> = Parameters<Calls[K]>[0];
export type Value<K extends Call> = ReturnType<Calls[K]>;

/** What was asked cannot be done before something is mended. */
export class WrongError extends Error {
  constructor(readonly findings: Finding[]) {
    super(findings.map((f) => f.text).join("; "));
  }
}

/** The engine stopped at a call, and again when it was asked once more. */
export class StopError extends Error {
  constructor(readonly call: Call, readonly args: unknown, cause: unknown) {
    super(`the engine stopped at ${call}`, { cause });
  }
}

/** The program in which the engine runs has ended, or cannot be reached. */
export class GoneError extends Error {
  constructor(cause: unknown) {
    super("gone", { cause });
  }
}

interface Waiting {
  resolve(value: unknown): void;
  reject(cause: unknown): void;
  timer: ReturnType<typeof setTimeout>;
}

export class Engine {
  private transport: Transport | undefined;
  private readonly waiting = new Map<number, Waiting>();
  private last = 0;
  /** Told when the engine stopped and starts again. */
  onRestart: () => void = () => undefined;
  /** Told how much of the engine has been read, up to 1. */
  onLoading: (part: number) => void = () => undefined;

  /** The desk that a new engine has to take up; nothing before the first. */
  reopen: () => Open | undefined = () => undefined;

  /** An engine that is silent for so many milliseconds has stopped. The longest call takes seconds. */
  constructor(private readonly start: (listener: Listener) => Transport, private readonly patience = 120_000) {}

  /** Asks; after a stop it starts the engine again and asks once more. */
  async call<K extends Call>(call: K, args: Args<K>): Promise<Value<K>> {
    try {
      return await this.ask(call, args);
    } catch (cause) {
      if (!(cause instanceof Stopped)) throw cause;
      this.onRestart();
      try {
        return await this.ask(call, args);
      } catch (again) {
        throw again instanceof Stopped ? new StopError(call, args, again.cause) : again;
      }
    }
  }

  private ask<K extends Call>(call: K, args: Args<K>): Promise<Value<K>> {
    if (!this.transport) {
      this.transport = this.start({ answered: (reply) => this.answered(reply), stopped: (why) => this.stop(why), loading: (part) => this.onLoading(part) });
      const open = this.reopen();
      // An engine answers in order: by the time it comes to the call, it has the desk.
      if (open && call !== "open") this.ask("open", open).catch(() => undefined);
    }
    const id = ++this.last;
    return new Promise((resolve, reject) => {
      const timer = setTimeout(() => this.stop("silent"), this.patience);
      this.waiting.set(id, { resolve: resolve as (value: unknown) => void, reject, timer });
      this.transport?.send({ id, call, args });
    });
  }

  private answered(reply: Reply): void {
    const waiting = this.waiting.get(reply.id);
    if (!waiting) return;
    this.waiting.delete(reply.id);
    clearTimeout(waiting.timer);
    if (reply.fault) {
      waiting.reject(new Stopped(reply.fault));
      this.stop(reply.fault);
    } else if (reply.wrong && reply.wrong.length > 0) waiting.reject(new WrongError(reply.wrong));
    else waiting.resolve(reply.value);
  }

  /** Ends the engine; whoever waits is told, and the next call starts another. */
  private stop(why: unknown): void {
    this.transport?.close();
    this.transport = undefined;
    const waiting = [...this.waiting.values()];
    this.waiting.clear();
    for (const w of waiting) {
      clearTimeout(w.timer);
      w.reject(new Stopped(why));
    }
  }
}

class Stopped extends Error {
  constructor(cause: unknown) {
    super("stopped", { cause });
  }
}
