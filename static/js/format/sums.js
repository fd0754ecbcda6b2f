// Values of the sums, in their own unit or one that is asked for.

import { convert, readOfAll } from "../units/convert.js";
import { SUM_CHOICES, UNITS } from "../units/table.js";
import { hasNot, number, typedText } from "./numbers.js";
import { clockDay, days, fineSpan } from "./times.js";
import { unitName, withUnit } from "./units.js";

/** @import { MaybeNumber } from "./numbers.js" */

const RAISED = "⁻⁰¹²³⁴⁵⁶⁷⁸⁹";

/** @param {number} value */
function powerOfTen(value) {
  const [digits, power] = value.toExponential(2).split("e");
  const signs = [...power.replace("+", "")];
  const raised = signs.map((sign) => RAISED["-0123456789".indexOf(sign)]).join("");
  return `${typedText(digits)}\u00a0×\u00a010${raised}`;
}

/** @param {number} value */
function figures(value) {
  const size = Math.abs(value);
  if (Number.isInteger(value)) return number(value, 0);
  if (size < 1e-6) return powerOfTen(value);
  return number(value, size >= 1000 ? 0 : size >= 100 ? 1 : size >= 10 ? 2 : 3);
}

/**
 * How many decimals the pad takes in a unit.
 *
 * @param {string} unit
 */
export function decimalsTyped(unit) {
  return UNITS[unit]?.typed ?? 4;
}

/**
 * A value of a sum in its unit: "31.5 °C", "22 min", "2.00 %". `nowMs` for instants.
 *
 * @param {MaybeNumber} value
 * @param {string} unit
 * @param {number} [nowMs]
 */
export function sumValue(value, unit, nowMs) {
  if (hasNot(value)) return "–";
  if (unit === "s" || unit === "min") return fineSpan(convert(value, unit, "s"));
  if (unit === "d") return days(value, Number.isInteger(value) ? 0 : 1);
  if (unit === "ms") return clockDay(value, nowMs);
  const to = SUM_CHOICES[unit]?.[0] ?? readOfAll(unit);
  const shown = convert(value, unit, to);
  const decimals = UNITS[to]?.shown;
  const text = decimals === undefined ? figures(shown) : number(shown, decimals);
  return withUnit(text, unitName(to));
}

/**
 * Two ends of a range; a unit that both carry is said once.
 *
 * @param {MaybeNumber} low
 * @param {MaybeNumber} high
 * @param {string} unit
 * @param {number} [nowMs]
 */
export function sumRange(low, high, unit, nowMs) {
  const ends = [sumValue(low, unit, nowMs), sumValue(high, unit, nowMs)];
  const tails = ends.map((end) => (/^[^\u00a0]+\u00a0(\D+)$/.exec(end) ?? [])[1]);
  if (tails[0] && tails[0] === tails[1])
    ends[0] = ends[0].slice(0, -tails[0].length - 1);
  return ends;
}

/**
 * A figure as it was typed, with the unit it was typed in.
 *
 * @param {string | number} typed
 * @param {string} unit
 */
export function typedValue(typed, unit) {
  return withUnit(typedText(typed), unitName(unit));
}
