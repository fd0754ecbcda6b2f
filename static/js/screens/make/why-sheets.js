import { html } from "../../parts/html.js";
import { may } from "../../parts/people-names.js";
import { Sheet } from "../../parts/sheet.js";
import { WhyPad } from "../../parts/why-pad.js";
import { act } from "../../parts/acts.js";
import { stayAt } from "../../parts/chosen.js";
import { Tap } from "../../parts/tap.js";
import { own, t } from "../../messages/index.js";
import { swap } from "../../router.js";

// What can still be entered instead of giving a reason, and on which sheet.
/** @type {Record<string, string>} */
const ENTER = {
  reading_missing: "reading",
  target_not_met: "reading",
  add_missing: "add",
};

/** @param {{key: string, arg: string, title: string}} blocker */
function whatOf(blocker) {
  if (blocker.key === "add_missing") return blocker.title;
  return ["reading_missing", "target_not_met"].includes(blocker.key)
    ? t("quantity." + blocker.arg)
    : "";
}

/** @param {{key: string, arg: string, title: string}} blocker */
function blockerText(blocker) {
  return t("blocker." + blocker.key, { what: whatOf(blocker) });
}

/**
 * End a step although something is missing: the record keeps the reason.
 *
 * @param {{make: string, step: Step, onBack: () => void}} props
 */
export function EndWhy({ make, step, onBack }) {
  const blockers = step.end_blockers.map((blocker) => ({
    ...blocker,
    title: own(step.adds.find((add) => add.ingredient === blocker.arg)?.title),
  }));
  const done = async (/** @type {string} */ why) => {
    const event = await act(
      "step_ended",
      { make, data: { step: step.key, why } },
      t("said.ended", { step: own(step.title) }),
    );
    if (event) onBack();
  };
  return html`<${WhyPad} title=${t("end.early_title", { step: own(step.title) })}
    reasons=${["curd_ready", "instrument_missing", "done_not_written", "maker_decides"]} doWord=${t("end.early_do")} onDone=${done} onBack=${onBack}>
    <ul class="lines">${blockers.map((blocker) => html`<li key=${blocker.key + blocker.arg}>${blockerText(blocker)}${blocker.do ? html` <b>${own(blocker.do)}</b>` : null}</li>`)}</ul>
    ${blockers
      .filter((blocker) => blocker.key in ENTER)
      .map(
        (
          blocker,
        ) => html`<${Tap} key=${"enter" + blocker.key + blocker.arg} class="second"
      onTap=${() => swap("make", make, ENTER[blocker.key], step.key, blocker.arg)}>${t("blocker.enter", { what: whatOf(blocker) })}</${Tap}>`,
      )}
  </${WhyPad}>`;
}

/**
 * Begin a step before those it waits on are over.
 *
 * @param {{make: string, step: Step, view: View, onBack: () => void}} props
 */
export function BeginWhy({ make, step, view, onBack }) {
  const waits = view.steps.filter((awaited) => step.waits_on.includes(awaited.key));
  const done = async (/** @type {string} */ why) => {
    stayAt(make, step.key);
    const event = await act(
      "step_begun",
      { make, data: { step: step.key, why } },
      t("said.begun", { step: own(step.title) }),
    );
    if (event) onBack();
  };
  return html`<${WhyPad} title=${t("begin.early_title", { step: own(step.title) })}
    reasons=${["done_not_written", "order_changed", "maker_decides"]} doWord=${t("begin.early_do")} onDone=${done} onBack=${onBack}>
    ${waits.length ? html`<p class="lead">${t("begin.waits_on")}</p><ul class="lines">${waits.map((awaited) => html`<li key=${awaited.key}>${own(awaited.title)}</li>`)}</ul>` : null}
  </${WhyPad}>`;
}

/**
 * Skip a step; whoever may not is told who may, whatever way they came.
 *
 * @param {{make: string, step: Step, onBack: () => void}} props
 */
export function SkipWhy({ make, step, onBack }) {
  if (!may("step_skipped")) {
    return html`<${Sheet} title=${t("skip.title", { step: own(step.title) })} onBack=${onBack}><p class="lead">${t("skip.ask_maker")}</p></${Sheet}>`;
  }
  const done = async (/** @type {string} */ why) => {
    const event = await act(
      "step_skipped",
      { make, data: { step: step.key, why } },
      t("said.skipped", { step: own(step.title) }),
    );
    if (event) onBack();
  };
  return html`<${WhyPad} title=${t("skip.title", { step: own(step.title) })} lead=${t("skip.lead")}
    reasons=${["not_this_time", "done_not_written", "maker_decides"]} doWord=${t("skip.do")} onDone=${done} onBack=${onBack} />`;
}
