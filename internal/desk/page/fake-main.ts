// The page with the invented engine, for looking at it while it is made.
import { Fake } from "./fake";
import { start } from "./main";

void start((listener) => new Fake(listener, 20)).then((desk) => Object.assign(window, { desk }));
