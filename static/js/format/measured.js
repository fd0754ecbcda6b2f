// Figures that were worked out, as finely as they are known and as a tool shows them.
// What a person entered, and what a rule prints, is never written by this.

import { TOOLS, UNITS } from "../units/table.js";
import { hasNot, number, plain } from "./numbers.js";
import { asRead, unitRead } from "./reads.js";
import { unitName, withUnit } from "./units.js";

/** @import { MaybeNumber } from "./numbers.js" */

// A range is told in twenty steps or more: finer would say what nobody knows.
const STEPS_OF_RANGE = 20;
// No step is coarser than this share of the figure: it would round it to nothing.
const LEAST_STEPS = 10;
// What is counted is written as it stands: half a tablet, 1.2 packs.
const COUNTED = ["pack", "tablet"];

/**
 * The largest of 1 and 5 times a power of ten that is no larger: by twos nobody counts.
 *
 * @param {number} size above 0
 */
function roundStep(size) {
  const power = 10 ** Math.floor(Math.log10(size) + 1e-9);
  return 5 * power <= size * (1 + 1e-9) ? 5 * power : power;
}

/**
 * The step of the tool that an amount is read off with; 0 where no tool shows any.
 *
 * @param {number} size
 * @param {string} unit
 */
function toolStep(size, unit) {
  const steps = TOOLS[unit]?.filter(([from]) => size >= from) ?? [];
  const step = steps.at(-1)?.[1] ?? 0;
  if (size === 0 || COUNTED.includes(unit)) return step;
  return Math.min(step, roundStep(size / LEAST_STEPS));
}

/**
 * In what steps a figure is told, by its tool and by how unsure it is; 0 for neither.
 *
 * @param {number} value
 * @param {string} unit that it is told in
 * @param {number} [spread] from one end of what it may be to the other
 */
export function stepOf(value, unit, spread = 0) {
  const finest = toolStep(Math.abs(value), unit);
  const decimals = UNITS[unit]?.shown;
  const shown = decimals === undefined ? 0 : 10 ** -decimals;
  const known = spread > 0 ? roundStep(spread / STEPS_OF_RANGE) : 0;
  return Math.max(finest, known > shown ? known : 0);
}

/**
 * A figure in whole steps, as text with the decimals of its step.
 *
 * @param {number} value
 * @param {number} step above 0
 */
export function inSteps(value, step) {
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
  const isFiner = step * 10 ** decimals - Math.round(step * 10 ** decimals) > 1e-6;
  return number(Math.round(value / step) * step, decimals + (isFiner ? 1 : 0));
}

/** @param {number} value @param {string} unit that the person reads @param {number} of */
function bare(value, unit, of) {
  const step = stepOf(of, unit);
  if (step === 0) return plain(value);
  return COUNTED.includes(unit)
    ? plain(Math.round(value / step) * step)
    : inSteps(value, step);
}

/**
 * An amount to measure out: as the jug, the scale or the gauge at hand shows it.
 *
 * @param {MaybeNumber} value
 * @param {string} unit
 */
export function measured(value, unit) {
  if (hasNot(value)) return "–";
  const shown = asRead(value, unit);
  const text = bare(shown.value, shown.unit, shown.value);
  return withUnit(text, unitName(unitRead(unit)));
}

/**
 * What an amount to measure out may be: "150 – 165 mL", in the steps of its larger end.
 *
 * @param {MaybeNumber} low
 * @param {MaybeNumber} high
 * @param {string} unit
 */
export function measuredBand(low, high, unit) {
  if (hasNot(low) && hasNot(high)) return "";
  if (hasNot(high)) return "≥ " + measured(low, unit);
  if (hasNot(low)) return "≤ " + measured(high, unit);
  const [from, to] = [asRead(low, unit), asRead(high, unit)];
  return `${bare(from.value, from.unit, to.value)} – ${measured(high, unit)}`;
}

/**
 * The text that a keypad begins with for an amount to measure out.
 *
 * @param {MaybeNumber} value
 * @param {string} unit
 */
export function measuredTyped(value, unit) {
  if (hasNot(value)) return "";
  const shown = asRead(value, unit);
  const step = stepOf(shown.value, shown.unit);
  if (step === 0) return String(Number(shown.value.toPrecision(4)));
  return String(Number((Math.round(shown.value / step) * step).toPrecision(6)));
}
