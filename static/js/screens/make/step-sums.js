import { signal } from "@preact/signals";
import { useEffect } from "preact/hooks";
import { html } from "../../parts/html.js";
import { Row, Sheet } from "../../parts/sheet.js";
import { sizeTitle } from "../../parts/size-title.js";
import { ask, core, recipes } from "../../parts/source.js";
import { inside, own, t } from "../../messages/index.js";
import { go, swap } from "../../router.js";
import { headline } from "../sums/answer.js";
import { useSum } from "../sums/catalogue.js";
import { clearGiven, give, givenIn } from "../sums/given.js";
import { useKeep } from "../sums/keep-input.js";
import { SumSheet } from "../sums/sheet.js";

/** @import { Signal } from "@preact/signals" */

// The sums of a step come after it: they are asked for once it is painted and a
// finger has had its turn, and again only when the step, its entries or what was
// typed for them change. The last answers stand until then.

const AFTER_MS = 300;
/** @type {Signal<Record<string, Answer[]>>} */
const answers = signal({});

/**
 * @param {string} make
 * @param {string} step
 */
function scopeOf(make, step) {
  return `${make}/${step}`;
}

// All that an answer can follow from: entries of the make and the step's state.
/**
 * @param {View} shown
 * @param {Step} step
 */
function markOf(shown, step) {
  const log = shown.log
    .map((line) => line.id + line.corrections.length + (line.struck ? "x" : ""))
    .join();
  return `${log}|${step?.status}|${shown.make.milk_measured_l}`;
}

/**
 * The answers to the sums of a step, or the last ones; null before the first.
 *
 * @param {string} make
 * @param {View} shown
 * @param {Step} step
 * @returns {Answer[] | null}
 */
export function useStepSums(make, shown, step) {
  const scope = scopeOf(make, step.key);
  const given = givenIn(scope);
  const mark = markOf(shown, step);
  const isReady = core.value === "ready"; // a core that starts has the view to answer first
  useEffect(() => {
    if (!isReady) return undefined;
    let isCurrent = true;
    const work = () =>
      ask.stepSums({ make, step: step.key, given }).then(
        (found) => {
          if (isCurrent) answers.value = { ...answers.value, [scope]: found };
        },
        () => {},
      );
    const waits = setTimeout(work, AFTER_MS);
    return () => {
      isCurrent = false;
      clearTimeout(waits);
    };
  }, [scope, given, mark, isReady]);
  return answers.value[scope] ?? null;
}

/**
 * The make's steps and sizes of wheel in its own words.
 *
 * @param {View} shown
 * @returns {Record<string, string>}
 */
export function namesOf(shown) {
  return Object.fromEntries([
    ...shown.steps.map((one) => [one.key, own(one.title)]),
    ...shown.make.moulds.map((one) => [one.size, own(one.title)]),
  ]);
}

// The make names a source by the recipe's key; its words stand in the recipe.
/** @param {View} shown */
function sourcesOf(shown) {
  const { recipe_id: id, recipe_version: version } = shown.make;
  const found =
    recipes.value.find((one) => one.id === id && one.version === version) ??
    recipes.value.find((one) => one.id === id);
  return found?.sources ?? {};
}

/**
 * What a step's sum is called: with the size of wheel that it is about.
 *
 * @param {Answer} answer
 * @param {Record<string, string>} names
 */
export function sumTitle(answer, names) {
  const name = t("sum." + answer.key);
  return answer.of
    ? t("sums.of_size", {
        sum: name,
        size: inside(names[answer.of] ?? sizeTitle(answer.of)),
      })
    : name;
}

/**
 * The sums of a step as lines; a tap opens one.
 *
 * @param {{
 *   found: Answer[] | null, step: Step, names: Record<string, string>,
 *   onOpen: (answer: Answer) => void,
 * }} props
 */
export function SumLines({ found, step, names, onOpen }) {
  if (!found?.length) return null;
  return html`<div class="step-sums" role="group" aria-label=${t("sums.step")}>${found.map(
    (one) => html`<${Row}
    key=${one.key + one.of} title=${sumTitle(one, names)} detail=${headline(one, names, step.key)} onTap=${() => onOpen(one)} />`,
  )}</div>`;
}

/**
 * One sum of a step: what the make knows is filled in, the rest is asked.
 *
 * @param {{
 *   make: string, shown: View, step: Step, found: Answer[] | null, name: string,
 *   of?: string, input?: string, onInput: (next: string | null) => void,
 *   onBack: () => void,
 * }} props
 */
export function StepSumSheet({
  make,
  shown,
  step,
  found,
  name,
  of,
  input,
  onInput,
  onBack,
}) {
  const sum = useSum(name);
  const answer =
    found?.find((one) => one.key === name && (one.of ?? "-") === (of ?? "-")) ?? null;
  const scope = scopeOf(make, step.key);
  const given = Object.fromEntries(
    Object.entries(givenIn(scope)).filter(([key]) =>
      sum?.inputs.some((one) => one.name === key),
    ),
  );
  const isOpen = shown.make.is_open;
  const foot = useKeep({
    make,
    vat: shown.make.vat,
    isOpen,
    given,
    onKept: (/** @type {string} */ key) => give(scope, key, null),
  });
  if (!sum)
    return html`<${Sheet} title=${t("sum." + name)} onBack=${onBack}><p class="lead" role="status">${t("sums.loading")}</p></${Sheet}>`;
  const names = namesOf(shown);
  return html`<${SumSheet} sum=${sum} scope=${scope} answer=${answer} given=${given} known=${answer?.known ?? []} input=${input} names=${names} sources=${sourcesOf(shown)}
    title=${answer ? sumTitle(answer, names) : t("sum." + name)} lead=${own(step.title)} foot=${foot} onInput=${onInput}
    onGive=${(/** @type {string} */ key, /** @type {any} */ value) => give(scope, key, value)} onClear=${() => clearGiven(scope)} onBack=${onBack} />`;
}

/**
 * The sums of the step shown, below its number; nothing while it has none.
 *
 * @param {{make: string, shown: View, step: Step}} props
 */
export function StepSums({ make, shown, step }) {
  const found = useStepSums(make, shown, step);
  return html`<${SumLines} found=${found} step=${step} names=${namesOf(shown)}
    onOpen=${(/** @type {Answer} */ one) => go("make", make, "sum", step.key, one.key, one.of ?? "-")} />`;
}

/**
 * One of them on its own sheet over the make.
 *
 * @param {{
 *   make: string, shown: View, step: Step, rest: string[], onBack: () => void,
 * }} props
 */
export function StepSumPage({ make, shown, step, rest, onBack }) {
  const [name, of, input] = rest;
  const found = useStepSums(make, shown, step);
  const here = ["make", make, "sum", step.key, name, of ?? "-"];
  return html`<${StepSumSheet} make=${make} shown=${shown} step=${step} found=${found} name=${name} of=${of} input=${input}
    onInput=${(/** @type {string | null} */ next) => (next ? go(...here, next) : swap(...here))} onBack=${onBack} />`;
}
