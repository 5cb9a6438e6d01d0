// Puts the page together: one scenario text, read by the program after every change, and everything shown from its answers.
import { ask, Latest, shippedLines } from "./api.js";
import { giveUpRoom, showAnswer, showList, showNoAnswer, showPinned } from "./answer.js";
import { curveChart, LevelChart, marginChart } from "./charts.js";
import { byId, el } from "./dom.js";
import { Drawing } from "./drawing.js";
import { linkedText, wireHandover } from "./handover.js";
import { History } from "./history.js";
import { Inputs } from "./inputs.js";
import { job } from "./jobs.js";
import { Player } from "./player.js";
import { Course } from "./trace.js";
import { Words } from "./words.js";

const state = { text: "", name: "line", units: "metric", line: null, answer: null, curve: null, pins: [], waiting: null };
const history = new History(() => {
  byId("undo").disabled = history.at <= 0;
  byId("redo").disabled = history.at >= history.texts.length - 1;
});
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

/** Opens another line, in the units that it asks for itself. */
async function open(text, name) {
  state.name = name;
  state.pins = [];
  state.curve = null;
  player.setPlaying(false);
  player.course = null;
  giveUpRoom();
  byId("kept").hidden = true;
  state.found = null;
  inputs.open(null, text);
  history.open(text, name);
  const line = await read(text, true);
  if (line) {
    inputs.open(line, state.text);
    inputs.take(line, state.text);
    fillMapChoices(line);
  }
}

/** Has `text` read, and everything shown anew; in its own units where `asItSays`. */
async function read(text, asItSays = false) {
  const line = await editing.run(async (signal) => {
    const said = await ask("/api/line", { text, units: state.units }, signal);
    if (!asItSays || !said.system || said.system === state.units) return said;
    state.units = byId("units").value = said.system;
    return ask("/api/line", { text, units: state.units }, signal);
  });
  if (line) take(text, line, []);
  return line?.problems.length ? null : line;
}

/** Changes come faster than answers while a slider moves: those that wait are put together, and are undone as one. */
function change(changes, isSliding = false) {
  const before = (state.waiting ?? []).filter((one) => !changes.some((other) => other.path === one.path));
  state.waiting = [...before, ...changes];
  state.sliding = isSliding;
  if (!state.sending) send();
}

async function send() {
  state.sending = true;
  while (state.waiting) {
    const { waiting: changes, sliding } = state;
    state.waiting = null;
    try {
      const reply = await ask("/api/edit", { text: state.text, changes, units: state.units });
      if (reply.line) take(reply.text, reply.line, changes.map((one) => one.path), sliding);
    } catch (e) {
      complain(e);
    }
  }
  state.sending = false;
}

function take(text, line, tried, isSliding = false) {
  const faulty = line.problems.length > 0;
  byId("faults").hidden = !faulty;
  byId("faults-title").textContent = tried.length ? "This change cannot be made; the line stays as it was" : "This line cannot be run as described";
  showList("faults", "fault-list", line.problems.map((problem) => problem.whole));
  if (faulty && tried.length) {
    // A value that breaks the line is shown at its field; the line that can be run stays on the page, with its answer.
    inputs.faults(line.problems, tried);
    return;
  }
  state.text = text;
  for (const one of Object.values(side)) one.stop();
  if (faulty) {
    // Nothing of another line stays where this one has no answer.
    answering.stop();
    noAnswer("Mend what is listed below.");
    byId("title").textContent = state.name;
    byId("text").value = text;
    byId("as-text").open = true;
    return;
  }
  history.take(text, isSliding ? tried.join() : "");
  line.look = { ...line.look, ...line.look.sizes };
  state.line = line;
  state.words = new Words(line.units);
  byId("title").textContent = line.title;
  document.title = `${line.title} – Runthrough`;
  inputs.take(line, text);
  inputs.faults([], tried);
  forget();
  answer();
}

/** What was found for the line before is none of this one's. */
function forget() {
  const isFilled = (id) => byId(id).childElementCount > 0;
  if (isFilled("fixes") && !showFixes()) byId("fixes").replaceChildren(el("p", { class: "hint" }, "The line has changed since: find it anew."));
  if (isFilled("map-picture")) byId("map-note").textContent = "The line has changed since: draw the map anew.";
  byId("map-picture").replaceChildren();
  state.curve = null;
  byId("curve-chart").replaceChildren();
  byId("curve-note").textContent = state.line.look.form === "none" ? "This line has no accumulator." : "";
}

/** Says why there is no answer, and takes away what would belong to another line. */
function noAnswer(why) {
  reveal();
  state.answer = null;
  player.setPlaying(false);
  document.body.classList.add("faulty");
  showNoAnswer(why);
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
    const ends = await ask("/api/sliders", body, signal);
    const isAsOpened = inputs.ends.size > 0 || (inputs.openedText ?? body.text) === body.text;
    inputs.reach(ends, isAsOpened ? ends : await ask("/api/sliders", { ...body, text: inputs.openedText }, signal));
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
  document.body.classList.remove("faulty");
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
  }, signal)).then((curve) => {
    state.curve = curve ?? null;
    if (curve) curveChart(curve, state.words);
  }).catch((e) => {
    byId("curve-note").textContent = e.message;
  });
}

function complain(e) {
  if (e.name === "AbortError") return;
  noAnswer(/fetch|network/i.test(e.message) ? "The program does not answer. Is it still running?" : e.message);
  console.error(e);
}

// ---- what would fix it, and the map -------------------------------------------------------------------------------

byId("fix").addEventListener("click", () => {
  const place = byId("fixes");
  const { text, units } = state;
  place.replaceChildren(el("p", { class: "hint" }, "Trying …"));
  side.fixes.run((signal) => job("fixes", { text, units }, (done) => {
    place.replaceChildren(el("p", { class: "hint" }, `Trying: ${Math.round(100 * done)} % done …`));
  }, signal)).then((reply) => {
    if (!reply) return;
    state.found = { ...reply, text, units, tried: new Map() };
    showFixes();
  }).catch((e) => place.replaceChildren(el("p", {}, e.message)));
});

/** Shows the fixes that were found for this line, or for the one that has one of them now; false where there are none. */
function showFixes() {
  const { found, text, units } = state;
  const isOfThis = found?.units === units && (text === found.text || [...found.tried.values()].includes(text));
  if (!isOfThis) return false;
  const place = byId("fixes");
  const at = [...place.querySelectorAll("button")].indexOf(document.activeElement);
  place.replaceChildren(el("p", { class: "hint" }, found.words), el("div", { class: "fixes" }, ...found.fixes.map((fix) => {
    const isTried = text !== found.text && found.tried.get(fix) === text;
    const [does, run] = isTried ? ["Take it back", () => read(found.text)] : ["Try it", () => tryFix(fix)];
    return el("div", {}, el("p", {}, fix.words), el("button", { type: "button", "aria-label": `${does}: ${fix.words}`, onclick: () => run().catch(complain) }, does));
  })));
  place.querySelectorAll("button")[at]?.focus();
  return true;
}

/** Each fix on its own: one that was tried before is taken back with it. */
async function tryFix(fix) {
  const { found } = state;
  const reply = await ask("/api/edit", { text: found.text, changes: fix.changes, units: found.units });
  found.tried.set(fix, reply.text);
  take(reply.text, reply.line, fix.changes.map((one) => one.path));
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
      byId("map-picture").replaceChildren(el("img", { class: "printed", src: `data:image/svg+xml;charset=utf-8,${encodeURIComponent(map.svg)}`, alt: map.words }));
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

const MOST_PINS = 4;

byId("pin").addEventListener("click", () => {
  if (state.pins.length === MOST_PINS) state.pins.shift();
  state.pins.push({ text: state.text, answer: state.answer, line: state.line });
  keepPins();
  byId("pinned").scrollIntoView({ block: "nearest" });
});

function keepPins() {
  history.pins = state.pins.map((pin) => pin.text);
  history.keep();
  pinned();
}

/** Pinned lines from their texts, with answers in the present units. */
async function readPins(texts) {
  state.pins = await Promise.all(texts.map(async (text) => {
    const body = { text, units: state.units };
    const [line, given] = await Promise.all([ask("/api/line", body), ask("/api/answer", { ...body, effort: 0 })]);
    return { text, line, answer: given };
  }));
  pinned();
}

function pinned() {
  showPinned(state.pins, state.line, state.answer, {
    use: (at) => read(state.pins[at].text).catch(complain),
    remove: (at) => {
      state.pins.splice(at, 1);
      keepPins();
    },
  });
}

// ---- the bar ------------------------------------------------------------------------------------------------------

byId("reset").addEventListener("click", () => read(history.opened).catch(complain));
const undo = (steps) => {
  const text = history.move(steps);
  if (text !== undefined) read(text).catch(complain);
};
byId("undo").addEventListener("click", () => undo(-1));
byId("redo").addEventListener("click", () => undo(1));
addEventListener("keydown", (event) => {
  const isTyping = event.target.matches?.("input[type=text], textarea");
  if (isTyping || !(event.ctrlKey || event.metaKey)) return;
  const key = event.key.toLowerCase();
  if (key !== "z" && key !== "y") return;
  event.preventDefault();
  undo(key === "y" || event.shiftKey ? 1 : -1);
});
byId("shipped").addEventListener("change", (event) => {
  const one = state.shipped.find((line) => line.name === event.target.value);
  if (one) open(one.text, one.name).catch(complain);
});
byId("open").addEventListener("click", () => byId("file").click());
byId("file").addEventListener("change", async (event) => {
  const [file] = event.target.files;
  byId("shipped").value = "";
  if (file) await open(await file.text(), file.name.replace(/\.ya?ml$/i, "")).catch(complain);
  event.target.value = "";
});
byId("units").addEventListener("change", (event) => {
  state.units = event.target.value;
  inputs.shape = null;
  read(state.text).then(() => readPins(history.pins)).catch(complain);
});
byId("theme").addEventListener("change", (event) => {
  document.documentElement.dataset.theme = event.target.value;
  if (!event.target.value) delete document.documentElement.dataset.theme;
  repaint();
});
addEventListener("resize", giveUpRoom);
addEventListener("pagehide", () => Object.values(side).forEach((one) => one.stop()));
matchMedia("(prefers-color-scheme: dark)").addEventListener("change", repaint);

function repaint() {
  if (!state.answer) return;
  showAnswer(state.answer);
  marginChart(state.answer.margin, state.words);
  levelChart.draw();
  if (state.curve) curveChart(state.curve, state.words);
}

async function begin() {
  state.shipped = await shippedLines();
  byId("shipped").replaceChildren(el("option", { value: "" }, "choose a line that comes with the program …"), ...state.shipped.map((line) => el("option", { value: line.name }, line.title)));
  wireHandover(state);
  const linked = await linkedText();
  const kept = History.kept();
  const first = state.shipped[0];
  if (linked !== null) {
    await open(linked, "linked-line");
  } else if (kept) {
    await restore(kept);
  } else if (first) {
    byId("shipped").value = first.name;
    await open(first.text, first.name);
  }
}

/** The line as it was left in this browser, with what can be undone and what was pinned. */
async function restore(kept) {
  await open(kept.opened, kept.name);
  byId("shipped").value = state.shipped.some((line) => line.name === kept.name && line.text === kept.opened) ? kept.name : "";
  const text = kept.texts[kept.at];
  history.restore(kept);
  byId("kept").hidden = text === kept.opened && !kept.pins.length;
  if (text !== kept.opened) await read(text);
  if (kept.pins.length) await readPins(kept.pins);
}

begin().catch(complain);
addEventListener("hashchange", () => linkedText().then((text) => text !== null && text !== state.text && open(text, "linked-line")).catch(complain));
