// Values of the sums, in their own unit or one that is asked for.

import { convert, readOfAll } from "../units/convert.js";
import { SUM_CHOICES, UNITS } from "../units/table.js";
import { inSteps, stepOf } from "./measured.js";
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
 * A figure as finely as it is known: by its range, and as the tool at hand shows it.
 *
 * @param {number} value
 * @param {string} to unit that it is told in
 * @param {number} spread
 */
function known(value, to, spread) {
  const step = stepOf(value, to, spread);
  if (step > 0) return inSteps(value, step);
  const decimals = UNITS[to]?.shown;
  return decimals === undefined ? figures(value) : number(value, decimals);
}

/**
 * A value of a sum in its unit: "31.5 °C", "22 min", "2.00 %". `nowMs` for instants.
 *
 * @param {MaybeNumber} value
 * @param {string} unit
 * @param {number} [nowMs]
 * @param {?{spread: number}} [how] of what was worked out: from one end to the other
 *   of what it may be; left out of what was entered or a rule prints
 */
export function sumValue(value, unit, nowMs, how = null) {
  if (hasNot(value)) return "–";
  if (unit === "s" || unit === "min") return fineSpan(convert(value, unit, "s"));
  if (unit === "d") return days(value, Number.isInteger(value) ? 0 : 1);
  if (unit === "ms") return clockDay(value, nowMs);
  const to = SUM_CHOICES[unit]?.[0] ?? readOfAll(unit);
  const shown = convert(value, unit, to);
  const decimals = UNITS[to]?.shown;
  const exact = decimals === undefined ? figures(shown) : number(shown, decimals);
  const spread = how && convert(how.spread, unit, to) - convert(0, unit, to);
  return withUnit(how ? known(shown, to, spread ?? 0) : exact, unitName(to));
}

/**
 * Two ends of a range; a unit that both carry is said once.
 *
 * @param {MaybeNumber} low
 * @param {MaybeNumber} high
 * @param {string} unit
 * @param {number} [nowMs]
 * @param {?{spread: number}} [how] as for `sumValue`
 */
export function sumRange(low, high, unit, nowMs, how = null) {
  const ends = [low, high].map((end) => sumValue(end, unit, nowMs, how));
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
