// Talks to the program that serves this page, on this machine and nowhere else.

/** What the program refused, with its words. */
export class Refusal extends Error {
  constructor(message, status) {
    super(message);
    this.status = status;
  }
}

// A token that the link has brought is in a cookie by now, and need not stand in the address.
if (new URLSearchParams(location.search).has("token")) history.replaceState(null, "", location.pathname + location.hash);

/** As many characters of files as a request may bring, about. */
export const MOST_OF_FILES = 900_000;

/** Files that the line at hand names, which go with every request about it. */
export const attached = { files: [] };

/** Posts `body` as JSON; an aborted `signal` gives up. */
export async function ask(path, body, signal) {
  const answer = await fetch(path, {
    method: "POST",
    headers: { "Content-Type": "application/json" },
    body: JSON.stringify(body.text === undefined || !attached.files.length ? body : { files: attached.files, ...body }),
    signal,
    cache: "no-store",
  });
  if (!answer.ok) {
    throw new Refusal(await said(answer), answer.status);
  }
  const type = answer.headers.get("Content-Type") ?? "";
  return type.startsWith("application/json") ? answer.json() : answer.blob();
}

export const shippedLines = () => get("/api/lines");

/** The kinds of line that can be made from nothing. */
export const newKinds = () => get("/api/kinds");

async function get(path) {
  const answer = await fetch(path, { cache: "no-store" });
  if (!answer.ok) throw new Refusal(await said(answer), answer.status);
  return answer.json();
}

async function said(answer) {
  try {
    return (await answer.json()).message;
  } catch {
    return `the program answered ${answer.status}`;
  }
}

/** Only the latest of several askings counts: beginning one gives up the one before. */
export class Latest {
  #running = null;

  async run(work) {
    this.stop();
    const mine = new AbortController();
    this.#running = mine;
    try {
      return await work(mine.signal);
    } catch (e) {
      if (e.name === "AbortError") return undefined;
      throw e;
    } finally {
      if (this.#running === mine) this.#running = null;
    }
  }

  stop() {
    this.#running?.abort();
    this.#running = null;
  }
}

/** Works that must not cross: each begins when the one before it has ended. */
export class Turns {
  #last = Promise.resolve();

  run(work) {
    const mine = this.#last.then(work);
    this.#last = mine.catch(() => {});
    return mine;
  }
}
