// Sending, in two halves that differ in edge, sign and name: what goes home, and
// what stays with her. There is no third place, and no button makes both.

import { chooseWay, copyMessage, copyShown, keyAct, leaveSend, printPaper, saveFile, saveSite, saveSlips, setAddress, shareFile, takeCopy, writeFolder } from "./acts";
import { h } from "./dom";
import { canShare } from "./give";
import type { Home } from "./protocol";
import type { Memory } from "./keeper";
import { type Ui, button, choose } from "./ui";
import { findingText, findingsView, placeOf, showButton } from "./view-findings";

export function sendView(ui: Ui): HTMLElement {
  const { words, state } = ui;
  const day = words.day(state.date!, "long");
  return h(
    "section",
    { class: "sheet sending", "aria-label": words.say("send"), "data-key": "sending", id: "week", tabindex: -1 },
    h("h2", {}, words.say("send.title", { day })),
    button(words.say("send.back"), () => leaveSend(ui.desk), { class: "quiet back" }),
    h("div", { class: "halves" }, homeHalf(ui), staysHalf(ui)),
  );
}

function homeHalf(ui: Ui): HTMLElement {
  const { words, state } = ui;
  const ways: NonNullable<Memory["way"]>[] = ["file", "web", "paper"];
  const way = state.memory.way;
  const homes = state.sending?.homes;
  return h(
    "section",
    { class: "half goes", "aria-labelledby": "goes-home" },
    h("h3", { id: "goes-home" }, h("span", { class: "sign house", "aria-hidden": "true" }), words.say("send.goes")),
    way === undefined && h("p", {}, words.say("send.choose")),
    choose(words.say("send.how"), ways.map((w) => ({ value: w, children: [words.say(`way.${w}`)], class: "small" })), way, (w) => chooseWay(ui.desk, w), { class: "few ways" }),
    way !== undefined && h("p", { class: "soft" }, words.say(way === "file" && canShare() ? "send.file.share.how" : `send.${way}.how`)),
    way === "web" && webView(ui),
    way !== undefined && !homes && h("p", { class: "soft" }, words.say("moment")),
    way !== undefined && homes && h("ul", { class: "homes" }, homes.map((home) => homeView(ui, home, way))),
    h("p", { class: "soft" }, words.say("send.undo")),
  );
}

function homeView(ui: Ui, home: Home, way: NonNullable<Memory["way"]>): HTMLElement {
  const { words, state, desk } = ui;
  const { tag, name } = home.language;
  const first = home.held[0];
  const done = [way === "file" && state.given?.[`file-${tag}`], way !== "paper" && state.given?.[`message-${tag}`]].filter((d) => d !== undefined && d !== false);
  const act = (text: string, does: () => void, cls = "") => button(text, does, { label: `${text}, ${name}`, class: cls });
  return h(
    "li",
    { "data-key": tag },
    h("b", { lang: tag }, name),
    first
      ? h("p", { class: "held" }, words.say("send.held", { name, why: `${findingText(ui, first)} (${placeOf(ui, first)})` }), " ", showButton(ui, first))
      : h(
          "p",
          { class: "acts" },
          way === "file" && canShare() && act(words.say("send.share"), () => void shareFile(desk, tag), "go"),
          way === "file" && act(words.say("send.save"), () => void saveFile(desk, tag), canShare() ? "" : "go"),
          way !== "paper" && act(words.say("send.copy"), () => void copyMessage(desk, home)),
          way === "paper" && act(words.say("print"), () => void printPaper(desk, tag), "go"),
          done.length > 0 && h("span", { class: "done", role: "status", "data-key": "done" }, done.map((d) => h("span", {}, words.tell(d), " "))),
        ),
    findingsView(ui, state.heavy.filter((f) => f.tag === tag).slice(0, 1)),
    state.message?.tag === tag && h("textarea", { class: "message", readonly: true, rows: 5, "aria-label": words.say("send.message", { name }), lang: tag, ".value": state.message.text }),
  );
}

function webView(ui: Ui): HTMLElement {
  const { words, state, desk } = ui;
  const address = state.year?.settings.address ?? "";
  const done = state.given?.["web"];
  return h(
    "div",
    { class: "web" },
    h("label", { for: "address" }, words.say("web.where")),
    h("input", { id: "address", type: "url", inputmode: "url", placeholder: "https://", ".value": address, onchange: (e: Event) => void setAddress(desk, (e.target as HTMLInputElement).value) }),
    state.sending && waitsView(ui),
    h(
      "p",
      { class: "acts" },
      button(words.say("web.save"), () => void saveSite(desk), { class: "go" }),
      "showDirectoryPicker" in window && button(words.say("web.folder"), () => void writeFolder(desk)),
      state.sending?.slips && button(words.say("web.slips"), () => saveSlips(desk)),
    ),
    done && h("p", { class: "done", role: "status" }, words.tell(done)),
  );
}

function waitsView(ui: Ui): HTMLElement | false {
  const { words, state } = ui;
  const { waits } = state.sending!;
  return waits.length > 0 && h("ul", { class: "waits" }, waits.map((w) => h("li", {}, words.say("web.waits", { week: words.day(w.date), day: words.day(w.showFrom, "weekday") }))));
}

function staysHalf(ui: Ui): HTMLElement {
  const { words, state, desk } = ui;
  return h(
    "section",
    { class: "half stays", "aria-labelledby": "stays" },
    h("h3", { id: "stays" }, h("span", { class: "sign key", "aria-hidden": "true" }), words.say("send.stays")),
    h(
      "div",
      { class: "hers" },
      h("b", {}, words.say("send.key")),
      h("p", { class: "acts" }, button(words.say("send.save"), () => keyAct(desk, "save"), { label: words.say("send.key.save") }), button(words.say("print"), () => keyAct(desk, "print"), { label: words.say("send.key.print") })),
      state.given?.["key"] && h("p", { class: "done", role: "status" }, words.tell(state.given["key"])),
      h("b", {}, words.say("send.copy-of")),
      h("p", { class: "acts" }, button(words.say("copy.take"), () => void takeCopy(desk))),
      copyShown(state) && h("p", { class: "done", role: "status" }, words.say("saving.copied", { time: words.time(state.saving.copied!) })),
    ),
    h("p", { class: "never" }, words.say("send.never")),
  );
}
