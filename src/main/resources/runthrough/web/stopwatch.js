// The stopwatch at the line: taps through the work elements of real coil changes. Once loaded it needs no connection.
import { byId, download, el } from "./dom.js";
import { Progress } from "./jobs.js";
import { shown, table } from "./shown.js";
import { PARTS, plain, seconds, Taps } from "./taps.js";

const taps = new Taps();
const fits = new Progress("fit");

function elapsed() {
  const last = taps.change.taps.at(-1);
  const since = last && taps.running !== null ? Math.max(0, Math.round((Date.now() - last.at) / 1000)) : 0;
  byId("elapsed").textContent = `${Math.floor(since / 60)}:${String(since % 60).padStart(2, "0")}`;
}

let noted = 0;

/** Shows what there is; where it changed in another tab, what is typed here stays. */
function show(isTypedKept = false) {
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
  if (document.activeElement !== byId("note") || noted !== taps.changes.length) byId("note").value = taps.change.note;
  noted = taps.changes.length;
  elapsed();
  showTimed();
  showSetup(isTypedKept);
}

function doing(work, isTypedKept = false) {
  const before = taps.sheet();
  work();
  if (byId("fits").hasChildNodes() && before !== taps.sheet()) byId("fit-note").textContent = "These fits are of the times before the last change.";
  show(isTypedKept);
}

function showTimed() {
  const rows = taps.timed.map((change, i) => [`${i + 1}`, ...seconds(change, taps.elements.length).map((time) => (time === null ? "–" : time.toFixed(1))), change.note]);
  byId("timed").hidden = byId("take").hidden = !rows.length;
  byId("none-timed").hidden = rows.length > 0;
  byId("timed").replaceChildren(table(["no.", ...taps.elements.map((one) => `${one.name}, s`), "what went wrong"], rows));
}

/** What is timed can be chosen as long as nothing was. Rows stay in place, so that what is under a finger or typed in stays so. */
function showSetup(isTypedKept) {
  const isOpen = !taps.isBegun;
  const { elements } = taps;
  const list = byId("setup");
  byId("setup-note").textContent = isOpen ? "Name them as the line does, so that the times find their place." : "They can be changed once the times are cleared.";
  while (list.children.length > elements.length) list.lastChild.remove();
  while (list.children.length < elements.length) list.append(row(list.children.length));
  elements.forEach((one, i) => {
    const [part, name, remove] = list.children[i].children;
    part.disabled = name.disabled = byId("add").disabled = !isOpen;
    remove.disabled = !isOpen || elements.length === 1;
    part.value = one.part;
    if (!isTypedKept || name !== document.activeElement) name.value = one.name;
    part.setAttribute("aria-label", `When ${one.name} is done`);
    remove.setAttribute("aria-label", `Remove ${one.name}`);
  });
}

/** The `i`-th of what is timed. */
function row(i) {
  const others = () => taps.elements.filter((_, at) => at !== i);
  const replaced = (other) => taps.elements.map((old, at) => (at === i ? { ...old, ...other } : old));
  const part = el("select", {}, ...PARTS.map((key) => el("option", { value: key }, key)));
  part.addEventListener("change", () => doing(() => taps.retitle(replaced({ part: part.value }))));
  const name = el("input", { type: "text", autocomplete: "off", maxlength: "200", "aria-label": `Name of element ${i + 1}` });
  name.addEventListener("change", () => doing(() => plain(name.value) && taps.retitle(replaced({ name: free(plain(name.value), others()) }))));
  // The second click of two quick ones is meant for the same element.
  const remove = el("button", { type: "button", onclick: (event) => event.detail < 2 && doing(() => taps.retitle(others())) }, "Remove");
  return el("li", {}, part, name, remove);
}

/** `name`, or with the first number from `from` on with which none of `others` has it: the columns of a sheet are known by their names. */
function free(name, others, from = null) {
  const taken = new Set(others.map((one) => plain(one.name).toLowerCase()));
  for (let i = from ?? 1; ; i++) {
    const numbered = i === 1 && from === null ? name : `${name.slice(0, 195)} ${i}`;
    if (!taken.has(numbered.toLowerCase())) return numbered;
  }
}

byId("tap").addEventListener("click", () => doing(() => (taps.next === null ? taps.finish() : taps.tap(taps.next))));
byId("wait").addEventListener("click", () => doing(() => taps.tap(null)));
byId("undo").addEventListener("click", () => doing(() => taps.undo()));
byId("finish").addEventListener("click", () => doing(() => taps.finish()));
byId("note").addEventListener("input", () => taps.note(byId("note").value));
byId("note").addEventListener("change", () => show());
byId("add").addEventListener("click", () => doing(() => taps.retitle([...taps.elements, { part: "join", name: free("element", taps.elements, taps.elements.length + 1) }])));
byId("clear").addEventListener("click", () => byId("clear-sure").showModal());
byId("clear-yes").addEventListener("click", () => doing(() => {
  taps.clear();
  fits.stop();
  byId("fits").replaceChildren();
  byId("fit-note").textContent = "";
  byId("clear-sure").close();
}));
byId("clear-no").addEventListener("click", () => byId("clear-sure").close());
byId("get-sheet").addEventListener("click", () => download(new Blob([taps.sheet()], { type: "text/csv;charset=utf-8" }), "stopwatch.csv"));
byId("fit").addEventListener("click", () => fits.run("times", { file: { name: "stopwatch.csv", text: taps.sheet() } }, "the fitting", (answer) => {
  byId("fits").replaceChildren(...shown(answer));
  return "";
}));
// Taps in another tab of the browser are of the same coil changes.
addEventListener("storage", () => doing(() => taps.read(), true));
setInterval(elapsed, 250);
show();

/** Kept for use without a connection where the browser does so: at this machine, or over a secured address. */
if ("serviceWorker" in navigator) {
  navigator.serviceWorker.register("/worker.js", { scope: "/stopwatch" }).then(() => navigator.serviceWorker.ready).then(() => {
    byId("kept").textContent = "Kept in this browser: it opens without a connection, too.";
    document.body.dataset.kept = "true";
  }).catch(() => {});
}
