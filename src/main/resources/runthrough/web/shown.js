// Tables, and answers of studies as their reports show them.
import { el } from "./dom.js";

/** A table; its first column names the rows. */
export const table = (head, rows) =>
  el("table", {}, el("thead", {}, el("tr", {}, ...head.map((h, i) => (h ? el("th", { scope: "col", class: i ? "n" : null }, h) : el("td"))))),
    el("tbody", {}, ...rows.map((row) => el("tr", {}, ...row.map((cell, i) => (i ? el("td", { class: "n" }, cell) : el("th", { scope: "row" }, cell)))))));

/** An answer as its report shows it. */
export function shown(answer) {
  return [
    el("div", { class: `verdict ${answer.style}` }, el("p", { class: "hint" }, answer.question),
      el("p", { class: "lead" }, el("span", { "aria-hidden": "true" }, answer.sign), ` ${answer.headline}`)),
    ...answer.words.map((word) => el("p", {}, word)),
    answer.warnings.length ? el("ul", { class: "warnings" }, ...answer.warnings.map((one) => el("li", {}, one))) : "",
    answer.figures.length ? el("dl", { class: "study-figures" }, ...answer.figures.map(([name, value, note]) => el("div", {}, el("dt", {}, name), el("dd", {}, el("b", {}, value), " ", el("span", { class: "hint" }, note))))) : "",
    ...answer.charts.map(chart), ...answer.tables.map(titled),
    ...answer.account.map((part) => el("details", { class: "account" }, el("summary", {}, part.title),
      ...part.paragraphs.map((one) => el("p", {}, one)), ...part.kept.map((one) => el("pre", { class: "scroll", tabindex: 0, role: "region", "aria-label": part.title }, one)),
      ...part.charts.map(chart), ...part.tables.map(titled))),
  ];
}

/** As an image a chart keeps its own styles, which the page's policy would not let into the page itself. */
function chart({ svg, reading, alternative }) {
  return el("figure", { class: "picture" }, el("img", { class: "printed", src: `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`, alt: alternative }), el("figcaption", {}, reading));
}

function titled({ caption, head, rows }) {
  return el("div", { class: "scroll", tabindex: 0, role: "region", "aria-label": caption }, el("h3", {}, caption), table(head, rows));
}
