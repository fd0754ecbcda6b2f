// A value of an answer in words: what it is called, its figure, what its ends mean.

import { plain, sumRange, sumValue } from "../../format.js";
import { nowMs } from "../../parts/source.js";
import { capital, has, inside, t } from "../../messages/index.js";
import { asUsed } from "./units.js";
import { isNothing, isWords, ofWords, outLabel, shown } from "./words.js";

/** @typedef {Record<string, string>} Names the make's own, of its steps and sizes */
/**
 * @typedef {object} How
 * @property {string} [sum] key of the sum
 * @property {boolean} [isInside] whether what it is of is said above
 */

/**
 * A figure that a value is held against, or that was read for it. A rule's is told in
 * the very unit that was read: it is never converted.
 *
 * @param {any} figure number or word
 * @param {SumValue} value
 */
function endWords(figure, { ends_unit: unit, as_read: isRule }) {
  if (isNothing(figure)) return "";
  if (typeof figure !== "number") return inside(isWords("figure", String(figure)));
  if (isRule) return sumValue(figure, unit, nowMs());
  return unit || Number.isInteger(figure) ? shown(figure, unit) : plain(figure);
}

/**
 * How finely a value is known: from one end of what it may be to the other, in the unit
 * used. What a rule prints is told as printed.
 *
 * @param {SumValue} value
 */
function howKnown({ role, low, high, ends_unit: unit }) {
  if (role === "limit") return null;
  if (role === "band" || isNothing(low) || isNothing(high)) return { spread: 0 };
  const [from, to] = [low, high].map((end) => asUsed(end, unit).value);
  return { spread: Math.abs(to - from) };
}

/** @param {SumValue} value */
function pair(value) {
  const { low, high, ends_unit: unit } = value;
  const [from, to] = [low, high].map((end) => asUsed(end, unit));
  const how = howKnown(value);
  const [first, last] = sumRange(from.value, to.value, from.unit, nowMs(), how);
  return {
    ends: { low: first, high: last },
    isOne: shown(low, unit) === shown(high, unit),
  };
}

/**
 * A span that is later or earlier than another.
 *
 * @param {SumValue} value
 * @param {number} seconds
 */
function againstWords(value, seconds) {
  const isLater = value.sense === "later" ? seconds >= 0 : seconds <= 0;
  return t(isLater ? "sums.later" : "sums.earlier", {
    span: sumValue(Math.abs(seconds), "s"),
  });
}

/** @param {SumValue} value */
function estimateWords(value) {
  const { low, high, sense } = value;
  if (sense)
    return t("sums.between", {
      low: againstWords(value, low),
      high: againstWords(value, high),
    });
  if (isNothing(high)) return t("sums.at_least", { low: endWords(low, value) });
  if (isNothing(low)) return t("sums.at_most", { high: endWords(high, value) });
  const { ends, isOne } = pair(value);
  if (isOne) return "";
  const own = "sums.range_" + value.range_of;
  return t(has(own) ? own : "sums.between", ends);
}

/** @param {SumValue} value */
function wantedWords(value) {
  const { low, high } = value;
  if (isNothing(high)) return t("sums.wanted_least", { low: endWords(low, value) });
  if (isNothing(low)) return t("sums.wanted_most", { high: endWords(high, value) });
  return t("sums.wanted_between", pair(value).ends);
}

/** @param {SumValue} value */
function limitWords(value) {
  const { low, high } = value;
  if (!isNothing(low) && !isNothing(high)) return t("sums.limits", pair(value).ends);
  if (value.unit === "key")
    return t("sums.limit", { limit: endWords(low ?? high, value) });
  return isNothing(low)
    ? t("sums.asked_most", { high: endWords(high, value) })
    : t("sums.asked_least", { low: endWords(low, value) });
}

/** @param {SumValue} value */
function readWords(value) {
  const read = endWords(value.read, value);
  const limit = endWords(value.low ?? value.high, value);
  return limit
    ? t("sums.reads_limit", { value: read, limit })
    : t("sums.reads", { value: read });
}

/**
 * What the ends of a value say, by its role.
 *
 * @param {SumValue} value
 */
function detailWords(value) {
  if (value.role === "limit" && !isNothing(value.read)) return readWords(value);
  if (isNothing(value.low) && isNothing(value.high)) return "";
  if (value.role === "limit") return limitWords(value);
  return value.role === "band" ? wantedWords(value) : estimateWords(value);
}

/** @param {SumValue} value */
function mainWords(value) {
  if (isNothing(value.value)) return t("sums.not_known");
  if (value.unit === "key") return isWords(value.name, value.value);
  if (value.sense) return againstWords(value, value.value);
  if (value.as_read) return sumValue(value.value, value.unit);
  const text = shown(value.value, value.unit, howKnown(value));
  return value.unit === "pH" ? t("sums.ph", { value: text }) : text;
}

/**
 * What a value is of: a step, a rule, a size of wheel; which, and of which mould.
 *
 * @param {Pick<SumValue, "of" | "nth" | "across_m">} value
 * @param {Names} [names]
 */
export function whichWords({ of, nth, across_m: across }, names = {}) {
  if (of === null) return "";
  if (nth !== null) return t("of.nth_" + of, { n: nth });
  const which = of in names ? inside(names[of]) : ofWords(of);
  return across === null
    ? which
    : t("of.across", { of: which, across: shown(across, "m") });
}

/**
 * @param {SumValue} value
 * @param {Names} names
 * @param {How} how
 */
function titleWords(value, names, { sum = "", isInside = false }) {
  const name = outLabel(value.name, sum);
  if (isInside || value.called === "name" || value.of === null) return name;
  const of = whichWords(value, names);
  return value.called === "of" ? capital(of) : `${name}, ${of}`;
}

/**
 * One value of an answer: {label, main, detail}.
 *
 * @param {SumValue} value
 * @param {Names} [names]
 * @param {How} [how]
 */
export function valueWords(value, names = {}, how = {}) {
  return {
    label: titleWords(value, names, how),
    main: mainWords(value),
    detail: detailWords(value),
  };
}

/**
 * The values of an answer as they are read: the headline first, nothing told twice.
 *
 * @param {SumValue[]} values
 */
export function inOrder(values) {
  const rest = values.filter((value) => !value.repeats);
  return [
    ...rest.filter((value) => value.headline),
    ...rest.filter((value) => !value.headline),
  ];
}

/**
 * The one figure of an answer, or the few, that stand for it in a list.
 *
 * @param {SumValue[]} values
 */
export function headlines(values) {
  const ordered = inOrder(values);
  const chosen = ordered.filter((value) => value.headline);
  return chosen.length ? chosen : ordered.slice(0, 1);
}
