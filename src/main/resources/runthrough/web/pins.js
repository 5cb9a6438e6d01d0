// Lines that were pinned: beside this one in a table, and the latest of them as a second picture in step with the first.
import { ask, attached, Latest, Refusal } from "./api.js";
import { showPinned } from "./answer.js";
import { byId, el } from "./dom.js";
import { Drawing } from "./drawing.js";
import { calledApart } from "./inputs.js";
import { Race } from "./race.js";
import { showPart, shownPart } from "./tabs.js";
import { Course } from "./trace.js";
import { Words } from "./words.js";

const MOST = 4;

export class Pins {
  all = [];
  #latest = new Latest();
  #refining = new Latest();

  /**
   * `page`: `state`, `history`, `player`, `use(text, files)`, `complain(e)`, `fastest()`, `idle(signal)`, the values `opened()` of the line
   * as opened and `isSettled()` of the page.
   */
  constructor(page) {
    this.page = page;
    this.drawing = new Drawing(byId("beside-drawing"));
    this.race = new Race(byId("beside-race"));
    byId("pin").addEventListener("click", () => this.add());
    byId("alternatives").addEventListener("change", (event) => {
      const one = this.page.state.line.alternatives[Number(event.target.value)];
      event.target.value = "";
      byId("beside-note").textContent = "";
      this.addAlternative(one).catch((e) => {
        // The line itself has its answer.
        if (e instanceof Refusal) byId("beside-note").textContent = e.message;
        else this.page.complain(e);
      });
    });
  }

  /** The alternatives that the file of `line` names, to run beside it. */
  offer(line) {
    byId("beside-choice").hidden = !line.alternatives.length;
    byId("beside-note").textContent = "";
    byId("alternatives").replaceChildren(el("option", { value: "" }, "an alternative of the file …"), ...line.alternatives.map((one, i) => el("option", { value: i }, one.name)));
  }

  /** Pins the present line with the changes of `alternative`. */
  async addAlternative(alternative) {
    const { text, units } = this.page.state;
    const { files } = attached;
    const reply = await ask("/api/edit", { text, files, changes: alternative.changes, units });
    if (reply.line.problems.length) throw new Refusal(`“${alternative.name}” cannot be run: ${reply.line.problems[0].whole}`, 422);
    await this.take([...this.all, { text: reply.text, files, name: alternative.name }].slice(-MOST));
    this.keep();
  }

  add() {
    const { text, answer, line } = this.page.state;
    if (this.all.length === MOST) this.all.shift();
    this.all.push({ text, files: attached.files, answer, line });
    this.keep();
    if (this.page.isSettled()) this.refine();
  }

  /** Has the answers run again in the steps of the line's own, once that is as sure as it gets. */
  refine() {
    this.#refining.run(async (signal) => {
      for (;;) {
        const rough = this.all.filter((pin) => pin.answer.effort < pin.answer.efforts);
        if (!rough.length) return;
        const pin = rough.reduce((least, one) => (one.answer.effort < least.answer.effort ? one : least));
        const effort = pin.answer.effort + 1;
        await this.page.idle(signal);
        const given = await ask("/api/answer", { text: pin.text, files: pin.files, units: this.page.state.units, effort }, signal);
        pin.answer = { ...given, effort };
        this.show();
      }
    }).catch((e) => {
      byId("pins-note").textContent = `Pinned lines could not be run again: ${e.message}`;
    });
  }

  stop() {
    this.#refining.stop();
  }

  /** None of another line's. */
  drop() {
    this.stop();
    this.all = [];
    this.show();
  }

  keep() {
    this.page.history.pinned = this.all;
    this.show();
    this.accompany();
  }

  /** Pinned lines from text, files and name of each, with answers in the present units. */
  async take(lines) {
    const { opened } = this.page.history;
    const taken = await Promise.all(lines.map(async ({ text, files, name }) => {
      const body = { text, files, units: this.page.state.units };
      const [line, given] = await Promise.all([ask("/api/line", body), ask("/api/answer", { ...body, effort: 0 })]);
      return { text, files, name, line: { ...line, look: { ...line.look, ...line.look.sizes } }, answer: { ...given, effort: 0 } };
    }));
    // Another line has been opened in the meantime.
    if (this.page.history.opened !== opened) return;
    this.all = taken;
    this.show();
    this.accompany();
    if (this.page.isSettled()) this.refine();
  }

  show() {
    const { line, answer } = this.page.state;
    showPinned(this.all.map((pin) => ({ ...pin, label: this.label(pin) })), line, answer, {
      use: (at) => this.page.use(this.all[at]).catch(this.page.complain),
      remove: (at) => {
        this.all.splice(at, 1);
        this.keep();
      },
    });
    if (!this.all.length && shownPart() === "pinned") showPart("why");
    const last = this.all.at(-1);
    byId("beside").hidden = !last;
    if (last) byId("beside-title").textContent = `Pinned line: ${this.besides(last)}. ${last.answer.word}`;
    else this.page.player.accompany(null);
  }

  /** How `pin` differs from the present line, at the picture beside that. */
  besides(pin) {
    const { line } = this.page.state;
    if (pin.name) return pin.name;
    const differs = [anotherOf(pin.files, attached.files), differences(pin.line, line)].filter((said) => said).join(", ");
    return pin.line.title === line.title ? differs || "the same as this one" : short(pin.line.title);
  }

  /** `pin` by its name, or by what was changed of the line as opened, and by its title where it is another line's. */
  label(pin) {
    const { line } = this.page.state;
    const opened = this.page.opened();
    const title = pin.line.title === line?.title ? "" : short(pin.line.title);
    const changed = pin.line.fields.filter((field) => opened.has(field.path) && opened.get(field.path) !== field.si);
    const differs = [anotherOf(pin.files, this.page.history.openedFiles), worded(changed, pin.line.fields)].filter((said) => said).join(", ");
    const what = pin.name || title || differs || "as opened";
    return pin.name && title ? `${title}: ${what}` : what;
  }

  /** Has the latest pinned line run beside this one, through the same coil change with the same random numbers. */
  accompany() {
    const last = this.all.at(-1);
    const { course } = this.page.player;
    if (!last || !course) return;
    const body = { text: last.text, files: last.files, units: this.page.state.units, replication: course.replication, change: course.worst };
    this.#latest.run((signal) => ask("/api/course", body, signal)).then((given) => {
      if (!given || this.all.at(-1) !== last) return;
      const words = new Words(last.line.units);
      const scale = last.line.look.capacity / this.page.state.line.look.capacity;
      this.drawing.build(last.line.look, words, this.page.fastest(), scale > 0 && scale < 1 ? scale : 1);
      this.page.player.accompany({ course: new Course(given), drawing: this.drawing, race: this.race, words });
    }).catch(this.page.complain);
  }
}

/** What one of the figures of a line stands for in the file. */
const BEHIND = /^(accumulator\.|process\.speed$|coil-change\.join-shorter-by$)/;

/** The names of the files in which two lines differ. */
function anotherOf(files, others) {
  const lacking = (all, from) => from.filter((file) => !all.some((one) => one.name === file.name && one.text === file.text));
  const names = new Set([...lacking(others, files), ...lacking(files, others)].map((file) => file.name));
  return [...names].map((name) => `another ${name}`).join(", ");
}

/** The inputs of `pinned` that differ from those of `line`, with the values that it has. */
function differences(pinned, line) {
  const others = new Map((line?.fields ?? []).map((field) => [field.path, field]));
  const all = pinned.fields.filter((field) => others.has(field.path) && field.si !== others.get(field.path).si);
  return worded(all, pinned.fields);
}

/** The first of `changed`, which are some of `fields`, with their values. */
function worded(changed, fields) {
  const hasFigure = changed.some((field) => field.group === "figures");
  return (hasFigure ? changed.filter((field) => !BEHIND.test(field.path)) : changed)
    .slice(0, 3).map((field) => `${calledApart(field, fields)} ${field.shown}`).join(", ");
}

function short(title) {
  return title.length > 40 ? `${title.slice(0, 39)}…` : title;
}
