import { stepTitle } from "../parts/step-title.js";
import { html } from "../parts/html.js";
import { Sheet } from "../parts/sheet.js";
import { StateMark } from "../parts/state-mark.js";
import { Tap } from "../parts/tap.js";
import { TaskWords } from "../parts/task-line.js";
import { clockSpan, span } from "../format.js";
import { own, t, whyWords } from "../messages/index.js";
import { go, swap } from "../router.js";
import { chooseStep } from "../parts/chosen.js";

/** @param {{step: Step, nowMs: number}} props */
function Times({ step, nowMs }) {
  const begun = step.begun?.at_ms ?? step.expected_begin_ms;
  const ended = step.ended?.at_ms ?? step.expected_end_ms;
  const key =
    step.status === "ended"
      ? "steps.done"
      : step.status === "running"
        ? "steps.running"
        : "steps.expected";
  return html`<span class="row-detail">${t("steps.planned", { span: clockSpan(step.planned_begin_ms, step.planned_end_ms, nowMs) })}</span>
    ${step.status === "skipped" ? null : html`<span class="row-detail">${t(key, { span: clockSpan(begun, ended, nowMs) })}</span>`}`;
}

/** @param {Step} step */
function timingWords(step) {
  const timing = step.timing;
  if (!timing || (timing.state !== "late" && timing.state !== "early") || !timing.by_s)
    return "";
  return t("timing." + timing.state, { by: span(timing.by_s) });
}

/**
 * @param {string} make
 * @param {Step} step
 */
function open(make, step) {
  const isOver = step.status === "ended" || step.status === "skipped";
  const entry = step.ended ?? step.skipped;
  if (isOver && entry) return go("make", make, "record", entry.id);
  chooseStep(make, step.key);
  return swap("make", make);
}

/**
 * The whole list of steps with planned and expected times; ended ones can be corrected.
 *
 * @param {{make: string, view: View, onBack: () => void}} props
 */
export function StepsScreen({ make, view, onBack }) {
  return html`<${Sheet} title=${t("steps.title")} onBack=${onBack}>
    <p class="quiet">${t("steps.lead")}</p>
    <div class="rows">${view.steps.map(
      (step, index) => html`<${Tap} key=${step.key}
      class=${`row step-row is-${step.status}`} onTap=${() => open(make, step)}>
      <span class="row-main">
        <span class="row-title">${index + 1}. ${stepTitle(step)}</span>
        <${Times} step=${step} nowMs=${view.now_ms} />
        <${TaskWords} task=${step.task} />
        ${
          step.waits_on.length && step.status === "waiting"
            ? html`<span class="row-detail">${t("steps.waits", {
                list: view.steps
                  .filter((awaited) => step.waits_on.includes(awaited.key))
                  .map((awaited) => own(awaited.title))
                  .join(", "),
              })}</span>`
            : null
        }
        ${step.skipped ? html`<span class="row-detail">${t("steps.skipped", { why: whyWords(step.skipped.why) })}</span>` : null}
      </span>
      <span class="row-side"><${StateMark} state=${step.mark} />${timingWords(step)}</span>
    </${Tap}>`,
    )}</div>
  </${Sheet}>`;
}
