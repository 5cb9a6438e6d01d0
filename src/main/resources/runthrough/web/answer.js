// The verdict and its numbers, each of which opens to show where it comes from.
import { byId, el, svg, colour } from "./dom.js";
import { sureness } from "./charts.js";
import { calledApart } from "./inputs.js";
import { table } from "./shown.js";
import { apart, digits } from "./words.js";

export function showAnswer(answer) {
  const section = byId("answer");
  section.classList.remove("runs-through", "marginal", "slows", "stops", "waiting");
  section.classList.add(answer.style);
  byId("sign").textContent = answer.sign;
  if (byId("word").textContent !== answer.word) byId("word").textContent = answer.word;
  const { short, rest } = parted(answer.sentence);
  // A sentence of its own stands apart from the word.
  byId("short").textContent = /^[A-Z]/.test(short) ? `– ${short.charAt(0).toLowerCase()}${short.slice(1)}${allowed(answer, short)}` : short;
  byId("sentence").textContent = rest;
  byId("further").textContent = answer.further;
  byId("limiting-factor").textContent = answer.limitingFactor;
  byId("spare").textContent = answer.spare;
  byId("changes").replaceChildren(...answer.help.map((one) => el("li", {}, one)));
  byId("to-fix").classList.toggle("unneeded", answer.style === "runs-through");
  byId("fix").textContent = answer.style === "runs-through" ? "Find how far it could go" : "Find what would fix it";
  showCauses(answer.causes);
  sureness(answer);
  showFigures(answer);
  showList("warnings", "warning-list", answer.warnings);
  keepRoom();
}

/** What people repeat, and the rest of the sentence behind it. */
function parted(sentence) {
  const at = sentence.search(/; |\. /);
  if (at < 0) return { short: sentence, rest: "" };
  const rest = sentence.slice(at + 2);
  return { short: sentence.slice(0, at + (sentence[at] === "." ? 1 : 0)), rest: rest.charAt(0).toUpperCase() + rest.slice(1) };
}

/** How often is still allowed, beside how often it is, so that a line that stops and runs through is none that does both. */
function allowed(answer, short) {
  return answer.allowed && /^(Stops|Slows)/.test(short) ? ` (allowed ${answer.allowed})` : "";
}

const ROOMS = ["mark", "sentence", "further", "sure", "limiting", "spare", "changes"];

/** What an answer once took keeps its room, so that the page does not jump to and fro while a slider moves. */
function keepRoom() {
  const tall = ROOMS.map((id) => byId(id).offsetHeight);
  ROOMS.forEach((id, i) => {
    // What is behind a tab that is not shown has no height.
    if (tall[i]) byId(id).style.minHeight = `${tall[i]}px`;
  });
}

/** Room for another line, or another width of the page. */
export function giveUpRoom() {
  for (const id of ROOMS) byId(id).style.minHeight = "";
}

/** Causes, those of most coil changes first; what each is worth comes with the surer answers. */
function showCauses(causes) {
  byId("causes").hidden = !causes.length;
  const rows = causes.map((one) => [one.name, apart(`${one.changes}`), apart(`${one.stops}`), apart(digits(one.lostSeconds / 3600)), one.worth || "–"]);
  byId("cause-table").replaceChildren(...table(["cause", "coil changes", "stops", "lost, h", "fewer stops a year without it"], rows).children);
}

export function showList(section, list, said) {
  byId(section).hidden = !said.length;
  byId(list).replaceChildren(...said.map((one) => el("li", {}, one)));
}

function showFigures(answer) {
  const place = byId("figures");
  const open = new Set([...place.querySelectorAll("details[open]")].map((one) => one.dataset.name));
  place.replaceChildren(...answer.figures.map((figure) => {
    const details = el("details", {}, el("summary", {}, el("span", {}, figure.name), el("b", {}, figure.value), el("span", {}, figure.note)));
    details.dataset.name = figure.name;
    const fill = () => details.childElementCount === 1 && details.append(explained(figure));
    if (open.has(figure.name)) {
      details.open = true;
      fill();
    }
    details.addEventListener("toggle", () => details.open && fill());
    return details;
  }));
}

function explained(figure) {
  const parts = [el("p", {}, figure.from)];
  if (figure.each?.length > 1) parts.push(dots(figure));
  if (figure.givens?.length) parts.push(table(["it starts from", "value"], figure.givens));
  if (figure.steps?.length) parts.push(table(["hand calculation", "formula", "with numbers", "result"], figure.steps));
  return el("div", {}, ...parts);
}

/** One dot a replication, so that the reader sees what the mean and its interval are made of. */
function dots(figure) {
  const w = 640;
  const values = figure.each;
  const low = Math.min(...values);
  const high = Math.max(...values);
  const x = (v) => (high > low ? 20 + ((v - low) / (high - low)) * (w - 40) : w / 2);
  const stacks = new Map();
  const picture = svg("svg", { viewBox: `0 0 ${w} 96`, role: "img", "aria-label": `${values.length} replications gave from ${figure.least} to ${figure.most}` });
  for (const v of values) {
    const place = Math.round(x(v) / 6);
    const height = stacks.get(place) ?? 0;
    stacks.set(place, height + 1);
    picture.append(svg("circle", { cx: place * 6, cy: 66 - Math.min(10, height) * 6, r: 2.6, fill: colour("strip") }));
  }
  picture.append(svg("path", { d: `M 12 72 H ${w - 12}`, stroke: colour("edge") }));
  const text = (at, anchor, said) => svg("text", { x: at, y: 90, "text-anchor": anchor, "font-size": 12, fill: colour("faint"), "font-family": "DejaVu Sans, Verdana, sans-serif" }, said);
  picture.append(text(12, "start", figure.least), text(w - 12, "end", figure.most));
  return picture;
}

/** Says that there is no answer, and why; nothing of an earlier one stays. */
export function showNoAnswer(why) {
  const section = byId("answer");
  section.classList.remove("runs-through", "marginal", "slows", "stops", "waiting");
  giveUpRoom();
  byId("word").textContent = "No answer";
  byId("sentence").textContent = why;
  for (const id of ["short", "sign", "further", "sure", "limiting-factor", "spare"]) byId(id).textContent = "";
  for (const id of ["scale", "changes", "fixes", "figures"]) byId(id).replaceChildren();
  byId("causes").hidden = true;
  showList("warnings", "warning-list", []);
}

/** Pinned lines beside the present one: what comes out, then every input in which they differ. */
export function showPinned(pins, line, answer, { use, remove }) {
  byId("tab-pinned").hidden = !pins.length;
  if (!pins.length || !answer) return;
  const all = [...pins, { line, answer }];
  const isRough = pins.some((pin) => pin.answer.effort < pin.answer.efforts);
  byId("pins-note").textContent = isRough ? "Pinned lines are run again to be surer …" : "";
  const said = (figure) => (figure ? `${figure.value}${figure.note ? ` (${figure.note})` : ""}` : "–");
  const rows = [["Verdict", ...all.map((one) => one.answer.word)]];
  for (const { name } of answer.figures) rows.push([name, ...all.map((one) => said(one.answer.figures.find((figure) => figure.name === name)))]);
  for (const path of new Set(all.flatMap((one) => one.line.fields.map((field) => field.path)))) {
    const fields = all.map((one) => one.line.fields.find((field) => field.path === path));
    const holder = all.find((_, i) => fields[i]);
    const row = [calledApart(fields.find((field) => field), holder.line.fields), ...fields.map((field) => field?.shown ?? "–")];
    // A figure of the line and the one input behind it are the same number.
    const isSaid = rows.some((other) => other.slice(1).join() === row.slice(1).join());
    if (new Set(fields.map((field) => field?.si)).size > 1 && !isSaid) rows.push(row);
  }
  const made = table(["number", ...pins.map((pin, i) => `${i + 1}: ${pin.label}`), "this line"], rows);
  byId("pinned-table").replaceChildren(...made.children);
  // Buttons stay while answers become surer: somebody may be about to click one.
  if (byId("pins").childElementCount !== 2 * pins.length) {
    byId("pins").replaceChildren(...pins.flatMap((_, i) => [
      el("button", { type: "button", onclick: () => use(i) }, `Use pinned ${i + 1}`),
      el("button", { type: "button", onclick: () => remove(i) }, `Remove pinned ${i + 1}`)]));
  }
  pins.forEach((pin, i) => [...byId("pins").children].slice(2 * i, 2 * i + 2).forEach((button) => button.setAttribute("title", pin.label)));
}
