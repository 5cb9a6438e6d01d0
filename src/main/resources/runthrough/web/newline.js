// A line from nothing: a few questions, each answered beforehand with what is usual. The program writes the line from them.
import { ask, newKinds } from "./api.js";
import { byId, el } from "./dom.js";
import { meant } from "./inputs.js";
import { retimed, TIMES } from "./work.js";

/** What is asked, as far as the line has it. */
const ASKED = ["coil.thickness", "coil.width", "coil.mass", "rated-speed", "entry.top-speed", "usable-capacity", "entry.uncoilers", "coil-change.crew", "coil-change.reject.chance"];

/** How a time may be answered. */
const WAYS = ["triangular", "constant", "observed"];

/** What an hour of running is worth, as the file has it; says what is missing, or no number. */
function money(currency, hour, rate) {
  const worth = hour.replace(/[\s']/g, "");
  const share = /^[\d.]+$/.test(rate) ? `${rate} %` : rate;
  if (!currency) throw new Error("Give the currency too, such as EUR, or leave out what an hour is worth.");
  if (!/^\d+(\.\d+)?$/.test(worth)) throw new Error("What an hour is worth must be a number without a currency, such as 900.");
  if (!/^\d+(\.\d+)? ?%$/.test(share)) throw new Error("The rate of discount must be in per cent, such as 8 %.");
  return `{currency: ${JSON.stringify(currency)}, line-hour: ${worth}, rate: ${share}}`;
}

export class NewLine {
  /** `page`: `state`, and `open(text, name)` of the page. */
  constructor(page) {
    this.page = page;
    this.dialog = byId("new-line");
    byId("new").addEventListener("click", () => this.begin());
    byId("new-cancel").addEventListener("click", () => this.dialog.close());
    for (const id of ["new-kind", "new-practice"]) byId(id).addEventListener("change", () => this.usual().catch((e) => this.refuse(e)));
    byId("new-form").addEventListener("submit", (event) => {
      event.preventDefault();
      this.make().catch((e) => this.refuse(e));
    });
  }

  async begin() {
    this.dialog.showModal();
    this.refuse(null);
    for (const id of ["new-title-box", "new-currency", "new-line-hour"]) byId(id).value = "";
    try {
      const kinds = await newKinds();
      byId("new-kind").replaceChildren(...kinds.map((kind) => el("option", { value: kind.name }, kind.title)));
      await this.usual();
    } catch (e) {
      this.refuse(e);
    }
  }

  /** What the program makes of `changes` of the line that is usual. */
  written(changes) {
    return ask("/api/new", { kind: byId("new-kind").value, practice: byId("new-practice").value, units: this.page.state.units, changes });
  }

  /** Asks about the line that is usual for what was chosen. */
  async usual() {
    const { text, line } = await this.written([]);
    this.questions = ASKED.map((path) => line.fields.find((field) => field.path === path)).filter((field) => field).map((field) => this.number(field));
    const target = /\btarget: ([\d.]+) %/.exec(text);
    if (target) this.questions.push(this.number({ path: "run.target", name: "Coil changes to run through", shown: `${target[1]} %`, si: target[1] / 100, per: 100, symbol: "%" }));
    const times = Object.entries(line.work).flatMap(([list, elements]) => elements.map((one, i) => this.time(list, one, i)));
    byId("new-numbers").replaceChildren(...this.questions.map((question) => question.row));
    byId("new-times").replaceChildren(...times.map((question) => question.row));
    this.questions.push(...times);
    this.refuse(null);
  }

  number(field) {
    const id = `new-${field.path.replaceAll(".", "-")}`;
    const box = el("input", { type: "text", id, autocomplete: "off", value: field.shown, "aria-describedby": `${id}-note` });
    const { note, fault, mark } = notes(id, () => box.value.trim() !== field.shown);
    box.addEventListener("input", () => {
      mark();
      this.mend(fault);
    });
    return { path: field.path, fault,
      change: () => (box.value.trim() === field.shown ? null : { path: field.path, value: meant(box.value, field) }),
      row: el("div", { class: "field" }, el("label", { for: id }, field.name), box, note, fault) };
  }

  time(list, one, i) {
    const path = list === one.name ? `coil-change.${list}` : `coil-change.${list}[${i + 1}]`;
    const id = `new-${list}-${i}`;
    const ways = el("select", { "aria-label": `How the time of ${one.name} is given` }, ...WAYS.map((key) => el("option", { value: key, selected: key === one.kind }, TIMES[key].name)));
    const place = el("div", { class: "times" });
    let boxes = [];
    const said = () => boxes.map((box) => box.value.trim());
    const isUsual = () => ways.value === one.kind && said().join() === one.values.join();
    const { note, fault, mark } = notes(id, () => !isUsual());
    const fill = () => {
      const values = ways.value === one.kind ? one.values : ways.value === "constant" ? [one.values[1]] : TIMES[ways.value].labels.map(() => "");
      boxes = TIMES[ways.value].labels.map((label, at) => el("input", { type: "text", autocomplete: "off", required: true, value: values[at], "aria-label": `${one.name}, ${label}`, "aria-describedby": `${id}-note` }));
      for (const box of boxes) {
        box.addEventListener("input", () => {
          mark();
          this.mend(fault);
        });
      }
      place.replaceChildren(...boxes.map((box, at) => el("label", {}, TIMES[ways.value].labels[at], box)));
      mark();
    };
    ways.addEventListener("change", () => {
      fill();
      this.mend(fault);
    });
    fill();
    return { path, fault,
      change: () => (isUsual() ? null : retimed(path, ways.value, said())),
      row: el("fieldset", {}, el("legend", {}, one.name), ways, place, note, fault) };
  }

  async make() {
    const title = byId("new-title-box").value.trim();
    const changes = this.questions.map((question) => question.change()).filter((change) => change);
    const [currency, hour, rate] = ["new-currency", "new-line-hour", "new-rate"].map((id) => byId(id).value.trim());
    if (currency || hour) changes.push({ path: "money", value: money(currency, hour, rate) });
    if (title) changes.unshift({ path: "title", value: JSON.stringify(title) });
    const { text, line } = await this.written(changes);
    const said = line.problems;
    for (const { path, fault } of this.questions) {
      const mine = said.filter((problem) => problem.path === path || problem.path.startsWith(`${path}.`));
      fault.hidden = !mine.length;
      fault.textContent = mine.map((problem) => problem.message).join(" ");
    }
    if (said.length) {
      this.refuse(new Error(said.map((problem) => problem.whole).join(" ")));
      return;
    }
    this.dialog.close();
    await this.page.open(text, (title || "new-line").toLowerCase().replace(/[^a-z0-9]+/g, "-"));
  }

  /** What was wrong with an answer is none of the one that takes its place. */
  mend(fault) {
    if (fault.hidden) return;
    fault.hidden = true;
    this.refuse(null);
  }

  refuse(e) {
    byId("new-note").textContent = e?.message ?? "";
  }
}

/** What stands at an answer: that it is assumed until `isStated()`, and what is wrong with it. */
function notes(id, isStated) {
  const note = el("span", { class: "as-written", id: `${id}-note` }, "assumed");
  const mark = () => {
    note.textContent = isStated() ? "stated by you" : "assumed";
  };
  return { note, mark, fault: el("p", { class: "fault", hidden: true }) };
}
