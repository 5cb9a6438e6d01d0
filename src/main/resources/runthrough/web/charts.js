// Charts of the page, drawn by uPlot; colours are those of the look.
import uPlot from "/uplot/uPlot.esm.js";
import { byId, colour, el, svg } from "./dom.js";
import { apart, clock, digits, given, percent } from "./words.js";

const TALL = 230;
const LEVEL_TALL = 220;
/** Room (px of the chart of margins) for what is said at a side of its zero. */
const SAID_WIDE = 104;
/** Steps (min) of an axis of times that has hours. */
const CLOCK_STEPS = [0.25, 0.5, 1, 2, 5, 10, 15, 30, 60, 120, 240, 480];
/** From this time (min) on an axis of times has hours, as the clock beside it. */
const HOURS = 120;

function axis(label, more = {}) {
  return {
    label, labelSize: 22, size: 56, stroke: colour("faint"), font: '12px "DejaVu Sans", Verdana, sans-serif',
    labelFont: '12px "DejaVu Sans", Verdana, sans-serif',
    grid: { stroke: colour("line"), width: 1 }, ticks: { stroke: colour("line"), width: 1 },
    values: (_, ticks) => ticks.map((value) => apart(String(Number(value.toPrecision(10))))), ...more,
  };
}

function make(place, options, data) {
  place.replaceChildren();
  const width = Math.max(280, place.clientWidth);
  const chart = new uPlot({ width, height: TALL, padding: [10, 14, 0, 0], cursor: { drag: { x: false, y: false } }, legend: { live: false }, ...options }, data, place);
  return chart;
}

/** The level and the two speeds at the coil change that is watched, with the present marked. */
export class LevelChart {
  constructor(onSeek) {
    this.place = byId("level-chart");
    this.onSeek = onSeek;
    this.chart = null;
    this.beside = null;
    this.now = 0;
    new ResizeObserver(() => {
      if (!this.chart) return;
      this.chart.setSize({ width: Math.max(280, this.place.clientWidth), height: LEVEL_TALL });
      this.cursor();
    }).observe(this.place);
  }

  take(course, words, look) {
    this.course = course;
    this.words = words;
    this.look = look;
    this.window = null;
    this.span = null;
  }

  /** Shows the coil change that is watched, from `span[0]` to `span[1]`, with the present `time` marked; or as long a time around it. */
  move(time, span) {
    if (!this.course?.t.length) return;
    this.now = time;
    this.span = span ?? this.span ?? [this.course.begin, this.course.end];
    const [from, to] = this.span;
    const isInside = time >= from && time <= to;
    const reach = to - from;
    const stretch = isInside ? this.span : this.window && time >= this.window[0] && time <= this.window[1] ? this.window : [time - 0.1 * reach, time + 0.9 * reach];
    const isSame = this.window && this.window[0] === stretch[0] && this.window[1] === stretch[1];
    if (isSame && this.chart) this.cursor();
    else {
      this.window = stretch;
      this.draw();
    }
  }

  /** Shows the level of a second line in step with the first; none where null. */
  accompany(course) {
    if (course === this.beside) return;
    this.beside = course;
    if (this.window) this.draw();
  }

  draw() {
    const [from, to] = this.window;
    const { length, speed } = this.words.units;
    const [t, x, ve, vp] = this.course.sampled(from, to);
    const minutes = t.map((s) => s / 60);
    const scaled = (values, per) => values.map((v) => v * per);
    const stores = this.look.capacity > 0;
    const besides = stores && this.beside?.stores ? [t.map((time) => this.beside.at(this.beside.inStepWith(this.course, time)).level)] : [];
    const most = Math.max(this.look.capacity, ...besides.flat());
    const options = {
      height: LEVEL_TALL,
      scales: { x: { time: false }, m: { range: [0, Math.max(1e-9, most * length.per * 1.05)] }, v: { range: [0, this.look.topSpeed * speed.per * 1.1] } },
      axes: [
        axis(...(from / 60 < HOURS ? ["time, min", { size: 44 }] : ["time, h:min:s", { size: 44, space: 80, incrs: CLOCK_STEPS, values: (_, ticks) => ticks.map((minutes) => clock(Math.round(minutes * 60))) }])),
        ...(stores ? [axis(`level, ${length.symbol}`, { scale: "m" })] : []),
        axis(`speed, ${speed.symbol}`, { scale: "v", side: stores ? 1 : 3, grid: { show: !stores } }),
      ],
      series: [
        { label: "time", value: (_, v) => (v === null ? "" : clock(v * 60)) },
        ...(stores ? [{ label: "level", scale: "m", stroke: colour("strip"), width: 2.5, fill: mixed(), value: (_, v) => show(v, length) }] : []),
        ...besides.map(() => ({ label: "level, pinned line", scale: "m", stroke: colour("focus"), width: 2, dash: [3, 3], value: (_, v) => show(v, length) })),
        { label: "entry speed", scale: "v", stroke: colour("entry"), width: 1.6, dash: [7, 3], value: (_, v) => show(v, speed) },
        { label: "process speed", scale: "v", stroke: colour("process"), width: 1.6, value: (_, v) => show(v, speed) },
      ],
      hooks: {
        drawClear: [(u) => this.shade(u)],
        draw: [(u) => this.mark(u)],
        init: [(u) => u.over.addEventListener("click", (event) => this.onSeek(u.posToVal(event.offsetX, "x") * 60))],
      },
    };
    this.chart?.destroy();
    this.chart = make(this.place, options, [minutes, ...(stores ? [scaled(x, length.per)] : []), ...besides.map((levels) => scaled(levels, length.per)), scaled(ve, speed.per), scaled(vp, speed.per)]);
    this.present = el("div", { class: "present" });
    this.chart.over.append(this.present);
    this.cursor();
    byId("level-note").textContent = stores
      ? "Grey bands are the times the strip stands at the joiner. The dashed red line is the level at which the process must stop. Click to go to a time."
      : "Grey bands are the times the strip stands. Click to go to a time.";
  }

  shade(u) {
    const { ctx } = u;
    ctx.save();
    ctx.fillStyle = colour("line");
    ctx.globalAlpha = 0.45;
    for (const change of this.course.changes) {
      if (change.released < this.window[0] || change.stopped > this.window[1]) continue;
      const a = u.valToPos(Math.max(change.stopped, this.window[0]) / 60, "x", true);
      const b = u.valToPos(Math.min(change.released, this.window[1]) / 60, "x", true);
      ctx.fillRect(a, u.bbox.top, Math.max(1, b - a), u.bbox.height);
    }
    ctx.restore();
  }

  mark(u) {
    const { ctx } = u;
    ctx.save();
    if (this.look.capacity > 0) {
      const y = u.valToPos(this.look.stopLevel * this.words.units.length.per, "m", true);
      line(ctx, u.bbox.left, y, u.bbox.left + u.bbox.width, y, colour("limit"), [6, 4]);
    }
    ctx.restore();
  }

  /** Marks the present without drawing anything anew. */
  cursor() {
    const width = this.chart.bbox.width / devicePixelRatio;
    this.present.style.transform = `translateX(${((this.now - this.window[0]) / (this.window[1] - this.window[0])) * width}px)`;
  }
}

function line(ctx, x0, y0, x1, y1, stroke, dash) {
  ctx.strokeStyle = stroke;
  ctx.lineWidth = 2 * devicePixelRatio;
  ctx.setLineDash(dash.map((d) => d * devicePixelRatio));
  ctx.beginPath();
  ctx.moveTo(x0, y0);
  ctx.lineTo(x1, y1);
  ctx.stroke();
}

function mixed() {
  return `color-mix(in srgb, ${colour("strip")} 14%, transparent)`;
}

function show(value, unit) {
  return value === null || value === undefined ? "" : `${apart(digits(value))} ${unit.symbol}`;
}

/** Bars of how many coil changes came how close to the stop level; those below it are distinguished by colour and hatching. */
export function marginChart(margin, words) {
  const place = byId("margin-chart");
  if (!margin) {
    place.replaceChildren();
    byId("margin-note").textContent = "Entry and process are one strip: there is no margin.";
    return;
  }
  const { length } = words.units;
  const w = 520;
  const h = 220;
  const left = 46;
  const bottom = 40;
  const bins = margin.counts.length;
  const most = Math.max(...margin.counts, 1);
  const barWide = (w - left - 10) / bins;
  const x = (si) => left + ((si - margin.from) / (margin.to - margin.from)) * (w - left - 10);
  const picture = svg("svg", { viewBox: `0 0 ${w} ${h}`, role: "presentation" });
  const text = (attributes, said) => svg("text", { "font-size": 12, fill: colour("faint"), "font-family": "DejaVu Sans, Verdana, sans-serif", ...attributes }, said);
  margin.counts.forEach((count, i) => {
    const tall = ((h - bottom - 24) * count) / most;
    const short = margin.from + ((i + 0.5) * (margin.to - margin.from)) / bins < 0;
    if (count > 0) {
      picture.append(svg("rect", { x: left + i * barWide, y: h - bottom - Math.max(1.5, tall), width: Math.max(1, barWide - 1), height: Math.max(1.5, tall),
        fill: colour(short ? "short" : "enough"), stroke: colour(short ? "short" : "strip"), "stroke-width": 0.8 }));
    }
  });
  picture.append(svg("path", { d: `M ${left} ${h - bottom} H ${w - 6}`, stroke: colour("edge") }));
  if (margin.from <= 0 && margin.to >= 0) {
    picture.append(svg("path", { d: `M ${x(0)} 8 V ${h - bottom}`, stroke: colour("limit"), "stroke-width": 2, "stroke-dasharray": "6 3" }));
    // Each on its side of zero, where it has room.
    if (x(0) - left > SAID_WIDE) picture.append(text({ x: x(0) - 6, y: 14, "text-anchor": "end", fill: colour("limit") }, "too little strip"));
    if (w - x(0) > SAID_WIDE) picture.append(text({ x: x(0) + 6, y: 14 }, "enough strip"));
  }
  for (const tick of ticks(margin.from * length.per, margin.to * length.per)) {
    picture.append(text({ x: x(tick / length.per), y: h - bottom + 16, "text-anchor": "middle" }, apart(digits(tick))));
  }
  picture.append(text({ x: (w + left) / 2, y: h - 6, "text-anchor": "middle" }, `margin at the rated speed, ${length.symbol}`));
  picture.append(text({ x: left - 6, y: 28, "text-anchor": "end" }, apart(String(most))));
  picture.append(text({ x: left - 6, y: h - bottom, "text-anchor": "end" }, "0"));
  picture.append(text({ x: 12, y: (h - bottom) / 2 + 6, transform: `rotate(-90 12 ${(h - bottom) / 2 + 6})`, "text-anchor": "middle" }, "coil changes"));
  place.replaceChildren(picture);
  byId("margin-note").textContent = `Of ${apart(String(margin.total))} coil changes, ${apart(String(margin.short))} stopped or slowed the process. Half had a margin of at least ${words.length(margin.median)}.`;
}

function ticks(from, to) {
  const rough = (to - from) / 6;
  const size = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((k) => k * size).find((s) => s >= rough) ?? size;
  const found = [];
  for (let k = Math.ceil(from / step); k * step <= to + 1e-9; k++) found.push(Number((k * step).toPrecision(10)));
  return found;
}

/** Fits the chart of capacities to the page when that becomes narrower or wider. */
let curveResizes = null;

/** Share run through against capacity. */
export function curveChart(curve, words) {
  const place = byId("curve-chart");
  if (!curve) {
    place.replaceChildren();
    byId("curve-note").textContent = "";
    return;
  }
  const { length } = words.units;
  const x = curve.points.map((p) => p.capacity * length.per);
  const low = curve.points.map((p) => 100 * p.low);
  const high = curve.points.map((p) => 100 * p.high);
  // As much of the scale as separates the target from the present capacity.
  const now = curve.points.reduce((best, p) => (Math.abs(p.capacity - curve.present) < Math.abs(best.capacity - curve.present) ? p : best));
  const bottom = Math.max(0, 100 - Math.max(500 * (1 - curve.target), 150 * (1 - now.share), 0.01));
  const chart = make(place, {
    scales: { x: { time: false }, y: { range: [bottom, 100 + (100 - bottom) * 0.03] } },
    axes: [axis(`usable capacity, ${length.symbol}`, { size: 44 }), axis("run through, %")],
    series: [
      { label: "capacity", value: (_, v) => show(v, length) },
      { label: "share run through", stroke: colour("strip"), width: 2.2, value: (_, v) => (v === null || v === undefined ? "" : percent(v / 100)) },
      { label: "95 % interval, from", stroke: mixed(), points: { show: false } },
      { label: "to", stroke: mixed(), points: { show: false } },
    ],
    bands: [{ series: [3, 2], fill: mixed() }],
    hooks: { draw: [(u) => {
      const y = u.valToPos(100 * curve.target, "y", true);
      line(u.ctx, u.bbox.left, y, u.bbox.left + u.bbox.width, y, colour("limit"), [6, 4]);
      const now = u.valToPos(curve.present * length.per, "x", true);
      line(u.ctx, now, u.bbox.top, now, u.bbox.top + u.bbox.height, colour("focus"), []);
    }] },
  }, [x, curve.points.map((p) => 100 * p.share), low, high]);
  curveResizes?.disconnect();
  curveResizes = new ResizeObserver(() => chart.setSize({ width: Math.max(280, place.clientWidth), height: TALL }));
  curveResizes.observe(place);
  byId("curve-note").textContent = `${curve.words} Dashed: the target, ${given(curve.target)}. Upright: the capacity there is. Shaded: 95 % interval.`;
  return chart;
}

/** The scale under the verdict: the target, the share seen and its interval, which narrows as the line is run again. */
export function sureness(answer) {
  const place = byId("scale");
  const low = answer.share.low ?? answer.share.mean;
  const high = answer.share.high ?? answer.share.mean;
  // Shares crowd near 1, so the scale stretches there: it is even in the logarithm of what fails.
  const x = (share) => 4 + 92 * Math.min(1, Math.max(0, -Math.log10(Math.max(1 - share, 1e-4)) / 4));
  const picture = svg("svg", { viewBox: "0 0 100 16", preserveAspectRatio: "none", "aria-hidden": "true" });
  picture.append(svg("path", { d: "M 4 8 H 96", stroke: colour("line"), "stroke-width": 2, "vector-effect": "non-scaling-stroke" }));
  picture.append(svg("rect", { x: x(low), y: 5.4, width: Math.max(0.6, x(high) - x(low)), height: 5.2, fill: colour("strip"), opacity: 0.55 }));
  picture.append(svg("rect", { x: x(answer.share.mean) - 0.3, y: 3, width: 0.6, height: 10, fill: colour("ink") }));
  picture.append(svg("path", { d: `M ${x(answer.target)} 1 V 15`, stroke: colour("limit"), "stroke-width": 2.5, "stroke-dasharray": "4 2", "vector-effect": "non-scaling-stroke" }));
  place.replaceChildren(picture);
  const words = answer.chance
    ? `${percent(answer.share.mean)} run through, 95 % interval ${percent(low)} to ${percent(high)}, from ${apart(String(answer.changes))} coil changes`
    : `${percent(answer.share.mean)} run through; nothing is random`;
  place.setAttribute("aria-label", `${words}; target ${given(answer.target)}`);
  byId("sure").textContent = `${words}. Dashed mark: target ${given(answer.target)}.${answer.refining ? " Running it again to be surer …" : ""}`;
}
