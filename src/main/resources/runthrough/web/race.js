// The race that decides: strip that is left in the accumulator against the work that is left at the joiner, both in seconds.
import { el } from "./dom.js";

export class Race {
  constructor(place) {
    this.place = place;
    this.strip = lane("strip");
    this.joint = lane("joint");
    this.says = el("p", { class: "says" });
    place.replaceChildren(this.strip.row, this.joint.row, this.says);
  }

  /** Shows how things stand at the instant `s` of `course`. */
  show(course, s, words) {
    const race = raceAt(course, s);
    this.place.classList.toggle("stored", course.stores);
    this.strip.row.hidden = !course.stores;
    set(this.strip, "Strip left", race.strip, race.most, words);
    set(this.joint, race.name, race.joint, race.most, words);
    this.place.classList.toggle("short", race.isShort);
    write(this.says, said(race, course, s, words));
  }
}

function lane(name) {
  const label = el("span", { class: "name" });
  const bar = el("span", { class: "bar-fill" });
  const value = el("b", { class: "value" });
  return { row: el("div", { class: `lane ${name}` }, label, el("span", { class: "track" }, bar), value), label, bar, value };
}

function set(shown, name, seconds, most, words) {
  write(shown.label, name);
  write(shown.value, seconds > 0 ? words.time(seconds < 90 ? Math.round(seconds) : seconds) : "0\u00a0s");
  shown.bar.style.transform = `scaleX(${Math.max(0, Math.min(1, seconds / most))})`;
}

function write(node, text) {
  if (node.textContent !== text) node.textContent = text;
}

/**
 * Seconds of strip at the speed that the process runs at or is on its way to, and seconds of work at the joint that is made, or is
 * the next to be made.
 */
export function raceAt(course, s) {
  const change = course.raced(s.time);
  const strip = course.stores ? Math.max(0, s.level - (change?.stopLevel ?? 0)) / course.headsFor(s.time) : 0;
  if (!change) return { strip, joint: 0, most: Math.max(1, strip), name: "", isShort: false, change };
  const isMade = s.time >= change.released;
  const stands = s.time >= change.stopped && !isMade;
  const joint = isMade ? 0 : change.released - Math.max(s.time, change.stopped);
  return {
    change, strip, joint, stands, isMade,
    name: `${course.joins ? "Joint" : "Rethread"} ${isMade ? "made" : stands ? "left" : "to make"}`,
    most: Math.max(1, course.mostStrip, change.released - change.stopped),
    isShort: stands && change.outcome === "stopped",
  };
}

function said({ change, strip, joint, stands, isMade }, course, s, words) {
  if (!change) return "";
  const name = `Coil change ${change.number}`;
  if (!course.stores) return `${name}: no strip is stored, so the process ${stands ? "stands" : "stops"}.`;
  if (isMade) {
    return { "ran-through": `${name}: the process ran through.`, slowed: `${name}: the process slowed to save strip.` }[change.outcome] ?? `${name}: the process stopped.`;
  }
  if (!stands) return `${name} in ${words.time(Math.max(0, change.stopped - s.time))}.`;
  if (change.outcome === "slowed") return `${name}: the process slows to save strip.`;
  if (change.outcome === "ran-through") return `${name}: enough strip for this joint.`;
  return strip > 0 && joint > strip ? `${name}: the strip runs out ${words.time(Math.round(joint - strip))} too early.` : `${name}: the strip runs out before the joint is made.`;
}
