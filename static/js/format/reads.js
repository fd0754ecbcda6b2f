// In which language and units figures are written: of who has the phone in hand
// (data/reads.js says which). What is kept, and what was typed, stays as it is.

import { convert, readOfAll } from "../units/convert.js";
import { UNITS } from "../units/table.js";

// `units`: what is read of all to what this person reads.
/** @type {{language: string, point: string, units: Record<string, string>}} */
let reads = { language: "en", point: ".", units: {} };
let onRead = () => {};

/**
 * Show figures from now on as a person reads them.
 *
 * @param {{language?: string, units?: Record<string, string>}} next
 * @param {() => void} [told] called whenever a figure is written, so that a screen
 *     knows what it rests on
 */
export function setReads(next, told = onRead) {
  reads = { ...reads, ...next };
  reads.point = new Intl.NumberFormat(reads.language).format(1.1)[1];
  onRead = told;
}

/** The language that figures are written in. */
export function language() {
  onRead();
  return reads.language;
}

/** The language for the browser's own words: English without its months first. */
export function locale() {
  return language() === "en" ? "en-GB" : reads.language;
}

/** The sign that parts whole from decimals. */
export function point() {
  onRead();
  return reads.point;
}

/**
 * The unit in which the person reads what is kept in another.
 *
 * @param {string} unit
 */
export function unitRead(unit) {
  onRead();
  const own = readOfAll(unit);
  return reads.units[own] ?? own;
}

/**
 * Whether this person reads the unit in another than all.
 *
 * @param {string} unit
 */
export function isOwnUnit(unit) {
  return unitRead(unit) === readOfAll(unit);
}

/**
 * A kept value in the unit that the person reads: {value, unit}.
 *
 * @param {any} value a number, or the word of a sum
 * @param {string} unit
 * @returns {{value: any, unit: string}}
 */
export function asRead(value, unit) {
  if (typeof value !== "number" || !(unit in UNITS)) return { value, unit };
  const to = unitRead(unit);
  return { value: convert(value, unit, to), unit: to };
}
