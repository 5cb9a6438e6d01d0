// The line as described: fields, sliders for what people ask first, the work of a coil change, and the file itself.
import { byId, el, isTyping, watchTyping } from "./dom.js";
import { workedOut } from "./sums.js";
import { digits } from "./words.js";
import { WorkList } from "./work.js";

const GROUPS = { coil: "Coil", coils: "Coils", entry: "Entry", "coil-change": "Coil change", accumulator: "Accumulator", process: "Process", run: "Run" };

/** What people ask about first. */
const LEVERS = ["usable-capacity", "rated-speed", "joint-cycle-time", "rethread-time"];

/** An end that is off by more than this was not possible as far as people move a number. */
const ROUNDING = 1.001;

export class Inputs {
  /** `change([{path, value}], isSliding)` asks for values to be written into the file. */
  constructor(change) {
    this.change = change;
    this.fields = new Map();
    this.opened = new Map();
    /** How far each slider goes, by path: as far as when the line was opened, and as the line now lets it. */
    this.ends = new Map();
    this.reached = new Map();
    this.work = new WorkList(change);
    byId("take-text").addEventListener("click", () => this.onText(byId("text").value));
  }

  /** A line newly opened as `text`: its values are what sliders are measured from. Without `line` there is none that can be run. */
  open(line, text) {
    this.opened = new Map((line?.fields ?? []).map((field) => [field.path, field.si]));
    this.openedText = line ? text : null;
    this.ends = new Map();
    this.reached = new Map();
    this.shape = null;
    this.lever = null;
  }

  take(line, text) {
    this.line = line;
    if (document.activeElement !== byId("text")) byId("text").value = text;
    const shape = JSON.stringify([line.fields.map((field) => [field.path, field.symbol]), WorkList.shape(line)]);
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
      const fields = line.fields.filter((field) => field.group === key && !WorkList.shows(line, field.path));
      if (!fields.length) continue;
      groups.append(el("fieldset", {}, el("legend", {}, title), ...fields.map((field) => this.field(field, "full"))));
    }
    this.buildLevers(line);
    this.work.build(line);
  }

  /** The levers: capacity, speed, time at the joint, and what acts on the largest cause of all that fails. */
  buildLevers(line) {
    for (const [path, all] of this.fields) this.fields.set(path, all.filter((one) => !one.isLever));
    const levers = [...LEVERS, this.lever].map((path) => line.fields.find((field) => field.path === path)).filter((field) => field);
    byId("quick").replaceChildren(...levers.map((field) => this.field(field, "quick")));
  }

  /** The lever that fits the line as opened best; it stays while the line is changed. */
  fit(path) {
    if (this.lever) return;
    this.lever = path || "entry.top-speed";
    this.buildLevers(this.line);
    this.update(this.line);
  }

  field(field, where) {
    const id = `${where}-${field.path.replace(/[^a-z0-9]+/gi, "-")}`;
    const box = el("input", { type: "text", id, autocomplete: "off", "aria-describedby": `${id}-note` });
    const [min, max] = this.reached.get(field.path) ?? [field.low, field.high];
    const range = field.low < field.high
      ? el("input", { type: "range", min, max, step: field.whole ? 1 : "any", "aria-label": `${field.name}, slider` })
      : null;
    const change = el("span", { class: "change" });
    const note = el("span", { class: "as-written", id: `${id}-note` });
    const fault = el("p", { class: "fault", hidden: true });
    watchTyping(box);
    box.addEventListener("change", () => this.typed(field.path, box.value));
    const shown = { box, range, note, fault, change, held: false, isLever: where === "quick" };
    range?.addEventListener("input", () => {
      shown.held = true;
      this.slid(field.path, Number(range.value), [Number(range.min), Number(range.max)]);
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
    this.change([{ path, value: meant(said, this.line.fields.find((one) => one.path === path)) }]);
  }

  slid(path, si, ends) {
    const field = this.line.fields.find((one) => one.path === path);
    const [low, high] = ends.map((end) => end * field.per);
    const round = Number(digits(si * field.per));
    // Rounding leads beyond no end.
    const number = round >= low && round <= high ? round : Number((round < low ? low : high).toPrecision(6));
    const value = `${number}${field.symbol ? ` ${field.symbol}` : ""}`;
    for (const one of this.fields.get(path)) one.box.value = value;
    this.change([{ path, value }], true);
  }

  update(line) {
    for (const field of line.fields) {
      for (const shown of this.fields.get(field.path) ?? []) {
        if (!isTyping(shown.box) && !shown.box.hasAttribute("aria-invalid") && shown.box.value !== field.shown) shown.box.value = field.shown;
        if (shown.range && !shown.held) shown.range.value = String(field.si);
        shown.range?.setAttribute("aria-valuetext", field.shown);
        shown.note.textContent = [field.written === field.shown ? "" : `in the file: ${field.written}`, shown.isLever ? "" : field.from].filter((said) => said).join("; ");
        shown.note.classList.toggle("assumed", field.assumed);
        const opened = this.opened.get(field.path);
        const moved = opened && field.si !== null ? field.si / opened - 1 : 0;
        shown.change.textContent = Math.abs(moved) > 5e-4 ? `${moved > 0 ? "+" : "−"}${digits(100 * Math.abs(moved))} %` : "";
      }
    }
    this.work.update(line);
    keepElements(line.work ?? {});
    const assumed = [...line.fields, ...Object.values(line.work ?? {}).flat()].filter((one) => one.assumed).length;
    byId("assumed").hidden = !assumed;
    byId("assumed").textContent = `${assumed} values of this line are assumptions, marked as such. Replace each by what is known of the line.`;
  }

  /**
   * How far the sliders go, from least to greatest value by path: as far as when the line was opened, where they went as far as
   * `opened` says, or as far as from a value that was typed beyond; no further than the line can be run now. One that is being
   * moved keeps its ends.
   */
  reach(ends, opened) {
    if (!this.ends.size) this.ends = new Map(Object.entries(opened));
    for (const [path, now] of Object.entries(ends)) {
      const field = this.line.fields.find((one) => one.path === path);
      const kept = this.ends.get(path);
      const isBeyond = !kept || field.si * ROUNDING < kept[0] || field.si > kept[1] * ROUNDING;
      if (isBeyond) this.ends.set(path, now);
      const [least, most] = this.ends.get(path);
      const [low, high] = now;
      this.reached.set(path, [
        Math.min(low > field.low * ROUNDING ? Math.max(least, low) : least, field.si),
        Math.max(high * ROUNDING < field.high ? Math.min(most, high) : most, field.si)]);
      for (const shown of this.fields.get(path) ?? []) {
        if (shown.range && !shown.held) [shown.range.min, shown.range.max] = this.reached.get(path);
      }
    }
    this.update(this.line);
  }

  /** Says what is wrong at the fields it is wrong with; what has no field is left to the list above. */
  faults(problems, tried) {
    // What comes of it for alternatives is said above; here only where nothing else is wrong.
    const own = problems.filter((problem) => !/^alternatives?[ .]/.test(problem.path));
    const said = own.length ? own : problems;
    this.work.faults(said, tried);
    for (const [path, all] of this.fields) {
      const mine = said.filter((problem) => problem.path === path || tried.includes(path));
      for (const one of all) {
        one.fault.hidden = !mine.length;
        one.fault.textContent = mine.map((problem) => problem.message).join(" ");
        if (mine.length) one.box.setAttribute("aria-invalid", "true");
        else one.box.removeAttribute("aria-invalid");
      }
    }
  }

  /** The part of the page that somebody is at and that one of `tried` is shown in, or null. */
  place(tried) {
    const all = [...tried.flatMap((path) => this.fields.get(path) ?? []).map((one) => one.fault), ...this.work.elements.map((one) => one.fault)].filter((fault) => !fault.hidden);
    const mine = all.find((fault) => fault.parentElement.contains(document.activeElement)) ?? all.find((fault) => fault.offsetParent);
    return mine?.parentElement ?? null;
  }
}

/** The name of `one`, a field or an axis, with its part of the line where others of `all` have the same. */
export function calledApart(one, all) {
  const isAlone = all.every((other) => other === one || other.path === one.path || other.name !== one.name);
  const group = GROUPS[one.path.replace(/[.[].*/, "")];
  return isAlone || !group ? one.name : `${group} ${one.name.charAt(0).toLowerCase()}${one.name.slice(1)}`;
}

/** Keeps in this browser what the stopwatch may time. */
function keepElements(work) {
  const elements = ["prepare", "tail", "join"].flatMap((part) => (work[part] ?? []).map((one) => ({ part, name: one.name })));
  try {
    localStorage.setItem("runthrough.elements", JSON.stringify(elements));
  } catch {
    // A browser that keeps nothing: the stopwatch begins with what is usual.
  }
}

/** What was typed, as a value of the file: sums are worked out, a plain number gets its unit. */
export function meant(said, field) {
  const text = workedOut(said, `${field.si * field.per} ${field.symbol}`, field.whole);
  return /^[-+0-9.]+$/.test(text) && field.symbol !== "" ? `${text} ${field.symbol}` : text;
}
