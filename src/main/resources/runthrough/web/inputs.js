// The line as described: fields, sliders for what people ask first, the work of a coil change, and the file itself.
import { byId, el } from "./dom.js";
import { workedOut } from "./sums.js";
import { digits } from "./words.js";
import { WorkList } from "./work.js";

const GROUPS = { coil: "Coil", coils: "Coils", entry: "Entry", "coil-change": "Coil change", accumulator: "Accumulator", process: "Process", run: "Run" };

/** An end that is off by more than this was not possible as far as people move a number. */
const ROUNDING = 1.001;

export class Inputs {
  /** `change([{path, value}], isSliding)` asks for values to be written into the file. */
  constructor(change) {
    this.change = change;
    this.fields = new Map();
    this.opened = new Map();
    this.ends = new Map();
    this.work = new WorkList(change);
    byId("take-text").addEventListener("click", () => this.onText(byId("text").value));
  }

  /** A line newly opened: its values are what sliders are measured from. */
  open(line) {
    this.opened = new Map(line.fields.map((field) => [field.path, field.si]));
    this.ends = new Map();
    this.shape = null;
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
      const fields = line.fields.filter((field) => field.group === key && !/^coil-change\.(prepare|tail|join)[.[]/.test(field.path));
      if (!fields.length) continue;
      groups.append(el("fieldset", {}, el("legend", {}, title), ...fields.map((field) => this.field(field, "full"))));
    }
    byId("quick").replaceChildren(...line.fields.filter((field) => field.quick).map((field) => this.field(field, "quick")));
    this.work.build(line);
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
    this.change([{ path, value: meant(said, this.line.fields.find((one) => one.path === path)) }]);
  }

  slid(path, si) {
    const field = this.line.fields.find((one) => one.path === path);
    const value = field.whole ? String(Math.round(si)) : `${digits(si * field.per)}${field.symbol ? ` ${field.symbol}` : ""}`;
    for (const one of this.fields.get(path)) one.box.value = value;
    this.change([{ path, value }], true);
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
    this.work.update(line);
  }

  /**
   * How far the sliders go, from least to greatest value by path: as far as when the line was opened, and beyond that to a value
   * that was typed; no further than the line can be run now. One that is being moved keeps its ends.
   */
  reach(ends) {
    for (const [path, [low, high]] of Object.entries(ends)) {
      const field = this.line.fields.find((one) => one.path === path);
      const [least, most] = this.ends.get(path) ?? [low, high];
      this.ends.set(path, [least, most]);
      for (const shown of this.fields.get(path) ?? []) {
        if (!shown.range || shown.held) continue;
        shown.range.min = Math.min(low > field.low * ROUNDING ? Math.max(least, low) : least, field.si);
        shown.range.max = Math.max(high * ROUNDING < field.high ? Math.min(most, high) : most, field.si);
      }
    }
    this.update(this.line);
  }

  /** Says what is wrong at the fields it is wrong with; what has no field is left to the list above. */
  faults(problems, tried) {
    this.work.faults(problems, tried);
    for (const [path, all] of this.fields) {
      const mine = problems.filter((problem) => problem.path === path || tried.includes(path));
      for (const one of all) {
        one.fault.hidden = !mine.length;
        one.fault.textContent = mine.map((problem) => problem.message).join(" ");
        if (mine.length) one.box.setAttribute("aria-invalid", "true");
        else one.box.removeAttribute("aria-invalid");
      }
    }
  }
}

/** What was typed, as a value of the file: sums are worked out, a plain number gets its unit. */
export function meant(said, field) {
  const text = workedOut(said, `${field.si * field.per} ${field.symbol}`, field.whole);
  return /^[-+0-9.]+$/.test(text) && field.symbol !== "" ? `${text} ${field.symbol}` : text;
}
