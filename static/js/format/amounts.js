// Amounts and the figures of a recipe, in the unit that the person reads.

import { TYPED_BEYOND, TYPED_TO, UNITS } from "../units/table.js";
import { hasNot, number, plain } from "./numbers.js";
import { asRead, isOwnUnit, unitRead } from "./reads.js";
import { span } from "./times.js";
import { unitName, withUnit } from "./units.js";

/** @import { MaybeNumber } from "./numbers.js" */

/** @param {number} size */
function amountDecimals(size) {
  return size >= 100 ? 0 : size >= 10 ? 1 : size >= 1 ? 2 : 3;
}

/** @param {number} value @param {string} unit */
function bareAmount(value, unit) {
  const shown = asRead(value, unit).value;
  return number(shown, amountDecimals(Math.abs(shown)));
}

/**
 * A measured amount: three figures, for a dose read off a scale or cylinder.
 *
 * @param {MaybeNumber} value
 * @param {string} unit
 */
export function amount(value, unit) {
  if (value === null || value === undefined) return "–";
  return withUnit(bareAmount(value, unit), unitName(unitRead(unit)));
}

/**
 * A kept amount as text for a keypad that types in the unit read.
 *
 * @param {MaybeNumber} value
 * @param {string} unit
 * @param {number} decimals
 */
export function amountTyped(value, unit, decimals) {
  return hasNot(value) ? "" : asRead(value, unit).value.toFixed(decimals);
}

/**
 * How many decimals an amount is typed with, by its size in the unit read.
 *
 * @param {MaybeNumber} value what is planned; null where nothing is
 * @param {string} unit
 */
export function amountTypedDecimals(value, unit) {
  const shown = hasNot(value) ? 0 : asRead(value, unit).value;
  return TYPED_TO.find(([most]) => shown < most)?.[1] ?? TYPED_BEYOND;
}

/**
 * The limits of an amount: "214 – 237 mL".
 *
 * @param {MaybeNumber} low
 * @param {MaybeNumber} high
 * @param {string} unit
 */
export function amountBand(low, high, unit) {
  if (hasNot(low) && hasNot(high)) return "";
  if (hasNot(high)) return "≥ " + amount(low, unit);
  if (hasNot(low)) return "≤ " + amount(high, unit);
  return `${bareAmount(low, unit)} – ${amount(high, unit)}`;
}

// A figure of a recipe has the digits that its author gave it. Converted for a person
// it has four; on a scale that does not begin at nothing, as many as are read off it.
/** @param {number} value @param {string} unit */
function bareIn(value, unit) {
  const shown = asRead(value, unit);
  if (isOwnUnit(unit)) return plain(shown.value);
  const { zero, typed } = UNITS[shown.unit];
  return plain(Number(zero ? shown.value.toFixed(typed) : shown.value.toPrecision(4)));
}

/**
 * Any value in a named unit of a recipe: temperatures, shares, times, masses.
 *
 * @param {MaybeNumber} value
 * @param {string | null} unit
 */
export function inUnit(value, unit) {
  if (value === null || value === undefined) return "–";
  if (unit === "s") return span(value);
  return withUnit(bareIn(value, unit ?? ""), unitName(unitRead(unit ?? "")));
}

/**
 * A figure of a recipe in the recipe's own unit, where it is changed in that.
 *
 * @param {MaybeNumber} value
 * @param {string} unit
 */
export function inOwnUnit(value, unit) {
  return isOwnUnit(unit) ? inUnit(value, unit) : withUnit(plain(value), unitName(unit));
}

/**
 * A band in a recipe's own unit.
 *
 * @param {MaybeNumber} low
 * @param {MaybeNumber} high
 * @param {string} unit
 */
export function bandIn(low, high, unit) {
  if (hasNot(low) && hasNot(high)) return "";
  if (hasNot(high)) return "≥ " + inUnit(low, unit);
  if (hasNot(low)) return "≤ " + inUnit(high, unit);
  if (unit === "s") return `${span(low)} – ${span(high)}`;
  return `${bareIn(low, unit)} – ${inUnit(high, unit)}`;
}
