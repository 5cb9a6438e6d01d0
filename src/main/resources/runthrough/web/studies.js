// The studies of the commands, on the page: begun, given up, and shown with the words, charts and tables of their reports.
import { byId, el } from "./dom.js";
import { table } from "./charts.js";
import { Progress } from "./jobs.js";
import { showPart } from "./tabs.js";

const STUDIES = {
  size: "How large must the accumulator be?",
  speeds: "What comes out at which speed?",
  limits: "How far can the line be driven?",
  sensitivity: "Which inputs change the answer?",
  compare: "Which alternative is worth what?",
  uncertainty: "How well are measured times known?",
  log: "Does the model fit the line?",
};

export class Studies {
  /** `state` of the page: its text and units. */
  constructor(state) {
    this.state = state;
    this.log = null;
    this.progress = new Progress("study");
    byId("study-kinds").replaceChildren(...Object.entries(STUDIES).map(([kind, question]) => el("button", { type: "button", "data-study": kind, onclick: () => this.run(kind) }, question)));
  }

  stop() {
    this.progress.stop();
  }

  /** What was shown is of the line before. */
  forget() {
    this.stop();
    if (byId("study-answer").childElementCount) byId("study-note").textContent = "The line has changed since: ask anew.";
    byId("study-answer").replaceChildren();
  }

  takeLog(sent) {
    this.log = sent;
    showPart("studies");
    this.run("log");
  }

  showTimes(sent) {
    showPart("studies");
    this.begin("times", { file: sent });
  }

  run(kind) {
    const { text, units } = this.state;
    if (kind === "log" && !this.log) {
      byId("study-note").textContent = "Drop the log of the line on this page, or open it: a table with the columns time and event.";
      return;
    }
    this.begin(kind, kind === "log" ? { text, units, file: this.log } : { text, units });
  }

  begin(kind, body) {
    byId("study-answer").replaceChildren();
    for (const button of byId("study-kinds").children) button.setAttribute("aria-pressed", String(button.dataset.study === kind));
    this.progress.run(kind, body, "the study", (answer) => {
      byId("study-answer").replaceChildren(...shown(answer));
      return "";
    });
  }
}

/** An answer as its report shows it. */
export function shown(answer) {
  return [
    el("div", { class: `verdict ${answer.style}` }, el("p", { class: "hint" }, answer.question),
      el("p", { class: "lead" }, el("span", { "aria-hidden": "true" }, answer.sign), ` ${answer.headline}`)),
    ...answer.words.map((word) => el("p", {}, word)),
    answer.warnings.length ? el("ul", { class: "warnings" }, ...answer.warnings.map((one) => el("li", {}, one))) : "",
    answer.figures.length ? el("dl", { class: "study-figures" }, ...answer.figures.map(([name, value, note]) => el("div", {}, el("dt", {}, name), el("dd", {}, el("b", {}, value), " ", el("span", { class: "hint" }, note))))) : "",
    ...answer.charts.map(chart), ...answer.tables.map(titled),
    ...answer.account.map((part) => el("details", { class: "account" }, el("summary", {}, part.title),
      ...part.paragraphs.map((one) => el("p", {}, one)), ...part.kept.map((one) => el("pre", { class: "scroll", tabindex: 0, role: "region", "aria-label": part.title }, one)),
      ...part.charts.map(chart), ...part.tables.map(titled))),
  ];
}

/** As an image a chart keeps its own styles, which the page's policy would not let into the page itself. */
function chart({ svg, reading, alternative }) {
  return el("figure", { class: "picture" }, el("img", { class: "printed", src: `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`, alt: alternative }), el("figcaption", {}, reading));
}

function titled({ caption, head, rows }) {
  return el("div", { class: "scroll", tabindex: 0, role: "region", "aria-label": caption }, el("h3", {}, caption), table(head, rows));
}
