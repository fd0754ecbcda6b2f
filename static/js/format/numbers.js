// A number becomes text, and typed text without a quantity of its own a number.

import { point } from "./reads.js";

/** @typedef {number | null | undefined} MaybeNumber */

/** @param {unknown} value @returns {value is null | undefined} */
export function hasNot(value) {
  return value === null || value === undefined;
}

/**
 * A number with a fixed count of decimals.
 *
 * @param {MaybeNumber} value
 * @param {number} decimals
 */
export function number(value, decimals) {
  if (value === null || value === undefined || Number.isNaN(value)) return "–";
  const text = Math.abs(value).toFixed(decimals);
  const isNegative = value < 0 && Number(text) !== 0;
  const [whole, part] = text.split(".");
  // A thin space parts thousands in all three languages: a point or a comma would
  // be the decimal of a colleague.
  const grouped =
    whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, "\u202f") : whole;
  return (isNegative ? "−" : "") + grouped + (part ? point() + part : "");
}

/** @param {MaybeNumber} value */
export function count(value) {
  return number(value, 0);
}

/**
 * A number as it stands, without zeros that nobody measured.
 *
 * @param {MaybeNumber} value
 */
export function plain(value) {
  if (value === null || value === undefined) return "–";
  return typedText(Number(value.toPrecision(6)));
}

/**
 * Typed text as it is shown: with the person's decimal sign.
 *
 * @param {string | number} typed
 */
export function typedText(typed) {
  return String(typed).replace("-", "−").replace(".", point());
}

/** @param {MaybeNumber} value */
export function bytes(value) {
  if (hasNot(value)) return "–";
  if (value < 1e6) return `${number(value / 1e3, 0)}\u00a0kB`;
  if (value < 1e9) return `${number(value / 1e6, 1)}\u00a0MB`;
  return `${number(value / 1e9, 1)}\u00a0GB`;
}

/**
 * Text typed on the keypad as a number; null when it is not one.
 *
 * @param {string} typed
 */
export function readNumber(typed) {
  const text = typed.replace(",", ".").replace("−", "-");
  return /^-?\d+(\.\d*)?$/.test(text) ? Number(text) : null;
}
