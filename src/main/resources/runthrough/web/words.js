// Numbers as text in the user's units. Factors come from the program; nothing is converted by numbers of this page's own.

/** Words for one choice of units; `units` has for each kind its symbol and how many of it an SI unit is. */
export class Words {
  constructor(units, pixelsPerMetre = 24) {
    this.units = units;
    this.pixelsPerMetre = pixelsPerMetre;
  }

  of(kind, si) {
    const unit = this.units[kind];
    return `${apart(digits(si * unit.per))}\u00a0${unit.symbol}`;
  }

  length(si) {
    return this.of("length", si);
  }

  speed(si) {
    return this.of("speed", si);
  }

  /** Seconds up to 90 s, minutes and seconds up to 3 h, hours beyond. */
  time(si) {
    if (si <= 90) return `${digits(si)}\u00a0s`;
    if (si > 10800) return `${apart(digits(si / 3600))}\u00a0h`;
    const whole = Math.round(si);
    return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, "0")}\u00a0min`;
  }
}

/** Three digits that matter, whole digits always, without a tail of noughts. */
export function digits(value, wanted = 3) {
  if (!Number.isFinite(value)) return "–";
  const size = Math.abs(value);
  if (size < 1e-9) return "0";
  const decimals = Math.max(0, Math.min(6, wanted - 1 - Math.floor(Math.log10(size))));
  const shown = Math.min(decimals, size >= 100 ? 0 : size >= 10 ? 1 : decimals);
  return String(Number(value.toFixed(shown)));
}

/** A written number with its thousands apart from five digits on, for reading; a value of the file has none. */
export function apart(number) {
  return /^-?\d{5}/.test(number) ? number.replace(/(?<=^-?\d+)(?=(\d{3})+(\.|$))/g, "\u00a0") : number;
}

/** A share as percent; never rounded up to a hundred it has not reached. */
export function percent(share) {
  const value = 100 * share;
  if (value > 99.9 && value < 100) return `${Math.floor(value * 1000) / 1000}\u00a0%`;
  return `${Number(value.toFixed(value > 99 ? 2 : 1))}\u00a0%`;
}

/** A share that somebody gave, such as a target, as percent with all its digits. */
export function given(share) {
  return `${Number((100 * share).toPrecision(12))}\u00a0%`;
}

/** Time of day of a run, as h:mm:ss. */
export function clock(seconds) {
  const s = Math.max(0, Math.floor(seconds));
  return `${Math.floor(s / 3600)}:${String(Math.floor(s / 60) % 60).padStart(2, "0")}:${String(s % 60).padStart(2, "0")}`;
}
