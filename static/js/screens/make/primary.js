import { html } from "../../parts/html.js";
import { Tap } from "../../parts/tap.js";
import { WhoseLine } from "../../parts/whose.js";
import { act } from "../../parts/acts.js";
import { stayAt } from "../../parts/chosen.js";
import { roundName } from "../../parts/reading-text.js";
import { measured } from "../../format.js";
import { inside, own, t } from "../../messages/index.js";
import { go } from "../../router.js";
import { padAt } from "./round-sheet.js";

/**
 * The words of the large button: what to do next in this step.
 *
 * @param {Step} step
 */
export function buttonWords(step) {
  const button = step.button ?? { act: "none" };
  const title = own(step.title);
  if (button.act === "reading")
    return t("button.reading", { what: inside(roundName(step, button.arg ?? "")) });
  if (button.act === "add") {
    const add = step.adds.find((dose) => dose.ingredient === button.arg);
    const planned = add?.planned ? measured(add.planned.value, add.planned.unit) : "";
    return t("button.add", { what: inside(own(add?.title)), amount: planned });
  }
  return t("button." + button.act, { step: title });
}

/**
 * Begin a step; one that still waits on others asks why first.
 *
 * @param {string} make
 * @param {Step} step
 */
export function begin(make, step) {
  if (step.waits_on.length > 0) return go("make", make, "begin", step.key);
  stayAt(make, step.key);
  return act(
    "step_begun",
    { make, data: { step: step.key } },
    t("said.begun", { step: own(step.title) }),
  );
}

/**
 * End a step; one that misses something asks why first.
 *
 * @param {string} make
 * @param {Step} step
 */
export function end(make, step) {
  if (step.end_blockers.length > 0) return go("make", make, "end", step.key);
  return act(
    "step_ended",
    { make, data: { step: step.key } },
    t("said.ended", { step: own(step.title) }),
  );
}

/**
 * Begin, before it is known what must be read first: it stands there, and waits.
 *
 * @param {{step: Step}} props
 */
export function NotReady({ step }) {
  return html`<${Tap} class="primary" disabled>
    <span class="primary-does">${buttonWords(step)}</span>
    <span class="primary-waits" role="status">${t("caution.coming")}</span><${WhoseLine} /></${Tap}>`;
}

/**
 * The one large button: what to do next in this step.
 *
 * @param {{make: string, step: Step, awaitsCautions?: boolean}} props
 */
export function PrimaryButton({ make, step, awaitsCautions = false }) {
  const button = step.button ?? { act: "none" };
  if (button.act === "none")
    return html`<div class="foot-words"><${WhoseLine} /><span class="foot-none">${t("button.none")}</span></div>`;
  if (button.act === "begin" && awaitsCautions)
    return html`<${NotReady} step=${step} />`;
  const arg = button.arg ?? "";
  /** @type {Record<string, () => any>} */
  const acts = {
    begin: () => begin(make, step),
    end: () => end(make, step),
    reading: () => go("make", make, "reading", step.key, ...padAt(step, arg)),
    add: () => go("make", make, "add", step.key, arg),
    judge: () => go("make", make, "judge", step.key),
    stopped: () => go("make", make, "matters", arg),
    mould: () => go("make", make, "mould", step.key, ...(arg ? [arg] : [])),
  };
  const means = [make, step.key, button.act, button.arg].join("/");
  return html`<${Tap} class="primary" key=${means} means=${means} onTap=${acts[button.act]}>
    <span class="primary-does">${buttonWords(step)}</span><${WhoseLine} /></${Tap}>`;
}
