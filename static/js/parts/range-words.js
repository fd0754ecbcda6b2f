import { t } from "../messages/index.js";

/**
 * A band with what it is the band of; "" where there is none.
 *
 * @param {string} range as text
 * @param {RangeOf | undefined} of
 */
export function rangeWords(range, of) {
  return range && of ? t("range." + of, { range }) : range;
}
