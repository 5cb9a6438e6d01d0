// Files that are dropped on the page, or chosen: the program says what each is, and what becomes of the line with it.
import { ask, attached, MOST_OF_FILES } from "./api.js";
import { byId, el } from "./dom.js";

/** What the program calls a file: letters that need no quotes. */
const plain = (name) => name.replace(/[^A-Za-z0-9._-]+/g, "-").split(".").filter(Boolean).join(".");

export class Files {
  /** `page`: `state`, `open` and `use` of the page; `studies` of it run what a log or a sheet is for. */
  constructor(page, studies) {
    Object.assign(this, { page, studies });
    byId("open").addEventListener("click", () => byId("file").click());
    byId("file").addEventListener("change", async (event) => {
      await this.takeAll([...event.target.files]);
      event.target.value = "";
    });
    byId("file-close").addEventListener("click", () => this.say(null));
    addEventListener("dragover", (event) => {
      if (![...event.dataTransfer.types].includes("Files")) return;
      event.preventDefault();
      document.body.classList.add("dropping");
    });
    addEventListener("dragleave", (event) => !event.relatedTarget && document.body.classList.remove("dropping"));
    addEventListener("drop", (event) => {
      document.body.classList.remove("dropping");
      if (!event.dataTransfer.files.length) return;
      event.preventDefault();
      this.takeAll([...event.dataTransfer.files]);
    });
  }

  /** A scenario comes before what belongs to it. */
  async takeAll(files) {
    const isScenario = (file) => /\.ya?ml$/i.test(file.name);
    for (const file of files.sort((a, b) => isScenario(b) - isScenario(a))) {
      await this.take(file).catch((e) => this.say({ name: file.name, problems: [e.message], warnings: [] }));
    }
  }

  async take(file) {
    if (file.size > MOST_OF_FILES) throw new Error("The page takes files up to 0.9 MB. Use a larger one with the commands.");
    const sent = { name: file.name, text: await file.text() };
    const said = await this.read(sent);
    this.say(said);
    if (said.problems.length) return;
    if (said.kind === "scenario") {
      await this.page.open(said.text, said.name.replace(/\.ya?ml$/i, ""));
    } else if (said.kind === "log") {
      this.studies.takeLog(sent);
    } else {
      const files = [...attached.files.filter((one) => one.name !== said.name), { name: said.name, text: sent.text }];
      await this.page.use({ text: said.text, files }, document.body.classList.contains("faulty"));
      if (said.kind === "sheet") byId("file-more").append(el("button", { type: "button", onclick: () => this.studies.showTimes(sent) }, "What the sheet shows"));
    }
  }

  /** What the program makes of the line with `sent`, anew where the line was changed in the meantime. */
  async read(sent) {
    const { text, units } = this.page.state;
    // Not with one of its name, in whose place it comes.
    const others = attached.files.filter((one) => one.name !== plain(sent.name));
    const said = await ask("/api/file", { text, units, files: others, file: sent });
    return this.page.state.text === text ? said : this.read(sent);
  }

  /** What became of the file that was taken last; nothing where `said` is null. */
  say(said) {
    byId("taken").hidden = !said;
    if (!said) return;
    byId("taken").classList.toggle("refused", said.problems.length > 0);
    byId("file-says").textContent = said.problems.length ? `${said.name} cannot be used:` : said.says;
    byId("file-list").replaceChildren(...[...said.problems, ...said.warnings].map((one) => el("li", {}, one)));
    byId("file-more").replaceChildren();
  }
}
