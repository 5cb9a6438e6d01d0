// Longer computations: begun here, asked after while they run, and given up by the program when nobody asks any more.
import { ask } from "./api.js";

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
