// What coil changes cost in a year, and what the alternatives of the file are worth: the numbers of the document that is handed over.
import { attached, Latest, MOST_OF_FILES } from "./api.js";
import { byId, el } from "./dom.js";
import { job } from "./jobs.js";
import { table } from "./shown.js";

const TOO_MUCH = "The files of the line as it was opened and those of now are too large to compare the two here: run both with the commands.";

export class Worth {
  #latest = new Latest();

  /** `page`: `state` of it, its text and units, and `history`, how the line was opened. */
  constructor(page) {
    this.page = page;
  }

  /** Has it worked out for the line as it now is; until then what is shown is that of the line before. */
  work() {
    const { text, units } = this.page.state;
    const { opened, openedFiles } = this.page.history;
    const hasOthers = openedFiles !== attached.files;
    const isTooMuch = hasOthers && JSON.stringify([openedFiles, attached.files]).length > MOST_OF_FILES;
    const question = { text, units, ...(isTooMuch ? {} : { opened }), ...(hasOthers && !isTooMuch ? { openedFiles } : {}) };
    this.wait();
    this.#latest.run((signal) => job("worth", question, () => {}, signal)).then((worth) => worth && this.show(isTooMuch ? { ...worth, notes: [TOO_MUCH, ...worth.notes] } : worth)).catch((e) => {
      byId("worth").replaceChildren(el("p", {}, e.message));
    });
  }

  /** What is shown is that of the line before. */
  wait() {
    for (const id of ["worth", "worth-line"]) byId(id).classList.add("waiting");
  }

  /** Nothing of another line than `text`. */
  forget(text) {
    this.stop();
    // Room for what is said once it is known, where the file has money.
    byId("worth-line").hidden = !/^money:/m.test(text);
    for (const id of ["worth", "worth-line"]) byId(id).replaceChildren(el("p", { class: "hint" }, "What it is worth is being worked out …"));
  }

  stop() {
    this.#latest.stop();
  }

  show({ change, gain, cost, best, today, figures, tables, notes }) {
    byId("worth").classList.remove("waiting");
    const line = byId("worth-line");
    line.classList.remove("waiting");
    const [[most, alternative] = [], ...others] = figures;
    line.replaceChildren(el("span", {}, cost.split(":")[0]),
      ...(gain ? [el("span", {}, "Gain of this change a year, before its cost: ", el("b", {}, gain))] : []),
      ...(most ? [el("span", {}, `${most}: `, el("b", {}, alternative), ` compared with "${today}"`)] : []),
      ...others.map(([name, value]) => el("span", {}, `${name}: `, el("b", {}, value))));
    byId("worth").replaceChildren(
      ...[change, cost, best].filter((said) => said).map((said) => el("p", { class: "lead" }, said)),
      ...tables.map((one) => [el("h2", {}, one.caption), el("div", { class: "scroll", tabindex: 0, role: "region", "aria-label": one.caption }, table(one.head, one.rows))]).flat(),
      ...notes.map((note) => el("p", { class: "hint" }, note)));
  }
}
