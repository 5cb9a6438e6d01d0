// The engine's exact course of some coil changes: between two points speeds change at constant rates, so the level is a
// parabola. Everything the drawing and the chart show comes from here.

/** Seconds that are shown before a coil change and after it. */
const BEFORE = 6;
const AFTER = 8;

export class Course {
  /** `given`: columns t, x, ve, ae, vp, ap, r, entered, processed, rated, entry, process; `changes`, `joints`, `work`. */
  constructor(given) {
    Object.assign(this, given);
    this.begin = this.t[0] ?? 0;
    this.end = this.t[this.t.length - 1] ?? 0;
    /** Seconds that the fullest accumulator of the course lasts. */
    this.mostStrip = this.stores ? Math.max(...this.x.map((level, i) => level / this.rated[i])) : 0;
  }

  /** Index of the last point at or before `time`. */
  index(time) {
    let low = 0;
    let high = this.t.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (this.t[middle] <= time) low = middle;
      else high = middle - 1;
    }
    return low;
  }

  at(time) {
    const i = this.index(time);
    const dt = Math.max(0, Math.min(time, this.end) - this.t[i]);
    const entered = dt * (this.ve[i] + dt * this.ae[i] / 2);
    const processed = dt * (this.vp[i] + dt * this.ap[i] / 2);
    return {
      time,
      level: this.x[i] + entered - processed,
      entrySpeed: Math.max(0, this.ve[i] + dt * this.ae[i]),
      processSpeed: Math.max(0, this.vp[i] + dt * this.ap[i]),
      remaining: Math.max(0, this.r[i] - entered),
      rated: this.rated[i],
      entryState: this.entry[i],
      processState: this.process[i],
      entered: this.entered[i] + entered,
      processed: this.processed[i] + processed,
      change: this.changeAt(time),
    };
  }

  /** The latest coil change begun at `time`, or null. */
  changeAt(time) {
    let found = null;
    for (const change of this.changes) {
      if (change.start > time) break;
      found = change;
    }
    return found;
  }

  /**
   * The joints on their way at the instant `s`, first made first: where each is, as a share of the stretch on which it is
   * (`stored`, `path` to the process, `process`), and how much strip is left until it reaches the process.
   */
  jointsAt(s) {
    return this.joints.filter((joint) => joint.made <= s.time && s.processed < joint.past).map((joint) => {
      const behind = s.entered - joint.entered;
      const before = joint.leaves - s.processed;
      const [stretch, share] = before > 0 ? ["stored", behind / Math.max(1e-9, behind + before)]
        : s.processed < joint.arrives ? ["path", -before / (joint.arrives - joint.leaves)]
          : ["process", (s.processed - joint.arrives) / (joint.past - joint.arrives)];
      return {
        number: joint.number, stretch, straight: joint.arrives === joint.leaves, share: Math.max(0, Math.min(1, share)), ahead: joint.arrives - s.processed, left: joint.past - s.processed,
        arrivesAt: joint.arrivesAt, broken: s.processState === "joint-break" && joint.brokeAt !== null && joint.brokeAt <= s.time,
      };
    });
  }

  /** When the process moves again, from `time` on; null where the course ends first. */
  movesAgain(time) {
    for (let i = this.index(time); i < this.t.length; i++) if (this.vp[i] > 0 || this.ap[i] > 0) return Math.max(time, this.t[i]);
    return null;
  }

  /** The speed that the process is to run at: the one it has or changes to at `time`, or its rated one where it stands or stops. */
  headsFor(time) {
    const now = this.index(time);
    let i = now;
    while (i < this.t.length - 1 && this.ap[i] !== 0) i++;
    return this.ap[i] === 0 && this.vp[i] > 0 ? this.vp[i] : this.rated[now];
  }

  /** The coil change that matters at `time`: the one under way, and from when the accumulator is full again the next. */
  raced(time) {
    const now = this.changeAt(time);
    const isOver = !now || time > Math.max(now.released + AFTER, now.matched ?? 0);
    return isOver ? this.nextChange(time) ?? now : now;
  }

  /** From when to when coil change `change` is worth watching: until the accumulator is full again and its joint is past the process. */
  span(change) {
    const next = this.changes.find((other) => other.number === change.number + 1);
    const joint = this.joints.find((one) => one.number === change.number);
    const isNear = joint?.arrivesAt && joint.arrivesAt - change.released < 4 * (change.released - change.stopped);
    const to = Math.max(change.released + AFTER, (change.matched ?? change.released) + AFTER, isNear ? joint.arrivesAt + AFTER : 0);
    const from = Math.max(this.begin, change.start - BEFORE);
    return [from, Math.min(this.end, next ? Math.max(change.released + 1, next.start - 1) : this.end, to)];
  }

  /** The time here that is in step with `time` of `other`: the same coil change, as long after its tail has stopped. */
  inStepWith(other, time) {
    const theirs = other.raced(time);
    const mine = theirs && this.changes.find((one) => one.number === theirs.number);
    if (!mine) return Math.min(time, this.end);
    const next = this.changes.find((one) => one.number === theirs.number + 1);
    return Math.max(this.begin, Math.min(mine.stopped + time - theirs.stopped, next ? next.start - 0.1 : this.end));
  }

  nextChange(time) {
    return this.changes.find((change) => change.start > time + 1e-6) ?? null;
  }

  changeBefore(time) {
    const earlier = this.changes.filter((change) => change.start < time - 1e-6);
    return earlier[earlier.length - 1] ?? null;
  }

  /** Work elements under way at `time`. */
  workAt(time) {
    return this.work.filter((one) => one.start <= time && (one.end === null || time < one.end));
  }

  /** How often the joint has been begun that is being made at `time`; 0 where the strip moves. */
  passAt(time) {
    const change = this.changeAt(time);
    if (!change || time < change.stopped || time >= change.released) return 0;
    const begun = this.work.filter((one) => one.change === change.number && one.list === "join" && one.start <= time);
    return Math.max(1, ...begun.map((one) => one.pass));
  }

  /** Whether coil `number` (from 1) has been prepared at `time`; null while its preparation has not begun. */
  prepared(number, time) {
    if (number <= this.changes[0]?.number) return true;
    const steps = this.work.filter((one) => one.list === "prepare" && one.change === number - 1 && one.pass === 1);
    if (!steps.length) return this.preparesNothing ? true : null;
    if (steps[0].start > time) return null;
    const last = steps[steps.length - 1];
    return last.end !== null && last.end <= time;
  }

  /** Times, levels and speeds for a chart of [from, to]: breakpoints and enough between them to round the parabolas. */
  sampled(from, to, wanted = 900) {
    const times = new Set([from, to]);
    for (let i = this.index(from); i < this.t.length && this.t[i] <= to; i++) if (this.t[i] >= from) times.add(this.t[i]);
    const step = (to - from) / wanted;
    for (let k = 1; k < wanted; k++) times.add(from + k * step);
    const sorted = [...times].sort((a, b) => a - b);
    const all = sorted.map((time) => this.at(time));
    return [sorted, all.map((s) => s.level), all.map((s) => s.entrySpeed), all.map((s) => s.processSpeed)];
  }
}
