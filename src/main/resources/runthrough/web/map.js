// Where the line runs through: a map over two of its numbers, drawn by the program.
import { byId, el } from "./dom.js";
import { calledApart } from "./inputs.js";
import { Progress } from "./jobs.js";

export class LineMap {
  /** `state` of the page: its text and units. */
  constructor(state) {
    this.state = state;
    this.running = new Progress("map");
    byId("map-start").addEventListener("click", () => this.draw());
  }

  /** What it may go over. */
  offer(line) {
    for (const [id, wanted] of [["map-x", line.mapX], ["map-y", line.mapY]]) {
      byId(id).replaceChildren(...line.axes.map((axis) => el("option", { value: axis.path, selected: axis.path === wanted }, calledApart(axis, line.axes))));
    }
  }

  /** A map of another line is none of this one. */
  forget() {
    if (byId("map-picture").childElementCount) byId("map-note").textContent = "The line has changed since: draw the map anew.";
    byId("map-picture").replaceChildren();
  }

  draw() {
    const [x, y] = [byId("map-x").value, byId("map-y").value];
    const note = byId("map-note");
    if (x === y) {
      note.textContent = "Choose two different inputs.";
      return;
    }
    const { text, units } = this.state;
    this.running.run("map", { text, units, x, y }, "the map", (map) => {
      // As an image the picture keeps its own styles, which the page's policy would not let into the page itself.
      byId("map-picture").replaceChildren(el("img", { class: "printed", src: `data:image/svg+xml;charset=utf-8,${encodeURIComponent(map.svg)}`, alt: map.words }));
      return map.words;
    });
  }
}
