// The same in words, for a screen reader, a print, and a chart that is too small.

import { html } from "../../parts/html.js";
import { band, clock, clockSpan, day, quantity } from "../../format.js";
import { stepTitle } from "../../parts/step-title.js";
import { t, tFirst, words } from "../../messages/index.js";

/**
 * @param {Curve} curve
 * @param {string | null} key
 */
function titleOf(curve, key) {
  const step = curve.steps.find((one) => one.key === key);
  if (!step) return key ? words(key) : "";
  return stepTitle(step);
}

/** @param {(CurvePoint & {quantity: string})[]} rows */
function byDay(rows) {
  /** @type {Map<string, typeof rows>} */
  const days = new Map();
  for (const point of rows) {
    const name = new Date(point.at_ms).toDateString();
    days.set(name, [...(days.get(name) ?? []), point]);
  }
  return [...days.values()];
}

/**
 * Readings between two instants, in the order they were taken.
 *
 * @param {{curve: Curve, span: [number, number]}} props
 */
export function ReadingsTable({ curve, span: [fromMs, toMs] }) {
  const rows = curve.series
    .flatMap((line) =>
      line.points.map((point) => ({ ...point, quantity: line.quantity })),
    )
    .filter((point) => point.at_ms >= fromMs && point.at_ms <= toMs)
    .sort((a, b) => a.at_ms - b.at_ms);
  if (!rows.length) return html`<p class="lead">${t("curve.no_readings")}</p>`;
  return html`<table class="curve-table readings-table"><caption>${t("curve.readings")}</caption>
    <thead><tr><th scope="col">${t("curve.time")}</th><th scope="col">${t("curve.what")}</th>
      <th scope="col">${t("curve.value")}</th><th scope="col">${t("curve.wanted")}</th></tr></thead>
    ${byDay(rows).map(
      (of) => html`<tbody key=${of[0].at_ms}>
      <tr><th scope="rowgroup" colspan="4" class="curve-day">${day(of[0].at_ms)}</th></tr>
      ${of.map(
        (point) => html`<tr key=${point.id}>
        <td>${clock(point.at_ms)}</td>
        <td>${tFirst(["curve.short_" + point.quantity, "quantity." + point.quantity])}<span class="row-detail">${titleOf(curve, point.step)}</span></td>
        <td>${quantity(point.quantity, point.value)}</td>
        <td>${
          point.verdict
            ? html`${band(point.quantity, point.low, point.high)}
          <span class=${point.verdict === "in_band" ? "row-detail" : "curve-off"}>${t("verdict." + point.verdict)}</span>`
            : "–"
        }</td>
      </tr>`,
      )}</tbody>`,
    )}</table>`;
}

/**
 * Each step's number in the chart, its plan, and when it ran or is expected to.
 *
 * @param {{curve: Curve}} props
 */
export function StepsTable({ curve }) {
  return html`<table class="curve-table"><caption>${t("curve.steps")}</caption>
    <thead><tr><th scope="col">${t("curve.step")}</th><th scope="col">${t("curve.planned")}</th><th scope="col">${t("curve.really")}</th></tr></thead>
    <tbody>${curve.steps.map(
      (step, index) => html`<tr key=${step.key}>
      <td>${index + 1}. ${titleOf(curve, step.key)}</td>
      <td>${clockSpan(step.planned_begin_ms, step.planned_end_ms, curve.now_ms)}</td>
      <td>${step.status === "skipped" ? t("state.skipped") : clockSpan(step.begin_ms, step.end_ms, curve.now_ms)}
        <span class="row-detail">${t("curve.is_" + step.status)}</span></td>
    </tr>`,
    )}</tbody></table>`;
}
