import { html } from "../../parts/html.js";
import { originWords } from "../../parts/origin-words.js";
import { rangeWords } from "../../parts/range-words.js";
import { sizeTitle } from "../../parts/size-title.js";
import {
  band,
  bandIn,
  clock,
  inUnit,
  measured,
  measuredBand,
  quantity,
  span,
} from "../../format.js";
import { inside, own, t } from "../../messages/index.js";

// What is known of a step's number: its band, what was read last, where it comes from.
// It stands below the instruction, since nobody needs it to do the step.

/** @typedef {{name: string, says: (string | null | undefined)[]}} Fact */

/** @type {(one: Target) => string} */
function targetOrigin(target) {
  const mine = target.origin?.own ?? null;
  return originWords(
    target.origin,
    mine === null ? null : quantity(target.quantity, mine),
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

/** @param {Target} target @returns {Fact} */
function targetFact(target) {
  const { quantity: name, value, last } = target;
  if (value === null)
    return { name: targetName(target), says: ["", targetOrigin(target)] };
  return {
    name: targetName(target),
    says: [
      quantity(name, value),
      rangeWords(band(name, target.low, target.high), target.range_of),
      last &&
        t("target.last", { value: quantity(name, last.value), at: clock(last.at_ms) }),
      targetOrigin(target),
    ],
  };
}

// The recipe's own dose is in the ingredient's unit, even where a sum measures it.
/** @param {Step} step @param {MainDose} main @returns {Fact} */
function doseFact(step, main) {
  const add = step.adds.find((dose) => dose.ingredient === main.ingredient);
  const planned = add?.planned;
  const mine = planned?.origin?.own ?? null;
  const unit = planned?.basis.amount_unit.split("/")[0] ?? "";
  return {
    name: own(add?.title),
    says: [
      measured(main.value, main.unit),
      rangeWords(
        measuredBand(planned?.low, planned?.high, main.unit),
        planned?.range_of,
      ),
      originWords(planned?.origin, mine === null ? null : measured(mine, unit)),
    ],
  };
}

/** @param {WashWater} water */
function wholeWords({ water_l: litres, low_l: low, high_l: high }) {
  const amount = measured(litres, "L");
  if (low === null || high === null) return t("water.whole", { amount });
  return t("water.whole_of", {
    amount,
    low: measured(low, "L"),
    high: measured(high, "L"),
  });
}

/** @param {WashWater} water */
function nextWords(water) {
  const stop = quantity("curd_temp_c", water.stop_c);
  if (water.added_l) return t("water.stop", { stop });
  const after = quantity("curd_temp_c", water.after_first_c);
  return t("water.then_read", { after, stop });
}

/** @param {MainWater} main @param {WashWater} water @returns {Fact} */
function waterFact(main, water) {
  const name = t("quantity.water_added_l");
  if (main.part === "rest" && main.value === 0)
    return { name, says: [t("water.measure")] };
  return {
    name,
    says: [
      t(water.is_read ? "water.at_read" : "water.at_wanted"),
      nextWords(water),
      water.added_l ? t("water.in", { amount: measured(water.added_l, "L") }) : null,
      wholeWords(water),
      water.loss_k === null
        ? null
        : t("water.learnt", { loss: measured(water.loss_k, "K") }),
    ],
  };
}

/** @param {Step} step @returns {Fact[]} */
function factsOf(step) {
  const { main, water, targets } = step;
  if (main?.kind === "dose") return [doseFact(step, main), ...targets.map(targetFact)];
  if (main?.kind !== "water" || !water) return targets.map(targetFact);
  const others = targets.filter((one) => one.quantity !== "water_added_l");
  return [waterFact(main, water), ...others.map(targetFact)];
}

/** @param {Step} step */
function endWords({ end, lasts }) {
  if (end.by === "time" && lasts) {
    const takes = bandIn(lasts.low_s, lasts.high_s, "s");
    return t("end.time", { span: span(lasts.value_s), band: takes });
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
 * How a step ends, in words.
 *
 * @param {{step: Step}} props
 */
export function StepEnd({ step }) {
  return html`<p class="quiet">${endWords(step)}</p>`;
}

/**
 * The figures of a step with their bands, what was read last and where they come from.
 *
 * @param {{step: Step}} props
 */
export function FigureFacts({ step }) {
  const facts = factsOf(step);
  const origin = step.lasts?.origin;
  const mine = origin?.own ?? null;
  const lasts = originWords(origin, mine === null ? null : span(mine));
  return html`${
    facts.length
      ? html`<ul class="facts facts-wide">${facts.map(
          ({ name, says: [first, ...more] }) => html`<li key=${name}>
    <span>${name}</span>${first ? html`<b>${first}</b>` : null}
    ${more.map((words) => (words ? html`<span key=${words}>${words}</span>` : null))}
  </li>`,
        )}</ul>`
      : null
  }
  <${StepEnd} step=${step} />
  ${lasts ? html`<p class="quiet figure-origin">${lasts}</p>` : null}`;
}
