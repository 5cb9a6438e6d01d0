// The line as described: fields with sliders, the work of a coil change, and the file itself.
import { byId, el, svg } from "./dom.js";
import { digits } from "./words.js";

const DISTRIBUTIONS = {
  "always the same": (m) => `${m} s`,
  "least, likely, most": (m) => `{triangular: [${n(m * 0.7)} s, ${m} s, ${n(m * 1.6)} s]}`,
  "lognormal: mean, sd": (m) => `{lognormal: [${m} s, ${n(m * 0.3)} s]}`,
  "gamma: mean, sd": (m) => `{gamma: [${m} s, ${n(m * 0.3)} s]}`,
  "normal: mean, sd": (m) => `{normal: [${m} s, ${n(m * 0.15)} s]}`,
  "exponential: mean": (m) => `{exponential: ${m} s}`,
};
const n = (value) => digits(value);
const LISTS = { prepare: "Prepare, while the line runs", tail: "Tail, strip standing", join: "Join, strip standing" };
const GROUPS = { coil: "Coil", coils: "Coils", entry: "Entry", "coil-change": "Coil change", accumulator: "Accumulator", process: "Process", run: "Run" };

export class Inputs {
  /** `change([{path, value}])` asks for values to be written into the file. */
  constructor(change) {
    this.change = change;
    this.fields = new Map();
    this.opened = new Map();
    byId("take-text").addEventListener("click", () => this.onText(byId("text").value));
  }

  /** A line newly opened: its values are what sliders are measured from. */
  open(line) {
    this.opened = new Map(line.fields.map((field) => [field.path, field.si]));
    this.shape = null;
  }

  take(line, text) {
    this.line = line;
    if (document.activeElement !== byId("text")) byId("text").value = text;
    const shape = JSON.stringify([line.fields.map((field) => [field.path, field.symbol]), Object.values(line.work ?? {}).map((list) => list.map((one) => one.name))]);
    if (shape !== this.shape) {
      this.shape = shape;
      this.build(line);
    }
    this.update(line);
  }

  build(line) {
    this.fields.clear();
    const groups = byId("groups");
    groups.replaceChildren();
    for (const [key, title] of Object.entries(GROUPS)) {
      const fields = line.fields.filter((field) => field.group === key && !/^coil-change\.(prepare|tail|join)[.[]/.test(field.path));
      if (!fields.length) continue;
      groups.append(el("fieldset", {}, el("legend", {}, title), ...fields.map((field) => this.field(field, "full"))));
    }
    byId("quick").replaceChildren(...line.fields.filter((field) => field.quick).map((field) => this.field(field, "quick")));
    this.buildWork(line);
  }

  field(field, where) {
    const id = `${where}-${field.path.replace(/[^a-z0-9]+/gi, "-")}`;
    const box = el("input", { type: "text", id, autocomplete: "off", "aria-describedby": `${id}-note` });
    const range = field.low < field.high
      ? el("input", { type: "range", min: field.low, max: field.high, step: field.whole ? 1 : "any", "aria-label": `${field.name}, slider` })
      : null;
    const change = el("span", { class: "change" });
    const note = el("span", { class: "as-written", id: `${id}-note` });
    const fault = el("p", { class: "fault", hidden: true });
    box.addEventListener("change", () => this.typed(field.path, box.value));
    const shown = { box, range, note, fault, change, held: false };
    range?.addEventListener("input", () => {
      shown.held = true;
      this.slid(field.path, Number(range.value));
    });
    range?.addEventListener("change", () => {
      shown.held = false;
    });
    const all = this.fields.get(field.path) ?? [];
    all.push(shown);
    this.fields.set(field.path, all);
    return el("div", { class: "field" }, el("label", { for: id }, field.name, " ", change), box, range, note, fault);
  }

  typed(path, said) {
    const field = this.line.fields.find((one) => one.path === path);
    const plain = /^[-+0-9.]+$/.test(said.trim()) && field.symbol !== "";
    this.change([{ path, value: plain ? `${said.trim()} ${field.symbol}` : said.trim() }]);
  }

  slid(path, si) {
    const field = this.line.fields.find((one) => one.path === path);
    const value = field.whole ? String(Math.round(si)) : `${digits(si * field.per)}${field.symbol ? ` ${field.symbol}` : ""}`;
    for (const one of this.fields.get(path)) one.box.value = value;
    this.change([{ path, value }]);
  }

  update(line) {
    for (const field of line.fields) {
      for (const shown of this.fields.get(field.path) ?? []) {
        if (document.activeElement !== shown.box) shown.box.value = field.shown;
        if (shown.range && !shown.held) shown.range.value = String(field.si);
        shown.range?.setAttribute("aria-valuetext", field.shown);
        shown.note.textContent = field.written === field.shown ? "" : `in the file: ${field.written}`;
        const opened = this.opened.get(field.path);
        const moved = opened && field.si !== null ? field.si / opened - 1 : 0;
        shown.change.textContent = Math.abs(moved) > 5e-4 ? `${moved > 0 ? "+" : "−"}${digits(100 * Math.abs(moved))} %` : "";
      }
    }
    this.updateWork(line);
  }

  /** Says what is wrong at the fields it is wrong with; what has no field is left to the list above. */
  faults(problems, tried) {
    for (const [path, all] of this.fields) {
      const mine = problems.filter((problem) => problem.path === path || (tried.includes(path) && problem.path.startsWith(path)));
      for (const one of all) {
        one.fault.hidden = !mine.length;
        one.fault.textContent = mine.map((problem) => problem.message).join(" ");
        if (mine.length) one.box.setAttribute("aria-invalid", "true");
        else one.box.removeAttribute("aria-invalid");
      }
    }
  }

  buildWork(line) {
    const place = byId("work");
    place.replaceChildren();
    this.elements = [];
    for (const [list, title] of Object.entries(LISTS)) {
      const elements = line.work?.[list];
      if (!elements) continue;
      place.append(el("h4", {}, title), ...elements.map((one, i) => this.element(list, one, i, elements.length)), this.adder(list));
    }
  }

  element(list, one, i, count) {
    const path = `coil-change.${list}`;
    const name = el("input", { type: "text", "aria-label": `Name of element ${i + 1}` });
    const time = el("input", { type: "text", class: "time", "aria-label": `Time of ${one.name}` });
    const spark = svg("svg", { class: "spark", viewBox: "0 0 100 30", preserveAspectRatio: "none", role: "img" });
    name.addEventListener("change", () => this.change([{ path: `${path}[${i + 1}]`, value: `{${quoted(name.value)}: ${time.value}}` }]));
    time.addEventListener("change", () => this.change([{ path: `${path}[${i + 1}]`, value: `{${quoted(name.value)}: ${time.value}}` }]));
    const kinds = el("select", { "aria-label": `Kind of time of ${one.name}` }, el("option", { value: "" }, "change the kind …"), ...Object.keys(DISTRIBUTIONS).map((time) => el("option", { value: time }, time)));
    kinds.addEventListener("change", () => kinds.value && this.change([{ path: `${path}[${i + 1}]`, value: `{${quoted(name.value)}: ${DISTRIBUTIONS[kinds.value](n(this.line.work[list][i].mean))}}` }]));
    const remove = el("button", { type: "button", "aria-label": `Remove ${one.name}`, onclick: () => this.change([{ path: `${path}[${i + 1}]`, value: null }]) }, "Remove");
    this.elements.push({ list, i, name, time, spark, kinds });
    return el("div", { class: "element" }, name, spark, time, el("div", { class: "row" }, kinds, list === "join" && count === 1 ? null : remove));
  }

  adder(list) {
    return el("button", { type: "button", onclick: () => this.change([{ path: `coil-change.${list}[+]`, value: `{new element: 10 s}` }]) }, `Add to ${list}`);
  }

  updateWork(line) {
    for (const shown of this.elements ?? []) {
      const one = line.work?.[shown.list]?.[shown.i];
      if (!one) continue;
      if (document.activeElement !== shown.name) shown.name.value = one.name;
      if (document.activeElement !== shown.time) shown.time.value = one.distribution;
      shown.kinds.value = "";
      shown.spark.setAttribute("aria-label", one.words);
      shown.spark.replaceChildren(svg("path", { d: sparkline(one.spark) }), svg("title", {}, one.words));
    }
  }
}

function quoted(name) {
  return /^[A-Za-z][A-Za-z0-9 _-]*$/.test(name.trim()) ? name.trim() : JSON.stringify(name.trim());
}

/** Outline of a distribution from its density at even steps. */
function sparkline(density) {
  if (density.length < 2) return "M 49 30 V 3 H 51 V 30 Z";
  const most = Math.max(...density);
  const points = density.map((d, i) => `L ${(100 * i) / (density.length - 1)} ${29 - (26 * d) / most}`);
  return `M 0 30 ${points.join(" ")} L 100 30 Z`;
}
