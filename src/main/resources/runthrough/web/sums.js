// What people type in the place of a value: a change of it in percent, or a product, is worked out.

/** What was typed in the place of `present`, such as "90 s": "+20 %" of it and "45*1.2" as the value that they come to, all else as it is. */
export function workedOut(said, present, whole = false) {
  const text = said.trim().replace(/[\u2212\u2013]/g, "-").replace(/\u00d7/g, "*");
  const [number, unit] = taken(present);
  const percent = /^([+-])\s?(\d+(?:\.\d+)?)\s?%$/.exec(text);
  if (percent) {
    const factor = 1 + (percent[1] === "-" ? -1 : 1) * (Number(percent[2]) / 100);
    return valued(number * factor, unit, whole);
  }
  const worked = /^(\d+(?:\.\d+)?) ?([*/]) ?(\d+(?:\.\d+)?) ?(\D.*)?$/.exec(text);
  if (worked) {
    const [, one, how, other, own] = worked;
    return valued(how === "*" ? one * other : one / other, own ?? unit, whole);
  }
  return text;
}

/** Number and unit of `present`; minutes and seconds, such as "1:30 min", are minutes. */
function taken(present) {
  const clock = /^(\d+):([0-5]\d(?:\.\d+)?)\s*min$/.exec(present);
  if (clock) return [Number(clock[1]) + Number(clock[2]) / 60, "min"];
  const [, number, unit] = /^([-+]?[\d.]+(?:e[-+]?\d+)?)\s*(.*)$/i.exec(present) ?? [null, NaN, ""];
  return [number, unit];
}

function valued(number, symbol, whole) {
  return `${whole ? Math.round(number) : Number(number.toPrecision(6))}${symbol ? ` ${symbol}` : ""}`;
}
