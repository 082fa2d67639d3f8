// Handing something to the browser: a file to save, a text to copy, a page to print.

import type { File as Given } from "./protocol";

/** The bytes of a file that came in base64. */
export function bytesOf(file: Given): Uint8Array<ArrayBuffer> {
  const text = atob(file.bytes);
  const bytes = new Uint8Array(text.length);
  for (let i = 0; i < text.length; i++) bytes[i] = text.charCodeAt(i);
  return bytes;
}

/** Bytes in base64, in pieces that fit an argument list. */
export function base64(bytes: Uint8Array): string {
  let text = "";
  for (let i = 0; i < bytes.length; i += 0x8000) text += String.fromCharCode(...bytes.subarray(i, i + 0x8000));
  return btoa(text);
}

/** Saves a file to the browser's downloads. */
export function save(file: Given): void {
  const url = URL.createObjectURL(new Blob([bytesOf(file)], { type: file.type }));
  const a = document.createElement("a");
  a.href = url;
  a.download = file.name;
  document.body.append(a);
  a.click();
  a.remove();
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}

/** Whether files can be handed to another app, as on a phone; elsewhere they are saved. */
export function canShare(): boolean {
  const touch = matchMedia("(pointer: coarse)").matches;
  return touch && navigator.canShare?.({ files: [new File(["."], "week.html", { type: "text/html" })] }) === true;
}

/** Hands a file with a text to another app. No: she chose none, or the browser does not let it. */
export async function share(file: Given, text: string): Promise<"shared" | "left" | "refused"> {
  try {
    await navigator.share({ files: [new File([bytesOf(file)], file.name, { type: file.type })], text });
    return "shared";
  } catch (cause) {
    return cause instanceof DOMException && cause.name === "AbortError" ? "left" : "refused";
  }
}

/** Copies a text. Where the browser does not let it, the answer is no. */
export async function copyText(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}

/** Prints a page that runs nothing, from a frame out of sight. */
export function print(html: string): void {
  document.getElementById("printing")?.remove();
  const frame = document.createElement("iframe");
  frame.id = "printing";
  frame.setAttribute("sandbox", "allow-same-origin allow-modals");
  frame.setAttribute("aria-hidden", "true");
  frame.tabIndex = -1;
  frame.srcdoc = html;
  frame.onload = () => frame.contentWindow?.print();
  document.body.append(frame);
}
