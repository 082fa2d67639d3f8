// Where the engine runs: in a worker, from what this file carries; or in the
// program that serves this page.

import { GoneError, type Listener, type Transport } from "./engine";
import type { Reply, Request } from "./protocol";

/** The engine in a worker. Its code and the engine lie in the page as text: the worker's script, and the engine packed with gzip in base64. */
export function workerTransport(listener: Listener): Transport {
  const url = URL.createObjectURL(new Blob([textOf("worker")], { type: "text/javascript" }));
  const worker = new Worker(url);
  worker.onmessage = ({ data }: MessageEvent<Reply | { loaded: number }>) => ("loaded" in data ? listener.loading(data.loaded) : listener.answered(data));
  worker.onerror = (e) => listener.stopped(e.message);
  worker.postMessage({ engine: textOf("engine") });
  return {
    send: (request) => worker.postMessage(request),
    close: () => {
      worker.terminate();
      URL.revokeObjectURL(url);
    },
  };
}

function textOf(id: string): string {
  return document.getElementById(id)?.textContent ?? "";
}

/** Calls back when another program changed files of the folder, and when no news can come any more. */
export function onNews(token: string, changed: () => void, silent: () => void): void {
  let seen: string | undefined; // how often it was told when we last heard
  const news = new EventSource(`news?token=${token}`);
  news.onerror = silent;
  news.onmessage = ({ data }: MessageEvent<string>) => {
    if (seen !== undefined && seen !== data) changed();
    seen = data;
  };
}

/** The engine in the program, over loopback. The token came with the page. */
export function loopbackTransport(listener: Listener, token: string): Transport {
  let open = true;
  const ask = async (request: Request) => {
    try {
      const response = await fetch("call", { method: "POST", headers: { "Content-Type": "application/json", "X-Desk": token }, body: JSON.stringify(request) }).catch((cause: unknown) => {
        throw new GoneError(cause);
      });
      if (!response.ok) throw new Error(response.statusText);
      const reply = (await response.json()) as Reply;
      if (open) listener.answered(reply);
    } catch (cause) {
      if (open) listener.stopped(cause);
    }
  };
  let queue: Promise<unknown> = Promise.resolve();
  return {
    send: (request) => void (queue = queue.then(() => ask(request))),
    close: () => void (open = false),
  };
}
