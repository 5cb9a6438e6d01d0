// For a meeting: the verdict, the picture and the levers alone, in large type, by keys only.
import { byId } from "./dom.js";

const STEPS = 40;

export class Presentation {
  /** `inputs` holds the levers, `player` the picture; `onChange()` is called when the room for the picture has become another. */
  constructor(inputs, player, onChange) {
    Object.assign(this, { inputs, player, onChange, lever: 0 });
    byId("present").addEventListener("click", () => this.begin());
    addEventListener("keydown", (event) => this.isOn && this.key(event));
    document.addEventListener("fullscreenchange", () => !document.fullscreenElement && this.isFull && this.end());
  }

  get isOn() {
    return document.body.classList.contains("presenting");
  }

  begin() {
    document.body.classList.add("presenting");
    byId("present").blur();
    document.documentElement.requestFullscreen?.().then(() => {
      this.isFull = true;
    }).catch(() => {});
    this.choose(0);
    this.onChange();
  }

  end() {
    document.body.classList.remove("presenting");
    if (document.fullscreenElement) document.exitFullscreen();
    this.isFull = false;
    for (const field of this.levers()) field.classList.remove("chosen");
    byId("present").focus();
    this.onChange();
  }

  levers() {
    return [...byId("quick").children];
  }

  choose(at) {
    const all = this.levers();
    this.lever = Math.min(at, all.length - 1);
    all.forEach((field, i) => field.classList.toggle("chosen", i === this.lever));
  }

  key(event) {
    const does = {
      Escape: () => this.end(),
      " ": () => this.player.setPlaying(!this.player.playing),
      ArrowRight: () => this.player.step(1),
      ArrowLeft: () => this.player.step(-1),
      ArrowUp: () => this.move(1),
      ArrowDown: () => this.move(-1),
      w: () => byId("worst").click(),
      p: () => byId("pin").click(),
      z: () => byId("undo").click(),
    }[event.key] ?? (/^[1-9]$/.test(event.key) ? () => this.choose(Number(event.key) - 1) : null);
    if (!does || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    does();
    // The levers may have been made anew.
    if (this.isOn) this.choose(this.lever);
  }

  /** Moves the chosen lever a step of its way. */
  move(steps) {
    const range = this.levers()[this.lever]?.querySelector("input[type=range]");
    if (!range) return;
    const [min, max] = [Number(range.min), Number(range.max)];
    const step = range.step === "1" ? 1 : (max - min) / STEPS;
    range.value = String(Math.max(min, Math.min(max, Number(range.value) + steps * step)));
    range.dispatchEvent(new Event("input", { bubbles: true }));
    range.dispatchEvent(new Event("change", { bubbles: true }));
  }
}
