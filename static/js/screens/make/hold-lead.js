import { html } from "../../parts/html.js";
import { Countdown } from "../../parts/countdown.js";
import { FigureValue } from "../../parts/figure-value.js";
import { StateMark } from "../../parts/state-mark.js";
import { secondMs } from "../../parts/ticker.js";
import {
  clock,
  clockSoon,
  formOf,
  quantity,
  span,
  sumValue,
  ticks,
} from "../../format.js";
import { t } from "../../messages/index.js";

/** @typedef {NonNullable<Step["hold"]>} Lead */

/** @type {Record<string, string>} */
const STATES = {
  meets_so_far: "ok",
  whole: "ok",
  waiting: "due",
  last_round: "due",
  milk_cold: "act",
  air_cold: "act",
};

// What the rule prints in the unit that this phone types in, else in the other.
/** @param {Lead} lead @param {string} name */
function askedOf(lead, name) {
  const units = [formOf(name).typed || "C", "C", "F"];
  const unit = units.find((one) => lead.asked[one]);
  const asked = unit && lead.asked[unit];
  if (!asked) return "";
  const value = name === lead.together[0] ? asked.temp : asked.air_temp;
  return value === null ? "" : t("hold.at_least", { temp: sumValue(value, unit) });
}

/** @param {{lead: Lead, name: string}} props */
function Thermometer({ lead, name }) {
  const last = lead.last.find((one) => one.quantity === name);
  return html`<div class=${"figure" + (last?.is_low ? " is-low" : "")}>
    <div class="figure-label">${t("hold.of." + name)}</div>
    <${FigureValue} text=${last ? quantity(name, last.value) : "–"} />
    ${last?.is_low ? html`<${StateMark} state="check" word=${t("verdict.below")} />` : null}
    ${last?.is_other_unit ? html`<div class="figure-band">${t("hold.other_unit")}</div>` : null}
  </div>`;
}

/** @param {{lead: Lead}} props */
function NextRound({ lead }) {
  if (lead.due_ms === null) return null;
  const leftS = lead.lost_ms === null ? 0 : (lead.lost_ms - secondMs.value) / 1000;
  const isOver = lead.due_ms <= secondMs.value;
  return html`<div class="hold-next">
    <div>${t("hold.next")}</div>
    <${Countdown} dueMs=${lead.due_ms} />
    ${isOver && leftS > 0 ? html`<p>${t("hold.counts_for", { time: ticks(leftS) })}</p>` : null}
  </div>`;
}

/** @param {Record<string, any>} said one line of how a hold stands */
function saidWords({ key, missing, raised, ...said }) {
  const temp = (/** @type {number} */ value) => sumValue(value, said.unit);
  const unit = formOf("milk_temp_c").typed || "C";
  return t("hold.says." + key, {
    value: temp(said.value),
    limit: temp(said.limit),
    end: said.end_ms ? clockSoon(said.end_ms, secondMs.value) : "–",
    at: clock(said.at_ms),
    start: clock(said.start_ms),
    span: span(said.span_s),
    gap: span(said.gap_s),
    fat: said.fat_frac ? quantity("fat_frac", said.fat_frac) : "",
    raised: raised ? sumValue(raised[unit], unit) : "",
    fields: (missing ?? [])
      .map((/** @type {string} */ field) => t("chart." + field))
      .join(", "),
  });
}

/**
 * A hold at one look: both thermometers, the next round, and how it stands.
 *
 * @param {{step: Step}} props
 */
export function HoldLead({ step }) {
  const lead = step.hold;
  if (!lead) return null;
  const [first] = lead.says;
  const state = step.status === "running" && first ? STATES[first.key] : undefined;
  return html`<div class="hold-lead" role="group" aria-label=${t("hold.lead")}>
    <div class="hold-temps">${lead.together.map((name) => html`<${Thermometer} key=${name} lead=${lead} name=${name} />`)}</div>
    <${NextRound} lead=${lead} />
    <div aria-live="polite">
      ${first ? html`<p class="hold-word"><${StateMark} state=${state ?? "check"} /> ${saidWords(first)}</p>` : null}
    </div>
  </div>`;
}

/**
 * What else is to be said of it, and what is asked of each thermometer.
 *
 * @param {{step: Step}} props
 */
export function HoldMore({ step }) {
  const lead = step.hold;
  if (!lead) return null;
  const asked = lead.together
    .map((name) => ({ name: t("hold.of." + name), value: askedOf(lead, name) }))
    .filter(({ value }) => value);
  return html`<div class="hold-says" aria-live="polite">
    ${lead.says.slice(1).map((said) => html`<p key=${said.key}><${StateMark} state="check" /> ${saidWords(said)}</p>`)}
    ${asked.map((one) => html`<p key=${one.name} class="quiet">${t("word.told", one)}</p>`)}
  </div>`;
}
