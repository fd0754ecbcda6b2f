// The one place where the page converts: by the core's own table of units.

import { FOLLOWING, READ_AS, UNITS } from "./table.js";

/**
 * A value in another unit of the same dimension; the core converts alike.
 *
 * @param {number} value
 * @param {string} from
 * @param {string} to
 */
export function convert(value, from, to) {
  if (from === to) return value;
  const [start, end] = [UNITS[from], UNITS[to]];
  if (!start || !end || start.dimension !== end.dimension)
    throw new TypeError(`${from} does not convert to ${to}`);
  const base = (value * (start.size ?? 1)) / (start.per ?? 1) + (start.zero ?? 0);
  return ((base - (end.zero ?? 0)) * (end.per ?? 1)) / (end.size ?? 1);
}

/**
 * How many decimals more, or fewer, tell as much in one unit as in another.
 *
 * @param {string} from
 * @param {string} to
 */
export function moreDecimals(from, to) {
  const size = (/** @type {string} */ unit) =>
    (UNITS[unit]?.size ?? 1) / (UNITS[unit]?.per ?? 1);
  return Math.round(Math.log10(size(to) / size(from)));
}

/**
 * What all read in place of the unit that a figure is kept in.
 *
 * @param {string} unit
 */
export function readOfAll(unit) {
  return READ_AS[unit] ?? unit;
}

/**
 * The kept units with what is read instead where these units are chosen.
 *
 * @param {[string, string][]} chosen the kept unit and the chosen one, by kind
 * @returns {Record<string, string>}
 */
export function following(chosen) {
  const changed = chosen.filter(([kept, to]) => kept !== to);
  const more = changed.flatMap(([, to]) => Object.entries(FOLLOWING[to] ?? {}));
  return Object.fromEntries([...changed, ...more]);
}
