// The invented engine in a worker, in the place of the real one: for looking at
// the page while it is made, and for the tests of the page in a browser.
import { Fake } from "./fake";
import type { Request } from "./protocol";

const fake = new Fake({
  answered: (reply) => postMessage(reply),
  loading: () => undefined,
  stopped: (why) => {
    throw new Error(String(why));
  },
});
onmessage = ({ data }: MessageEvent<Request | { engine: string }>) => {
  if ("id" in data) fake.send(data);
};
