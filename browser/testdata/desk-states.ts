// Every state of the desk, drawn in both of its languages, with the words that it has to
// say then: TestDeskStates looks for them.

import { Desk } from "../../internal/desk/page/desk";
import { Engine, StopError } from "../../internal/desk/page/engine";
import { Fake } from "../../internal/desk/page/fake";
import type { Keeper } from "../../internal/desk/page/keeper";
import type { Copied } from "../../internal/desk/page/protocol";
import type { State } from "../../internal/desk/page/state";
import { deskView } from "../../internal/desk/page/view";
import { type Tongue, Words } from "../../internal/desk/page/words";

interface Row {
  name: string;
  part: Partial<State> | ((now: State) => Partial<State>);
  place?: "folder";
  en: string[];
  es: string[];
}

const at = new Date(2026, 8, 23, 10, 42).getTime();
const copy = (part: Partial<Copied>): Partial<State> => ({ view: "copies", copy: { files: {}, weeks: [], leftOut: [], older: false, refused: "", ...part } });
const mondays = Array.from({ length: 9 }, (_, i) => new Date(Date.UTC(2026, 8, 28 + 7 * i)).toISOString().slice(0, 10));
const toMend = (letter: string) => (now: State): Partial<State> => ({
  line: "note",
  week: { ...now.week!, findings: [{ date: now.date!, key: "note.en", story: -1, tag: "en", text: "", hint: "", code: letter.includes("@") ? "private-mail" : "private-phone", quote: letter, file: "", line: 1, mend: true }] },
});

const rows: Row[] = [
  { name: "first sign of life", part: { phase: "setting-up" }, en: ["Setting up your desk"], es: ["Preparando su escritorio"] },
  { name: "the engine is read", part: { engine: "starting", busy: true }, en: ["You can write. The family page comes in a moment."], es: ["Ya puede escribir. La página de las familias llega en un momento."] },
  {
    name: "first start", part: { phase: "start" },
    en: ["Welcome", "Four answers, and your first week is laid out. Nothing leaves this computer until you send it.", "Open a copy"],
    es: ["Le damos la bienvenida", "Cuatro respuestas y su primera semana queda lista. Nada sale de esta computadora hasta que usted lo envíe.", "Abrir una copia"],
  },
  { name: "the program ended at once", part: { phase: "start", engine: "gone" }, en: ["homebuild was closed"], es: ["homebuild se cerró"] },
  { name: "no week", part: (now) => ({ week: { ...now.week!, state: "empty", lines: [] } }), en: ["No week here.", "Lay one out"], es: ["Aquí no hay semana.", "Preparar una"] },
  { name: "it is kept", part: { saving: { state: "saving" } }, en: ["Saving"], es: ["Guardando"] },
  { name: "kept in the browser", part: { saving: { state: "saved", at } }, en: ["Saved in this browser 10:42"], es: ["Guardado en este navegador 10:42"] },
  { name: "kept in the folder", part: { saving: { state: "saved", at } }, place: "folder", en: ["Saved in its folder 10:42"], es: ["Guardado en su carpeta 10:42"] },
  { name: "not kept", part: { saving: { state: "forgets" } }, en: ["This browser will forget your desk when it closes.", "Take a copy"], es: ["Este navegador olvidará su escritorio al cerrarse.", "Guardar una copia"] },
  { name: "a copy was taken", part: { saving: { state: "forgets", copied: at } }, en: ["Copy taken 10:42"], es: ["Copia guardada 10:42"] },
  { name: "no room", part: { saving: { state: "full", at } }, en: ["No room left: changes since 10:42", "are only on this page.", "Take a copy"], es: ["No queda espacio: los últimos cambios (desde 10:42", "solo están en esta página.", "Guardar una copia"] },
  { name: "another tab", part: { saving: { state: "elsewhere" } }, en: ["Your desk is open in another tab. This one only shows.", "Work here"], es: ["Su escritorio está abierto en otra pestaña. Esta solo lo muestra.", "Trabajar aquí"] },
  { name: "another program", part: { saving: { state: "changed" } }, en: ["Another program changed this week.", "Take that one", "Keep mine"], es: ["Otro programa cambió esta semana.", "Usar esa", "Quedarme con la mía"] },
  { name: "the engine stopped", part: { engine: "again" }, en: ["The family page stopped. Your work is safe. Starting again."], es: ["La página de las familias se detuvo. Su trabajo está a salvo. La página se está reiniciando."] },
  { name: "it stopped twice", part: { engine: new StopError("story", { story: 3 }, undefined) }, en: ["It stops at story 3.", "Put back the one before"], es: ["Se detiene en el cuento 3.", "Volver a la versión anterior"] },
  { name: "the program ended", part: { engine: "gone" }, en: ["homebuild was closed", "Start homebuild again"], es: ["homebuild se cerró", "Abra homebuild de nuevo"] },
  {
    name: "a phone number", part: toMend("555-0123"), en: ["1 to fix", "A phone number: 555-0123. Pages are public.", "Take it out", "It is the school’s: allow"],
    es: ["por arreglar", "Un número de teléfono: 555-0123. Las páginas son públicas.", "Quitarlo", "Es de la escuela: permitir"],
  },
  { name: "an address", part: toMend("office@school.example"), en: ["An e-mail address: office@school.example. Pages are public."], es: ["Un correo electrónico: office@school.example. Las páginas son públicas."] },
  { name: "an older copy", part: copy({ older: true }), en: ["From an older desk. Opened and brought up to date; your file is unchanged."], es: ["De un escritorio más antiguo. Abierta y puesta al día; su archivo no cambia."] },
  { name: "a newer copy", part: copy({ refused: "newer" }), en: ["From a newer desk. Please open it there. Nothing was changed."], es: ["De un escritorio más nuevo. Ábrala allí, por favor. Nada cambió."] },
  {
    name: "a copy over work", part: copy({ weeks: mondays }), en: ["1 week here, 9 in the copy.", "Add 8 weeks", "Use the copy"],
    es: ["1 semana aquí, 9 en la copia.", "Agregar 8 semanas", "Usar la copia"],
  },
  { name: "a strange zip", part: copy({ refused: "strange" }), en: ["This is not a copy of a desk. Nothing was opened."], es: ["Esto no es una copia de un escritorio. No se abrió nada."] },
  { name: "a broken zip", part: copy({ refused: "broken" }), en: ["Broken or too big. Nothing was opened."], es: ["Dañada o demasiado grande. No se abrió nada."] },
  { name: "a large zip", part: copy({ refused: "large" }), en: ["Broken or too big. Nothing was opened."], es: ["Dañada o demasiado grande. No se abrió nada."] },
  { name: "a zip with more", part: copy({ leftOut: ["run.exe"] }), en: ["Left out: run.exe"], es: ["No se tomó: run.exe"] },
];

/** What does not say what it has to: the state, the language, and the words. */
export async function lacking(): Promise<{ states: number; lacks: string[] }> {
  const lacks: string[] = [];
  for (const row of rows) {
    const keeper: Keeper = { place: row.place ?? "browser", load: async () => undefined, save: async () => undefined, claim: async () => undefined };
    const desk = new Desk(new Engine((l) => new Fake(l)), keeper, () => new Date(at), () => "en");
    await desk.open();
    await desk.act({ word: "act.begin" }, () => desk.ask("begin", { name: "Quarry Hill", grade: 2, languages: ["en", "es"], monday: mondays[0]! }));
    const part = typeof row.part === "function" ? row.part(desk.state) : row.part;
    for (const tongue of ["en", "es"] satisfies Tongue[]) {
      const text = deskView({ desk, state: { ...desk.state, phase: "desk", ...part }, words: new Words(tongue) }).textContent!.replace(/\s+/g, " ");
      for (const words of row[tongue]) if (!text.includes(words)) lacks.push(`${row.name}, ${tongue}: “${words}” is not in “${text.slice(0, 600)}”`);
    }
  }
  return { states: rows.length, lacks };
}
