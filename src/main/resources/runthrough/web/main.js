// Puts the page together: one scenario text, read by the program after every change, and everything shown from its answers.
import { ask, Latest, shippedLines } from "./api.js";
import { giveUpRoom, showAnswer, showList, showPinned } from "./answer.js";
import { curveChart, LevelChart, marginChart } from "./charts.js";
import { byId, el } from "./dom.js";
import { Drawing } from "./drawing.js";
import { linkedText, wireHandover } from "./handover.js";
import { Inputs } from "./inputs.js";
import { job } from "./jobs.js";
import { Player } from "./player.js";
import { Course } from "./trace.js";
import { Words } from "./words.js";

const state = { text: "", opened: "", name: "line", units: "metric", line: null, answer: null, pinned: null, waiting: null, tried: [] };
const editing = new Latest();
const answering = new Latest();
const side = { curve: new Latest(), map: new Latest(), fixes: new Latest() };
let drawn = 0;

const drawing = new Drawing(byId("drawing"));
const levelChart = new LevelChart((time) => player.seek(time));
const player = new Player(drawing, (s) => levelChart.move(s.time));
const inputs = new Inputs(change);
inputs.onText = (text) => read(text);

// ---- what the text says -------------------------------------------------------------------------------------------

/** Opens another line. */
async function open(text, name) {
  state.name = name;
  state.pinned = null;
  player.setPlaying(false);
  player.course = null;
  giveUpRoom();
  const line = await read(text);
  if (line) {
    state.opened = text;
    inputs.open(line);
    inputs.take(line, state.text);
    fillMapChoices(line);
  }
}

/** Has `text` read, and everything shown anew. */
async function read(text) {
  const line = await editing.run((signal) => ask("/api/line", { text, units: state.units }, signal));
  if (line) take(text, line, []);
  return line?.problems.length ? null : line;
}

/** Changes come faster than answers while a slider moves: those that wait are put together. */
function change(changes) {
  const before = (state.waiting ?? []).filter((one) => !changes.some((other) => other.path === one.path));
  state.waiting = [...before, ...changes];
  if (!state.sending) send();
}

async function send() {
  state.sending = true;
  while (state.waiting) {
    const changes = state.waiting;
    state.waiting = null;
    try {
      const reply = await ask("/api/edit", { text: state.text, changes, units: state.units });
      if (reply.line) take(reply.text, reply.line, changes.map((one) => one.path));
    } catch (e) {
      complain(e);
    }
  }
  state.sending = false;
}

function take(text, line, tried) {
  state.tried = tried;
  const faulty = line.problems.length > 0;
  byId("faults").hidden = !faulty;
  showList("faults", "fault-list", line.problems.map((problem) => problem.whole));
  if (faulty) {
    reveal();
    // A value that breaks the line is shown at its field; the last line that could be run stays on the page.
    inputs.faults(line.problems, tried);
    if (!tried.length) state.text = text;
    byId("answer").classList.add("waiting");
    return;
  }
  state.text = text;
  line.look = { ...line.look, ...line.look.sizes };
  state.line = line;
  state.words = new Words(line.units);
  byId("title").textContent = line.title;
  document.title = `${line.title} – Runthrough`;
  inputs.take(line, text);
  inputs.faults([], tried);
  for (const one of Object.values(side)) one.stop();
  answer();
}

// ---- the answer, quick and then surer -----------------------------------------------------------------------------

function answer() {
  byId("answer").classList.add("waiting");
  answering.run(async (signal) => {
    const body = { text: state.text, units: state.units };
    const quick = await ask("/api/answer", { ...body, effort: 0 }, signal);
    show(quick, true);
    const course = new Course(await ask("/api/course", body, signal));
    showCourse(course);
    for (let effort = 1; effort <= quick.efforts; effort++) {
      await idle(signal);
      show(await ask("/api/answer", { ...body, effort }, signal), effort < quick.efforts);
    }
    if (state.line.look.form !== "none") drawCurve();
  }).catch(complain);
}

/** The page appears with the first thing that it has to say. */
function reveal() {
  document.body.classList.remove("unread");
}

function show(given, refining) {
  reveal();
  state.answer = given;
  state.drawnAt = ++drawn;
  given.refining = refining && given.chance;
  showAnswer(given);
  marginChart(given.margin, state.words);
  pinned();
  document.body.dataset.answers = String(drawn);
  document.body.dataset.settled = String(!given.refining);
}

function showCourse(course) {
  drawing.build(state.line.look, state.words);
  levelChart.take(course, state.words, state.line.look);
  player.take(course, state.words);
}

/** Waits until the page has nothing better to do. */
function idle(signal) {
  return new Promise((resolve, reject) => {
    signal.addEventListener("abort", () => reject(new DOMException("given up", "AbortError")), { once: true });
    (window.requestIdleCallback ?? ((f) => setTimeout(f, 30)))(resolve, { timeout: 400 });
  });
}

function drawCurve() {
  const text = state.text;
  byId("curve-note").textContent = "Trying other capacities …";
  side.curve.run((signal) => job("curve", { text, units: state.units }, (done) => {
    byId("curve-note").textContent = `Trying other capacities: ${Math.round(100 * done)} % done …`;
  }, signal)).then((curve) => curve && curveChart(curve, state.words)).catch((e) => {
    byId("curve-note").textContent = e.message;
  });
}

function complain(e) {
  if (e.name === "AbortError") return;
  reveal();
  byId("word").textContent = "No answer";
  byId("sentence").textContent = /fetch|network/i.test(e.message) ? "The program does not answer. Is it still running?" : e.message;
  console.error(e);
}

// ---- what would fix it, and the map -------------------------------------------------------------------------------

byId("fix").addEventListener("click", () => {
  const place = byId("fixes");
  const text = state.text;
  place.replaceChildren(el("p", { class: "hint" }, "Trying …"));
  side.fixes.run((signal) => job("fixes", { text, units: state.units }, (done) => {
    place.replaceChildren(el("p", { class: "hint" }, `Trying: ${Math.round(100 * done)} % done …`));
  }, signal)).then((reply) => reply && showFixes(reply)).catch((e) => place.replaceChildren(el("p", {}, e.message)));
});

function showFixes(reply) {
  byId("fixes").replaceChildren(el("p", { class: "hint" }, reply.words), el("div", { class: "fixes" }, ...reply.fixes.map((fix) => el("div", {}, el("p", {}, fix.words),
    fix.changes.length ? el("button", { type: "button", "aria-label": `Try: ${fix.words}`, onclick: () => change(fix.changes) }, "Try it") : null))));
}

function fillMapChoices(line) {
  for (const [id, wanted] of [["map-x", line.mapX], ["map-y", line.mapY]]) {
    byId(id).replaceChildren(...line.axes.map((axis) => el("option", { value: axis.path, selected: axis.path === wanted }, axis.name)));
  }
}

byId("map-start").addEventListener("click", () => {
  const [x, y] = [byId("map-x").value, byId("map-y").value];
  const note = byId("map-note");
  if (x === y) {
    note.textContent = "Choose two different inputs.";
    return;
  }
  const bar = byId("map-progress");
  bar.hidden = byId("map-stop").hidden = false;
  side.map.run((signal) => job("map", { text: state.text, units: state.units, x, y }, (done) => {
    bar.value = done;
    note.textContent = `${Math.round(100 * done)} % of the map is done.`;
  }, signal)).then((map) => {
    if (map) {
      // As an image the picture keeps its own styles, which the page's policy would not let into the page itself.
      byId("map-picture").replaceChildren(el("img", { src: `data:image/svg+xml;charset=utf-8,${encodeURIComponent(map.svg)}`, alt: map.words }));
    }
    note.textContent = map ? map.words : "The map was stopped.";
  }).catch((e) => {
    note.textContent = e.message;
  }).finally(() => {
    bar.hidden = byId("map-stop").hidden = true;
  });
});
byId("map-stop").addEventListener("click", () => side.map.stop());

// ---- pinning ------------------------------------------------------------------------------------------------------

byId("pin").addEventListener("click", () => {
  state.pinned = { text: state.text, answer: state.answer, line: state.line };
  pinned();
  byId("pinned").scrollIntoView({ block: "nearest" });
});
byId("unpin").addEventListener("click", () => {
  state.pinned = null;
  pinned();
});
byId("swap").addEventListener("click", () => {
  const { text } = state.pinned;
  state.pinned = { text: state.text, answer: state.answer, line: state.line };
  read(text).catch(complain);
});

function pinned() {
  const old = state.pinned?.line.fields ?? [];
  const changed = state.pinned ? state.line.fields.flatMap((field) => {
    const other = old.find((one) => one.path === field.path);
    return other && other.si === field.si ? [] : [{ name: field.name, pinned: other?.shown ?? "–", now: field.shown }];
  }) : [];
  showPinned(state.pinned, state.answer, changed);
}

// ---- the bar ------------------------------------------------------------------------------------------------------

byId("reset").addEventListener("click", () => read(state.opened).catch(complain));
byId("shipped").addEventListener("change", (event) => {
  const one = state.shipped.find((line) => line.name === event.target.value);
  if (one) open(one.text, one.name).catch(complain);
});
byId("open").addEventListener("click", () => byId("file").click());
byId("file").addEventListener("change", async (event) => {
  const [file] = event.target.files;
  if (file) await open(await file.text(), file.name.replace(/\.ya?ml$/i, "")).catch(complain);
  event.target.value = "";
});
byId("units").addEventListener("change", (event) => {
  state.units = event.target.value;
  inputs.shape = null;
  read(state.text).catch(complain);
});
byId("theme").addEventListener("change", (event) => {
  document.documentElement.dataset.theme = event.target.value;
  if (!event.target.value) delete document.documentElement.dataset.theme;
  repaint();
});
addEventListener("resize", giveUpRoom);
matchMedia("(prefers-color-scheme: dark)").addEventListener("change", repaint);

function repaint() {
  if (!state.answer) return;
  showAnswer(state.answer);
  marginChart(state.answer.margin, state.words);
  levelChart.draw();
}

async function begin() {
  state.shipped = await shippedLines();
  byId("shipped").replaceChildren(el("option", { value: "" }, "choose a line that comes with the program …"), ...state.shipped.map((line) => el("option", { value: line.name }, line.title)));
  wireHandover(state);
  const linked = await linkedText();
  const first = state.shipped[0];
  if (linked !== null) {
    await open(linked, "linked-line");
  } else if (first) {
    byId("shipped").value = first.name;
    await open(first.text, first.name);
  }
}

begin().catch(complain);
addEventListener("hashchange", () => linkedText().then((text) => text !== null && text !== state.text && open(text, "linked-line")).catch(complain));
