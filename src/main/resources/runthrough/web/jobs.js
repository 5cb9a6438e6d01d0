// Longer computations: begun here, asked after while they run, and given up by the program when nobody asks any more.
import { ask, Latest } from "./api.js";
import { byId } from "./dom.js";

const PAUSE = 250;

/** Runs job `kind` to its end and returns its result; `onProgress(share)` takes how far it is. */
export async function job(kind, body, onProgress, signal) {
  // Not given up before it has a name, by which it can be stopped.
  const { id } = await ask(`/api/job/${kind}`, body);
  try {
    for (;;) {
      signal?.throwIfAborted();
      const state = await ask("/api/job", { id }, signal);
      if (state.failed) throw new Error(state.failed);
      if (state.result) return state.result;
      onProgress(state.done);
      await pause(signal);
    }
  } catch (e) {
    if (e.name === "AbortError") stop(id);
    throw e;
  }
}

/** A job with its progress, and a button that gives it up: `NAME-stop`, `NAME-progress` and `NAME-note` of the page. */
export class Progress {
  #running = new Latest();

  constructor(name) {
    this.parts = ["stop", "progress", "note"].map((part) => byId(`${name}-${part}`));
    this.parts[0].addEventListener("click", () => this.stop());
  }

  stop() {
    this.#running.stop();
  }

  /** Runs job `kind`; `show(result)` shows what it gives and returns what to say of it. */
  async run(kind, body, what, show) {
    const [stop, bar, note] = this.parts;
    bar.value = 0;
    bar.hidden = stop.hidden = false;
    note.textContent = `Working on ${what} …`;
    try {
      const result = await this.#running.run((signal) => job(kind, body, (done) => {
        bar.value = done;
        note.textContent = `${Math.round(100 * done)} % of ${what} is done.`;
      }, signal));
      note.textContent = result ? show(result) : `${what.charAt(0).toUpperCase()}${what.slice(1)} was stopped.`;
    } catch (e) {
      note.textContent = e.message;
    } finally {
      bar.hidden = stop.hidden = true;
    }
  }
}

function stop(id) {
  fetch("/api/job/stop", { method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify({ id }), keepalive: true }).catch(() => {});
}

function pause(signal) {
  return new Promise((resolve, reject) => {
    const timer = setTimeout(resolve, PAUSE);
    signal?.addEventListener("abort", () => {
      clearTimeout(timer);
      reject(new DOMException("given up", "AbortError"));
    }, { once: true });
  });
}
