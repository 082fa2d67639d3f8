"use strict";
const at = "/pages/";
const byId = (id) => document.getElementById(id);
const frame = byId("frame");
let good = 0; // the site that the frame shows
let asked = decodeURIComponent(location.hash.slice(1)); // the page that was open before

// What is typed in files is only ever text here, never markup.
function make(name, text, className) {
  const e = document.createElement(name);
  if (text) e.textContent = text;
  if (className) e.className = className;
  return e;
}

// here is the path of the page in the frame: empty before the first one, null
// when a link has led out of the site.
function here() {
  try {
    const path = decodeURIComponent(frame.contentWindow.location.pathname);
    return path.startsWith(at) ? path.slice(at.length) : "";
  } catch {
    return null;
  }
}

function open(path) {
  frame.src = at + path;
}

function mark() {
  const path = here() || "";
  byId("path").textContent = path;
  byId("alone").href = at + path;
  if (path) history.replaceState(null, "", "#" + encodeURI(path));
  for (const b of document.querySelectorAll("nav button")) {
    if (b.dataset.path === path) b.setAttribute("aria-current", "page");
    else b.removeAttribute("aria-current");
  }
}

function drawList(groups) {
  const list = byId("list");
  const folded = new Map();
  for (const d of list.querySelectorAll("details")) folded.set(d.dataset.title, d.open);
  list.replaceChildren();
  for (const g of groups || []) {
    const part = make("details");
    part.dataset.title = g.title;
    part.open = folded.has(g.title) ? folded.get(g.title) : g.open;
    part.append(make("summary", g.title));
    const ul = make("ul");
    for (const p of g.pages) {
      const b = make("button", p.title);
      b.type = "button";
      b.dataset.path = p.path;
      b.addEventListener("click", () => open(p.path));
      const li = make("li");
      li.append(b);
      ul.append(li);
    }
    part.append(ul);
    list.append(part);
  }
}

function drawWords(id, title, all, className) {
  const to = byId(id);
  to.replaceChildren();
  if (!all.length) return;
  to.append(make("h2", title));
  for (const p of all) {
    const box = make("div", "", "words " + className);
    if (p.place) {
      const line = make("p");
      line.append(make("b", p.place));
      box.append(line);
    }
    box.append(make("p", p.text));
    if (p.hint) box.append(make("p", p.hint, "hint"));
    to.append(box);
  }
}

function lamp(text, className) {
  byId("lamp").textContent = text;
  byId("lamp").className = className;
}

function draw(state) {
  drawWords("problems", "To mend", state.problems, "mend");
  drawWords("notices", "To know", state.notices, "");
  if (state.problems.length) {
    lamp(state.good ? "the last good pages stay until this is mended" : "no pages yet: something is to be mended", "mend");
  } else {
    lamp("up to date", "good");
  }
  if (state.good === good) return;
  good = state.good;
  drawList(state.groups);
  const path = here();
  if (path === "") open(asked || state.first);
  else if (path) frame.contentWindow.location.reload();
  mark();
}

frame.addEventListener("load", mark);
byId("back").addEventListener("click", () => history.back());
const events = new EventSource("/events");
events.onmessage = (e) => draw(JSON.parse(e.data));
events.onerror = () => {
  good = 0; // whatever comes back is another
  lamp("the preview has ended; start it again", "mend");
};
