import { signal } from "@preact/signals";
import { useEffect } from "preact/hooks";
import { html } from "../../parts/html.js";
import { Row, Sheet } from "../../parts/sheet.js";
import { sizeTitle } from "../../parts/size-title.js";
import { ask, core, recipes } from "../../parts/source.js";
import { inside, own, t } from "../../messages/index.js";
import { go, swap } from "../../router.js";
import { Headline, headline } from "../sums/answer.js";
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
        (reckoned) => {
          if (isCurrent) answers.value = { ...answers.value, [scope]: reckoned };
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
    ...shown.steps.map((step) => [step.key, own(step.title)]),
    ...shown.make.moulds.map((mould) => [mould.size, own(mould.title)]),
  ]);
}

// The make names a source by the recipe's key; its words stand in the recipe.
/** @param {View} shown */
function sourcesOf(shown) {
  const { recipe_id: id, recipe_version: version } = shown.make;
  const kept =
    recipes.value.find((recipe) => recipe.id === id && recipe.version === version) ??
    recipes.value.find((recipe) => recipe.id === id);
  return kept?.sources ?? {};
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
 *   sums: Answer[] | null, step: Step, names: Record<string, string>,
 *   onOpen: (answer: Answer) => void, isTold?: boolean,
 * }} props isTold: with labels and bars, where there is room for them
 */
export function SumLines({ sums, step, names, onOpen, isTold = false }) {
  if (!sums?.length) return null;
  const detail = (/** @type {Answer} */ answer) =>
    isTold
      ? html`<${Headline} answer=${answer} names=${names} step=${step.key} />`
      : headline(answer, names, step.key);
  return html`<div class="step-sums" role="group" aria-label=${t("sums.step")}>${sums.map(
    (answer) => html`<${Row}
    key=${answer.key + answer.of} title=${sumTitle(answer, names)} detail=${detail(answer)} onTap=${() => onOpen(answer)} />`,
  )}</div>`;
}

/**
 * One sum of a step: what the make knows is filled in, the rest is asked.
 *
 * @param {{
 *   make: string, shown: View, step: Step, sums: Answer[] | null, name: string,
 *   of?: string, input?: string, onInput: (next: string | null) => void,
 *   onBack: () => void,
 * }} props
 */
export function StepSumSheet({
  make,
  shown,
  step,
  sums,
  name,
  of,
  input,
  onInput,
  onBack,
}) {
  const sum = useSum(name);
  const answer =
    sums?.find((one) => one.key === name && (one.of ?? "-") === (of ?? "-")) ?? null;
  const scope = scopeOf(make, step.key);
  const given = Object.fromEntries(
    Object.entries(givenIn(scope)).filter(([key]) =>
      sum?.inputs.some((field) => field.name === key),
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
  const sums = useStepSums(make, shown, step);
  return html`<${SumLines} sums=${sums} step=${step} names=${namesOf(shown)}
    onOpen=${(/** @type {Answer} */ answer) => go("make", make, "sum", step.key, answer.key, answer.of ?? "-")} />`;
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
  const sums = useStepSums(make, shown, step);
  const here = ["make", make, "sum", step.key, name, of ?? "-"];
  return html`<${StepSumSheet} make=${make} shown=${shown} step=${step} sums=${sums} name=${name} of=${of} input=${input}
    onInput=${(/** @type {string | null} */ next) => (next ? go(...here, next) : swap(...here))} onBack=${onBack} />`;
}
