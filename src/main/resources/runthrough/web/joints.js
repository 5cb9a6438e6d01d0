// Joints on their way through the line, each a diamond across the strip.
import { svg } from "./dom.js";

/** A joint is known by its shape where there are no colours. */
const JOINT = "M 0 -11 L 8 0 L 0 11 L -8 0 Z";

/**
 * Joints on their way: from the joiner along the strip as it is drawn, through the accumulator to the process and through it.
 * Lengths that the line does not have, such as from the joiner to the accumulator, belong to the stretch beside them.
 */
export class JointTravel {
  constructor(look, frame, from, storage, entry, exit) {
    this.frame = frame;
    this.storage = storage;
    this.from = from;
    this.entry = entry;
    this.exit = exit;
    this.way = svg("path", { class: "way" });
    this.places = svg("g");
    this.shown = new Map();
    const legend = look.joins
      ? svg("g", { class: "legend", transform: `translate(28 ${frame.tall - 24})` }, svg("path", { class: "joint", d: JOINT }), svg("text", { x: 16, y: 5 }, "joint on its way to the process"))
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
    const y = this.frame.strip;
    if (joint.stretch === "process") return `M ${this.entry} ${y} H ${this.exit}`;
    if (!this.storage.way) return `M ${this.from} ${y} H ${this.entry}`;
    if (joint.stretch === "path") return `M ${right} ${y} H ${this.entry}`;
    return `M ${this.from} ${y} H ${left} ${this.storage.way()}` + (joint.straight ? ` M ${right} ${y} H ${this.entry}` : "");
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
