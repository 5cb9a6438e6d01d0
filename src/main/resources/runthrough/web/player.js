// Lets the course of the line pass: play, pause, jump, pace. One clock for drawing, chart and words.
import { byId, reducedMotion } from "./dom.js";
import { runningCoil } from "./drawing.js";
import { Race } from "./race.js";
import { apart, clock } from "./words.js";

/** A coil change is best watched in about so many seconds. */
const WATCHED = 9;

export class Player {
  /** `onTime(s)` is called with every instant that is shown, `onBeside(course)` with that of a second line, or null. */
  constructor(drawing, onTime, onBeside) {
    this.onBeside = onBeside;
    this.drawing = drawing;
    this.onTime = onTime;
    this.course = null;
    this.time = 0;
    this.playing = false;
    this.repeats = true;
    this.before = 0;
    this.race = new Race(byId("race"));
    byId("play").addEventListener("click", () => this.setPlaying(!this.playing));
    byId("next").addEventListener("click", () => this.step(1));
    byId("back").addEventListener("click", () => this.step(-1));
    byId("repeat").addEventListener("click", () => this.setRepeating(!this.repeats));
    byId("time").addEventListener("input", (event) => this.seek(Number(event.target.value)));
    document.addEventListener("visibilitychange", () => document.hidden && this.setPlaying(false));
  }

  /** A new course of the same line, or of one that was changed: it is at the same coil change, in step. */
  take(course, words) {
    const before = this.course;
    this.course = course;
    this.words = words;
    byId("time").min = String(course.begin);
    byId("time").max = String(course.end);
    if (before) this.time = course.inStepWith(before, this.time);
    else this.arrive();
    if (course.searched) this.worst = { of: course.searched, replication: course.replication, number: course.worst };
    write(byId("shown"), this.tellShown());
    this.watch();
    this.show();
  }

  /** Begins before the worst coil change, and moves unless less motion is wished for. */
  arrive() {
    const worst = this.course.changes.find((change) => change.number === this.course.worst);
    if (!worst) return;
    // What does not move is shown in the middle of the joint.
    this.seek(reducedMotion() ? (worst.stopped + worst.released) / 2 : this.course.span(worst)[0]);
    const ideal = (worst.released - worst.stopped) / WATCHED;
    const paces = [...byId("pace").options].map((option) => Number(option.value));
    const off = (pace) => Math.abs(Math.log(pace / ideal));
    byId("pace").value = String(paces.reduce((best, pace) => (off(pace) < off(best) ? pace : best)));
    this.setRepeating(true);
    this.setPlaying(!reducedMotion());
  }

  setPlaying(on) {
    const was = this.playing;
    this.playing = on && this.course !== null;
    byId("play").textContent = this.playing ? "Pause" : "Play";
    byId("play").setAttribute("aria-pressed", String(this.playing));
    if (!this.playing || was) return;
    if (this.time >= this.course.end) this.time = this.course.begin;
    this.before = performance.now();
    requestAnimationFrame((now) => this.frame(now));
  }

  /** Whether a coil change is shown again when it is over. */
  setRepeating(on) {
    this.repeats = on;
    this.watch();
    byId("repeat").setAttribute("aria-pressed", String(on));
  }

  frame(now) {
    if (!this.playing) return;
    const pace = Number(byId("pace").value);
    this.time += (Math.min(500, now - this.before) / 1000) * pace;
    this.before = now;
    const [from, to] = this.span ?? [0, Infinity];
    if (this.repeats && this.time > to) this.time = from;
    if (this.time >= this.course.end) {
      this.time = this.course.end;
      this.setPlaying(false);
    }
    this.show();
    // With less motion wished for, the picture moves in steps of a second.
    if (reducedMotion()) setTimeout(() => requestAnimationFrame((t) => this.frame(t)), 1000);
    else requestAnimationFrame((t) => this.frame(t));
  }

  /** To the next coil change, or to the one before. */
  step(steps) {
    const from = this.course?.raced(this.time);
    const to = from && this.course.changes.find((change) => change.number === from.number + steps);
    if (to) this.seek(to.start);
  }

  seek(time) {
    this.time = time;
    this.watch();
    this.show();
  }

  /** From here on the coil change of the present time is watched. */
  watch() {
    const watched = this.course?.raced(this.time);
    this.span = watched ? this.course.span(watched) : null;
  }

  /** Has a second line, drawn by `drawing`, run in step with the first; none where null. */
  accompany(beside) {
    this.beside = beside;
    this.onBeside(beside?.course ?? null);
    if (beside) this.show();
  }

  show() {
    if (!this.course || !this.course.t.length) return;
    const s = this.course.at(this.time);
    this.drawing.show(this.course, s);
    this.race.show(this.course, s, this.words);
    if (this.beside) {
      const { course, drawing, race, words } = this.beside;
      const other = course.at(course.inStepWith(this.course, this.time));
      drawing.show(course, other);
      race.show(course, other, words);
    }
    byId("time").value = String(this.time);
    write(byId("clock"), clock(this.time));
    write(byId("telling"), this.tell(s));
    write(byId("joints"), this.tellJoints(s));
    this.onTime(s);
  }

  /** Which coil change of the run it is. */
  tellShown() {
    const { replication, worst } = this.course;
    const isWorst = this.worst?.replication === replication && this.worst.number === worst;
    const of = isWorst ? `, the worst of ${apart(String(this.worst.of))} coil changes when last looked for` : "";
    return `The picture shows coil change ${worst} of replication ${replication + 1}${of}.`;
  }

  /** Where the joints are that are on their way. */
  tellJoints(s) {
    if (!this.drawing.look.joins) return "The line is threaded anew: there is no joint.";
    const on = this.course.jointsAt(s).map((joint) => {
      if (joint.broken) return `Joint ${joint.number} is broken, in the process.`;
      if (joint.ahead <= 0) return `Joint ${joint.number} is in the process, past it in ${this.words.length(joint.left)}.`;
      const when = joint.arrivesAt === null ? "" : `, there in ${this.words.time(joint.arrivesAt - s.time)}`;
      return `Joint ${joint.number}: ${this.words.length(joint.ahead)} of strip to the process${when}.`;
    });
    return on.join(" ") || "No joint is on its way.";
  }

  /** What happens now, in one sentence. */
  tell(s) {
    const coil = runningCoil(this.course, s);
    const change = s.change;
    const stored = this.course.stores;
    if (s.processState === "restart-delay") {
      const again = this.course.movesAgain(s.time);
      const left = again === null ? "" : ` for another ${this.words.time(again - s.time)}`;
      return stored ? `The accumulator holds enough again: the process stands${left}, its restart delay.` : `The strip stands${left}, the restart delay of the process.`;
    }
    if (s.processState === "starved" && stored) {
      if (s.processSpeed > 0) return "Starved stop: the accumulator is empty down to its stop level, and the process stops.";
      return change && s.time < change.released
        ? "Starved stop: the process stands until the joint is released and there is strip again."
        : "Starved stop: the process stands and waits for strip.";
    }
    if (s.processState === "joint-break") {
      return s.processSpeed > 0 ? "A joint has broken in the process, which stops." : "A joint has broken in the process, which stands for the repair; the entry goes on filling.";
    }
    if (s.processState === "downtime") return "Process downtime: the process stops for a reason of its own; the entry goes on filling.";
    if (s.processState === "slowed") return "The accumulator is low: the process runs slower to save strip.";
    if (s.entryState === "running-out") return `The tail of coil ${coil} comes into the joiner: the entry slows down.`;
    if (s.entryState === "standing" && this.course.passAt(s.time) > 1) return "The joint was rejected and is made again; the strip stands longer.";
    if (s.entryState === "standing") {
      const rest = change ? change.released - s.time : 0;
      return stored
        ? `Strip stands at the joiner for another ${this.words.time(rest)}; the process runs on stored strip.`
        : `Strip stands for another ${this.words.time(rest)}, and the process with it.`;
    }
    if (s.processState === "joint-passage") return "A joint passes the process, which runs slower for it.";
    if (s.entryState === "filling" && s.entrySpeed > s.processSpeed) return "The entry runs faster than the process: the accumulator fills again.";
    if (s.entryState === "settling") return "Nearly full: the entry comes down to the speed of the process.";
    return `Coil ${coil} runs, the entry as fast as the process.`;
  }
}

/** Sets a text, and the name of the time on its slider with it, only where it is another. */
function write(node, text) {
  if (node.textContent === text) return;
  node.textContent = text;
  if (node.id === "clock") byId("time").setAttribute("aria-valuetext", text);
}
