// The work of a person at the page: every text that could be run, to go back and forth, kept in this browser.
const KEY = "runthrough.work";
const MOST = 60;
/** Changes of the same part that follow each other this fast (ms) are one, as those of a slider. */
const ONE_MOVE = 1500;

export class History {
  texts = [];
  at = -1;
  pins = [];
  /** Names of the pinned lines that have one, empty for the others. */
  pinNames = [];
  /** Files that lines name: sets of them, of which the first is that of the line as opened, and which belongs to each text and pin. */
  sets = [[]];
  setAt = [0];
  pinSets = [];
  #set = 0;
  #part = "";
  #changed = 0;

  /** Name of the project that the work belongs to; empty where to none. */
  project = "";

  /** `note()` is called when what can be undone has changed. */
  constructor(note) {
    this.note = note;
  }

  /** Begins with a line newly opened. */
  open(text, name, files = []) {
    this.opened = text;
    this.name = name;
    this.project = "";
    this.texts = [text];
    this.at = 0;
    this.pins = [];
    this.pinNames = [];
    this.pinSets = [];
    this.sets = [files];
    this.setAt = [this.#set = 0];
    this.keep();
  }

  /** Takes up where `kept` was left. */
  restore(kept) {
    Object.assign(this, { opened: kept.opened, name: kept.name, texts: kept.texts, at: kept.at, pins: kept.pins, pinNames: kept.pinNames ?? [], project: kept.project ?? "" });
    Object.assign(this, { sets: kept.sets, setAt: kept.setAt, pinSets: kept.pinSets });
    this.#set = this.setAt[this.at];
    this.keep();
  }

  /** Files that the line names now. */
  get files() {
    return this.sets[this.#set];
  }

  /** Back to the text that was opened, and the files of then: with what is taken next they can be undone. */
  reopen() {
    this.#set = 0;
    return this.opened;
  }

  /** Files of the line as it was opened. */
  get openedFiles() {
    return this.sets[0];
  }

  /**
   * `files` are those of the line from now on; with the text that is taken next they can be undone. Where the line as opened lacks
   * them, they belong to it.
   */
  attach(files, isLacking = false) {
    if (isLacking && this.at === 0 && this.now === this.opened) this.sets[0] = files;
    else this.#set = this.#placeOf(files);
    this.keep();
  }

  #placeOf(files) {
    const at = this.sets.indexOf(files);
    return at < 0 ? this.sets.push(files) - 1 : at;
  }

  /** Lines beside this one: text, files and name, empty where it has none. */
  get pinned() {
    return this.pins.map((text, i) => ({ text, files: this.sets[this.pinSets[i]], name: this.pinNames[i] ?? "" }));
  }

  set pinned(all) {
    this.pins = all.map((pin) => pin.text);
    this.pinNames = all.map((pin) => pin.name ?? "");
    this.pinSets = all.map((pin) => this.#placeOf(pin.files));
    this.keep();
  }

  /** `text` is the line now; `part` is what a slider moves, or empty; `movedAt` when it was moved (ms), however late the line came. */
  take(text, part, movedAt) {
    if (text === this.now && this.#set === this.setAt[this.at]) return;
    const isSameMove = part !== "" && part === this.#part && movedAt - this.#changed < ONE_MOVE && this.at > 0;
    this.at = isSameMove ? this.at : this.at + 1;
    this.texts.splice(this.at, Infinity, text);
    this.setAt.splice(this.at, Infinity, this.#set);
    if (this.texts.length > MOST) {
      this.texts.shift();
      this.setAt.shift();
      this.at -= 1;
    }
    this.#part = part;
    this.#changed = movedAt;
    this.keep();
  }

  get now() {
    return this.texts[this.at];
  }

  /** The text that is `steps` away, backwards where negative; undefined where there is none. */
  move(steps) {
    if (this.texts[this.at + steps] === undefined) return undefined;
    this.at += steps;
    this.#set = this.setAt[this.at];
    this.#part = "";
    this.keep();
    return this.now;
  }

  keep() {
    for (const storage of ["sessionStorage", "localStorage"]) History.#put(storage, [this.#all(), this.#present()]);
    this.note();
  }

  #all() {
    const { opened, name, texts, at, pins, pinNames, pinSets, sets, setAt, project } = this;
    return { opened, name, texts, at, pins, pinNames, pinSets, sets, setAt, project };
  }

  /** The line as it is, without the steps to it. */
  #present() {
    const { opened, name, project } = this;
    return { opened, name, texts: [this.now], at: 0, pins: [], sets: [this.openedFiles, this.files], setAt: [1], project };
  }

  /** Keeps the first of `works` for which there is room; what was kept before is no longer true. */
  static #put(storage, works) {
    for (const work of works) {
      try {
        window[storage].setItem(KEY, JSON.stringify(work));
        return;
      } catch {
        // No room for it.
      }
    }
    try {
      window[storage].removeItem(KEY);
    } catch {
      // A browser that keeps nothing: the page works without.
    }
  }

  /** What was kept of this tab, which another does not change, or else of this browser; or null. */
  static kept() {
    try {
      return History.whole(JSON.parse(sessionStorage.getItem(KEY) ?? localStorage.getItem(KEY)));
    } catch {
      return null;
    }
  }

  /** `kept` with the sets of files that it may lack, and the files of its present text; null where it is not whole. */
  static whole(kept) {
    const isText = (text) => typeof text === "string";
    const isWhole = isText(kept?.opened) && isText(kept.name) && Array.isArray(kept.texts) && kept.texts.every(isText)
      && isText(kept.texts[kept.at]) && Array.isArray(kept.pins) && kept.pins.every(isText)
      && (kept.pinNames ?? []).every(isText);
    if (!isWhole) return null;
    const { sets = [kept.files ?? []], setAt = kept.texts.map(() => 0), pinSets = kept.pins.map(() => setAt[kept.at]) } = kept;
    const areFiles = sets.flat().every((file) => isText(file.name) && isText(file.text))
      && kept.texts.every((_, i) => sets[setAt[i]]) && kept.pins.every((_, i) => sets[pinSets[i]]);
    return areFiles ? { ...kept, sets, setAt, pinSets, files: sets[setAt[kept.at]] } : null;
  }
}
