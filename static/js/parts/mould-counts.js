import { count } from "../format.js";
import { t } from "../messages/index.js";

/**
 * How many moulds are filled, of how many, and why that is another count than planned.
 *
 * @param {Mould} mould
 */
export function mouldCounts({ moulded, planned, suggested }) {
  const values = { done: count(moulded), planned: count(planned) };
  return suggested === planned
    ? t("mould.counts", values)
    : t("mould.by_milk", { ...values, suggested: count(suggested) });
}
