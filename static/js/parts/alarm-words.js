import { alertText } from "./alert-line.js";
import { secondMs } from "./ticker.js";
import { whoseOf } from "./whose.js";
import { foundLate } from "../data/alarm.js";
import { age, count, span } from "../format.js";
import { own, t } from "../messages/index.js";

/**
 * What an alarm says, without how late it is: that moves with the clock.
 *
 * @param {Alarm} alarm
 */
export function alarmText(alarm) {
  if (alarm.kind === "timer")
    return t("alarm.timer", { label: alarm.numbers.value ?? t("due.timer") });
  if (alarm.kind === "unshown") return t("alarm.unshown");
  const title = alarm.title ? own(alarm.title) : t("alert.the_make");
  if (alarm.kind === "step_due") return t("alarm.step_due", { step: title });
  if (alarm.kind === "step_late") return t("alarm.step_late", { step: title });
  if (alarm.key === "alert.readings_overdue")
    return t("alarm.readings_overdue", {
      n: count(alarm.numbers.value),
      step: title,
    });
  if (alarm.kind === "reading_overdue") {
    return t("alarm.reading_overdue", {
      what: t("quantity." + alarm.numbers.quantity),
      step: title,
    });
  }
  return alertText({ ...alarm.numbers, key: alarm.key, step: alarm.step }, [
    { key: alarm.step, title: alarm.title },
  ]);
}

/** @param {Alarm} alarm */
function madeOf(alarm) {
  return { id: alarm.make, name: alarm.make_name, vat: alarm.vat };
}

/**
 * Whose it is, and clearly so where that is another make than the open one.
 *
 * @param {Alarm} alarm
 * @param {?string} openMake
 */
export function alarmWhose(alarm, openMake) {
  const whose = whoseOf(madeOf(alarm));
  if (!openMake || openMake === alarm.make) return whose;
  const isOtherVat = alarm.vat && whose === alarm.vat;
  return t(isOtherVat ? "alarm.other_vat" : "alarm.other_make", { whose });
}

/**
 * How long ago it began, and whether this screen was asleep then.
 *
 * @param {Alarm} alarm
 */
export function sinceText(alarm) {
  const since = t("alarm.since", { age: age(secondMs.value - alarm.rings_ms) });
  const lateMs = foundLate.value[alarm.id];
  return lateMs
    ? `${since} ${t("alarm.found_late", { by: span(lateMs / 1000) })}`
    : since;
}
