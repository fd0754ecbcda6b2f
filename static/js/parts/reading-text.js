import { amount, formOf, quantity, typedValue, unitRead } from "../format.js";
import { t } from "../messages/index.js";

/**
 * The value of a reading in words: a figure with its unit, or the choice made.
 *
 * @param {string} name
 * @param {number | string} value
 */
export function readingText(name, value) {
  return typeof value === "string" ? t("choice." + value) : quantity(name, value);
}

/**
 * What is read: a quantity, or in a hold the round of milk and air space together.
 *
 * @param {Step} step
 * @param {string} name
 */
export function roundName(step, name) {
  const isRound = step.readings.some((one) => one.goes_with === name);
  return t(isRound ? "round.both" : "quantity." + name);
}

/**
 * A recorded reading: as it was typed, where that was in another unit than is read.
 *
 * @param {Record<string, any>} data of the entry
 */
export function recordedText({ quantity: name, value, typed, typed_unit: unit }) {
  const text = readingText(name, value);
  const form = formOf(name);
  const typedIn = unit || form.kept;
  if (typeof value !== "number" || !typed || typedIn === (form.typed || form.kept))
    return text;
  return `${typedValue(typed, typedIn)} (${text})`;
}

/**
 * A recorded mass: as it was typed, where that was by volume or in another unit.
 *
 * @param {Record<string, any>} data of the entry
 */
export function recordedMass({ mass_kg: value, typed, typed_unit: unit }) {
  const text = amount(value, "kg");
  return !typed || !unit || unit === unitRead("kg")
    ? text
    : `${typedValue(typed, unit)} (${text})`;
}
