// Several lines kept in this browser, each under a name, with what can be undone and what was pinned.
import { byId, el } from "./dom.js";
import { History } from "./history.js";

const KEY = "runthrough.projects";
/** Steps to undo that are kept with a project. */
const STEPS = 10;

export class Projects {
  /** `page`: `history` and `restore(kept)` of the page. */
  constructor(page) {
    this.page = page;
    byId("keep-project").addEventListener("click", () => this.keepAs(byId("project-name").value.trim()));
    byId("project-name").addEventListener("keydown", (event) => event.key === "Enter" && byId("keep-project").click());
    addEventListener("storage", (event) => event.key === KEY && this.show());
    this.show();
  }

  /** All that are kept, by name. */
  static all() {
    try {
      return new Map(Object.entries(JSON.parse(localStorage.getItem(KEY)) ?? {}));
    } catch {
      return new Map();
    }
  }

  /** Keeps the present work under `name`, and from then on what becomes of it. */
  keepAs(name) {
    if (!name) {
      byId("project-note").textContent = "Give it a name.";
      return;
    }
    this.page.history.project = name;
    this.page.history.keep();
    byId("project-name").value = "";
    byId("project-note").textContent = this.keep() ? `Kept as “${name}”, from now on with every change.` : "This browser has no room for it.";
  }

  /** Keeps the present work where it belongs to a project; false where this browser has no room. */
  keep() {
    const { project, opened, name, texts, at, pins, pinNames, pinSets, sets, setAt } = this.page.history;
    if (!project) return true;
    const first = Math.max(0, at - STEPS);
    const kept = Projects.all().set(project, { project, opened, name, pins, pinNames, pinSets, sets, setAt: setAt.slice(first, at + 1), texts: texts.slice(first, at + 1), at: at - first });
    return this.write(kept);
  }

  remove(name) {
    const kept = Projects.all();
    kept.delete(name);
    if (this.page.history.project === name) this.page.history.project = "";
    this.write(kept);
  }

  write(kept) {
    try {
      localStorage.setItem(KEY, JSON.stringify(Object.fromEntries(kept)));
      return true;
    } catch {
      return false;
    } finally {
      this.show();
    }
  }

  show() {
    const kept = [...Projects.all().entries()];
    byId("projects").replaceChildren(...kept.map(([name, work]) => el("li", {},
      el("button", { type: "button", "aria-current": name === this.page.history.project ? "true" : null, onclick: () => this.open(work) }, name),
      el("button", { type: "button", "aria-label": `Remove ${name}`, onclick: () => this.remove(name) }, "Remove"))));
    byId("project-none").hidden = kept.length > 0;
  }

  async open(work) {
    byId("projects-menu").open = false;
    await this.page.restore(History.whole(work));
    this.show();
  }
}
