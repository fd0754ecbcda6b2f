// What is read off an instrument, as it is typed and shown.

import { convert, moreDecimals, readOfAll } from "../units/convert.js";
import { QUANTITIES } from "../units/table.js";
import { hasNot, number } from "./numbers.js";
import { unitRead } from "./reads.js";
import { unitName, withUnit } from "./units.js";

/** @import { MaybeNumber } from "./numbers.js" */
/**
 * How a quantity is typed and shown.
 *
 * @typedef {{unit: string, decimals: number, signed: boolean, kept: string,
 *     typed: string}} Form
 */

// A share of any kind is typed in percent, and the core knows of what.
const PERCENT = "%";

// Of a choice, which is no number, and of a field that is none of the instruments'.
const PLAIN = { unit: "", decimals: 2, signed: false };

/** @param {string} quantity */
function rowOf(quantity) {
  return QUANTITIES[quantity] ?? PLAIN;
}

/** @param {string} unit */
function typedAs(unit) {
  return unitName(unit) === PERCENT ? PERCENT : unit;
}

/**
 * How a quantity is typed and shown: in which unit; kept: the unit that all read it
 * in; typed: the unit of typed text for the core, "" for the quantity's own.
 *
 * @param {string} quantity
 * @returns {Form}
 */
export function formOf(quantity) {
  const { unit: own, decimals, signed } = rowOf(quantity);
  const unit = unitRead(own);
  return {
    unit,
    decimals: decimals + moreDecimals(own, unit),
    signed,
    kept: typedAs(readOfAll(own)),
    typed: unit === own ? "" : typedAs(unit),
  };
}

/** @param {string} quantity @param {number} value */
function inForm(quantity, value) {
  return convert(value, rowOf(quantity).unit, formOf(quantity).unit);
}

/**
 * The unit a quantity is shown in.
 *
 * @param {string} quantity
 */
export function unitOf(quantity) {
  return unitName(formOf(quantity).unit);
}

/**
 * A value of a quantity without its unit: "31.5".
 *
 * @param {string} quantity
 * @param {MaybeNumber | string} value
 */
export function bare(quantity, value) {
  if (typeof value === "string") return value;
  if (hasNot(value)) return "–";
  return number(inForm(quantity, value), formOf(quantity).decimals);
}

/**
 * A value of a quantity with its unit: "31.5 °C".
 *
 * @param {string} name
 * @param {MaybeNumber | string} value
 */
export function quantity(name, value) {
  return withUnit(bare(name, value), unitOf(name));
}

/**
 * How far a value moved from the one before: "+0.4 °C".
 *
 * @param {string} name
 * @param {number} value
 * @param {number} before
 */
export function change(name, value, before) {
  const moved = inForm(name, value) - inForm(name, before);
  const { unit, decimals } = formOf(name);
  const sign = value - before > 0 ? "+" : "";
  return sign + withUnit(number(moved, decimals), unitName(unit));
}

/**
 * What a keypad starts from when a known value is edited.
 *
 * @param {string} name
 * @param {MaybeNumber} value
 */
export function typedFrom(name, value) {
  return hasNot(value) ? "" : inForm(name, value).toFixed(formOf(name).decimals);
}

/**
 * A band: "30.0 to 32.0 °C", "at least 6.30", or "" when there is none.
 *
 * @param {string} name
 * @param {MaybeNumber} low
 * @param {MaybeNumber} high
 */
export function band(name, low, high) {
  if (hasNot(low) && hasNot(high)) return "";
  if (hasNot(high)) return "≥ " + quantity(name, low);
  if (hasNot(low)) return "≤ " + quantity(name, high);
  return bare(name, low) + " – " + quantity(name, high);
}
