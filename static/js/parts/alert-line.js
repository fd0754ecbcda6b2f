import { html } from "./html.js";
import { Tap } from "./tap.js";
import { StateMark } from "./state-mark.js";
import { act } from "./acts.js";
import { nameOf } from "./people-names.js";
import { sizeTitle } from "./size-title.js";
import {
  band,
  bandIn,
  clock,
  inUnit,
  measuredBand,
  quantity,
  span,
} from "../format.js";
import { has, inside, own, t, words } from "../messages/index.js";

/**
 * What an alert says: of the core's alerts, and of an alarm's numbers alike.
 *
 * @typedef {Partial<Omit<Alert, "value">> & {key: string, step: ?string,
 *   value?: number | string | null}} Said
 */
/** @typedef {{key: ?string, title: ?Words}} Named a step as far as its name goes */

/**
 * @param {any} value
 * @returns {value is string}
 */
function isText(value) {
  return typeof value === "string";
}

/**
 * The band of a dose as it is measured out; of a time as it is.
 *
 * @param {Said} alert
 */
function dosed({ low, high, unit }) {
  return unit === "s" ? bandIn(low, high, unit) : measuredBand(low, high, unit ?? "");
}

/**
 * @param {Said} alert
 * @param {?Named[]} [steps]
 */
function figures(alert, steps) {
  const name = alert.quantity ?? "";
  const isQuantity = name !== "" && has("quantity." + name);
  const value = isText(alert.value)
    ? alert.value
    : isQuantity
      ? quantity(name, alert.value)
      : inUnit(alert.value, alert.unit ?? null);
  const limits = isQuantity ? band(name, alert.low, alert.high) : dosed(alert);
  const step = (steps ?? []).find((one) => one.key === alert.step);
  const what = isQuantity ? t("quantity." + name) : name ? sizeTitle(name) : "";
  return {
    what,
    what_in: inside(what),
    step: step ? own(step.title) : alert.step ? words(alert.step) : t("alert.the_make"),
    value,
    band: limits,
    by: alert.by_s === null || alert.by_s === undefined ? "" : span(alert.by_s),
    at: alert.due_ms ? clock(alert.due_ms) : "",
  };
}

/**
 * The sentence of an alert, from its key and figures.
 *
 * @param {Said} alert
 * @param {?Named[]} [steps]
 */
export function alertText(alert, steps) {
  const values = figures(alert, steps);
  return has(alert.key)
    ? t(alert.key, values)
    : t("alert.other", { ...values, name: words(alert.key) });
}

/**
 * One alert: the figure, its band, what the recipe says to do, and "seen".
 *
 * @param {{alert: Alert, make: string, steps: Step[], isReadOnly?: boolean}} props
 */
export function AlertLine({ alert, make, steps, isReadOnly = false }) {
  const { band: limits } = figures(alert, steps);
  const seen = alert.acknowledged;
  const acknowledge = () =>
    act("alert_acknowledged", { make, data: { alert: alert.id } });
  return html`<div class=${`alert alert-${alert.level} ${seen ? "is-seen" : ""}`} role=${seen ? "note" : "alert"}>
    <div class="alert-text">
      <p class="alert-says"><${StateMark} state=${alert.level} /> ${alertText(alert, steps)}
        ${limits ? html` <span class="alert-band">${t("alert.band", { band: limits })}</span>` : null}</p>
      ${alert.do ? html`<p class="alert-do"><b>${t("alert.do")}</b> ${own(alert.do)}</p>` : null}
      ${seen ? html`<p>${t("alert.seen_by", { name: nameOf(seen.by), at: clock(seen.at_ms) })}</p>` : null}
    </div>
    ${seen || isReadOnly ? null : html`<${Tap} class="second alert-button" onTap=${acknowledge}>${t("alert.seen")}</${Tap}>`}
  </div>`;
}
