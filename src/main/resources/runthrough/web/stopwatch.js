// The stopwatch at the line: taps through the work elements of real coil changes. Once loaded it needs no connection.
import { byId, download, el } from "./dom.js";
import { Progress } from "./jobs.js";
import { shown, table } from "./shown.js";
import { PARTS, seconds, Taps } from "./taps.js";

const taps = new Taps();
const fits = new Progress("fit");

function elapsed() {
  const last = taps.change.taps.at(-1);
  const since = last && taps.running !== null ? Math.max(0, Math.round((Date.now() - last.at) / 1000)) : 0;
  byId("elapsed").textContent = `${Math.floor(since / 60)}:${String(since % 60).padStart(2, "0")}`;
}

function show() {
  const { running, next, elements } = taps;
  const name = (at) => elements[at].name;
  byId("which").textContent = `Coil change ${taps.changes.length}`;
  byId("now").textContent = running === null ? "Nothing is being timed." : `Now: ${name(running)}`;
  byId("tap").textContent = next === null ? "Coil change done" : `${running === null ? "Begin" : "Next"}: ${name(next)}`;
  byId("wait").disabled = running === null;
  byId("undo").disabled = !taps.canUndo;
  byId("finish").disabled = !taps.change.taps.length;
  const times = seconds(taps.change, elements.length);
  byId("elements").replaceChildren(...elements.map((one, i) => el("li", {}, el("button", { type: "button", "aria-pressed": String(i === running), onclick: () => doing(() => taps.tap(i)) },
    one.name, el("span", {}, i === running ? "running" : times[i] === null ? "" : ` ${times[i].toFixed(1)} s`)))));
  if (document.activeElement !== byId("note")) byId("note").value = taps.change.note;
  elapsed();
  showTimed();
  showSetup();
}

function doing(work) {
  work();
  show();
}

function showTimed() {
  const rows = taps.timed.map((change, i) => [`${i + 1}`, ...seconds(change, taps.elements.length).map((time) => (time === null ? "–" : time.toFixed(1))), change.note]);
  byId("timed").hidden = byId("take").hidden = !rows.length;
  byId("none-timed").hidden = rows.length > 0;
  byId("timed").replaceChildren(table(["no.", ...taps.elements.map((one) => `${one.name}, s`), "what went wrong"], rows));
}

/** What is timed can be chosen as long as nothing was. */
function showSetup() {
  const isOpen = !taps.changes.some((change) => change.taps.length);
  byId("setup-note").textContent = isOpen ? "Name them as the line does, so that the times find their place." : "They can be changed once the times are cleared.";
  if (byId("setup").contains(document.activeElement)) return;
  byId("setup").replaceChildren(...taps.elements.map((one, i) => row(one, i, isOpen)));
  byId("add").disabled = !isOpen;
}

/** `name`, or with the first number from `from` on with which none of `others` has it: the columns of a sheet are known by their names. */
function free(name, others, from = null) {
  const taken = new Set(others.map((one) => one.name.toLowerCase()));
  for (let i = from ?? 1; ; i++) {
    const numbered = i === 1 && from === null ? name : `${name} ${i}`;
    if (!taken.has(numbered.toLowerCase())) return numbered;
  }
}

function row(one, i, isOpen) {
  const replaced = (other) => taps.elements.map((old, at) => (at === i ? { ...old, ...other } : old));
  const part = el("select", { disabled: !isOpen, "aria-label": `When ${one.name} is done` }, ...PARTS.map((key) => el("option", { value: key, selected: key === one.part }, key)));
  part.addEventListener("change", () => doing(() => taps.retitle(replaced({ part: part.value }))));
  const name = el("input", { type: "text", value: one.name, disabled: !isOpen, autocomplete: "off", "aria-label": `Name of element ${i + 1}` });
  name.addEventListener("change", () => doing(() => name.value.trim() && taps.retitle(replaced({ name: free(name.value.trim(), taps.elements.filter((_, at) => at !== i)) }))));
  const remove = el("button", { type: "button", disabled: !isOpen || taps.elements.length === 1, "aria-label": `Remove ${one.name}`, onclick: () => doing(() => taps.retitle(taps.elements.filter((_, at) => at !== i))) }, "Remove");
  return el("li", {}, part, name, remove);
}

byId("tap").addEventListener("click", () => doing(() => (taps.next === null ? taps.finish() : taps.tap(taps.next))));
byId("wait").addEventListener("click", () => doing(() => taps.tap(null)));
byId("undo").addEventListener("click", () => doing(() => taps.undo()));
byId("finish").addEventListener("click", () => doing(() => taps.finish()));
byId("note").addEventListener("input", () => taps.note(byId("note").value));
byId("note").addEventListener("change", show);
byId("add").addEventListener("click", () => doing(() => taps.retitle([...taps.elements, { part: "join", name: free("element", taps.elements, taps.elements.length + 1) }])));
byId("clear").addEventListener("click", () => byId("clear-sure").showModal());
byId("clear-yes").addEventListener("click", () => doing(() => {
  taps.clear();
  byId("clear-sure").close();
}));
byId("clear-no").addEventListener("click", () => byId("clear-sure").close());
byId("get-sheet").addEventListener("click", () => download(new Blob([taps.sheet()], { type: "text/csv;charset=utf-8" }), "stopwatch.csv"));
byId("fit").addEventListener("click", () => fits.run("times", { file: { name: "stopwatch.csv", text: taps.sheet() } }, "the fits", (answer) => {
  byId("fits").replaceChildren(...shown(answer));
  return "";
}));
setInterval(elapsed, 250);
show();

/** Kept for use without a connection where the browser does so: at this machine, or over a secured address. */
if ("serviceWorker" in navigator) {
  navigator.serviceWorker.register("/worker.js", { scope: "/stopwatch" }).then(() => navigator.serviceWorker.ready).then(() => {
    byId("kept").textContent = "Kept in this browser: it opens without a connection, too.";
    document.body.dataset.kept = "true";
  }).catch(() => {});
}
