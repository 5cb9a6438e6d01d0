// Small makers of elements. Text is always set as text, never as markup.

const SVG = "http://www.w3.org/2000/svg";

export const byId = (id) => document.getElementById(id);

function fill(node, attributes, children) {
  for (const [name, value] of Object.entries(attributes)) {
    if (value === null || value === undefined || value === false) continue;
    if (name.startsWith("on")) node.addEventListener(name.slice(2), value);
    else node.setAttribute(name, value === true ? "" : value);
  }
  node.append(...children.flat().filter((child) => child !== null && child !== undefined));
  return node;
}

export function el(name, attributes = {}, ...children) {
  return fill(document.createElement(name), attributes, children);
}

export function svg(name, attributes = {}, ...children) {
  return fill(document.createElementNS(SVG, name), attributes, children);
}

/** A colour of the page's present look. */
export const colour = (name) => getComputedStyle(document.documentElement).getPropertyValue(`--${name}`).trim();

const TYPING = "typing";

/** Marks `box` while somebody types in it, until what is typed is taken by Enter or by leaving it. */
export function watchTyping(box) {
  box.addEventListener("input", () => (box.dataset[TYPING] = "true"));
  for (const end of ["change", "blur"]) box.addEventListener(end, () => delete box.dataset[TYPING]);
}

export const isTyping = (box) => TYPING in box.dataset;

export const reducedMotion = () => matchMedia("(prefers-reduced-motion: reduce)").matches;

/** Saves `blob` under `name` as a download. */
export function download(blob, name) {
  const address = URL.createObjectURL(blob);
  const link = el("a", { href: address, download: name });
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
