import { html } from "../../parts/html.js";
import { may } from "../../parts/people-names.js";
import { Row } from "../../parts/sheet.js";
import { StateMark } from "../../parts/state-mark.js";
import { nowMs } from "../../parts/source.js";
import { clockDay, span, sumValue } from "../../format.js";
import { has, t } from "../../messages/index.js";
import { go } from "../../router.js";
import { noteWords } from "../sums/notes.js";
import { isWords, ofWords } from "../sums/words.js";

/** @type {Record<string, string[]>} */
const WORDS = {
  reads_as_pasteurised: ["ok", "hold.meets"],
  heat_treated_only: ["check", "hold.does_not_meet"],
  not_assessed: ["due", "hold.not_assessed"],
};

/** @param {string} rule */
function ruleName(rule) {
  return has("of." + rule) ? ofWords(rule) : rule;
}

// Rows of the rule for a plant with a holding tube say nothing about a vat.
/** @param {Verdict} verdict */
function reasons(verdict) {
  const texts = [...verdict.reasons, ...verdict.warnings]
    .map((reason) => noteWords(reason))
    .map((text) => text.charAt(0).toUpperCase() + text.slice(1)); // some begin with a row's name
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

// What it means for the cheese is told when the hold is over, not before.
/** @param {Verdict} verdict */
function isRunning(verdict) {
  return verdict.reasons.some((reason) => reason.key === "hold_not_over");
}

/**
 * What the readings of a heat treatment meet, as the core says it; the chart decides.
 *
 * @param {{make: string, step: Step, canAct: boolean}} props
 */
export function HoldVerdict({ make, step, canAct }) {
  const verdict = step.verdict;
  if (!verdict) return null;
  const [state, word] = WORDS[verdict.class];
  const hold = verdict.hold;
  return html`<section class="hold" aria-label=${t("hold.title")} aria-live="polite">
    <p class="hold-word"><${StateMark} state=${state} word=${t(word)} /></p>
    <p>${t("hold.rule", { rule: ruleName(verdict.rule) })}</p>
    ${
      hold
        ? html`<p>${t("hold.row", { row: ofWords(hold.row) })} · ${t("hold.held", { span: span(hold.held_s), needed: span(hold.needed_s) })} ·
      ${
        hold.air_min_temp === null
          ? t("hold.asked", { temp: sumValue(hold.min_temp, verdict.unit) })
          : t("hold.asked_air", {
              temp: sumValue(hold.min_temp, verdict.unit),
              air: sumValue(hold.air_min_temp, verdict.unit),
            })
      }</p>`
        : null
    }
    ${verdict.start_ms ? html`<p>${t("hold.since", { at: clockDay(verdict.start_ms, nowMs()) })}</p>` : null}
    ${reasons(verdict).length ? html`<ul class="lines">${reasons(verdict).map((text) => html`<li key=${text}>${text}</li>`)}</ul>` : null}
    ${verdict.gap ? html`<p>${gapWords(verdict.gap)}</p>` : null}
    ${canAct && may("equipment_set") && isLacking(verdict) ? html`<div class="rows"><${Row} title=${t("hold.enter")} detail=${t("equip.title")} onTap=${() => go("make", make, "equipment")} /></div>` : null}
    ${isRunning(verdict) ? null : html`<p>${t("word.told", { name: t("out.meaning"), value: isWords("meaning", verdict.meaning) })}. ${verdict.meaning === "handle_as_unpasteurised" ? t("hold.curing") : ""}</p>`}
    <p class="quiet">${t("hold.decides")}</p>
  </section>`;
}
