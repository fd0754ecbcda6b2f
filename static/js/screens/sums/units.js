import { computed, signal } from "@preact/signals";
import { ask, person } from "../../parts/source.js";
import { asRead, unitRead } from "../../format.js";

// Which unit each person typed an input in is remembered on the phone. What was typed keeps
// the unit it was typed in. Answers follow the unit used last in the sums, or chosen
// there; until then they are in the units that the person reads elsewhere.

const PLACE = "sum-units";
// Kept as shares inside; nobody types these.
const INNER = ["fraction", "fraction lactic"];
// Units that answers follow, by the core's own unit.
/** @type {Record<string, string[]>} */
const FOLLOWED = {
  C: ["F"],
  kg: ["lb"],
  L: ["gal", "imp_gal"],
  kPa: ["bar", "psi"],
  m: ["mm", "cm", "in"],
};
// A time in brine is counted in days, not in minutes.
/** @type {Record<string, string>} */
const USUAL = {
  "brine_time.time_s": "d",
  "brine_factor.time_s": "h",
  "heat_treatment.holding_s": "s",
};

/** Straight lines from one unit to another, as the core converts: "C>F": [at 0, for 1]. */
const lines = signal(/** @type {Record<string, [number, number]>} */ ({}));
/** @type {import("@preact/signals").Signal<Record<string, Record<string, string>>>} */
const all = signal(JSON.parse(localStorage.getItem(PLACE) ?? "{}"));
const kept = computed(() => all.value[String(person.value)] ?? {});

/** @typedef {Pick<SumInput, "name" | "unit" | "units">} Typed what is typed in a unit */

/**
 * The units a person may type an input in; its own where there is one only.
 *
 * @param {Typed} row
 */
export function unitsOf(row) {
  const some = row.units.filter((unit) => !INNER.includes(unit));
  return some.length ? some : [row.unit];
}

/**
 * The unit that the pad begins with: the one used last for this.
 *
 * @param {string} key of the sum
 * @param {Typed} row
 */
export function unitFor(key, row) {
  const units = unitsOf(row);
  const wanted = [
    kept.value[row.name],
    USUAL[`${key}.${row.name}`],
    unitUsed(row.unit),
  ];
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
 * @param {Typed} row
 * @param {string} unit
 */
export function keepUnit(row, unit) {
  const isFollowed =
    FOLLOWED[row.unit] && (unit === row.unit || FOLLOWED[row.unit].includes(unit));
  keep({
    ...kept.value,
    [row.name]: unit,
    ...(isFollowed ? { [row.unit]: unit } : {}),
  });
}

/** The kinds of unit that answers follow: [its own, others ...]. */
export const KINDS = Object.entries(FOLLOWED).map(([own, others]) => [own, ...others]);

/**
 * Choose the unit of a kind for all sums: pads begin with it, answers follow it.
 *
 * @param {string[]} kind
 * @param {string} unit
 */
export function chooseUnit(kind, unit) {
  const others = Object.entries(kept.value).filter(([, one]) => !kind.includes(one));
  keep({ ...Object.fromEntries(others), [kind[0]]: unit });
}

/**
 * The unit that answers in this unit of the core are shown in.
 *
 * @param {string} unit
 * @returns {string}
 */
export function unitUsed(unit) {
  if (unit !== "K") return kept.value[unit] ?? unitRead(unit);
  return unitUsed("C") === "F" ? "F_rise" : "K";
}

/**
 * @param {string} from
 * @param {string} to
 * @returns {Promise<[string, [number, number]]>}
 */
async function line(from, to) {
  const ends = await Promise.all(
    [0, 1].map((amount) => ask.convert({ amount, from, to })),
  );
  return [`${from}>${to}`, [ends[0], ends[1] - ends[0]]];
}

/**
 * Ask the core once how the units of these inputs follow from each other.
 *
 * @param {Typed[]} rows
 */
export async function learnUnits(rows) {
  /** @type {Map<string, [string, string]>} */
  const pairs = new Map();
  const want = (/** @type {string} */ from, /** @type {string} */ to) => {
    if (from !== to) pairs.set(`${from}>${to}`, [from, to]);
  };
  for (const row of rows) for (const unit of row.units) want(row.unit, unit);
  // Whichever sum comes first, the answers of all follow the chosen units.
  for (const [from, others] of Object.entries(FOLLOWED))
    for (const unit of others) want(from, unit);
  want("K", "F_rise");
  const unknown = [...pairs]
    .filter(([name]) => !lines.value[name])
    .map(([, pair]) => pair);
  const found = await Promise.all(unknown.map(([from, to]) => line(from, to)));
  lines.value = { ...lines.value, ...Object.fromEntries(found) };
}

/**
 * A value of the core in another unit; in its own while the core has not said how.
 *
 * @param {number} value
 * @param {string} from
 * @param {string} to
 */
export function inUnits(value, from, to) {
  const found = lines.value[`${from}>${to}`];
  if (from === to || !found || typeof value !== "number") return { value, unit: from };
  return { value: found[0] + found[1] * value, unit: to };
}

/**
 * A value of an answer in the unit that this person uses.
 *
 * @param {number} value
 * @param {string} unit
 * @returns {{value: number, unit: string}}
 */
export function asUsed(value, unit) {
  if (unit === "K/s") {
    const rise = asUsed(value, "K");
    return { value: rise.value, unit: rise.unit === "K" ? unit : "F/s" };
  }
  const to = unitUsed(unit);
  const used = inUnits(value, unit, to);
  // The sums' own table may lack what a person reads elsewhere.
  return used.unit === to || kept.value[unit] ? used : asRead(value, unit);
}
