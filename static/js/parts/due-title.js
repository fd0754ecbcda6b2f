import { sizeTitle } from "./size-title.js";
import { stepTitle } from "./step-title.js";
import { count } from "../format.js";
import { inside, own, t, tn } from "../messages/index.js";

/**
 * What falls due, in words.
 *
 * @param {Due} due
 */
export function dueTitle(due) {
  if (due.what === "timer") return due.label ?? t("due.timer");
  if (due.what === "unload")
    return tn("due.unload", due.wheels ?? 0, {
      n: count(due.wheels ?? 0),
      tank: due.label,
      size: inside(sizeTitle(due.size ?? "")),
    });
  if (due.what === "reading")
    return t("due.reading", {
      what: t("quantity." + due.quantity),
      step: own(due.title),
    });
  return t("due." + due.what, { step: stepTitle(due) });
}
