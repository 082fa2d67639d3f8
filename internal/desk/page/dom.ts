// Making and renewing parts of the page. Text is always set as text; the only
// markup that comes in from elsewhere are the engine's own pictures (see picture.ts).

type Child = Node | string | number | false | null | undefined;

/** What an element gets: attributes by name, listeners by "on…", properties by ".…". */
export type Attributes = Record<string, string | number | boolean | ((e: never) => void) | undefined>;

/** The value that a field was last given, by which it is known whether somebody typed since. */
const given = new WeakMap<Element, unknown>();

/** An element with its attributes and children; what is false or missing is left out. */
export function h<K extends keyof HTMLElementTagNameMap>(tag: K, attributes: Attributes = {}, ...children: (Child | Child[])[]): HTMLElementTagNameMap[K] {
  const e = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (value === undefined || value === false) continue;
    if (typeof value === "function") Object.assign(e, { [name]: value });
    else if (name.startsWith(".")) Object.assign(e, { [name.slice(1)]: value });
    else e.setAttribute(name, value === true ? "" : String(value));
  }
  if (".value" in attributes) given.set(e, attributes[".value"]);
  for (const child of children.flat()) {
    if (child === false || child === null || child === undefined) continue;
    e.append(child instanceof Node ? child : String(child));
  }
  return e;
}

const listeners = ["onclick", "oninput", "onchange", "onkeydown", "onfocus", "onblur", "onload"] as const;

/**
 * Makes a node like another one, keeping what is alike: so focus, a text being
 * typed and the place scrolled to stay where they are. Children with a data-key
 * are known by it, others by their order.
 */
export function renew(old: Element, fresh: Element): void {
  for (const { name } of [...old.attributes]) if (!fresh.hasAttribute(name)) old.removeAttribute(name);
  for (const { name, value } of [...fresh.attributes]) if (old.getAttribute(name) !== value) old.setAttribute(name, value);
  for (const on of listeners) if (on in fresh) Object.assign(old, { [on]: Reflect.get(fresh, on) });
  if (isField(old) && isField(fresh)) {
    const typed = document.activeElement === old && old.value !== given.get(old);
    if (!typed && old.value !== fresh.value) old.value = fresh.value;
    given.set(old, fresh.value);
    if (old instanceof HTMLInputElement && fresh instanceof HTMLInputElement) old.checked = fresh.checked;
    if (!(old instanceof HTMLSelectElement)) return;
  }
  if (old.hasAttribute("data-whole")) return; // its inside is looked after by whoever made it
  renewChildren(old, fresh);
  if (old instanceof HTMLSelectElement && fresh instanceof HTMLSelectElement && old.value !== fresh.value) old.value = fresh.value;
}

type Field = HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement;

function isField(e: Element): e is Field {
  return e instanceof HTMLInputElement || e instanceof HTMLTextAreaElement || e instanceof HTMLSelectElement;
}

function renewChildren(old: Element, fresh: Element): void {
  const keyed = new Map<string, Element>();
  for (const c of old.children) if (keyOf(c)) keyed.set(keyOf(c)!, c);
  let at: ChildNode | null = old.firstChild;
  for (const child of [...fresh.childNodes]) {
    const key = child instanceof Element ? keyOf(child) : null;
    let match: ChildNode | null = key ? (keyed.get(key) ?? null) : at;
    if (!key && match instanceof Element && keyOf(match)) match = null;
    if (match && alike(match, child)) {
      if (match === at) at = at.nextSibling;
      else old.insertBefore(match, at);
      if (match instanceof Element) renew(match, child as Element);
      else if (match.nodeValue !== child.nodeValue) match.nodeValue = child.nodeValue;
    } else {
      old.insertBefore(child, at);
    }
  }
  while (at) {
    const next: ChildNode | null = at.nextSibling;
    at.remove();
    at = next;
  }
}

function keyOf(e: Element): string | null {
  return e.getAttribute("data-key");
}

function alike(a: ChildNode, b: ChildNode): boolean {
  if (a.nodeType !== b.nodeType || a.nodeName !== b.nodeName) return false;
  return !(a instanceof Element && b instanceof Element) || (keyOf(a) === keyOf(b) && a.getAttribute("type") === b.getAttribute("type"));
}
