// Puts the page together: one scenario text, read by the program after every change, and everything shown from its answers.
import { ask, attached, Latest, shippedLines, Turns } from "./api.js";
import { giveUpRoom, showAnswer, showList, showNoAnswer } from "./answer.js";
import { curveChart, LevelChart, marginChart } from "./charts.js";
import { byId, el, isTyping } from "./dom.js";
import { Drawing } from "./drawing.js";
import { Files } from "./files.js";
import { Fixes } from "./fixes.js";
import { CapacityGrip, SpeedGrip } from "./grips.js";
import { lineOf, linkedLine, wireHandover, wireMenus } from "./handover.js";
import { History } from "./history.js";
import { Inputs } from "./inputs.js";
import { job } from "./jobs.js";
import { LineMap } from "./map.js";
import { Pins } from "./pins.js";
import { Player } from "./player.js";
import { Presentation } from "./presentation.js";
import { Projects } from "./projects.js";
import { NewLine } from "./newline.js";
import { Studies } from "./studies.js";
import { onPart, showPart } from "./tabs.js";
import { Course } from "./trace.js";
import { Words } from "./words.js";
import { Worth } from "./worth.js";

const state = { text: "", name: "line", units: "metric", line: null, answer: null, curve: null, waiting: null };
const history = new History(() => {
  offerSteps();
  projects?.keep();
});
const reading = new Latest();
/** What makes another line of the one at hand: what was begun before is not overtaken, nor comes late. */
const turns = new Turns();
const answering = new Latest();
const curving = new Latest();
let drawn = 0;
let projects = null;

const drawing = new Drawing(byId("drawing"));
const levelChart = new LevelChart((time) => player.seek(time));
const player = new Player(drawing, (s) => {
  levelChart.move(s.time, player.span);
  capacityGrip.place();
}, (course) => levelChart.accompany(course));
const inputs = new Inputs(change);
inputs.onText = (text) => read(text).catch(complain);
const capacityGrip = new CapacityGrip(drawing, inputs);
const speedGrip = new SpeedGrip(drawing, inputs);
const page = {
  state, history, player, open: openOther, read, use, take: (...line) => turns.run(() => take(...line)), complain, fastest, restore, idle,
  opened: () => inputs.opened,
  isSettled: () => document.body.dataset.settled === "true",
};
const fixes = new Fixes(page);
const map = new LineMap(state);
const pins = new Pins(page);
const worth = new Worth(page);
projects = new Projects(page);
const studies = new Studies(state);
new Files(page, studies);
new NewLine(page);
new Presentation(inputs, player, fit);
drawing.onBuilt = updateGrips;

/** From a text that cannot be run, which is no step, there is a way back too. */
function offerSteps() {
  byId("undo").disabled = history.at <= 0 && state.text === history.now;
  byId("redo").disabled = history.at >= history.texts.length - 1;
}

/** Full scale (m/s) of the dials of the process: as fast as its slider goes. */
function fastest() {
  return inputs.ends.get("rated-speed")?.[1] ?? 2 * (inputs.opened.get("rated-speed") ?? 1);
}

function updateGrips() {
  capacityGrip.update();
  speedGrip.update();
}

// ---- what the text says -------------------------------------------------------------------------------------------

/** Opens another line, in the units that it asks for itself. */
function open(text, name, files) {
  reading.stop();
  return turns.run(() => openNow(text, name, files));
}

async function openNow(text, name, files = []) {
  state.name = name;
  state.curve = null;
  attached.files = files;
  player.setPlaying(false);
  player.course = null;
  pins.drop();
  giveUpRoom();
  byId("kept").hidden = true;
  fixes.found = null;
  worth.forget(text);
  inputs.open(null, text);
  history.open(text, name, files);
  const line = await readNow(text, true);
  // What was changed in the meantime was of the line before.
  state.waiting = null;
  if (line) {
    inputs.open(line, state.text);
    inputs.take(line, state.text);
    map.offer(line);
  }
}

/** Opens a line that does not come with the program. */
async function openOther(text, name) {
  byId("shipped").value = "";
  await open(text, name);
}

/** Has `text` read, and everything shown anew. */
function read(text) {
  reading.stop();
  return turns.run(() => readNow(text));
}

/** The line `text` with `files`, in the place of the one at hand, which may be lacking them. */
function use({ text, files }, isLacking = false) {
  reading.stop();
  return turns.run(() => {
    if (files !== attached.files) history.attach(files, isLacking);
    attached.files = files;
    return readNow(text);
  });
}

/** Has `text` read in the units of the page, or in its own where `asItSays`. */
async function readNow(text, asItSays = false) {
  const line = await reading.run(async (signal) => {
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
  state.movedAt = Date.now();
  if (state.sending) return;
  state.sending = true;
  turns.run(send);
}

async function send() {
  while (state.waiting) {
    const { waiting: changes, sliding, movedAt } = state;
    state.waiting = null;
    try {
      const reply = await ask("/api/edit", { text: state.text, changes, units: state.units });
      if (reply.line) take(reply.text, reply.line, changes.map((one) => one.path), sliding, movedAt);
    } catch (e) {
      complain(e);
    }
  }
  state.sending = false;
  inputs.work.settled();
}

function take(text, line, tried, isSliding = false, movedAt = Date.now()) {
  const faulty = line.problems.length > 0;
  const isRefused = faulty && tried.length > 0;
  const at = document.activeElement.getBoundingClientRect().top;
  byId("faults").hidden = !faulty;
  byId("faults").classList.toggle("slim", isRefused);
  byId("faults-title").textContent = tried.length ? "This change cannot be made; the line stays as it was" : "This line cannot be run as described";
  showList("faults", "fault-list", line.problems.map((problem) => problem.whole));
  if (isRefused) {
    // A value that breaks the line is shown at its field; the line that can be run stays on the page, with its answer.
    inputs.faults(line.problems, tried);
    // Where somebody is at work stays where it is, with what is wrong in sight.
    scrollBy({ top: document.activeElement.getBoundingClientRect().top - at, behavior: "instant" });
    inputs.place(tried)?.scrollIntoView({ block: "nearest", behavior: "instant" });
    return;
  }
  state.text = text;
  leaveLink();
  for (const one of [curving, fixes.running, map.running, pins, worth, studies]) one.stop();
  if (faulty) {
    // Nothing of another line stays where this one has no answer.
    answering.stop();
    noAnswer("Mend what is listed below.");
    byId("title").textContent = state.name;
    byId("text").value = text;
    showPart("text");
    offerSteps();
    return;
  }
  history.take(text, isSliding ? tried.join() : "", movedAt);
  offerSteps();
  line.look = { ...line.look, ...line.look.sizes };
  state.line = line;
  state.words = new Words(line.units);
  byId("title").textContent = line.title;
  byId("what").textContent = purpose(line.look);
  document.title = `${line.title} – Runthrough`;
  inputs.faults([], tried);
  inputs.take(line, text);
  pins.offer(line);
  forget();
  answer();
}

/** The address keeps a link only as long as its line is shown: from the first change on, a reload keeps the work. */
function leaveLink() {
  if (state.linked === undefined || state.linked === lineOf(state.text, attached.files)) return;
  state.linked = undefined;
  window.history.replaceState(null, "", location.pathname + location.search);
}

/** What a stranger has to know of the line. */
function purpose(look) {
  if (look.form === "none") return "One strip runs from the uncoiler to the process: nothing is stored, so every coil change stops it.";
  return `Strip is stored in the accumulator, ${state.words.length(look.capacity)} when full. From it the process runs on while the next coil is joined.`;
}

/** What was found for the line before is none of this one's. */
function forget() {
  fixes.forget();
  map.forget();
  studies.forget();
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
  worth.wait();
  document.body.dataset.settled = "false";
  answering.run(async (signal) => {
    const body = { text: state.text, units: state.units };
    const quick = await ask("/api/answer", { ...body, effort: 0 }, signal);
    inputs.fit(quick.lever);
    show(quick, true, 0);
    // The same coil change as before: with the same random numbers one sees what the change does to it.
    const same = player.course ? { replication: player.course.replication, change: player.course.worst } : {};
    showCourse(new Course(await ask("/api/course", { ...body, ...same }, signal)));
    const ends = await sliderEnds(body, signal);
    const isAsOpened = inputs.ends.size > 0 || (inputs.openedText ?? body.text) === body.text;
    const isFirst = inputs.ends.size === 0;
    inputs.reach(ends, isAsOpened ? ends : await sliderEnds({ ...body, text: inputs.openedText, files: history.openedFiles }, signal));
    if (isFirst) drawing.build(state.line.look, state.words, fastest());
    updateGrips();
    for (let effort = 1; effort <= quick.efforts; effort++) {
      await idle(signal);
      show(await ask("/api/answer", { ...body, effort }, signal), effort < quick.efforts, effort);
    }
    pins.refine();
    worth.work();
    if (state.line.look.form !== "none") drawCurve();
  }).catch(complain);
}

/** How far the sliders go; where that takes too long they wait for the next change, and the answer stands. */
function sliderEnds(body, signal) {
  return ask("/api/sliders", body, signal).catch((e) => {
    if (e.name === "AbortError") throw e;
    return {};
  });
}

/** The page appears with the first thing that it has to say. */
function reveal() {
  document.body.classList.remove("unread");
}

function show(given, refining, effort) {
  reveal();
  document.body.classList.remove("faulty");
  state.answer = given;
  state.drawnAt = ++drawn;
  given.refining = refining && given.chance;
  given.effort = effort;
  showAnswer(given);
  marginChart(given.margin, state.words);
  pins.show();
  document.body.dataset.answers = String(drawn);
  document.body.dataset.settled = String(!given.refining);
}

function showCourse(course) {
  drawing.build(state.line.look, state.words, fastest());
  levelChart.take(course, state.words, state.line.look);
  player.take(course, state.words);
  pins.accompany();
}

/** To another coil change of the run: the worst of the line as it now is, where `which` says none. */
async function goTo(which = {}) {
  const { text, units } = state;
  const given = await ask("/api/course", { text, units, ...which });
  if (state.text !== text || state.units !== units) return;
  player.course = null;
  showCourse(new Course(given));
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
  curving.run((signal) => job("curve", { text, units: state.units }, (done) => {
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

// ---- the bar ------------------------------------------------------------------------------------------------------

/** Goes to the text of the history that `way()` leads to, if there is one. */
const goBy = (way) => turns.run(() => {
  const text = way();
  if (text === undefined) return null;
  attached.files = history.files;
  return readNow(text);
}).catch(complain);
const undo = (steps) => goBy(() => history.move(steps < 0 && state.text !== history.now ? 0 : steps));
byId("reset").addEventListener("click", () => goBy(() => history.reopen()));
byId("undo").addEventListener("click", () => undo(-1));
byId("redo").addEventListener("click", () => undo(1));
/** Within what is being typed, and in what is no value of the line, the browser undoes. */
const isOfLine = (target) => !target.closest?.("dialog") && (!target.matches?.("input[type=text], textarea") || (target.closest(".field, .element") && !isTyping(target)));
addEventListener("keydown", (event) => {
  if (!(event.ctrlKey || event.metaKey) || !isOfLine(event.target)) return;
  const key = event.key.toLowerCase();
  if (key !== "z" && key !== "y") return;
  event.preventDefault();
  // What was refused is taken back first.
  if (event.target.getAttribute?.("aria-invalid")) turns.run(() => readNow(state.text)).catch(complain);
  else undo(key === "y" || event.shiftKey ? 1 : -1);
});
byId("shipped").addEventListener("change", (event) => {
  const one = state.shipped.find((line) => line.name === event.target.value);
  if (one) open(one.text, one.name).catch(complain);
});
byId("units").addEventListener("change", (event) => {
  state.units = event.target.value;
  inputs.shape = null;
  turns.run(() => readNow(state.text)).then(() => pins.take(history.pinned)).catch(complain);
});
byId("theme").addEventListener("change", (event) => {
  document.documentElement.dataset.theme = event.target.value;
  if (!event.target.value) delete document.documentElement.dataset.theme;
  repaint();
});
byId("worst").addEventListener("click", () => goTo().catch(complain));
byId("first").addEventListener("click", () => goTo({ replication: 0, change: 1 }).catch(complain));
addEventListener("resize", fit);
byId("print").addEventListener("click", () => print());
addEventListener("beforeprint", () => {
  byId("printed").textContent = `Runthrough, ${new Date().toLocaleString("en-GB", { dateStyle: "long", timeStyle: "short" })}: ${state.name}.yaml`;
  // A box prints no more than it shows.
  byId("printed-text").textContent = byId("text").value;
});

/** Another width of the page. */
function fit() {
  giveUpRoom();
  if (drawing.fit()) player.show();
}

addEventListener("pagehide", () => [curving, fixes.running, map.running, pins, worth, studies].forEach((one) => one.stop()));
onPart((name) => {
  // A chart that was drawn where it had no room is drawn anew.
  if (name === "charts" && state.curve) curveChart(state.curve, state.words);
});
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
  wireMenus();
  const linked = await linkedLine();
  const kept = History.kept();
  const first = state.shipped[0];
  // A reload right after the link was made: the work is there, and with it what can be undone.
  const isOwn = linked !== null && kept && lineOf(kept.texts[kept.at], kept.files) === lineOf(linked.text, linked.files);
  if (linked !== null && !isOwn) {
    state.linked = lineOf(linked.text, linked.files);
    await open(linked.text, "linked-line", linked.files);
  } else if (kept) {
    await restore(kept);
    state.linked = linked ? lineOf(linked.text, linked.files) : undefined;
  } else if (first) {
    byId("shipped").value = first.name;
    await open(first.text, first.name);
  }
}

/** The line as it was left in this browser, with what can be undone and what was pinned. */
async function restore(kept) {
  reading.stop();
  await turns.run(() => restoreNow(kept));
  if (kept.pins.length) await pins.take(history.pinned);
}

async function restoreNow(kept) {
  await openNow(kept.opened, kept.name, kept.sets[0]);
  byId("shipped").value = state.shipped.some((line) => line.name === kept.name && line.text === kept.opened) ? kept.name : "";
  const text = kept.texts[kept.at];
  history.restore(kept);
  attached.files = history.files;
  byId("kept").hidden = text === kept.opened && !kept.pins.length;
  if (text !== kept.opened || kept.files !== kept.sets[0]) await readNow(text);
}

begin().catch(complain);
addEventListener("hashchange", () => linkedLine().then((line) => {
  const linked = line && lineOf(line.text, line.files);
  if (line === null || linked === lineOf(state.text, attached.files)) return null;
  state.linked = linked;
  return open(line.text, "linked-line", line.files);
}).catch(complain));
