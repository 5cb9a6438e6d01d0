// What is behind one step: a part of the page at a time, chosen by its tab. Arrow keys go from tab to tab.
import { byId } from "./dom.js";

const tabs = () => [...document.querySelectorAll("[role=tab]")];
const listeners = [];

/** Shows the part `name`; none where it is empty. */
export function showPart(name) {
  for (const tab of tabs()) {
    const isChosen = tab.id === `tab-${name}`;
    tab.setAttribute("aria-selected", String(isChosen));
    tab.tabIndex = isChosen ? 0 : -1;
    byId(tab.getAttribute("aria-controls")).hidden = !isChosen;
  }
  for (const listener of listeners) listener(name);
}

export const shownPart = () => document.querySelector("[role=tab][aria-selected=true]")?.id.slice("tab-".length);

/** `listener(name)` is called when another part is shown. */
export const onPart = (listener) => listeners.push(listener);

for (const tab of tabs()) {
  tab.addEventListener("click", () => showPart(tab.id.slice("tab-".length)));
  tab.addEventListener("keydown", (event) => {
    const all = tabs().filter((one) => !one.hidden);
    const at = all.indexOf(tab);
    const to = { ArrowRight: at + 1, ArrowLeft: at - 1 + all.length, Home: 0, End: all.length - 1 }[event.key];
    if (to === undefined) return;
    event.preventDefault();
    const next = all[to % all.length];
    next.focus();
    next.click();
  });
}
showPart("why");
