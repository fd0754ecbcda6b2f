// What is said below an entry: how it was put right, and what is particular about it.

import { nameOf } from "../../parts/people-names.js";
import { clock, span } from "../../format.js";
import { t, whyWords } from "../../messages/index.js";
import { setText } from "./line-text.js";

/**
 * What is particular about an entry: how it was proved, when it came, where it leads.
 *
 * @param {LogLine} line
 */
export function markWords(line) {
  return [
    line.proved ? t("proved." + line.proved) : null,
    line.late_entry_s ? t("record.late_entry", { by: span(line.late_entry_s) }) : null,
    line.clock_off_s ? t("record.clock_off", { by: span(line.clock_off_s) }) : null,
    line.later_of ? t("record.later_of") : null,
    line.leads_nowhere ? t("record." + line.leads_nowhere.key) : null,
  ].filter((text) => text !== null);
}

/** @param {LogLine} line */
export function correctionWords(line) {
  return line.corrections.map((one) =>
    t("record.corrected", {
      what: setText(one, line),
      why: whyWords(one.why),
      name: nameOf(one.by),
      at: clock(one.at_ms),
    }),
  );
}

/** @param {LogLine} line */
export function struckWords({ struck }) {
  if (!struck) return [];
  const { why, by, at_ms: atMs } = struck;
  return [
    t("record.struck", { why: whyWords(why), name: nameOf(by), at: clock(atMs) }),
  ];
}
