// The studies of the commands, on the page: begun, given up, and shown with the words, charts and tables of their reports.
import { byId, el } from "./dom.js";
import { Progress } from "./jobs.js";
import { shown } from "./shown.js";
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
