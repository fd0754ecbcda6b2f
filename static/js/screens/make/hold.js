import { html } from "../../parts/html.js";
import { may, nameOf } from "../../parts/people-names.js";
import { Row } from "../../parts/sheet.js";
import { StateMark } from "../../parts/state-mark.js";
import { nowMs } from "../../parts/source.js";
import { clock, clockDay, day, quantity, span, sumValue } from "../../format.js";
import { capital, has, own, t } from "../../messages/index.js";
import { go } from "../../router.js";
import { noteWords } from "../sums/notes.js";
import { isWords, ofWords } from "../sums/words.js";

/** @type {Record<string, string[]>} */
const WORDS = {
  reads_as_pasteurised: ["ok", "hold.meets"],
  heat_treated_only: ["check", "hold.does_not_meet"],
  not_assessed: ["due", "hold.not_assessed"],
  meets_own_figures: ["ok", "hold.meets_own"],
  misses_own_figures: ["check", "hold.misses_own"],
};
const OWN_HOLD = "own_hold"; // the maker's own figures, no rule

/** @param {string} rule */
function ruleName(rule) {
  return has("of." + rule) ? ofWords(rule) : rule;
}

// Rows of the rule for a plant with a holding tube say nothing about a vat.
// While it runs, how it stands is told above, and in time to mend it.
/** @param {Verdict} verdict @param {boolean} isRunning */
function reasons(verdict, isRunning) {
  const texts = [...(isRunning ? [] : verdict.reasons), ...verdict.warnings]
    .map((reason) => noteWords(reason))
    .map(capital); // some begin with a row's name
  return [...new Set(texts)];
}

// The longest gap between two readings that was judged by, and on whose word.
/** @param {Verdict["gap"]} gap */
function gapWords({
  gap_s: gapS,
  is_own: isOwn,
  agreed_with: name,
  refused_s: refusedS,
}) {
  const values = { span: span(gapS), name };
  const said = t(
    name ? "hold.gap_agreed" : isOwn ? "hold.gap_own" : "hold.gap_usual",
    values,
  );
  return refusedS === null
    ? said
    : `${said} ${t("hold.gap_refused", { span: span(refusedS) })}`;
}

// What equipment can mend: the chart's own fields, and a gap that somebody agreed to.
const ENTERED = ["plant_name", "recorder_number"];

/** @param {Verdict} verdict */
function isLacking(verdict) {
  return (
    verdict.gap?.refused_s ||
    [...verdict.reasons, ...verdict.warnings].some(
      (reason) =>
        reason.key === "gap_too_long" ||
        (reason.missing ?? []).some((/** @type {string} */ field) =>
          ENTERED.includes(field),
        ),
    )
  );
}

/** @param {Verdict["chart"][number]} field */
function fieldWords({ value }) {
  if (!value) return t("hold.not_known");
  if (value.text) return value.text;
  if (value.title)
    return t("hold.product", { title: own(value.title), batch: value.batch });
  if (value.quantity) return quantity(value.quantity, value.value);
  if (value.by) return nameOf(value.by);
  if (value.from_ms)
    return t("hold.extent", {
      from: clock(value.from_ms),
      until: clock(value.until_ms),
    });
  if (value.unit)
    return t("hold.at", {
      temp: sumValue(value.reading, value.unit),
      at: clock(value.at_ms),
    });
  return day(value.at_ms);
}

// The chart is the plant's: what is known here is there to be copied on it.
/** @param {{fields: Verdict["chart"]}} props */
function ChartFields({ fields }) {
  const rows = fields.filter((field) => field.required || field.value);
  if (rows.length === 0) return null;
  return html`<h3>${t("hold.chart")}</h3>
    <dl class="hold-chart">${rows.map(
      (field) => html`<div key=${field.field} class=${field.value ? "" : "is-missing"}>
      <dt>${capital(t("chart." + field.field))}</dt><dd>${fieldWords(field)}</dd></div>`,
    )}</dl>`;
}

/** @param {{chart: NonNullable<Step["chart"]>}} props */
function ChartBeside({ chart }) {
  return html`<section class="hold" aria-label=${t("hold.chart")} aria-live="polite">
    ${chart.recorder ? html`<p class="hold-word"><${StateMark} state="act" /> ${noteWords(chart.recorder)}</p>` : null}
    <${ChartFields} fields=${chart.fields} />
    <p class="quiet">${t("hold.decides")}</p>
  </section>`;
}

/**
 * What the readings of a heat treatment meet, as the core says it; the chart decides.
 *
 * @param {{make: string, step: Step, canAct: boolean}} props
 */
export function HoldVerdict({ make, step, canAct }) {
  if (step.chart) return html`<${ChartBeside} chart=${step.chart} />`;
  const verdict = step.verdict;
  if (!verdict) return null;
  const isRunning = Boolean(step.hold);
  const [state, word] = WORDS[verdict.class];
  const hold = verdict.hold;
  const isOwn = verdict.rule === OWN_HOLD;
  return html`<section class="hold" aria-label=${t("hold.title")} aria-live="polite">
    ${isRunning ? null : html`<p class="hold-word"><${StateMark} state=${state} word=${t(word)} /></p>`}
    <p>${isOwn ? t("hold.own") : t("hold.rule", { rule: ruleName(verdict.rule) })}</p>
    ${
      hold
        ? html`<p>${isOwn ? "" : t("hold.row", { row: ofWords(hold.row) }) + " · "}${t("hold.held", { span: span(hold.held_s), needed: span(hold.needed_s) }) + " · "}${
            hold.air_min_temp === null
              ? t("hold.asked", { temp: sumValue(hold.min_temp, verdict.unit) })
              : t("hold.asked_air", {
                  temp: sumValue(hold.min_temp, verdict.unit),
                  air: sumValue(hold.air_min_temp, verdict.unit),
                })
          }</p>`
        : null
    }
    ${verdict.start_ms && !isRunning ? html`<p>${t("hold.since", { at: clockDay(verdict.start_ms, nowMs()) })}</p>` : null}
    ${reasons(verdict, isRunning).length ? html`<ul class="lines">${reasons(verdict, isRunning).map((text) => html`<li key=${text}>${text}</li>`)}</ul>` : null}
    ${verdict.gap ? html`<p>${isOwn ? t("hold.gap_of_own", { span: span(verdict.gap.gap_s) }) : gapWords(verdict.gap)}</p>` : null}
    ${canAct && may("equipment_set") && isLacking(verdict) ? html`<div class="rows"><${Row} title=${t("hold.enter")} detail=${t("equip.title")} onTap=${() => go("make", make, "equipment")} /></div>` : null}
    ${isRunning ? null : html`<p>${t("word.told", { name: t("out.meaning"), value: isWords("meaning", verdict.meaning) })}. ${verdict.meaning === "handle_as_unpasteurised" ? t("hold.curing") : ""}</p>`}
    <${ChartFields} fields=${isRunning ? [] : verdict.chart} />
    <p class="quiet">${t(isOwn ? "hold.own_decides" : "hold.decides")}</p>
  </section>`;
}
