// Lets the course of the line pass: play, pause, jump, pace. One clock for drawing, chart and words.
import { byId, reducedMotion } from "./dom.js";
import { clock } from "./words.js";
import { runningCoil } from "./drawing.js";

export class Player {
  constructor(drawing, onTime) {
    this.drawing = drawing;
    this.onTime = onTime;
    this.course = null;
    this.time = 0;
    this.playing = false;
    this.before = 0;
    byId("play").addEventListener("click", () => this.setPlaying(!this.playing));
    byId("next").addEventListener("click", () => this.jump(this.course?.nextChange(this.time)));
    byId("back").addEventListener("click", () => this.jump(this.course?.changeBefore(this.time)));
    byId("time").addEventListener("input", (event) => this.seek(Number(event.target.value)));
    document.addEventListener("visibilitychange", () => document.hidden && this.setPlaying(false));
  }

  /** A new course; the clock stays where it was, or goes to just before the first coil change. */
  take(course, words) {
    const first = this.course === null;
    this.course = course;
    this.words = words;
    const slider = byId("time");
    slider.max = String(course.end);
    if (first) this.time = Math.max(0, (course.changes[0]?.start ?? 0) - 8);
    this.time = Math.min(this.time, course.end);
    this.show();
  }

  setPlaying(on) {
    this.playing = on && this.course !== null;
    byId("play").textContent = this.playing ? "Pause" : "Play";
    byId("play").setAttribute("aria-pressed", String(this.playing));
    if (this.playing) {
      if (this.time >= this.course.end) this.time = 0;
      this.before = performance.now();
      requestAnimationFrame((now) => this.frame(now));
    }
  }

  frame(now) {
    if (!this.playing) return;
    const pace = Number(byId("pace").value);
    this.time += ((now - this.before) / 1000) * pace;
    this.before = now;
    if (this.time >= this.course.end) {
      this.time = this.course.end;
      this.setPlaying(false);
    }
    this.show();
    // With less motion wished for, the picture moves in steps of a second.
    if (reducedMotion()) setTimeout(() => requestAnimationFrame((t) => this.frame(t)), 1000);
    else requestAnimationFrame((t) => this.frame(t));
  }

  jump(change) {
    if (!change) return;
    this.seek(change.start);
  }

  seek(time) {
    this.time = time;
    this.show();
  }

  show() {
    if (!this.course || !this.course.t.length) return;
    const s = this.course.at(this.time);
    this.drawing.show(this.course, s);
    byId("time").value = String(this.time);
    byId("time").setAttribute("aria-valuetext", clock(this.time));
    byId("clock").textContent = clock(this.time);
    const said = this.tell(s);
    if (byId("telling").textContent !== said) byId("telling").textContent = said;
    const joints = this.tellJoints(s);
    if (byId("joints").textContent !== joints) byId("joints").textContent = joints;
    this.onTime(s);
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
