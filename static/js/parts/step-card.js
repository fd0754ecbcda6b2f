import { html } from "./html.js";
import { Countdown } from "./countdown.js";
import { FigureValue } from "./figure-value.js";
import { OriginLine, originWords } from "./origin-line.js";
import { OtherBottle } from "./other-bottle.js";
import { rangeWords } from "./range-words.js";
import { sizeTitle } from "./size-title.js";
import { StateMark } from "./state-mark.js";
import { WaterFigure } from "./water-figure.js";
import {
  band,
  bandIn,
  clock,
  inUnit,
  measured,
  measuredBand,
  quantity,
  span,
} from "../format.js";
import { inside, own, t } from "../messages/index.js";

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

/**
 * @param {{target: Pick<Target, "quantity" | "value" | "last"> & Partial<Target>,
 *   off: boolean}} props
 */
function TargetFigure({ target, off }) {
  return html`<div class="figure">
    <div class="figure-label">${t("target.label", { what: t("quantity." + target.quantity) })}</div>
    <${FigureValue} text=${quantity(target.quantity, target.value)} />
    <div class="figure-band">${rangeWords(band(target.quantity, target.low, target.high), target.range_of)}</div>
    ${
      target.last
        ? html`<div class=${off ? "figure-last is-off" : "figure-last"}>
      ${off && target.last.verdict !== "in_band" ? html`<${StateMark} state="check" word=${t("verdict." + target.last.verdict)} />` : null}
      ${t("target.last", { value: quantity(target.quantity, target.last.value), at: clock(target.last.at_ms) })}
    </div>`
        : null
    }
  </div>`;
}

/**
 * The one number that matters in this step now.
 *
 * @param {{step: Step, alerts?: Alert[]}} props
 */
export function MainFigure({ step, alerts = [] }) {
  const main = step.main ?? { kind: /** @type {const} */ ("instruction") };
  if (main.kind === "countdown") {
    return html`<${Countdown} dueMs=${main.due_ms} lowMs=${step.floc?.low_ms} />
      <${OriginLine} origin=${step.lasts?.origin} own=${span} />`;
  }
  if (main.kind === "water" && step.water)
    return html`<${WaterFigure} main=${main} water=${step.water} />`;
  if (main.kind === "target") {
    const target =
      step.targets.find((wanted) => wanted.quantity === main.quantity) ?? main;
    return html`<${TargetFigure} target=${target} off=${isAlerted(alerts, step, target)} />
      ${step.water?.refused ? html`<p class="figure-last is-off"><${StateMark} state="check" /> ${t("water.refused")}</p>` : null}`;
  }
  if (main.kind === "dose") {
    const add = step.adds.find((dose) => dose.ingredient === main.ingredient);
    return html`<div class="figure">
      <div class="figure-label">${t("dose.label", { what: own(add?.title) })}</div>
      <${FigureValue} text=${measured(main.value, main.unit)} />
      <div class="figure-band">${rangeWords(measuredBand(add?.planned?.low, add?.planned?.high, main.unit), add?.planned?.range_of)}</div>
      <${OtherBottle} bottle=${add?.planned?.bottle} />
      <${OriginLine} origin=${add?.planned?.origin} own=${ownDose(add)} />
    </div>`;
  }
  return null;
}

// The recipe's own dose is in the ingredient's unit, even where a sum measures it.
/** @type {(add: Add | undefined) => (value: number) => string} */
const ownDose = (add) => (value) =>
  measured(value, add?.planned?.basis.amount_unit.split("/")[0] ?? "");

/** @type {(one: Target) => string} */
function targetOrigin(target) {
  const own = target.origin?.own ?? null;
  return originWords(
    target.origin,
    own === null ? null : quantity(target.quantity, own),
  );
}

/** @type {(one: Target) => string} */
const targetName = (target) =>
  target.size
    ? t("target.of_size", {
        what: t("quantity." + target.quantity),
        size: inside(sizeTitle(target.size)),
      })
    : t("quantity." + target.quantity);

/** @param {{step: Step}} props */
function OtherTargets({ step }) {
  const { main } = step;
  const shown = main?.kind === "target" ? main.quantity : null;
  const rest = step.targets.filter((target) => target.quantity !== shown);
  if (rest.length === 0) return null;
  return html`<ul class="facts">${rest.map(
    (target) => html`<li key=${target.quantity + (target.size ?? "")}>
    <span>${targetName(target)}</span>
    ${target.value === null ? null : html`<b>${quantity(target.quantity, target.value)}</b>`}
    ${target.value === null ? null : html`<span>${target.last ? t("target.last", { value: quantity(target.quantity, target.last.value), at: clock(target.last.at_ms) }) : rangeWords(band(target.quantity, target.low, target.high), target.range_of)}</span>`}
    ${target.origin ? html`<small class="quiet">${targetOrigin(target)}</small>` : null}
  </li>`,
  )}</ul>`;
}

/**
 * How a step ends, in words.
 *
 * @param {Step} step
 */
export function endWords(step) {
  const end = step.end ?? { by: /** @type {const} */ ("person") };
  if (end.by === "time" && step.lasts) {
    return t("end.time", {
      span: span(step.lasts.value_s),
      band: bandIn(step.lasts.low_s, step.lasts.high_s, "s"),
    });
  }
  if (end.by === "reading") {
    const what = t("quantity." + end.quantity);
    return end.at_least === null
      ? t("end.at_most", { what, value: quantity(end.quantity, end.at_most) })
      : t("end.at_least", { what, value: quantity(end.quantity, end.at_least) });
  }
  if (end.by === "judged") return t("end.judged");
  if (end.by === "floc") return t("end.floc", { factor: inUnit(end.factor, "") });
  return t("end.person");
}

/**
 * What to do now, and the number that goes with it; children stand below the number,
 * what is looked up below the instruction.
 *
 * @param {{step: Step, number: number, total: number, alerts: Alert[],
 *   lead?: any, below?: any, children?: any}} props lead: in place of the number
 */
export function StepCard({ step, number, total, alerts, lead, below, children }) {
  return html`<article class="step-card" aria-label=${own(step.title)}>
    <div class="step-head">
      <${StateMark} state=${step.mark} />
      <span class="quiet">${t("step.place", { n: number, total })}${step.rounds ? " · " + t("step.round", { n: step.round, total: step.rounds }) : ""}</span>
    </div>
    <h1 class="step-title">${own(step.title)}</h1>
    ${lead ?? html`<${MainFigure} step=${step} alerts=${alerts} />`}
    ${!lead && step.status === "running" && step.due_ms && step.main?.kind !== "countdown" ? html`<${Countdown} dueMs=${step.due_ms} />` : null}
    ${children}
    ${step.do.length ? html`<ul class="instruction">${step.do.map((line, index) => html`<li key=${index}>${own(line)}</li>`)}</ul>` : null}
    ${below}
    <${OtherTargets} step=${step} />
    <p class="quiet">${endWords(step)}</p>
  </article>`;
}
