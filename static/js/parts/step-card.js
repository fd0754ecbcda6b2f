import { html } from "./html.js";
import { Countdown } from "./countdown.js";
import { FigureValue } from "./figure-value.js";
import { OtherBottle } from "./other-bottle.js";
import { StateMark } from "./state-mark.js";
import { clock, inUnit, measured, quantity } from "../format.js";
import { own, t } from "../messages/index.js";

const OFF = ["alert.reading_below", "alert.reading_above"];

// A reading out of its band may merely be on its way: the core's alerts tell.
/** @type {(alerts: Alert[], step: Step, target: {quantity: string}) => boolean} */
function isAlerted(alerts, step, target) {
  return alerts.some(
    (alert) =>
      alert.step === step.key &&
      alert.quantity === target.quantity &&
      OFF.includes(alert.key),
  );
}

/** @param {{name: string, last: NonNullable<Target["last"]>}} props */
function OffLine({ name, last }) {
  return html`<div class="figure-last is-off">
    ${last.verdict === "in_band" ? null : html`<${StateMark} state="check" word=${t("verdict." + last.verdict)} />`}
    ${t("target.last", { value: quantity(name, last.value), at: clock(last.at_ms) })}
  </div>`;
}

/** @param {{label: string, text: string, isTold?: boolean, children?: any}} props
 *    isTold: the label is more than the name of what the sentence names already */
function Figure({ label, text, isTold = false, children }) {
  return html`<div class="figure">
    <div class=${isTold ? "figure-said" : "figure-label"}>${label}</div>
    <${FigureValue} text=${text} />${children}
  </div>`;
}

/** @param {{step: Step, main: MainWater}} props */
function WaterFigure({ step, main }) {
  const litres = (/** @type {number} */ value) => measured(value, "L");
  if (main.part === "rest" && main.value === 0)
    return html`<${Figure} label=${t("water.enough")} text=${litres(step.water?.added_l ?? 0)} isTold />`;
  return html`<${Figure} label=${t("water." + main.part)} text=${`${litres(main.value)} · ${quantity("water_temp_c", main.temp_c)}`} />`;
}

/**
 * The one number that matters in this step now, and what is wrong with it; its band
 * and where it comes from are FigureFacts.
 *
 * @param {{step: Step, alerts?: Alert[]}} props
 */
export function MainFigure({ step, alerts = [] }) {
  const main = step.main ?? { kind: /** @type {const} */ ("instruction") };
  if (main.kind === "countdown")
    return html`<${Countdown} dueMs=${main.due_ms} lowMs=${step.floc?.low_ms} />`;
  if (main.kind === "water" && step.water)
    return html`<${WaterFigure} step=${step} main=${main} />`;
  if (main.kind === "target") {
    const last = step.targets.find((one) => one.quantity === main.quantity)?.last;
    const label = t("target.label", { what: t("quantity." + main.quantity) });
    return html`<${Figure} label=${label} text=${quantity(main.quantity, main.value)}>
      ${last && isAlerted(alerts, step, main) ? html`<${OffLine} name=${main.quantity} last=${last} />` : null}
      ${step.water?.refused ? html`<p class="figure-last is-off"><${StateMark} state="check" /> ${t("water.refused")}</p>` : null}
    </${Figure}>`;
  }
  if (main.kind === "dose") {
    const add = step.adds.find((dose) => dose.ingredient === main.ingredient);
    return html`<${Figure} label=${t("dose.label", { what: own(add?.title) })} text=${measured(main.value, main.unit)}>
      <${OtherBottle} bottle=${add?.planned?.bottle} />
    </${Figure}>`;
  }
  return null;
}

/** @param {NamedFigure} figure */
function figureText({ quantity: name, unit, value }) {
  if (name) return quantity(name, value);
  return unit === "s" ? inUnit(value, unit) : measured(value, unit ?? "");
}

/**
 * What to do now, in one sentence with the figures of this make. A step that was kept
 * before there were such sentences is told by its first line.
 *
 * @param {Pick<Step, "now" | "do" | "title">} step
 */
export function nowWords({ now, do: lines, title }) {
  const { text, figures } = now ?? { text: lines[0] ?? title, figures: [] };
  const known = Object.fromEntries(figures.map((one) => [one.name, figureText(one)]));
  return own(text).replace(/\{([^}]+)\}/g, (whole, name) => known[name] ?? whole);
}

/**
 * A step: first what to do now, its number and until when, which fill the first
 * screenful of a phone; below it the rest.
 *
 * @param {{step: Step, number: number, total: number, alerts: Alert[], ends: any,
 *   lead?: any, rest?: any, alert?: any, isUnderBar: boolean}} props
 *   lead: in place of the number; ends: how the step ends, where no instant is known;
 *   isUnderBar: a bar has told of one alarm already, so that the alert waits below
 */
export function StepCard({
  step,
  number,
  total,
  alerts,
  lead,
  ends,
  rest,
  alert,
  isUnderBar,
}) {
  const isTimed = !lead && step.status === "running" && step.main?.kind !== "countdown";
  return html`<article class="step-card" aria-label=${own(step.title)}>
    <h1 class="step-title">${own(step.title)}</h1>
    <div class="step-face">
      <p class="step-now"><${StateMark} state=${step.mark} /> ${nowWords(step)}</p>
      ${lead ?? html`<${MainFigure} step=${step} alerts=${alerts} />`}
      ${isTimed ? (step.due_ms ? html`<${Countdown} dueMs=${step.due_ms} />` : ends) : null}
      ${isUnderBar ? null : alert}
    </div>
    <div class="step-rest">
      ${isUnderBar ? alert : null}
      <p class="quiet">${t("step.place", { n: number, total })}${step.rounds ? " · " + t("step.round", { n: step.round, total: step.rounds }) : ""}</p>
      ${step.do.length ? html`<ul class="instruction">${step.do.map((line, index) => html`<li key=${index}>${own(line)}</li>`)}</ul>` : null}
      ${rest}
    </div>
  </article>`;
}
