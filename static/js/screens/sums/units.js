import { computed, signal } from "@preact/signals";
import { person } from "../../parts/source.js";
import { unitRead } from "../../format.js";
import { convert, readOfAll } from "../../units/convert.js";
import { FOLLOWING, SUM_CHOICES } from "../../units/table.js";

// Which unit each person typed an input in is remembered on the phone. What was typed
// keeps the unit it was typed in. Answers follow the unit used last in the sums, or chosen
// there; until then they are in the units that the person reads elsewhere.

const PLACE = "sum-units";
/** @type {import("@preact/signals").Signal<Record<string, Record<string, string>>>} */
const all = signal(JSON.parse(localStorage.getItem(PLACE) ?? "{}"));
const kept = computed(() => all.value[String(person.value)] ?? {});

/** @typedef {Pick<SumInput, "name" | "unit" | "units">} Typed what is typed in a unit */

/**
 * The units a person may type an input in; its own where there is one only.
 *
 * @param {Typed} input
 */
export function unitsOf(input) {
  return input.units.filter((unit) => readOfAll(unit) === unit);
}

/**
 * The unit that the pad begins with: the one used last for this.
 *
 * @param {Typed} input
 */
export function unitFor(input) {
  const units = unitsOf(input);
  const used = unitUsed(input.unit);
  // What is usual for this input goes before the core's own unit of it.
  const wanted = [kept.value[input.name], used === input.unit ? units[0] : used];
  return wanted.find((unit) => units.includes(unit)) ?? units[0];
}

/** @param {Record<string, string>} next */
function keep(next) {
  all.value = { ...all.value, [String(person.value)]: next };
  try {
    localStorage.setItem(PLACE, JSON.stringify(all.value));
  } catch {
    // It holds while the page is open.
  }
}

/**
 * Remember the unit that an input was typed in.
 *
 * @param {Typed} input
 * @param {string} unit
 */
export function keepUnit(input, unit) {
  const isFollowed = SUM_CHOICES[input.unit]?.includes(unit);
  keep({
    ...kept.value,
    [input.name]: unit,
    ...(isFollowed ? { [input.unit]: unit } : {}),
  });
}

/** @typedef {[string, string[]]} Choice a kept unit, and what it may be read in */
/** What people may choose to read the answers in. */
export const CHOICES_OF_SUMS = Object.entries(SUM_CHOICES);

/**
 * Choose the unit of a kind for all sums: pads begin with it, answers follow it.
 *
 * @param {Choice} choice
 * @param {string} unit
 */
export function chooseUnit([own, units], unit) {
  const others = Object.entries(kept.value).filter(
    ([, used]) => used !== own && !units.includes(used),
  );
  keep({ ...Object.fromEntries(others), [own]: unit });
}

/**
 * What is read in place of a unit because another unit was chosen.
 *
 * @param {string} unit
 */
function followed(unit) {
  for (const [chosen, more] of Object.entries(FOLLOWING)) {
    const own = CHOICES_OF_SUMS.find(([, units]) => units.includes(chosen));
    if (unit in more && own) return unitUsed(own[0]) === chosen ? more[unit] : unit;
  }
  return null;
}

/**
 * The unit that answers in this unit of the core are shown in.
 *
 * @param {string} unit
 * @returns {string}
 */
export function unitUsed(unit) {
  const own = readOfAll(unit);
  const read = unitRead(unit);
  const usual = read === own ? (SUM_CHOICES[own]?.[0] ?? own) : read;
  return followed(own) ?? kept.value[own] ?? usual;
}

/**
 * A value of an answer in the unit that this person uses.
 *
 * @param {number} value
 * @param {string} unit
 * @returns {{value: number, unit: string}}
 */
export function asUsed(value, unit) {
  const to = unitUsed(unit);
  return to === unit || typeof value !== "number"
    ? { value, unit }
    : { value: convert(value, unit, to), unit: to };
}
