import { useState } from "preact/hooks";
import { html } from "../../parts/html.js";
import { Keypad } from "../../parts/keypad.js";
import { Choices, Row, Sheet } from "../../parts/sheet.js";
import { Tap } from "../../parts/tap.js";
import { ask } from "../../parts/source.js";
import { decimalsTyped, unitName } from "../../format.js";
import { t } from "../../messages/index.js";
import { draftOf, keepDraft } from "./given.js";
import { keepUnit, unitFor, unitsOf } from "./units.js";
import { askWords, sumProblem } from "./refusals.js";
import { label, pickWords } from "./words.js";

/**
 * @typedef {object} PadProps
 * @property {SumRow} sum
 * @property {SumInput} input
 * @property {string} scope where what is typed is kept
 * @property {SumGiven} [given]
 * @property {string} wayBack words of the key that takes out what was given
 * @property {(value: SumGiven | null, staysOpen?: boolean) => void} onGive
 * @property {() => void} onBack
 */

/**
 * The core refuses a number by its own limits first; what only other figures
 * forbid is told beside the answer, not on the pad.
 *
 * @param {SumRow} sum
 * @param {string} name
 * @param {string} field
 * @param {SumGiven} given
 */
export async function readInput(sum, name, field, given) {
  const answer = await ask.sum({ sum: sum.key, given: { [name]: given } });
  const problems = answer.problems.filter(
    (problem) => problem.field === field && problem.from !== "formula",
  );
  return {
    value: problems.length ? null : 0,
    problems,
    ask: answer.ask.find((problem) => problem.field === field) ?? null,
  };
}

/**
 * The units of an input as keys beside the figure; what was typed stays as it is.
 *
 * @param {{units: string[], unit: string, onUnit: (unit: string) => void}} props
 */
export function Units({ units, unit, onUnit }) {
  if (units.length < 2) return null;
  return html`<div class="units" role="group" aria-label=${t("sums.unit")}>${units.map(
    (option) => html`<${Tap}
    key=${option} class=${"tab unit-tab " + (option === unit ? "is-chosen" : "")} pressed=${option === unit} onTap=${() => onUnit(option)}>${unitName(option)}</${Tap}>`,
  )}</div>`;
}

/** @param {SumInput} input */
export function isSigned(input) {
  return typeof input.low === "number" && input.low < 0;
}

/**
 * Type one number of a sum in the unit of one's choice; what is left half typed is
 * kept.
 *
 * @param {PadProps} props
 */
export function NumberPad({ sum, input, scope, given, wayBack, onGive, onBack }) {
  const [begun] = useState(() => draftOf(scope, input.name) ?? given);
  const [unit, setUnit] = useState(begun?.unit ?? unitFor(input));
  const mine = (/** @type {string} */ typed) => ({ typed, unit });
  const hold = (/** @type {string} */ typed, /** @type {string} */ inUnit) =>
    keepDraft(scope, input.name, typed === "" ? null : { typed, unit: inUnit });
  const save = async (/** @type {unknown} */ value, /** @type {string} */ typed) => {
    keepUnit(input, unit);
    keepDraft(scope, input.name, null);
    onGive({ ...mine(typed), sure: true });
    return true;
  };
  const change = (/** @type {string} */ next) => {
    setUnit(next);
    const now = draftOf(scope, input.name);
    if (now) hold(now.typed, next);
  };
  return html`<div class="sheet"><${Keypad} isBare onBack=${onBack} title=${label(input.name, sum.key)} unit=${unitName(unit)}
    decimals=${input.kind === "count" ? 0 : decimalsTyped(unit)} signed=${isSigned(input)} start=${begun?.typed ?? ""}
    onTyped=${(/** @type {string} */ typed) => hold(typed, unit)} read=${(/** @type {string} */ typed) => readInput(sum, input.name, input.name, mine(typed))} save=${save} saveWord=${t("word.done")}
    askText=${(/** @type {Problem} */ ask, /** @type {string} */ typed) => askWords(ask, sum, input.name, typed, unit)}
    aside=${given ? html`<${Tap} class="second aside" onTap=${() => onGive(null)}>${wayBack}</${Tap}>` : null}
    problemWords=${(/** @type {Problem[]} */ problems, /** @type {string} */ typed) => problems.map((problem) => sumProblem(problem, sum, { [input.name]: mine(typed) })).join(" ")}>
    <${Units} units=${unitsOf(input)} unit=${unit} onUnit=${change} />
  </${Keypad}></div>`;
}

/**
 * Choose one word of several.
 *
 * @param {PadProps & {input: {choices: string[]}, chosen: string | null}} props
 */
export function ChoicePad({ sum, input, chosen, given, wayBack, onGive, onBack }) {
  return html`<${Sheet} title=${label(input.name, sum.key)} onBack=${onBack}>
    <${Choices} label=${label(input.name, sum.key)} chosen=${chosen} onChoose=${(/** @type {string} */ value) => onGive({ value })}
      options=${input.choices.map((key) => ({ key, title: pickWords(input.name, key) }))} />
    ${given ? html`<div class="rows rows-apart"><${Row} title=${wayBack} onTap=${() => onGive(null)} /></div>` : null}
  </${Sheet}>`;
}
