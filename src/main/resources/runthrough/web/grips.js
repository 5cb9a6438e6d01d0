// Levers in the picture itself: the carriage is dragged to another capacity, the dial's mark to another speed. Each is a slider for
// the keyboard, too. They stay while the picture under them is drawn anew.
import { svg } from "./dom.js";

const STEPS = 100;

class Grip {
  /** `inputs` has the value, its ends and how it is changed. */
  constructor(drawing, inputs, path, name) {
    Object.assign(this, { drawing, inputs, path });
    this.hit = svg("rect", { class: "hit", rx: 6 });
    this.shape = svg("path", { class: "grip" });
    this.said = svg("text", { class: "gripped", "text-anchor": "middle" });
    this.group = svg("g", { class: "slider", role: "slider", tabindex: 0, "aria-label": `${name}, in the picture` }, this.hit, this.shape, this.said);
    this.group.addEventListener("keydown", (event) => this.key(event));
    this.group.addEventListener("pointerdown", (event) => this.take(event));
    drawing.grips.append(this.group);
  }

  /** The value at which it is, its ends and whether it is there at all. */
  update() {
    const field = this.inputs.line?.fields.find((one) => one.path === this.path);
    const ends = this.inputs.reached.get(this.path);
    this.isThere = Boolean(field && ends && ends[0] < ends[1]);
    this.group.setAttribute("display", this.isThere ? "inline" : "none");
    if (!this.isThere) return;
    Object.assign(this, { value: field.si, ends });
    const [min, max] = ends;
    for (const [name, value] of [["min", min], ["max", max], ["now", field.si]]) this.group.setAttribute(`aria-value${name}`, String(Number((value * field.per).toPrecision(4))));
    this.group.setAttribute("aria-valuetext", field.shown);
    if (!this.held) this.said.textContent = "";
    this.place();
  }

  set(value) {
    const [min, max] = this.ends;
    this.value = Math.max(min, Math.min(max, value));
    this.inputs.slid(this.path, this.value, this.ends);
  }

  key(event) {
    const [min, max] = this.ends;
    const step = (max - min) / STEPS;
    const to = { ArrowUp: this.value + step, ArrowRight: this.value + step, ArrowDown: this.value - step, ArrowLeft: this.value - step,
      PageUp: this.value + 10 * step, PageDown: this.value - 10 * step, Home: min, End: max }[event.key];
    if (to === undefined) return;
    event.preventDefault();
    this.set(to);
  }

  take(event) {
    event.preventDefault();
    this.group.focus();
    this.held = { at: this.point(event), value: this.value };
    const move = (moved) => {
      this.set(this.dragged(this.point(moved)));
      this.said.textContent = this.inputs.fields.get(this.path)?.[0]?.box.value ?? "";
    };
    const drop = () => {
      this.held = null;
      removeEventListener("pointermove", move);
      this.update();
    };
    addEventListener("pointermove", move);
    addEventListener("pointerup", drop, { once: true });
    addEventListener("pointercancel", drop, { once: true });
  }

  /** Where the pointer is, in px of the picture. */
  point(event) {
    return new DOMPoint(event.clientX, event.clientY).matrixTransform(this.drawing.root.getScreenCTM().inverse());
  }
}

/** The speed of the process, by the mark on its dial. */
export class SpeedGrip extends Grip {
  constructor(drawing, inputs) {
    super(drawing, inputs, "rated-speed", "Process speed");
  }

  place() {
    const { processDial: dial } = this.drawing;
    if (!dial) return;
    const [x, y, w] = [dial.x, dial.y, dial.r + 22];
    for (const [name, value] of [["x", x - w], ["y", y - w], ["width", 2 * w], ["height", w + 30]]) this.hit.setAttribute(name, value);
    this.said.setAttribute("transform", `translate(${x} ${y + 52})`);
  }

  dragged(point) {
    return this.drawing.processDial.speedAt(point.x, point.y);
  }
}

/** The capacity of the accumulator, by its carriage, or by the top of the bar beside it. */
export class CapacityGrip extends Grip {
  constructor(drawing, inputs) {
    super(drawing, inputs, "usable-capacity", "Accumulator capacity");
  }

  /** Follows the carriage. */
  place() {
    const store = this.drawing.storage;
    const grip = store?.grip?.() ?? store?.gauge?.grip();
    if (!grip) return;
    this.grip = grip;
    const thick = this.drawing.frame.brief ? 90 : 48;
    const [w, h] = grip.along === "x" ? [thick, 96] : [96, thick];
    for (const [name, value] of [["x", grip.x - w / 2], ["y", grip.y - h / 2], ["width", w], ["height", h]]) this.hit.setAttribute(name, value);
    this.shape.setAttribute("d", grip.along === "x"
      ? `M ${grip.x - 12} ${grip.y} l 8 -8 v 16 Z M ${grip.x + 20} ${grip.y} l -8 -8 v 16 Z`
      : `M ${grip.x} ${grip.y - 16} l -8 8 h 16 Z M ${grip.x} ${grip.y + 16} l -8 -8 h 16 Z`);
    this.said.setAttribute("transform", `translate(${grip.x} ${grip.y - 26})`);
  }

  /** As far as it was dragged of the way that the capacity takes in the picture. */
  dragged(point) {
    const { along, reach } = this.grip;
    const moved = along === "x" ? point.x - this.held.at.x : this.held.at.y - point.y;
    return this.held.value * (1 + moved / reach);
  }
}
