// Accumulators, each in its own form and at its exact level.
import { svg } from "./dom.js";

/** Says how much is held, with a bar beside it on which the level to stop at is marked. */
export class Gauge {
  constructor(look, say, frame) {
    this.look = look;
    this.say = say;
    this.bottom = frame.strip - 38;
    this.top = this.bottom - (this.bottom - frame.top + 8) * look.scale;
    this.x = frame.left + 6;
    const { x } = this;
    const middle = (frame.left + frame.right) / 2;
    this.fill = svg("rect", { class: "hold", x, width: 14, y: this.top, height: this.bottom - this.top });
    this.clip = svg("g", { class: "column" }, this.fill);
    const stop = this.y(look.stopLevel);
    this.words = svg("text", { x: middle, y: 26, "text-anchor": "middle", class: "big" });
    this.brief = frame.brief;
    this.left = svg("text", { x: middle, y: frame.strip + 66, "text-anchor": "middle", class: "count" });
    this.group = svg("g", {},
      svg("rect", { class: "frame", x, y: this.top, width: 14, height: this.bottom - this.top }), this.clip,
      svg("path", { class: "low", d: `M ${x - 8} ${stop} H ${x + 22}` }),
      svg("text", { x: x - 10, y: this.top + 5, "text-anchor": "end", class: "faint" }, "full"),
      svg("text", { x: x - 12, y: Math.min(stop - 4, this.bottom - 22), "text-anchor": "end", class: "faint" }, "must"),
      svg("text", { x: x - 12, y: Math.min(stop + 10, this.bottom - 8), "text-anchor": "end", class: "faint" }, "stop"), this.words, this.left);
  }

  y(level) {
    const share = this.look.capacity > 0 ? level / this.look.capacity : 0;
    return this.bottom - (this.bottom - this.top) * Math.max(-0.05, Math.min(1.05, share));
  }

  show(s, race) {
    const y = Math.min(this.y(s.level), this.bottom);
    this.fill.setAttribute("y", String(y));
    this.fill.setAttribute("height", String(this.bottom - y));
    const flow = s.entrySpeed - s.processSpeed;
    const doing = Math.abs(flow) < 1e-9 ? "steady" : flow > 0 ? "filling" : "draining";
    const held = `${this.say.length(s.level)} of ${this.say.length(this.look.capacity)} stored`;
    write(this.words, this.brief ? held : `Accumulator: ${held}, ${doing}`);
    // On a phone it stands under the drawing, where there is room.
    write(this.left, race && !this.brief ? `${this.say.time(whole(race.strip))} of strip left` : "");
    this.left.classList.toggle("running-short", Boolean(race?.isShort));
  }

  /** Where the capacity is taken hold of when nothing else moves with it. */
  grip() {
    return { x: this.x + 7, y: this.top, along: "y", reach: this.bottom - this.top };
  }
}

const whole = (seconds) => (seconds < 90 ? Math.round(seconds) : seconds);

/** Sets a text only where it is another. */
export function write(node, text) {
  if (node.textContent !== text) node.textContent = text;
}

/** Entry and process are one strip. */
class Plain {
  constructor(look, say, frame) {
    this.left = frame.wide;
    this.right = frame.wide;
    const x = (frame.left + frame.right) / 2;
    this.group = svg("g", {},
      svg("text", { x, y: frame.strip - 112, "text-anchor": "middle", class: "big" }, frame.brief ? "No accumulator" : "No accumulator: no strip is stored"),
      svg("text", { x, y: frame.strip - 86, "text-anchor": "middle", class: "faint" }, frame.brief ? "one strip" : "one strip from uncoiler to process"));
  }

  show() {}
}

/** Strands between fixed rolls and a carriage, which moves by the level over the number of strands. */
class Strands {
  constructor(look, say, frame) {
    this.look = look;
    this.frame = frame;
    this.vertical = look.vertical;
    this.gauge = new Gauge(look, say, frame);
    this.left = frame.left + 40;
    this.right = frame.right;
    this.pairs = Math.max(1, Math.min(frame.pairs, Math.round(look.strands / 2)));
    this.strip = svg("path", { class: "strip" });
    this.carriage = svg("rect", { class: "steel", rx: 3 });
    this.fixed = [];
    this.moving = [];
    this.travel = svg("path", { class: "ghost" });
    this.note = svg("text", { x: (frame.left + frame.right) / 2, y: frame.tall - 10, "text-anchor": "middle", class: "faint" },
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

  show(s, race) {
    this.gauge.show(s, race);
    const share = this.look.capacity > 0 ? Math.max(-0.02, Math.min(1.03, s.level / this.look.capacity)) : 0;
    if (this.vertical) this.showUp(share);
    else this.showAlong(share);
  }

  showUp(share) {
    const from = this.left + 30;
    const pitch = (this.right - 30 - from) / this.pairs;
    const low = this.frame.strip - 40;
    const reach = (low - this.frame.top - 24) * this.look.scale;
    const y = low - share * reach;
    this.hold = { x: from + (this.pairs * pitch) / 2, y: y - 14, along: "y", reach };
    let d = `M ${this.left} ${this.frame.strip} H ${from}`;
    place(this.carriage, from, y - 18, this.pairs * pitch, 8);
    this.travel.setAttribute("d", `M ${from - 8} ${low - 8} V ${low - reach - 18} M ${from + this.pairs * pitch + 8} ${low - 8} V ${low - reach - 18}`);
    for (let i = 0; i <= this.pairs; i++) centre(this.fixed[i], from + i * pitch, this.frame.strip - 10);
    d += ` A 10 10 0 0 0 ${from + 10} ${this.frame.strip - 10}`;
    for (let i = 0; i < this.pairs; i++) {
      const top = from + (i + 0.5) * pitch;
      const foot = from + (i + 1) * pitch;
      centre(this.moving[i], top, y);
      d += ` L ${top - 10} ${y} A 10 10 0 0 1 ${top + 10} ${y} L ${foot - 10} ${this.frame.strip - 10}`;
      d += i < this.pairs - 1 ? ` A 10 10 0 0 0 ${foot + 10} ${this.frame.strip - 10}` : ` A 10 10 0 0 0 ${foot} ${this.frame.strip}`;
    }
    this.strip.setAttribute("d", `${d} H ${this.right}`);
  }

  showAlong(share) {
    const rows = this.pairs;
    const { top, inset, lead } = this.frame;
    const fixedX = this.left + inset;
    const reach = (this.right - fixedX - lead - 30) * this.look.scale;
    const x = fixedX + lead + share * reach;
    this.hold = { x: x + 16, y: top + 12, along: "x", reach };
    const gap = (this.frame.strip - 28 - top) / (rows * 2);
    place(this.carriage, x + 12, top - 12, 8, rows * 2 * gap);
    this.hold.y = top - 12 + rows * gap;
    this.travel.setAttribute("d", [top - 18, top + rows * 2 * gap - 6].map((y) => `M ${fixedX + lead + 16} ${y} H ${fixedX + lead + reach + 22}`).join(" "));
    let d = `M ${this.left} ${this.frame.strip} C ${this.left + 20} ${this.frame.strip} ${this.left + 10} ${top} ${fixedX} ${top}`;
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
        d += ` A 14 14 0 0 0 ${fixedX - 2} ${y + gap + 27} Q ${fixedX + 6} ${this.frame.strip} ${fixedX + 40} ${this.frame.strip}`;
      }
    }
    resize(this.fixed[rows], fixedX, -50, 1);
    this.strip.setAttribute("d", `${d} H ${this.right}`);
  }

  /** The carriage. */
  grip() {
    return this.hold;
  }
}

/** Free loops in a pit, as deep as the strip in them makes them. */
class Loops {
  constructor(look, say, frame) {
    this.look = look;
    this.frame = frame;
    this.gauge = new Gauge(look, say, frame);
    this.left = frame.left + 40;
    this.right = frame.right;
    this.shown = Math.min(3, look.loops);
    this.strip = svg("path", { class: "strip" });
    this.pit = svg("path", { class: "frame" });
    this.depth = svg("text", { x: (frame.left + frame.right) / 2, y: frame.tall - 10, "text-anchor": "middle", class: "faint" });
    this.group = svg("g", {}, this.gauge.group, this.pit, this.strip, this.depth);
    this.say = say;
    this.up = frame.strip - 200;
    for (let i = 0; i <= this.shown; i++) {
      this.group.append(svg("circle", { class: "roll", r: 9, cx: this.rollX(i), cy: this.up + 9 }));
    }
    const x0 = this.rollX(0) + 14;
    const x1 = this.rollX(this.shown) - 14;
    this.pit.setAttribute("d", `M ${x0} ${this.up + 24} V ${frame.strip + 32} H ${x1} V ${this.up + 24}`);
  }

  rollX(i) {
    return this.left + this.frame.inset + (i * (this.right - this.left - 2 * this.frame.inset)) / this.shown;
  }

  way() {
    return this.strip.getAttribute("d");
  }

  show(s, race) {
    this.gauge.show(s, race);
    const u = shapeAt(this.look, s.level);
    const sag = u > 0 ? (this.look.span / (2 * u)) * (Math.cosh(u) - 1) : 0;
    this.depth.textContent = `${this.look.loops} free ${this.look.loops === 1 ? "loop" : "loops"}, ${this.say.length(sag)} deep`;
    const scale = 222 / Math.max(this.look.sagMax, 1e-9);
    let d = `M ${this.left} ${this.frame.strip} C ${this.left + 40} ${this.frame.strip} ${this.left + 20} ${this.up} ${this.rollX(0)} ${this.up}`;
    for (let i = 0; i < this.shown; i++) d += loop(this.rollX(i), this.rollX(i + 1), this.up, u, this.look.span, scale);
    d += ` C ${this.right - 20} ${this.up} ${this.right - 40} ${this.frame.strip} ${this.right} ${this.frame.strip}`;
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
  constructor(look, say, frame) {
    this.look = look;
    this.frame = frame;
    this.say = say;
    this.gauge = new Gauge(look, say, frame);
    this.left = frame.left + 40;
    this.right = frame.right;
    this.wraps = svg("path", { class: "strip wrap" });
    this.small = svg("circle", { class: "ghost", cx: frame.middle, cy: 165 });
    this.large = svg("circle", { class: "ghost", cx: frame.middle, cy: 165 });
    this.through = svg("path", { class: "strip" });
    this.note = svg("text", { x: (frame.left + frame.right) / 2, y: frame.tall - 10, "text-anchor": "middle", class: "faint" });
    this.group = svg("g", {}, this.gauge.group, this.small, this.large, this.through, this.wraps, this.note);
  }

  way() {
    return `${this.in} ${this.wraps.getAttribute("d")} ${this.out}`;
  }

  show(s, race) {
    this.gauge.show(s, race);
    const look = this.look;
    const share = Math.max(0, Math.min(1, s.level / look.capacity));
    const { middle, spiral } = this.frame;
    const scale = spiral / look.fullDiameter;
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
      d += `${k === 0 ? "M" : "L"} ${middle + radius(turn) * Math.cos(angle)} ${165 + radius(turn) * Math.sin(angle)} `;
    }
    const inside = 165 + radius(drawn);
    this.in = `M ${this.left} ${this.frame.strip} H ${middle - 85} Q ${middle - 35} ${this.frame.strip} ${middle} ${165 + radius(0)}`;
    this.out = `M ${middle} ${inside} Q ${middle + 25} ${this.frame.strip} ${middle + 75} ${this.frame.strip} H ${this.right}`;
    this.through.setAttribute("d", `${this.in} ${this.out}`);
    this.wraps.setAttribute("d", d);
  }
}

/** An accumulator of which only the capacity is known: a store with a level. */
class Store {
  constructor(look, say, frame) {
    this.look = look;
    this.frame = frame;
    this.gauge = new Gauge(look, say, frame);
    this.left = frame.left + 40;
    this.right = frame.right;
    this.fill = svg("rect", { class: "hold", x: frame.middle - frame.box / 2, width: frame.box });
    this.group = svg("g", {}, this.gauge.group, this.fill,
      svg("rect", { class: "frame", x: frame.middle - frame.box / 2, y: 74, width: frame.box, height: 188, rx: 4 }),
      svg("path", { class: "strip", d: `M ${this.left} ${this.frame.strip} H ${frame.middle - frame.box / 2 + 40} V 262 M ${frame.middle + frame.box / 2 - 40} 262 V ${this.frame.strip} H ${this.right}` }),
      svg("text", { x: frame.middle, y: frame.tall - 10, "text-anchor": "middle", class: "faint" }, "form not given, only its capacity"));
  }

  /** What is inside is not known: straight through what is held. */
  way() {
    return `M ${this.left} ${this.frame.strip} H ${this.frame.middle - this.frame.box / 2 + 40} V 250 H ${this.frame.middle + this.frame.box / 2 - 40} V ${this.frame.strip} H ${this.right}`;
  }

  show(s, race) {
    this.gauge.show(s, race);
    const share = Math.max(0, Math.min(1, s.level / this.look.capacity));
    this.fill.setAttribute("y", String(262 - 188 * share));
    this.fill.setAttribute("height", String(188 * share));
  }
}

const STORES = { strands: Strands, loops: Loops, spiral: Spiral, direct: Store, none: Plain };

/** The accumulator of a line in its own form. */
export const storage = (look, say, frame) => new STORES[look.form](look, say, frame);

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
