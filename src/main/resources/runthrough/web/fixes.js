// What would let the line meet its target, of one change or two together: each is tried with one click and taken back with one.
import { ask, attached, Latest } from "./api.js";
import { byId, el } from "./dom.js";
import { job } from "./jobs.js";
import { showPart } from "./tabs.js";

export class Fixes {
  /** `page`: `state`, `read(text)` and `take(text, line, paths)` of the page. */
  constructor(page) {
    this.page = page;
    this.found = null;
    this.running = new Latest();
    byId("fix").addEventListener("click", () => this.find());
    byId("to-fix").addEventListener("click", () => {
      showPart("why");
      byId("fix").scrollIntoView({ block: "center" });
      byId("fix").focus({ preventScroll: true });
      this.find();
    });
  }

  find() {
    const place = byId("fixes");
    const { text, units } = this.page.state;
    const { files } = attached;
    place.replaceChildren(el("p", { class: "hint" }, "Trying …"));
    this.running.run((signal) => job("fixes", { text, units }, (done) => {
      place.replaceChildren(el("p", { class: "hint" }, `Trying: ${Math.round(100 * done)} % done …`));
    }, signal)).then((reply) => {
      if (!reply) return;
      this.found = { ...reply, text, files, units, tried: new Map() };
      this.show();
    }).catch((e) => place.replaceChildren(el("p", {}, e.message)));
  }

  /** What was found for the line before is none of this one's, but for one that has a fix of it now. */
  forget() {
    if (!this.show() && byId("fixes").childElementCount > 0) byId("fixes").replaceChildren(el("p", { class: "hint" }, "The line has changed since: find it anew."));
  }

  /** Shows the fixes that were found for this line, or for the one that has one of them now; false where there are none. */
  show() {
    const { found } = this;
    const { text, units } = this.page.state;
    const isOfThis = found?.units === units && found.files === attached.files && (text === found.text || [...found.tried.values()].includes(text));
    if (!isOfThis) return false;
    const place = byId("fixes");
    const at = [...place.querySelectorAll("button")].indexOf(document.activeElement);
    place.replaceChildren(el("p", { class: "hint" }, found.words), el("div", { class: "fixes" }, ...found.fixes.map((fix) => {
      const isTried = text !== found.text && found.tried.get(fix) === text;
      const [does, run] = isTried ? ["Take it back", () => this.page.read(found.text)] : ["Try it", () => this.try(fix)];
      const rank = fix.rank ? [el("small", {}, fix.rank)] : [];
      return el("div", {}, el("p", {}, fix.words, ...rank), el("button", { type: "button", "aria-label": `${does}: ${fix.words}`, onclick: () => run().catch(this.page.complain) }, does));
    })));
    place.querySelectorAll("button")[at]?.focus();
    return true;
  }

  /** Each fix on its own, both changes of a pair at once: one that was tried before is taken back with it. */
  async try(fix) {
    const { found } = this;
    const reply = await ask("/api/edit", { text: found.text, changes: fix.changes, units: found.units });
    found.tried.set(fix, reply.text);
    this.page.take(reply.text, reply.line, fix.changes.map((one) => one.path));
  }
}
