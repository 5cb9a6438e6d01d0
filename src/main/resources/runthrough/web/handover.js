// Files and links to hand over. A link holds the scenario behind its #, which a browser never sends to anybody.
import { byId, download, el } from "./dom.js";
import { ask, attached } from "./api.js";
import { job } from "./jobs.js";

const MARK = "#line=";

/** Of characters: what programs for mail and messages are sure to leave whole. */
const LONGEST_LINK = 32_000;

/** Between a scenario and the files that go with it, as JSON; a scenario holds no such character. */
const BETWEEN = "\0";

/** What a link holds of a line: its text, and those of `files` that it names. */
const partsOf = (text, files) => [text, files.filter((file) => text.includes(file.name))];

/** A line as a link holds it, to be compared. */
export const lineOf = (text, files) => JSON.stringify(partsOf(text, files));

export async function linkTo(text, files) {
  const whole = files.length ? text + BETWEEN + JSON.stringify(files) : text;
  const packed = await squeezed(new TextEncoder().encode(whole), new CompressionStream("deflate-raw"));
  const letters = btoa(Array.from(packed, (byte) => String.fromCharCode(byte)).join(""));
  return `${location.origin}/${MARK}${letters.replaceAll("+", "-").replaceAll("/", "_").replaceAll("=", "")}`;
}

/** The scenario in the address, `text` and its `files`, or null. */
export async function linkedLine() {
  if (!location.hash.startsWith(MARK)) return null;
  try {
    const letters = location.hash.slice(MARK.length).replaceAll("-", "+").replaceAll("_", "/");
    const bytes = Uint8Array.from(atob(letters), (letter) => letter.charCodeAt(0));
    const whole = new TextDecoder("utf-8", { fatal: true }).decode(await squeezed(bytes, new DecompressionStream("deflate-raw")));
    const [text, files] = whole.split(BETWEEN);
    return { text, files: files ? JSON.parse(files) : [] };
  } catch {
    throw new Error("The link is damaged: the line behind its # cannot be read. Ask for it again.");
  }
}

/** A small link could unpack to more than the browser holds: no line has more than this many bytes, as the program reads it. */
const MOST_BYTES = 1_000_000;

async function squeezed(bytes, through) {
  let count = 0;
  const bound = new TransformStream({
    transform(chunk, out) {
      count += chunk.length;
      if (count > MOST_BYTES) throw new Error("more than a line has");
      out.enqueue(chunk);
    },
  });
  const stream = new Blob([bytes]).stream().pipeThrough(through).pipeThrough(bound);
  return new Uint8Array(await new Response(stream).arrayBuffer());
}

export function wireHandover(state) {
  const note = byId("handover-note");
  // Each has a place of its own: a document under way leaves what is said of a link beside it.
  const telling = async (work, done) => {
    const own = el("span", {}, "Working …");
    note.append(own);
    try {
      await work(own);
      own.textContent = done;
    } catch (e) {
      own.textContent = e.message;
    }
  };
  const body = () => ({ text: state.text, name: state.name, units: state.units });
  const saveScenario = async () => {
    const file = await ask("/api/scenario", body());
    download(file, `${state.name}.${file.type.includes("zip") ? "zip" : "yaml"}`);
  };
  byId("get-document").addEventListener("click", () => telling(async (own) => {
    const { pdf } = await job("document", body(), (done) => {
      own.textContent = `Working on the document: ${Math.round(100 * done)} % …`;
    });
    download(new Blob([Uint8Array.from(atob(pdf), (letter) => letter.charCodeAt(0))], { type: "application/pdf" }), `${state.name}-document.pdf`);
  }, "The document is among your downloads."));
  byId("get-report").addEventListener("click", () => telling(async () => download(await ask("/api/report", body()), `${state.name}-report.html`), "The report is among your downloads."));
  byId("get-csv").addEventListener("click", () => telling(async () => download(await ask("/api/tables", body()), `${state.name}-tables.zip`), "The tables are among your downloads."));
  byId("get-scenario").addEventListener("click", () => telling(saveScenario, "The scenario file is among your downloads, with its tables if it has any."));
  byId("get-link").addEventListener("click", () => telling(async () => {
    const link = await linkTo(...partsOf(state.text, attached.files));
    if (link.length > LONGEST_LINK) throw new Error(`The link would have ${link.length} characters, which many programs cut: save the scenario file and hand it over.`);
    history.replaceState(null, "", link);
    state.linked = lineOf(state.text, attached.files);
    await navigator.clipboard?.writeText(link).catch(() => {});
  }, "The link is in the address bar, and copied where the browser allows it."));
  byId("handover").querySelector(".sheet").addEventListener("click", (event) => event.target.closest("button") && close(byId("handover")));
  // What was said stays until somebody goes on with something else.
  addEventListener("pointerdown", () => [...note.children].forEach((own) => own.textContent.endsWith("…") || own.remove()));
}

/** A menu closes where something else is clicked, is gone to or opens, and by Escape. */
export function wireMenus() {
  const menus = [...document.querySelectorAll(".menu")];
  addEventListener("pointerdown", (event) => menus.forEach((menu) => menu.contains(event.target) || (menu.open = false)));
  addEventListener("keydown", (event) => event.key === "Escape" && menus.filter((menu) => menu.open).forEach(close));
  for (const menu of menus) {
    menu.addEventListener("focusout", (event) => event.relatedTarget && !menu.contains(event.relatedTarget) && (menu.open = false));
    menu.addEventListener("toggle", () => menu.open && menus.forEach((other) => other === menu || (other.open = false)));
  }
}

/** Closes `menu`; who was in it by keyboard is at its button again. */
function close(menu) {
  const isIn = menu.contains(document.activeElement);
  menu.open = false;
  if (isIn) menu.querySelector("summary").focus();
}
