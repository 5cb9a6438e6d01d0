// Coil changes as they are tapped: when each work element began, kept in this browser with every tap. Times of day are in ms.
const KEY = "runthrough.stopwatch";

/** What is timed where nobody says otherwise. */
const USUAL = [["prepare", "prepare the next coil"], ["tail", "shear the tail"], ["join", "fit up"], ["join", "weld"], ["join", "inspect and release"]];

export const PARTS = ["prepare", "tail", "join"];

export class Taps {
  constructor() {
    this.read();
  }

  /** What this browser keeps; the elements of the line that the page shows, where nothing was timed since it shows that one. */
  read() {
    const kept = read(KEY);
    const isWhole = Array.isArray(kept?.elements) && Array.isArray(kept.changes) && kept.elements.every((one) => PARTS.includes(one.part) && typeof one.name === "string");
    this.elements = isWhole ? kept.elements : USUAL.map(([part, name]) => ({ part, name }));
    /** The elements that the line had when they were taken from it, as text. */
    this.line = isWhole ? kept.line : null;
    /** Coil changes: `taps` of `{at, to}`, `to` being the element that began then, or null for none; and a note. The last is under way. */
    this.changes = isWhole && kept.changes.length ? kept.changes : [{ taps: [], note: "" }];
    this.#takeLine();
  }

  #takeLine() {
    const line = ofTheLine();
    if (line && !this.isBegun && this.line !== JSON.stringify(line)) {
      this.elements = line;
      this.line = JSON.stringify(line);
    }
  }

  /** Whether anything was timed. */
  get isBegun() {
    return this.changes.some((change) => change.taps.length);
  }

  get change() {
    return this.changes.at(-1);
  }

  /** The element that is under way, or null. */
  get running() {
    return this.change.taps.at(-1)?.to ?? null;
  }

  /** The element that comes next: the first behind the last that was timed; null behind the last of all. */
  get next() {
    const last = this.change.taps.map((tap) => tap.to).filter((to) => to !== null).at(-1) ?? -1;
    return last + 1 < this.elements.length ? last + 1 : null;
  }

  /** Element `to` begins, and what was under way ends; null where nothing begins. */
  tap(to) {
    this.change.taps.push({ at: Date.now(), to });
    this.keep();
  }

  /** Takes the last tap back, also that which ended a coil change. */
  undo() {
    if (this.change.taps.length) this.change.taps.pop();
    else if (this.changes.length > 1) {
      const { note } = this.changes.pop();
      this.change.taps.pop();
      this.change.note = [this.change.note, note].filter(Boolean).join("; ");
    }
    this.keep();
  }

  get canUndo() {
    return this.change.taps.length > 0 || this.changes.length > 1;
  }

  note(text) {
    this.change.note = text;
    this.keep();
  }

  /** The coil change is done; the next one is awaited. */
  finish() {
    this.tap(null);
    this.changes.push({ taps: [], note: "" });
    this.keep();
  }

  /** Times other elements: none may have been timed yet. */
  retitle(elements) {
    this.elements = elements;
    this.keep();
  }

  clear() {
    this.changes = [{ taps: [], note: "" }];
    this.#takeLine();
    this.keep();
  }

  /** Coil changes that have a time. */
  get timed() {
    return this.changes.filter((change) => seconds(change, this.elements.length).some((time) => time !== null));
  }

  /** What the program reads: a row for each coil change, a column for each element, blank what was not timed. */
  sheet() {
    const head = ["no.", ...this.elements.map((one) => `${one.part}: ${one.name} [s]`), "remark"];
    const rows = this.timed.map((change, i) => [i + 1, ...seconds(change, this.elements.length).map((time) => (time === null ? "" : time.toFixed(1))), change.note]);
    return `${[head, ...rows].map((row) => row.map(cell).join(",")).join("\n")}\n`;
  }

  keep() {
    try {
      localStorage.setItem(KEY, JSON.stringify({ elements: this.elements, line: this.line, changes: this.changes }));
    } catch {
      // A browser that keeps nothing: the page works as long as it is open.
    }
  }
}

/** How long each element of `change` took (s), all its parts together; null for one that was not timed to its end. */
export function seconds(change, count) {
  const times = Array(count).fill(null);
  change.taps.forEach(({ at, to }, i) => {
    const end = change.taps[i + 1]?.at;
    // A clock that was set back meanwhile has timed nothing.
    if (to !== null && end >= at) times[to] = (times[to] ?? 0) + (end - at) / 1000;
  });
  return times;
}

/** The elements of the line that the page at this address shows, or null. */
function ofTheLine() {
  const elements = read("runthrough.elements");
  return Array.isArray(elements) && elements.length && elements.every((one) => PARTS.includes(one?.part) && typeof one.name === "string") ? elements : null;
}

function read(key) {
  try {
    return JSON.parse(localStorage.getItem(key));
  } catch {
    return null;
  }
}

/** `text` in one line, with single blanks. */
export function plain(text) {
  return text.replace(/\s+/g, " ").trim();
}

function cell(value) {
  const text = plain(String(value));
  return /[",;\t#]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
