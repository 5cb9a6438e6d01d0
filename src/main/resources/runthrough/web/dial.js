// A speed on a dial: half a circle from standstill on the left to its full scale on the right.
import { svg } from "./dom.js";
import { write } from "./stores.js";

const TICKS = 10;

export class Dial {
  /** `most` is the full scale (m/s). */
  constructor({ x, y, r }, name, most, say) {
    Object.assign(this, { x, y, r, most, say });
    const ticks = Array.from({ length: TICKS + 1 }, (_, i) => `M ${this.at((most * i) / TICKS, r - 6)} L ${this.at((most * i) / TICKS, r - 1)}`);
    this.needle = svg("path", { class: "needle" });
    this.value = svg("text", { x, y: y + 22, "text-anchor": "middle", class: "big" });
    this.mark = svg("path", { class: "mark" });
    this.group = svg("g", { class: "dial" },
      svg("path", { class: "face", d: `M ${x - r} ${y} A ${r} ${r} 0 0 1 ${x + r} ${y} Z` }),
      svg("path", { class: "ticks", d: ticks.join(" ") }), this.mark, this.needle,
      svg("circle", { class: "pin", cx: x, cy: y, r: 4 }), this.value,
      svg("text", { x, y: y - r - 16, "text-anchor": "middle", class: "faint" }, name));
  }

  /** A point of the dial, as far from its centre as `r`. */
  at(speed, r) {
    const turn = Math.PI * (1 - Math.max(0, Math.min(1, speed / this.most)));
    return `${(this.x + r * Math.cos(turn)).toFixed(2)} ${(this.y - r * Math.sin(turn)).toFixed(2)}`;
  }

  /** The speed at which the dial points to (x, y). */
  speedAt(x, y) {
    const turn = Math.atan2(Math.max(0, this.y - y), x - this.x);
    return this.most * (1 - turn / Math.PI);
  }

  show(speed, rated) {
    this.needle.setAttribute("d", `M ${this.x} ${this.y} L ${this.at(speed, this.r - 9)}`);
    write(this.value, this.say.speed(speed));
    if (rated === this.rated) return;
    this.rated = rated;
    this.mark.setAttribute("d", `M ${this.at(rated, this.r)} L ${this.at(rated * 1.02 + 0.03 * this.most, this.r + 11)} L ${this.at(rated * 0.98 - 0.03 * this.most, this.r + 11)} Z`);
  }
}
