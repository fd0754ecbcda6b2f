import { useEffect, useRef, useState } from "preact/hooks";
import { html } from "../../parts/html.js";
import { Tap } from "../../parts/tap.js";
import { clockDay, unitName, unitRead } from "../../format.js";
import { t } from "../../messages/index.js";
import { draw, loadPlot } from "./chart.js";
import { ReadingsTable, StepsTable } from "./tables.js";

const SPANS = /** @type {const} */ (["hour", "day", "all"]);
const DARK = matchMedia("(prefers-color-scheme: dark)");

function useDark() {
  const [isDark, setDark] = useState(DARK.matches);
  useEffect(() => {
    const look = () => setDark(DARK.matches);
    DARK.addEventListener("change", look);
    return () => DARK.removeEventListener("change", look);
  }, []);
  return isDark;
}

/**
 * @param {object} props
 * @param {Curve} props.curve
 * @param {boolean} props.isAcid
 * @param {[number, number]} props.span
 * @param {number} props.height
 * @param {number | null} props.nowMs
 * @param {string} props.label
 */
function Chart({ curve, isAcid, span, height, nowMs, label }) {
  const root = useRef(/** @type {HTMLElement | null} */ (null));
  const isDark = useDark();
  const [isMissing, setMissing] = useState(false);
  useEffect(() => {
    /** @type {(() => void) | null} */
    let takeAway = null;
    let isCurrent = true;
    loadPlot().then(
      (Plot) => {
        if (isCurrent && root.current)
          takeAway = draw(Plot, root.current, { curve, isAcid, span, height, nowMs });
      },
      () => isCurrent && setMissing(true),
    );
    return () => {
      isCurrent = false;
      takeAway?.();
    };
  }, [curve, span[0], span[1], height, isDark]);
  if (isMissing) return html`<p class="is-bad" role="alert">${t("curve.no_chart")}</p>`;
  return html`<div class="curve-chart" ref=${root} role="img" aria-label=${label} style=${{ minHeight: height + "px" }}></div>`;
}

// What the lines are stands at them; here is what else is drawn.
/** @param {{isAcid: boolean, hasLine?: boolean}} props */
function Key({ isAcid, hasLine }) {
  return html`<ul class="curve-key">
    <li><svg viewBox="0 0 44 20" aria-hidden="true"><path d="M0 3h44v14H0z" fill="var(--due-soft)" stroke="var(--due)" /></svg>${t(isAcid && hasLine ? "curve.key_acid" : "curve.key_band")}</li>
    ${
      isAcid
        ? null
        : html`<li><svg viewBox="0 0 44 20" aria-hidden="true"><path d="M22 0v20" stroke="var(--line)" stroke-width="2" /></svg>${t("curve.key_step")}</li>
      <li><svg viewBox="0 0 44 20" aria-hidden="true"><path d="M22 10v10" stroke="var(--line)" stroke-width="4" /></svg>${t("curve.key_plan")}</li>
      <li><svg viewBox="0 0 44 20" aria-hidden="true"><path d="M22 0v20" stroke="var(--due)" stroke-width="3" /></svg>${t("curve.key_now")}</li>`
    }
  </ul>`;
}

/**
 * @param {Curve} curve
 * @param {boolean} isAcid
 */
function lastWords(curve, isAcid) {
  const all = curve.series.filter((line) => (line.quantity === "ph") === isAcid);
  const n = all.reduce((sum, line) => sum + line.points.length, 0);
  return t(isAcid ? "curve.acid_label" : "curve.temperature_label", { n });
}

/**
 * The course of a make: two charts over one time, and the same as tables.
 *
 * @param {{curve: Curve, isOver: boolean}} props isOver: nothing is expected any more
 */
export function Course({ curve, isOver }) {
  const [name, setName] = useState(/** @type {keyof Curve["spans"]} */ ("day"));
  const span = curve.spans[name];
  const nowMs = isOver ? null : curve.now_ms;
  const of = (/** @type {boolean} */ isAcid) =>
    curve.series.filter((line) => (line.quantity === "ph") === isAcid);
  const hasAcid = Boolean(curve.acid) || of(true).length > 0;
  const height = innerHeight > 700 ? 300 : 240;
  return html`<div class="curve">
    <div class="curve-spans" role="group" aria-label=${t("curve.span")}>${SPANS.map(
      (range) => html`<${Tap} key=${range}
      class=${"tab " + (range === name ? "is-chosen" : "")} pressed=${range === name} onTap=${() => setName(range)}>${t("curve." + range)}</${Tap}>`,
    )}</div>
    <p class="quiet">${t("curve.from_to", { from: clockDay(span[0], curve.now_ms), to: clockDay(span[1], curve.now_ms) })}</p>
    <div class="columns curve-columns"><div class="column">
      <h2>${t("curve.temperature", { unit: unitName(unitRead("C")) })}</h2>
      <${Chart} curve=${curve} isAcid=${false} span=${span} height=${height} nowMs=${nowMs} label=${lastWords(curve, false)} />
      <${Key} isAcid=${false} />
      ${
        hasAcid
          ? html`<h2>${t("curve.acid")}</h2>
        <${Chart} curve=${curve} isAcid=${true} span=${span} height=${height} nowMs=${nowMs} label=${lastWords(curve, true)} />
        <${Key} isAcid=${true} hasLine=${Boolean(curve.acid)} />
        ${curve.acid && !curve.acid.is_real ? html`<p class="quiet">${t("curve.acid_expected")}</p>` : null}`
          : null
      }
    </div><div class="column">
      <${ReadingsTable} curve=${curve} span=${span} />
      <${StepsTable} curve=${curve} />
    </div></div>
  </div>`;
}
