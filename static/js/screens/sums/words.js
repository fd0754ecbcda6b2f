// The core's names, keys and numbers of a sum, in words.

import { sumValue, typedValue } from "../../format.js";
import { nowMs } from "../../parts/source.js";
import { capital, has, inside, t, tFirst, words } from "../../messages/index.js";
import { asUsed } from "./units.js";

/**
 * What an input, an output or a figure below an answer is called; in one sum by its
 * own name.
 *
 * @param {string} name
 * @param {string} [sum] key
 */
export function label(name, sum = "") {
  const [base, ...rest] = String(name).split(".");
  const title = tFirst([
    `in.${sum}.${base}`,
    `in.${base}`,
    `out.${base}`,
    `of.${base}`,
    `quantity.${base}`,
  ]);
  return capital(rest.length ? `${title}, ${ofWords(rest.join("."))}` : title);
}

/**
 * @param {string} name
 * @param {string} [sum] key
 */
export function outLabel(name, sum = "") {
  return tFirst([`out.${sum}.${name}`, `out.${name}`, `in.${name}`]);
}

/**
 * What a value is of: a rule, a step, a size of wheel.
 *
 * @param {string | null} of
 */
export function ofWords(of) {
  if (!of) return "";
  return has("of." + of) || has("pick." + of)
    ? tFirst([`of.${of}`, `pick.${of}`])
    : inside(words(of));
}

/**
 * A choice of an input.
 *
 * @param {string | undefined} name
 * @param {string | undefined} choice
 */
export function pickWords(name, choice) {
  return tFirst([`pick.${name}.${choice}`, `pick.${choice}`]);
}

/**
 * A word that the core answers with.
 *
 * @param {string} name
 * @param {string} word
 */
export function isWords(name, word) {
  return tFirst([`is.${name}.${word}`, `is.${word}`, `pick.${word}`]);
}

/**
 * A figure in its unit as this person reads it.
 *
 * @param {number} figure
 * @param {string} unit
 * @param {?{spread: number}} [how] of one that was worked out, see `sumValue`
 */
export function shown(figure, unit, how = null) {
  const used = asUsed(figure, unit);
  return sumValue(used.value, used.unit, nowMs(), how);
}

/**
 * @param {unknown} value
 * @returns {value is null | undefined}
 */
export function isNothing(value) {
  return value === null || value === undefined;
}

/**
 * A figure that an answer rests on.
 *
 * @param {Pick<RestsOn, "name" | "value" | "unit">} origin
 * @param {{name: string}} [input]
 */
export function restsValue(origin, input) {
  if (Array.isArray(origin.value)) return rowsWords(origin.value);
  if (typeof origin.value === "boolean" || isNothing(origin.value)) return "";
  if (typeof origin.value === "string")
    return pickWords(input?.name ?? origin.name, origin.value);
  return shown(origin.value, origin.unit);
}

/**
 * How many rows a table has.
 *
 * @param {unknown[]} rows
 */
export function rowsWords(rows) {
  return t(rows.length === 1 ? "sums.rows.one" : "sums.rows.many", { n: rows.length });
}

/**
 * What was typed for an input, as it was typed.
 *
 * @param {{name: string}} input
 * @param {SumGiven} given
 */
export function givenWords(input, given) {
  if (given.rows) return rowsWords(given.rows);
  if (given.typed === undefined) return pickWords(input.name, given.value);
  return typedValue(given.typed, given.unit);
}

/**
 * What was begun for an input and not kept.
 *
 * @param {SumInput} input
 * @param {{typed: string, unit: string}} begun
 */
export function beginWords(input, begun) {
  if (input.kind !== "series")
    return t("sums.begun", { value: typedValue(begun.typed, begun.unit) });
  return t("sums.begun_row");
}
