// The line as a picture that moves: uncoilers with the coil's real remaining diameter, joiner, accumulator in its own form at
// its exact level, process section. Drawn anew only when the line changes; moved by setting numbers.
import { svg } from "./dom.js";

const WIDE = 1200;
const TALL = 430;
const STRIP_Y = 300;
const MARK_EVERY = 30;
/** A joint: a diamond across the strip, so that it is known by its shape where there are no colours. */
const JOINT = "M 0 -11 L 8 0 L 0 11 L -8 0 Z";

export class Drawing {
  constructor(place) {
    this.place = place;
    this.root = null;
  }

  /** Makes the picture for a line; `look` is its shape, from the program, `say` turns numbers into words. */
  build(look, say) {
    this.look = look;
    this.say = say;
    this.root = svg("svg", {
      viewBox: `0 0 ${WIDE} ${TALL}`,
      role: "img",
      "aria-label": `${look.title}: uncoiler, joiner, ${look.form === "none" ? "" : "accumulator, "}process section`,
    });
    this.uncoilers = this.buildUncoilers();
    this.joiner = this.buildJoiner();
    this.storage = look.form === "none" ? new Plain(look) : STORES[look.form](look, say);
    this.process = this.buildProcess();
    this.travel = new JointTravel(look, this.joiner.x + 42, this.storage, this.process.left, this.process.right);
    this.entryStrip = svg("path", { class: "strip" });
    this.entryMarks = svg("path", { class: "marks" });
    this.exitStrip = svg("path", { class: "strip", d: `M ${this.storage.right} ${STRIP_Y} H ${WIDE}` });
    this.exitMarks = svg("path", { class: "marks", d: `M ${this.storage.right} ${STRIP_Y} H ${WIDE}` });
    this.root.append(
      this.entryStrip, this.exitStrip, this.storage.group, this.entryMarks, this.exitMarks,
      ...this.uncoilers.map((one) => one.group), this.joiner.group, this.process.group,
      this.travel.group);
    this.place.replaceChildren(this.root);
  }

  buildUncoilers() {
    const shown = Math.min(2, this.look.uncoilers);
    return Array.from({ length: shown }, (_, i) => {
      const x = 95 + i * 150;
      const coil = svg("circle", { class: "coil", cx: x, cy: 190, r: 10 });
      const core = svg("circle", { class: "core", cx: x, cy: 190, r: 10 });
      const spoke = svg("path", { class: "frame" });
      const label = svg("text", { x, y: 95, "text-anchor": "middle" });
      const state = svg("text", { x, y: 113, "text-anchor": "middle", class: "faint" });
      const stand = svg("path", { class: "frame", d: `M ${x - 26} 322 L ${x} 190 L ${x + 26} 322 Z` });
      return { x, coil, core, spoke, label, state, group: svg("g", {}, stand, coil, core, spoke, label, state) };
    });
  }

  buildJoiner() {
    const x = 370;
    const body = svg("rect", { class: "steel", x: x - 42, y: 236, width: 84, height: 90, rx: 4 });
    const head = svg("rect", { class: "busy", x: x - 7, y: 252, width: 14, height: 42, visibility: "hidden" });
    const name = svg("text", { x, y: 350, "text-anchor": "middle", class: "big" }, this.look.joins ? "Joiner" : "Threading");
    const doing = svg("text", { x, y: 372, "text-anchor": "middle" });
    const since = svg("text", { x, y: 392, "text-anchor": "middle", class: "faint" });
    const bar = svg("rect", { class: "busy", x: x - 60, y: 400, width: 0, height: 6 });
    const frame = svg("rect", { class: "frame", x: x - 60, y: 400, width: 120, height: 6, visibility: "hidden" });
    return { x, head, doing, since, bar, frame, group: svg("g", {}, body, head, name, doing, since, frame, bar) };
  }

  buildProcess() {
    const x = 1010;
    const box = svg("rect", { class: "steel", x: x - 15, y: 222, width: 170, height: 112, rx: 6 });
    const rolls = [0, 1, 2, 3].map((i) => {
      const cx = x + 12 + i * 40;
      const hub = svg("path", { class: "frame" });
      return { cx, hub, group: svg("g", {}, svg("circle", { class: "roll", cx, cy: STRIP_Y - 15, r: 13 }),
        svg("circle", { class: "roll", cx, cy: STRIP_Y + 15, r: 13 }), hub) };
    });
    const name = svg("text", { x: x + 70, y: 360, "text-anchor": "middle", class: "big" }, "Process");
    const speed = svg("text", { x: x + 70, y: 382, "text-anchor": "middle" });
    const state = svg("text", { x: x + 70, y: 212, "text-anchor": "middle", class: "halttext" });
    return { rolls, speed, state, left: x - 15, right: x + 155, group: svg("g", {}, box, ...rolls.map((roll) => roll.group), name, speed, state) };
  }

  /** Shows the line at the instant `s` of `course`. */
  show(course, s) {
    if (!this.root) return;
    const running = runningCoil(course, s);
    this.showUncoilers(course, s, running);
    this.showJoiner(course, s);
    this.storage.show(s);
    this.travel.show(course.jointsAt(s));
    this.process.speed.textContent = this.say.speed(s.processSpeed);
    this.process.state.textContent = processWord(s, course.stores);
    this.process.state.classList.toggle("planned", s.processState === "joint-passage");
    const turn = s.processed * 3;
    for (const roll of this.process.rolls) roll.hub.setAttribute("d", cross(roll.cx, STRIP_Y - 15, 9, turn));
    const scale = this.say.pixelsPerMetre;
    this.entryMarks.setAttribute("stroke-dashoffset", String(-(s.entered * scale) % MARK_EVERY));
    this.exitMarks.setAttribute("stroke-dashoffset", String(-(s.processed * scale) % MARK_EVERY));
  }

  showUncoilers(course, s, running) {
    const shown = this.uncoilers.length;
    const active = (running - 1) % shown;
    const standing = s.entryState === "standing";
    this.uncoilers.forEach((one, i) => {
      // The places take turns: the running coil, then the next one.
      const number = i === active ? running : running + 1;
      const ready = i === active ? true : course.prepared(number, s.time);
      const kind = this.look.coils[course.kindOf?.[number - 1] ?? 0] ?? this.look.coils[0];
      const length = i === active ? s.remaining : ready ? (course.usable?.[number - 1] ?? kind.length) : 0;
      const outer = diameter(kind, length);
      const perMetre = 130 / this.look.largestDiameter;
      one.coil.setAttribute("r", ready === null && i !== active ? 0 : Math.max(2, (outer / 2) * perMetre));
      one.core.setAttribute("r", (kind.inner / 2) * perMetre);
      const turned = i === active ? -2 * s.entered / outer : 0;
      one.spoke.setAttribute("d", cross(one.x, 190, (kind.inner / 2) * perMetre - 2, turned));
      one.label.textContent = i === active && !(standing && length === 0) ? `coil ${number}: ${this.say.length(length)}` : `coil ${number}`;
      one.state.textContent = i === active
        ? (standing && length === 0 ? "run out" : "running")
        : ready === null ? "not yet fetched" : ready ? "ready" : "being prepared";
      if (i === active) {
        const r = Math.max(2, (outer / 2) * perMetre);
        const path = `M ${one.x} ${190 + r} Q ${one.x + 30} ${STRIP_Y} ${one.x + 95} ${STRIP_Y} H ${this.storage.left}`;
        const torn = standing && length === 0;
        this.entryStrip.setAttribute("d", torn ? `M ${this.joiner.x - 6} ${STRIP_Y} H ${this.storage.left}` : path);
        this.entryMarks.setAttribute("d", `M ${this.joiner.x + 42} ${STRIP_Y} H ${this.storage.left}`);
      }
    });
  }

  showJoiner(course, s) {
    const under = course.workAt(s.time);
    const standing = under.find((one) => one.list !== "prepare") ?? (s.entryState === "standing" ? under[0] : undefined);
    const change = s.change;
    const stands = change && s.time >= change.stopped && s.time < change.released;
    this.joiner.head.setAttribute("visibility", stands ? "visible" : "hidden");
    this.joiner.frame.setAttribute("visibility", standing ? "visible" : "hidden");
    this.joiner.doing.textContent = standing ? short(standing.name) : stands ? "waits for the next coil"
      : s.entryState === "running-out" ? "the tail is coming" : "";
    this.joiner.since.textContent = stands ? `strip stands for ${this.say.time(s.time - change.stopped)}` : "";
    const share = standing && standing.end !== null ? (s.time - standing.start) / Math.max(1e-9, standing.end - standing.start) : 0;
    this.joiner.bar.setAttribute("width", String(120 * Math.max(0, Math.min(1, share))));
  }
}

/** Number of the coil that is on the line at `s`, from 1. */
export function runningCoil(course, s) {
  const change = s.change;
  if (!change) return 1;
  return s.time >= change.released ? change.number + 1 : change.number;
}

function processWord(s, stores) {
  const moves = s.processSpeed > 0;
  switch (s.processState) {
    case "downtime": return moves ? "process downtime, stopping" : "process downtime, stopped";
    case "joint-break": return moves ? "JOINT BREAK, stopping" : "JOINT BREAK, stopped for the repair";
    case "restart-delay": return "stopped, restart delay";
    case "starved":
      if (!stores) return moves ? "" : "STOPPED for the coil change";
      return moves ? "starved, stopping" : "STARVED, stopped";
    case "slowed": return "slowed to save strip";
    case "joint-passage": return "slow for the joint";
    default: return "";
  }
}

function short(name) {
  return name.length > 26 ? `${name.slice(0, 25)}…` : name;
}

function cross(x, y, r, turn) {
  const c = r * Math.cos(turn);
  const d = r * Math.sin(turn);
  return `M ${x - c} ${y - d} L ${x + c} ${y + d} M ${x + d} ${y - c} L ${x - d} ${y + c}`;
}

/** Outer diameter (m) of what is left of a coil with `length` metres. */
function diameter(kind, length) {
  return Math.sqrt(kind.inner ** 2 + (4 * kind.thickness * length) / (Math.PI * kind.winding));
}

/**
 * Joints on their way: from the joiner along the strip as it is drawn, through the accumulator to the process and through it.
 * Lengths that the line does not have, such as from the joiner to the accumulator, belong to the stretch beside them.
 */
class JointTravel {
  constructor(look, from, storage, entry, exit) {
    this.storage = storage;
    this.from = from;
    this.entry = entry;
    this.exit = exit;
    this.way = svg("path", { class: "way" });
    this.places = svg("g");
    this.shown = new Map();
    const legend = look.joins
      ? svg("g", { class: "legend", transform: "translate(28 408)" }, svg("path", { class: "joint", d: JOINT }), svg("text", { x: 16, y: 5 }, "joint on its way to the process"))
      : null;
    this.group = svg("g", {}, this.way, ...(legend ? [legend] : []), this.places);
  }

  show(joints) {
    for (const [number, mark] of this.shown) {
      if (joints.some((joint) => joint.number === number)) continue;
      mark.group.remove();
      this.shown.delete(number);
    }
    for (const joint of joints) this.showOne(joint);
  }

  showOne(joint) {
    const mark = this.shown.get(joint.number) ?? this.add(joint.number);
    this.way.setAttribute("d", this.along(joint));
    const { x, y } = this.way.getPointAtLength(joint.share * this.way.getTotalLength());
    mark.group.setAttribute("transform", `translate(${x} ${y})`);
    mark.group.classList.toggle("broken", joint.broken);
    mark.label.textContent = joint.broken ? `joint ${joint.number} broken` : `joint ${joint.number}`;
  }

  /** The stretch on which a joint is, as drawn at this instant. */
  along(joint) {
    const { left, right } = this.storage;
    if (joint.stretch === "process") return `M ${this.entry} ${STRIP_Y} H ${this.exit}`;
    if (!this.storage.way) return `M ${this.from} ${STRIP_Y} H ${this.entry}`;
    if (joint.stretch === "path") return `M ${right} ${STRIP_Y} H ${this.entry}`;
    return `M ${this.from} ${STRIP_Y} H ${left} ${this.storage.way()}` + (joint.straight ? ` M ${right} ${STRIP_Y} H ${this.entry}` : "");
  }

  add(number) {
    const label = svg("text", { y: -17, "text-anchor": "middle" });
    const group = svg("g", { class: "on-its-way", "data-joint": number }, svg("path", { class: "joint", d: JOINT }), label);
    this.places.append(group);
    const mark = { group, label };
    this.shown.set(number, mark);
    return mark;
  }
}

// ---- accumulators -------------------------------------------------------------------------------------------------

const LEFT = 470;
const RIGHT = 960;

/** Shows in words how much is held, with a bar beside it on which the level to stop at is marked. */
class Gauge {
  constructor(look, say, x = LEFT + 6) {
    this.look = look;
    this.say = say;
    this.top = 74;
    this.bottom = 262;
    this.x = x;
    this.fill = svg("rect", { class: "hold", x, width: 14, y: this.bottom, height: 0 });
    const stop = this.y(look.stopLevel);
    this.words = svg("text", { x: (LEFT + RIGHT) / 2, y: 24, "text-anchor": "middle", class: "big" });
    this.group = svg("g", {},
      svg("rect", { class: "frame", x, y: this.top, width: 14, height: this.bottom - this.top }), this.fill,
      svg("path", { class: "low", d: `M ${x - 8} ${stop} H ${x + 22}` }),
      svg("text", { x: x - 10, y: this.top + 5, "text-anchor": "end", class: "faint" }, "full"),
      svg("text", { x: x - 12, y: Math.min(stop - 4, this.bottom - 22), "text-anchor": "end", class: "faint" }, "must"),
      svg("text", { x: x - 12, y: Math.min(stop + 10, this.bottom - 8), "text-anchor": "end", class: "faint" }, "stop"), this.words);
  }

  y(level) {
    const share = this.look.capacity > 0 ? level / this.look.capacity : 0;
    return this.bottom - (this.bottom - this.top) * Math.max(-0.05, Math.min(1.05, share));
  }

  show(s) {
    const y = this.y(s.level);
    this.fill.setAttribute("y", String(Math.min(y, this.bottom)));
    this.fill.setAttribute("height", String(Math.max(0, this.bottom - y)));
    const flow = s.entrySpeed - s.processSpeed;
    const doing = Math.abs(flow) < 1e-9 ? "steady" : flow > 0 ? "filling" : "draining";
    this.words.textContent = `Accumulator: ${this.say.length(s.level)} of ${this.say.length(this.look.capacity)}, ${doing}`;
  }
}

/** Entry and process are one strip. */
class Plain {
  constructor() {
    this.left = WIDE;
    this.right = WIDE;
    this.group = svg("g", {},
      svg("text", { x: (LEFT + RIGHT) / 2, y: 200, "text-anchor": "middle", class: "faint" }, "no accumulator: one strip from uncoiler to process"));
  }

  show() {}
}

/** Strands between fixed rolls and a carriage, which moves by the level over the number of strands. */
class Strands {
  constructor(look, say) {
    this.look = look;
    this.vertical = look.vertical;
    this.gauge = new Gauge(look, say);
    this.left = LEFT + 40;
    this.right = RIGHT;
    this.pairs = Math.max(1, Math.min(6, Math.round(look.strands / 2)));
    this.strip = svg("path", { class: "strip" });
    this.carriage = svg("rect", { class: "steel", rx: 3 });
    this.fixed = [];
    this.moving = [];
    this.travel = svg("path", { class: "ghost" });
    this.note = svg("text", { x: (LEFT + RIGHT) / 2, y: 44, "text-anchor": "middle", class: "faint" },
      `${look.strands} strands, carriage travel ${say.length(look.stroke)}` + (this.pairs * 2 === look.strands ? "" : ` (${this.pairs * 2} drawn)`));
    this.group = svg("g", {}, this.gauge.group, this.travel, this.carriage, this.strip, this.note);
    for (let i = 0; i <= this.pairs; i++) this.fixed.push(this.roll());
    for (let i = 0; i < this.pairs; i++) this.moving.push(this.roll());
  }

  roll() {
    const roll = svg("circle", { class: "roll", r: 10 });
    this.group.append(roll);
    return roll;
  }

  way() {
    return this.strip.getAttribute("d");
  }

  show(s) {
    this.gauge.show(s);
    const share = this.look.capacity > 0 ? Math.max(-0.02, Math.min(1.03, s.level / this.look.capacity)) : 0;
    if (this.vertical) this.showUp(share);
    else this.showAlong(share);
  }

  showUp(share) {
    const from = this.left + 30;
    const pitch = (this.right - 30 - from) / this.pairs;
    const low = STRIP_Y - 40;
    const y = low - share * 165;
    let d = `M ${this.left} ${STRIP_Y} H ${from}`;
    place(this.carriage, from, y - 18, this.pairs * pitch, 8);
    this.travel.setAttribute("d", `M ${from - 8} ${low - 8} V ${low - 183} M ${from + this.pairs * pitch + 8} ${low - 8} V ${low - 183}`);
    for (let i = 0; i <= this.pairs; i++) centre(this.fixed[i], from + i * pitch, STRIP_Y - 10);
    d += ` A 10 10 0 0 0 ${from + 10} ${STRIP_Y - 10}`;
    for (let i = 0; i < this.pairs; i++) {
      const top = from + (i + 0.5) * pitch;
      const foot = from + (i + 1) * pitch;
      centre(this.moving[i], top, y);
      d += ` L ${top - 10} ${y} A 10 10 0 0 1 ${top + 10} ${y} L ${foot - 10} ${STRIP_Y - 10}`;
      d += i < this.pairs - 1 ? ` A 10 10 0 0 0 ${foot + 10} ${STRIP_Y - 10}` : ` A 10 10 0 0 0 ${foot} ${STRIP_Y}`;
    }
    this.strip.setAttribute("d", `${d} H ${this.right}`);
  }

  showAlong(share) {
    const rows = this.pairs;
    const fixedX = this.left + 70;
    const x = fixedX + 60 + share * 290;
    const top = 82;
    const gap = (STRIP_Y - 28 - top) / (rows * 2);
    place(this.carriage, x + 12, top - 12, 8, rows * 2 * gap);
    this.travel.setAttribute("d", `M ${fixedX + 76} ${top - 18} H ${fixedX + 372} M ${fixedX + 76} ${top + rows * 2 * gap - 6} H ${fixedX + 372}`);
    let d = `M ${this.left} ${STRIP_Y} C ${this.left + 20} ${STRIP_Y} ${this.left + 10} ${top} ${fixedX} ${top}`;
    const half = gap / 2;
    for (let i = 0; i < rows; i++) {
      const y = top + 2 * i * gap;
      d += ` H ${x} A ${half} ${half} 0 0 1 ${x} ${y + gap} H ${fixedX}`;
      resize(this.moving[i], x, y + half, half);
      if (i < rows - 1) {
        d += ` A ${half} ${half} 0 0 0 ${fixedX} ${y + 2 * gap}`;
        resize(this.fixed[i], fixedX, y + gap + half, half);
      } else {
        resize(this.fixed[i], fixedX, y + gap + 14, 12);
        d += ` A 14 14 0 0 0 ${fixedX - 2} ${y + gap + 27} Q ${fixedX + 6} ${STRIP_Y} ${fixedX + 40} ${STRIP_Y}`;
      }
    }
    resize(this.fixed[rows], fixedX, -50, 1);
    this.strip.setAttribute("d", `${d} H ${this.right}`);
  }
}

/** Free loops in a pit, as deep as the strip in them makes them. */
class Loops {
  constructor(look, say) {
    this.look = look;
    this.gauge = new Gauge(look, say);
    this.left = LEFT + 40;
    this.right = RIGHT;
    this.shown = Math.min(3, look.loops);
    this.strip = svg("path", { class: "strip" });
    this.pit = svg("path", { class: "frame" });
    this.depth = svg("text", { x: (LEFT + RIGHT) / 2, y: 44, "text-anchor": "middle", class: "faint" });
    this.group = svg("g", {}, this.gauge.group, this.pit, this.strip, this.depth);
    this.say = say;
    this.up = STRIP_Y - 200;
    for (let i = 0; i <= this.shown; i++) {
      this.group.append(svg("circle", { class: "roll", r: 9, cx: this.rollX(i), cy: this.up + 9 }));
    }
    const x0 = this.rollX(0) + 14;
    const x1 = this.rollX(this.shown) - 14;
    this.pit.setAttribute("d", `M ${x0} ${this.up + 24} V 410 H ${x1} V ${this.up + 24}`);
  }

  rollX(i) {
    return this.left + 70 + (i * (this.right - this.left - 140)) / this.shown;
  }

  way() {
    return this.strip.getAttribute("d");
  }

  show(s) {
    this.gauge.show(s);
    const u = shapeAt(this.look, s.level);
    const sag = u > 0 ? (this.look.span / (2 * u)) * (Math.cosh(u) - 1) : 0;
    this.depth.textContent = `${this.look.loops} free ${this.look.loops === 1 ? "loop" : "loops"}, ${this.say.length(sag)} deep`;
    const scale = 285 / Math.max(this.look.sagMax, 1e-9);
    let d = `M ${this.left} ${STRIP_Y} C ${this.left + 40} ${STRIP_Y} ${this.left + 20} ${this.up} ${this.rollX(0)} ${this.up}`;
    for (let i = 0; i < this.shown; i++) d += loop(this.rollX(i), this.rollX(i + 1), this.up, u, this.look.span, scale);
    d += ` C ${this.right - 20} ${this.up} ${this.right - 40} ${STRIP_Y} ${this.right} ${STRIP_Y}`;
    this.strip.setAttribute("d", d);
  }
}

/** A strand through a catenary between two rolls; u is half the span over its parameter, 0 for a taut strip. */
function loop(x0, x1, y, u, span, scale) {
  const a = span / (2 * u);
  let d = "";
  for (let k = 1; k <= 32; k++) {
    const below = u > 0 ? a * (Math.cosh(u) - Math.cosh(u * (k / 16 - 1))) : 0;
    d += ` L ${x0 + ((x1 - x0) * k) / 32} ${y + below * scale}`;
  }
  return d;
}

/** Between the shapes that the server solved, which stand in equal steps of the level. */
function shapeAt(look, level) {
  const steps = look.loopShapes.length - 1;
  const at = Math.max(0, Math.min(steps, (steps * level) / (look.shapesUpTo * look.capacity)));
  const step = Math.min(steps - 1, Math.floor(at));
  return look.loopShapes[step] + (at - step) * (look.loopShapes[step + 1] - look.loopShapes[step]);
}

/** A floor spiral: wraps move from the small mean diameter to the large one as it fills. */
class Spiral {
  constructor(look, say) {
    this.look = look;
    this.say = say;
    this.gauge = new Gauge(look, say);
    this.left = LEFT + 40;
    this.right = RIGHT;
    this.wraps = svg("path", { class: "strip wrap" });
    this.small = svg("circle", { class: "ghost", cx: 735, cy: 165 });
    this.large = svg("circle", { class: "ghost", cx: 735, cy: 165 });
    this.through = svg("path", { class: "strip" });
    this.note = svg("text", { x: (LEFT + RIGHT) / 2, y: 44, "text-anchor": "middle", class: "faint" });
    this.group = svg("g", {}, this.gauge.group, this.small, this.large, this.through, this.wraps, this.note);
  }

  way() {
    return `${this.in} ${this.wraps.getAttribute("d")} ${this.out}`;
  }

  show(s) {
    this.gauge.show(s);
    const look = this.look;
    const share = Math.max(0, Math.min(1, s.level / look.capacity));
    const scale = 210 / look.fullDiameter;
    this.small.setAttribute("r", String((look.emptyDiameter / 2) * scale));
    this.large.setAttribute("r", String((look.fullDiameter / 2) * scale));
    const outside = Math.round(share * look.wraps * 10) / 10;
    this.note.textContent = `spiral of ${look.wraps} wraps, ${outside} of them at the large diameter (seen from above)`;
    const drawn = Math.min(8, Math.max(2, Math.round(look.wraps)));
    const out = share * drawn;
    const gap = Math.min(5, (0.35 * (look.fullDiameter - look.emptyDiameter) * scale) / drawn / 2 + 2);
    const radius = (turn) => (turn < out
      ? (look.fullDiameter / 2) * scale - turn * gap
      : (look.emptyDiameter / 2) * scale + (drawn - turn) * gap * 0.6);
    let d = "";
    for (let k = 0; k <= drawn * 48; k++) {
      const turn = k / 48;
      const angle = turn * 2 * Math.PI + Math.PI / 2;
      d += `${k === 0 ? "M" : "L"} ${735 + radius(turn) * Math.cos(angle)} ${165 + radius(turn) * Math.sin(angle)} `;
    }
    const inside = 165 + radius(drawn);
    this.in = `M ${this.left} ${STRIP_Y} H 650 Q 700 ${STRIP_Y} 735 ${165 + radius(0)}`;
    this.out = `M 735 ${inside} Q 760 ${STRIP_Y} 830 ${STRIP_Y} H ${this.right}`;
    this.through.setAttribute("d", `${this.in} ${this.out}`);
    this.wraps.setAttribute("d", d);
  }
}

/** An accumulator of which only the capacity is known: a store with a level. */
class Store {
  constructor(look, say) {
    this.look = look;
    this.gauge = new Gauge(look, say);
    this.left = LEFT + 40;
    this.right = RIGHT;
    this.fill = svg("rect", { class: "hold", x: 600, width: 260 });
    this.group = svg("g", {}, this.gauge.group, this.fill,
      svg("rect", { class: "frame", x: 600, y: 74, width: 260, height: 188, rx: 4 }),
      svg("path", { class: "strip", d: `M ${this.left} ${STRIP_Y} H 640 V 262 M 820 262 V ${STRIP_Y} H ${this.right}` }),
      svg("text", { x: 730, y: 44, "text-anchor": "middle", class: "faint" }, "form not given, only its capacity"));
  }

  /** What is inside is not known: straight through what is held. */
  way() {
    return `M ${this.left} ${STRIP_Y} H 640 V 250 H 820 V ${STRIP_Y} H ${this.right}`;
  }

  show(s) {
    this.gauge.show(s);
    const share = Math.max(0, Math.min(1, s.level / this.look.capacity));
    this.fill.setAttribute("y", String(262 - 188 * share));
    this.fill.setAttribute("height", String(188 * share));
  }
}

const STORES = {
  strands: (look, say) => new Strands(look, say),
  loops: (look, say) => new Loops(look, say),
  spiral: (look, say) => new Spiral(look, say),
  direct: (look, say) => new Store(look, say),
};

function place(rect, x, y, width, height) {
  rect.setAttribute("x", String(x));
  rect.setAttribute("y", String(y));
  rect.setAttribute("width", String(width));
  rect.setAttribute("height", String(height));
}

function centre(circle, x, y) {
  circle.setAttribute("cx", String(x));
  circle.setAttribute("cy", String(y));
}

function resize(circle, x, y, r) {
  centre(circle, x, y);
  circle.setAttribute("r", String(r));
}
