// The work of a coil change as a list: each element with its name, how long it takes in plain fields, and what else is said of it.
import { byId, el, isTyping, svg, watchTyping } from "./dom.js";
import { digits } from "./words.js";
import { workedOut } from "./sums.js";

const LISTS = { prepare: "Prepare, while the line runs", tail: "Tail, strip standing", join: "Join, strip standing", rethread: "Rethread, line standing" };

/** The one element that is in no list; its key is its name. */
const ALONE = "rethread";

/** How long an element takes, by the key of the file: its name, what its values are called, and values for a mean in seconds. */
export const TIMES = {
  constant: { name: "always the same", labels: ["time"], from: (m) => [m] },
  triangular: { name: "least, usual, most", labels: ["least", "usual", "most"], from: (m) => [0.7 * m, m, 1.6 * m] },
  uniform: { name: "evenly between two", labels: ["least", "most"], from: (m) => [0.7 * m, 1.3 * m] },
  lognormal: { name: "lognormal", labels: ["mean", "std deviation"], from: (m) => [m, 0.3 * m] },
  gamma: { name: "gamma", labels: ["mean", "std deviation"], from: (m) => [m, 0.3 * m] },
  normal: { name: "normal", labels: ["mean", "std deviation"], from: (m) => [m, 0.15 * m] },
  exponential: { name: "exponential", labels: ["mean"], from: (m) => [m] },
  weibull: { name: "Weibull", labels: ["shape", "scale"] },
  observed: { name: "measured", labels: ["times, such as 8.5 s, 9 s, 10 s"], from: (m) => [m] },
  sheet: { name: "measured, from a time-study sheet", labels: [] },
  travel: { name: "travel across the strip", labels: ["speed", "and besides"] },
};

export class WorkList {
  /** `change([{path, …}])` asks for changes of the file. */
  constructor(change) {
    this.change = change;
    this.elements = [];
  }

  /** What has to be the same so that the list need not be built anew. */
  static shape(line) {
    return Object.values(line.work ?? {}).map((list) => list.map((one) => [one.name, one.kind, one.values.length]));
  }

  /** Whether the list shows what `path` names, so that no field of the form need. */
  static shows(line, path) {
    return path !== `coil-change.${ALONE}.shift` && Object.keys(line.work ?? {}).some((list) => new RegExp(`^coil-change\\.${list}($|[.[])`).test(path));
  }

  build(line) {
    const place = byId("work");
    place.replaceChildren();
    this.elements = [];
    for (const [list, title] of Object.entries(LISTS)) {
      const elements = line.work?.[list];
      if (!elements) continue;
      place.append(el("h3", {}, title), ...elements.map((one, i) => this.element(list, one, i, elements.length)));
      if (list !== ALONE) place.append(this.adder(list));
    }
  }

  element(list, one, i, count) {
    const isAlone = list === ALONE;
    const path = isAlone ? `coil-change.${ALONE}` : `coil-change.${list}[${i + 1}]`;
    const name = el("input", { type: "text", autocomplete: "off", disabled: isAlone, "aria-label": `Name of element ${i + 1}, ${one.name}` });
    watchTyping(name);
    name.addEventListener("change", () => this.change([{ path, name: name.value.trim() }]));
    const spark = svg("svg", { class: "spark", viewBox: "0 0 100 30", preserveAspectRatio: "none", role: "img" });
    const labels = one.values.length ? TIMES[one.kind].labels : [];
    const values = labels.map((label) => el("input", { type: "text", autocomplete: "off", "aria-label": `${one.name}, ${label}` }));
    values.forEach(watchTyping);
    values.forEach((box, at) => box.addEventListener("change", () => this.change([retimed(path, one.kind, values.map((value, j) => one.kind === "observed" ? value.value : workedOut(value.value, this.line.work[list][i].values[j])), at)])));
    const kinds = el("select", { "aria-label": `How the time of ${one.name} is given` }, ...Object.entries(TIMES)
      .filter(([key, time]) => time.from || key === one.kind)
      .map(([key, time]) => el("option", { value: key, selected: key === one.kind }, time.name)));
    kinds.addEventListener("change", () => this.change([retimed(path, kinds.value, TIMES[kinds.value].from(this.line.work[list][i].mean).map((value) => digits(value)))]));
    const remove = el("button", { type: "button", "aria-label": `Remove ${one.name}`, onclick: () => this.reshape({ path, value: null }) }, "Remove");
    const beside = el("p", { class: "hint" });
    const fault = el("p", { class: "fault", hidden: true });
    this.elements.push({ path, list, i, name, values, spark, kinds, beside, fault });
    return el("div", { class: "element" }, name, spark,
      el("div", { class: "times" }, ...values.map((box, at) => el("label", {}, labels[at], box))),
      beside, fault,
      el("div", { class: "row" }, kinds, isAlone || (list === "join" && count === 1) ? null : remove));
  }

  /** Changes which elements there are: until the answer is there, the numbers of those shown are not to be relied on. */
  reshape(change) {
    if (byId("work").inert) return;
    byId("work").inert = true;
    this.change([change]);
  }

  /** What is shown is what there is. */
  settled() {
    byId("work").inert = false;
  }

  adder(list) {
    return el("button", { type: "button", onclick: () => this.reshape({ path: `coil-change.${list}[+]`, value: `{${newName(this.line.work[list])}: 10 s}` }) }, `Add to ${list}`);
  }

  /** Says at an element what is wrong with the change of it that was tried. */
  faults(problems, tried) {
    for (const shown of this.elements) {
      const mine = tried.some((path) => path === shown.path || path.startsWith(`${shown.path}.`)) ? problems : [];
      shown.fault.hidden = !mine.length;
      shown.fault.textContent = mine.map((problem) => problem.message).join(" ");
    }
  }

  update(line) {
    this.line = line;
    for (const shown of this.elements) {
      const one = line.work?.[shown.list]?.[shown.i];
      if (!one) continue;
      if (!shown.fault.hidden) continue;
      if (!isTyping(shown.name)) shown.name.value = one.name;
      shown.values.forEach((box, at) => {
        if (!isTyping(box)) box.value = one.values[at];
      });
      shown.kinds.value = one.kind;
      shown.beside.textContent = [one.beside, one.from].filter((said) => said).join("; ");
      shown.beside.classList.toggle("assumed", one.assumed);
      shown.spark.setAttribute("aria-label", one.words);
      shown.spark.replaceChildren(svg("path", { d: sparkline(one.spark) }), svg("title", {}, one.words));
    }
  }
}

/** Plain numbers with commas between, of which none can be a decimal comma: they have points, or are more than two. */
const BETWEEN_ALL = /^\s*(?=[^,]*,[^,]*,|.*\.)[0-9.]+(,[0-9.]+)+\s*$/;

/** The change that gives an element other times; a plain number is seconds, but for a shape. `at` is the one value that changed. */
export function retimed(path, kind, said, at) {
  if (kind === "observed") said = said[0].split(BETWEEN_ALL.test(said[0]) ? "," : /;|,(?=\s|$)/).filter((value) => value.trim());
  const values = said.map((value, i) => (TIMES[kind].labels[i] === "shape" ? value.trim() : inSeconds(value)));
  if (kind === "travel") return { path: `${path}.${at === 0 ? "travel" : "plus"}`, value: at === 0 ? said[0].trim() : values[1] };
  const value = values.length === 1 && kind !== "observed" ? values[0] : `[${values.map(quoted).join(", ")}]`;
  if (path.endsWith(`.${ALONE}`)) return { path, value: kind === "constant" ? value : `{${kind}: ${value}}` };
  return { path, time: kind, value };
}

/** As one item of a list, also where nothing was typed: a comma that is none between items belongs to it. */
function quoted(value) {
  return value.includes(",") || !value.trim() ? JSON.stringify(value) : value;
}

function inSeconds(said) {
  return /^[0-9.]+$/.test(said.trim()) ? `${said.trim()} s` : said.trim();
}

/** Elements of a list have names of their own. */
function newName(list) {
  const taken = new Set(list.map((one) => one.name));
  for (let i = 1; ; i++) {
    const name = i === 1 ? "new element" : `new element ${i}`;
    if (!taken.has(name)) return name;
  }
}

/** Outline of a distribution from its density at even steps. */
function sparkline(density) {
  if (density.length < 2) return "M 49 30 V 3 H 51 V 30 Z";
  const most = Math.max(...density);
  const points = density.map((d, i) => `L ${(100 * i) / (density.length - 1)} ${29 - (26 * d) / most}`);
  return `M 0 30 ${points.join(" ")} L 100 30 Z`;
}
