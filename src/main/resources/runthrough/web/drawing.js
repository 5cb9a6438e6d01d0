// The line as a picture that moves: uncoilers, joiner, accumulator in its own form at its exact level, process section. Drawn anew
// only when the line changes; moved by setting numbers.
import { svg } from "./dom.js";
import { Dial } from "./dial.js";
import { JointTravel } from "./joints.js";
import { Joiner, Process, Uncoilers } from "./machines.js";
import { raceAt } from "./race.js";
import { storage } from "./stores.js";

const MARK_EVERY = 30;

/** Where things stand, in px of the picture's own; on a phone they stand closer. */
const WIDE = {
  wide: 1200, tall: 430, strip: 300, coils: [78, 218], coil: 62, coilY: 190, joiner: 370, left: 470, right: 960, top: 82, middle: 735,
  process: 995, processWide: 170, pairs: 6, spiral: 210, inset: 70, lead: 60, box: 260, entryDial: { x: 370, y: 150, r: 46 }, processDial: { x: 1080, y: 140, r: 62 },
};
const NARROW = {
  wide: 720, tall: 440, strip: 300, coils: [62, 182], coil: 52, coilY: 190, joiner: 280, left: 345, right: 570, top: 100, middle: 480,
  process: 590, processWide: 120, pairs: 3, spiral: 120, inset: 40, lead: 24, box: 130, brief: true, entryDial: { x: 280, y: 165, r: 48 }, processDial: { x: 650, y: 165, r: 54 },
};
/** On screens that are no wider stands the narrow picture, as the style sheet has it. */
const PHONE = matchMedia("(max-width: 640px)");

export class Drawing {
  constructor(place) {
    this.place = place;
    this.root = svg("svg", { role: "group" });
    this.content = svg("g");
    this.grips = svg("g");
    this.root.append(this.content, this.grips);
    place.replaceChildren(this.root);
    this.onBuilt = () => {};
  }

  /**
   * Makes the picture for a line; `given` is its shape, from the program, `say` turns numbers into words, `fastest` is the full scale
   * of the process, `scale` how large its accumulator is against that of a line it stands beside.
   */
  build(given, say, fastest, scale = 1) {
    const look = { ...given, scale };
    Object.assign(this, { look, say, fastest });
    const frame = (this.frame = PHONE.matches ? NARROW : WIDE);
    this.root.setAttribute("viewBox", `0 0 ${frame.wide} ${frame.tall}`);
    this.root.setAttribute("aria-label", `${look.title}: uncoiler, joiner, ${look.form === "none" ? "" : "accumulator, "}process section`);
    this.place.classList.toggle("narrow", frame === NARROW);
    this.uncoilers = new Uncoilers(look, say, frame);
    this.joiner = new Joiner(look, say, frame);
    this.storage = storage(look, say, frame);
    this.process = new Process(look, frame);
    this.entryDial = new Dial(frame.entryDial, "entry speed", look.topSpeed * 1.05, say);
    this.processDial = new Dial(frame.processDial, "process speed", fastest, say);
    this.travel = new JointTravel(look, frame, this.joiner.right, this.storage, this.process.left, this.process.right);
    this.entryStrip = svg("path", { class: "strip" });
    this.entryMarks = svg("path", { class: "marks" });
    const out = `M ${this.storage.right} ${frame.strip} H ${frame.wide}`;
    this.exitMarks = svg("path", { class: "marks", d: out });
    this.content.replaceChildren(
      svg("path", { class: "floor", d: `M 0 324 H ${this.storage.gauge ? frame.left - 10 : frame.wide} M ${frame.right} 334 H ${frame.wide}` }),
      this.entryStrip, svg("path", { class: "strip", d: out }), this.storage.group, this.entryMarks, this.exitMarks,
      this.uncoilers.group, this.joiner.group, this.process.group, this.entryDial.group, this.processDial.group, this.travel.group);
    this.onBuilt();
  }

  /** Fits the picture to its place when that has become a phone's, or is none any more. */
  fit() {
    const isOther = this.look && PHONE.matches !== (this.frame === NARROW);
    if (isOther) this.build(this.look, this.say, this.fastest, this.look.scale);
    return isOther;
  }

  /** Shows the line at the instant `s` of `course`. */
  show(course, s) {
    if (!this.look) return;
    const race = raceAt(course, s);
    const active = this.uncoilers.show(course, s, runningCoil(course, s));
    this.joiner.show(course, s, race);
    this.storage.show(s, race);
    this.process.show(course, s);
    this.travel.show(course.jointsAt(s));
    this.entryDial.show(s.entrySpeed, this.look.topSpeed);
    this.processDial.show(s.processSpeed, s.rated);
    this.showStrip(active);
    const scale = this.say.pixelsPerMetre;
    this.entryMarks.setAttribute("stroke-dashoffset", String(-(s.entered * scale) % MARK_EVERY));
    this.exitMarks.setAttribute("stroke-dashoffset", String(-(s.processed * scale) % MARK_EVERY));
  }

  /** From the running coil to the accumulator; from the joiner only, where the tail lies in it. */
  showStrip(active) {
    const { strip, coilY } = this.frame;
    const to = `H ${this.storage.left}`;
    this.entryMarks.setAttribute("d", `M ${this.joiner.right} ${strip} ${to}`);
    this.entryStrip.setAttribute("d", active
      ? `M ${active.x} ${coilY + active.radius} Q ${active.x + 30} ${strip} ${active.x + 95} ${strip} ${to}`
      : `M ${this.joiner.x - 6} ${strip} ${to}`);
  }
}

/** Number of the coil that is on the line at `s`, from 1. */
export function runningCoil(course, s) {
  const change = s.change;
  if (!change) return course.changes[0]?.number ?? 1;
  return s.time >= change.released ? change.number + 1 : change.number;
}
