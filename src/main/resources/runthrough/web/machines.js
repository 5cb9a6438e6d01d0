// What stands along the line: uncoilers with their coils, the joiner, the process section, the people at their work.
import { svg } from "./dom.js";
import { write } from "./stores.js";

/** Two uncoilers at most are drawn, each with its coil at its real diameter: the places take turns. */
export class Uncoilers {
  constructor(look, say, frame) {
    this.look = look;
    this.say = say;
    this.frame = frame;
    this.perMetre = (2 * frame.coil) / look.largestDiameter;
    this.all = frame.coils.slice(0, look.uncoilers).map((x) => this.one(x));
    this.group = svg("g", {}, ...this.all.map((one) => one.group));
  }

  one(x) {
    const y = this.frame.coilY;
    const coil = svg("circle", { class: "coil", cx: x, cy: y, r: 10 });
    const core = svg("circle", { class: "core", cx: x, cy: y, r: 10 });
    const spoke = svg("path", { class: "frame" });
    const label = svg("text", { x, y: y - this.frame.coil - 32, "text-anchor": "middle" });
    const state = svg("text", { x, y: y - this.frame.coil - 14, "text-anchor": "middle", class: "faint" });
    const stand = svg("path", { class: "frame", d: `M ${x - 26} 322 L ${x} ${y} L ${x + 26} 322 Z` });
    const work = new Progress(x, 346);
    const people = new People(x - 36, 322);
    return { x, coil, core, spoke, label, state, work, people, group: svg("g", {}, stand, coil, core, spoke, label, state, work.group, people.group) };
  }

  show(course, s, running) {
    const active = (running - 1) % this.all.length;
    const isOut = s.entryState === "standing" && s.remaining === 0;
    const y = this.frame.coilY;
    this.all.forEach((one, i) => {
      const isRunning = i === active;
      const number = isRunning ? running : running + 1;
      const ready = isRunning || course.prepared(number, s.time);
      const kind = this.look.coils[course.kindOf?.[number - 1] ?? 0] ?? this.look.coils[0];
      const length = isRunning ? s.remaining : ready === null ? 0 : (course.usable?.[number - 1] ?? kind.length);
      const outer = diameter(kind, length);
      const inner = (kind.inner / 2) * this.perMetre;
      one.radius = Math.max(2, (outer / 2) * this.perMetre);
      one.coil.setAttribute("r", !isRunning && ready === null ? 0 : one.radius);
      one.core.setAttribute("r", inner);
      one.spoke.setAttribute("d", cross(one.x, y, inner - 2, isRunning ? (-2 * s.entered) / outer : 0));
      write(one.label, isRunning && !isOut ? `${this.frame.brief ? "" : `coil ${number}: `}${this.say.length(length)}` : `coil ${number}`);
      const prepares = isRunning && this.all.length > 1 ? undefined : course.workAt(s.time).find((work) => work.list === "prepare");
      write(one.state, isRunning ? (isOut ? "run out" : "running") : prepares ? "being prepared" : ready === null ? "not yet fetched" : ready ? "ready" : "waits");
      one.work.show(prepares, s, this.say);
      one.people.show(prepares?.people ?? 0);
    });
    return isOut ? null : this.all[active];
  }
}

/** Outer diameter (m) of what is left of a coil with `length` metres. */
function diameter(kind, length) {
  return Math.sqrt(kind.inner ** 2 + (4 * kind.thickness * length) / (Math.PI * kind.winding));
}

function cross(x, y, r, turn) {
  const c = r * Math.cos(turn);
  const d = r * Math.sin(turn);
  return `M ${x - c} ${y - d} L ${x + c} ${y + d} M ${x + d} ${y - c} L ${x - d} ${y + c}`;
}

/** A work element that is being done: its name and how much of it is. */
class Progress {
  constructor(x, y) {
    this.name = svg("text", { x, y, "text-anchor": "middle", class: "doing" });
    this.frame = svg("rect", { class: "frame", x: x - 50, y: y + 8, width: 100, height: 6 });
    this.bar = svg("rect", { class: "busy", x: x - 50, y: y + 8, width: 100, height: 6 });
    this.group = svg("g", {}, this.name, this.frame, this.bar);
  }

  show(work, s) {
    write(this.name, work ? short(work.name) : "");
    const isTimed = work && work.end !== null;
    this.frame.setAttribute("visibility", isTimed ? "visible" : "hidden");
    this.bar.setAttribute("width", isTimed ? String(100 * Math.max(0, Math.min(1, (s.time - work.start) / Math.max(1e-9, work.end - work.start)))) : "0");
  }
}

function short(name) {
  return name.length > 24 ? `${name.slice(0, 23)}…` : name;
}

const MOST_PEOPLE = 4;

/** People at work, standing with their feet at (x, y). */
class People {
  constructor(x, y, most = MOST_PEOPLE, kind = "person") {
    this.all = Array.from({ length: most }, (_, i) => svg("path", { class: kind, visibility: "hidden",
      transform: `translate(${x - i * 24} ${y}) scale(1.35)`,
      d: "M -6 0 V -18 M 6 0 V -18 M -7 -18 V -34 Q -7 -39 0 -39 Q 7 -39 7 -34 V -18 Z M -5 -46 A 5 5 0 1 1 5 -46 A 5 5 0 1 1 -5 -46 Z" }));
    this.group = svg("g", {}, ...this.all);
  }

  show(number) {
    this.all.forEach((person, i) => person.setAttribute("visibility", i < number ? "visible" : "hidden"));
  }
}

/** The joiner: what is being done at it, by whom, how much longer it takes, and whether the joint was rejected. */
export class Joiner {
  constructor(look, say, frame) {
    this.say = say;
    this.look = look;
    const x = (this.x = frame.joiner);
    this.right = x + 42;
    const body = svg("rect", { class: "steel", x: x - 42, y: 236, width: 84, height: 86, rx: 4 });
    this.head = svg("rect", { class: "busy", x: x - 7, y: 252, width: 14, height: 42 });
    const name = svg("text", { x, y: 346, "text-anchor": "middle", class: "big" }, look.joins ? "Joiner" : "Threading");
    this.left = svg("text", { x, y: frame.strip + (frame.brief ? 108 : 72), "text-anchor": "middle", class: "count" });
    this.doing = svg("text", { x, y: frame.strip + (frame.brief ? 133 : 95), "text-anchor": "middle", class: "doing at-joiner" });
    // A narrow picture has room for a word between the dial and the accumulator.
    this.brief = frame.brief;
    this.rejected = svg("text", { x, y: 228, "text-anchor": "middle", class: "halttext" });
    this.people = new People(x + 30, 336);
    this.idle = new People(x - 58, 322, 2, "person idle");
    this.group = svg("g", {}, body, this.head, name, this.left, this.doing, this.rejected, this.people.group, this.idle.group);
  }

  show(course, s, race) {
    const under = course.workAt(s.time);
    const standing = under.filter((one) => one.list !== "prepare");
    const waitsFor = under.find((one) => one.list === "prepare");
    const stands = race.stands;
    this.head.setAttribute("visibility", standing.length ? "visible" : "hidden");
    write(this.left, stands ? `${this.say.time(race.joint < 90 ? Math.round(race.joint) : race.joint)} of ${course.joins ? "joint" : "rethread"}` : "");
    write(this.doing, standing.length ? short(standing[0].name) : stands ? (waitsFor ? "waits for the next coil" : "waits for people") : s.entryState === "running-out" ? "the tail is coming" : "");
    const pass = course.passAt(s.time);
    write(this.rejected, pass > 1 ? (this.brief ? `rejected${pass > 2 ? ` ${pass - 1} ×` : ""}` : pass === 2 ? "joint rejected, made again" : `joint rejected ${pass - 1} times`) : "");
    this.people.show(standing.reduce((most, one) => Math.max(most, one.people), 0));
    // Those of the crew who do nothing at the coil change now; with shifts they are not counted.
    this.idle.show(course.crew === null ? 0 : course.crew - under.reduce((sum, one) => sum + one.people, 0));
  }
}

/** The process section: rolls that turn with the strip, and what holds it. */
export class Process {
  constructor(look, frame) {
    this.strip = frame.strip;
    this.left = frame.process;
    this.right = frame.process + frame.processWide;
    const middle = (this.left + this.right) / 2;
    const box = svg("rect", { class: "steel", x: this.left, y: 238, width: frame.processWide, height: 96, rx: 6 });
    const stands = Math.round((frame.processWide - 30) / 40);
    this.rolls = Array.from({ length: stands }, (_, i) => {
      const cx = this.left + 27 + i * 40;
      const hub = svg("path", { class: "frame" });
      return { cx, hub, group: svg("g", {}, svg("circle", { class: "roll", cx, cy: this.strip - 15, r: 13 }), svg("circle", { class: "roll", cx, cy: this.strip + 15, r: 13 }), hub) };
    });
    this.state = svg("text", { x: frame.wide - 6, y: frame.brief ? 408 : 382, "text-anchor": "end", class: "halttext count" });
    this.group = svg("g", { class: "process" }, box, ...this.rolls.map((roll) => roll.group),
      svg("text", { x: middle, y: 356, "text-anchor": "middle", class: "big" }, "Process"), this.state);
  }

  show(course, s) {
    write(this.state, processWord(s, course.stores));
    this.state.classList.toggle("planned", s.processState === "joint-passage");
    this.group.classList.toggle("standing", !(s.processSpeed > 0));
    const turn = s.processed * 3;
    for (const roll of this.rolls) roll.hub.setAttribute("d", cross(roll.cx, this.strip - 15, 9, turn));
  }
}

function processWord(s, stores) {
  const moves = s.processSpeed > 0;
  switch (s.processState) {
    case "downtime": return moves ? "downtime, stopping" : "process downtime";
    case "joint-break": return moves ? "JOINT BREAK, stopping" : "JOINT BREAK, repair";
    case "restart-delay": return "stopped, restart delay";
    case "starved":
      if (!stores) return moves ? "" : "STOPPED";
      return moves ? "starved, stopping" : "STARVED, stopped";
    case "slowed": return "slowed to save strip";
    case "joint-passage": return "slow for the joint";
    default: return "";
  }
}
