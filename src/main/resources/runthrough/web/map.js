// Where the line runs through: a map over two of its numbers, drawn by the program.
import { Latest } from "./api.js";
import { byId, el } from "./dom.js";
import { job } from "./jobs.js";

export class LineMap {
  /** `state` of the page: its text and units. */
  constructor(state) {
    this.state = state;
    this.running = new Latest();
    byId("map-start").addEventListener("click", () => this.draw());
    byId("map-stop").addEventListener("click", () => this.running.stop());
  }

  /** What it may go over. */
  offer(line) {
    for (const [id, wanted] of [["map-x", line.mapX], ["map-y", line.mapY]]) {
      byId(id).replaceChildren(...line.axes.map((axis) => el("option", { value: axis.path, selected: axis.path === wanted }, axis.name)));
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
    const bar = byId("map-progress");
    bar.hidden = byId("map-stop").hidden = false;
    const { text, units } = this.state;
    this.running.run((signal) => job("map", { text, units, x, y }, (done) => {
      bar.value = done;
      note.textContent = `${Math.round(100 * done)} % of the map is done.`;
    }, signal)).then((map) => {
      if (map) {
        // As an image the picture keeps its own styles, which the page's policy would not let into the page itself.
        byId("map-picture").replaceChildren(el("img", { class: "printed", src: `data:image/svg+xml;charset=utf-8,${encodeURIComponent(map.svg)}`, alt: map.words }));
      }
      note.textContent = map ? map.words : "The map was stopped.";
    }).catch((e) => {
      note.textContent = e.message;
    }).finally(() => {
      bar.hidden = byId("map-stop").hidden = true;
    });
  }
}
