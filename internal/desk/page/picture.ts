// The engine's own pictures. They are the only markup that the page takes from
// elsewhere: the engine draws them and escapes every text in them, and the page's
// policy lets no script run that they could bring.

const drawn = new Map<string, { n: number; e: SVGElement } | null>();
let kept: HTMLElement | undefined;

/** A picture from its SVG; nothing where there is none. */
export function picture(svg: string): SVGElement | false {
  if (!svg) return false;
  if (!drawn.has(svg)) {
    const t = document.createElement("template");
    t.innerHTML = svg;
    const first = t.content.firstElementChild;
    drawn.set(svg, first instanceof SVGElement ? { n: drawn.size, e: first } : null);
  }
  const found = drawn.get(svg);
  if (!found) return false;
  const copy = found.e.cloneNode(true) as SVGElement;
  copy.setAttribute("data-key", `svg-${found.n}`);
  copy.setAttribute("data-whole", "");
  return copy;
}

/** Lays down once what all pictures need: their style, and their patterns out of sight. */
export function preparePictures(style: string, patterns: string): void {
  if (kept) return;
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(style);
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
  kept = document.createElement("div");
  kept.className = "defs";
  const svg = picture(patterns);
  if (svg) kept.append(svg);
  document.body.append(kept);
}
