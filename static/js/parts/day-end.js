import { clockDay, span } from "../format.js";
import { t } from "../messages/index.js";

/**
 * When the day of a make ends or ended, and by how much it is off its plan.
 *
 * @param {TimeSpan} day
 * @param {number} nowMs
 */
export function dayEndWords(day, nowMs) {
  const at = clockDay(day.expected_end_ms, nowMs);
  const end = t(day.expected_end_ms > nowMs ? "make.day_end" : "make.day_ended", {
    at,
  });
  if (day.state === "late")
    return `${end}, ${t("make.late", { by: span(day.late_s) })}`;
  if (day.state === "early")
    return `${end}, ${t("make.early", { by: span(day.late_s) })}`;
  return end;
}
