import { html } from "../../parts/html.js";
import { Row, Sheet } from "../../parts/sheet.js";
import { inside, t } from "../../messages/index.js";
import { Answer, RestsOn } from "./answer.js";
import { draftOf } from "./given.js";
import { ChoicePad, NumberPad } from "./pads.js";
import { TablePad } from "./table-pad.js";
import { sumProblem } from "./refusals.js";
import {
  beginWords,
  givenWords,
  label,
  pickWords,
  restsValue,
  rowsWords,
} from "./words.js";

/** @import { Names } from "./values.js" */

/** @param {SumInput} input */
function defaultWords(input) {
  const told = input.default;
  if (!told) return "";
  const value =
    input.kind === "choice"
      ? inside(pickWords(input.name, told.value))
      : input.kind === "series"
        ? rowsWords(told.value)
        : restsValue({ ...told, unit: input.unit, name: input.name }, input);
  return t("sums.usual", { value });
}

/**
 * @param {object} props
 * @param {SumRow} props.sum
 * @param {SumInput} props.input
 * @param {string} props.scope
 * @param {SumGiven} [props.given]
 * @param {Answer["known"] | null} props.known
 * @param {Problem[]} props.problems
 * @param {boolean} props.isMissing
 * @param {() => void} props.onOpen
 */
function InputRow({ sum, input, scope, given, known, problems, isMissing, onOpen }) {
  const told = known?.find((fact) => fact.name === input.name);
  const side = given
    ? givenWords(input, given)
    : told
      ? restsValue({ ...told, name: input.name }, input)
      : input.default
        ? ""
        : isMissing
          ? t(input.kind === "choice" ? "sums.choose" : "sums.needed")
          : t("sums.if_known");
  const detail = given
    ? t("sums.as_typed")
    : told
      ? t("from." + told.from)
      : input.by_hand
        ? defaultWords(input)
        : `${defaultWords(input)} · ${t("sums.own_only")}`;
  const begun = draftOf(scope, input.name);
  const wrong = problems
    .map((problem) => sumProblem(problem, sum, given ? { [input.name]: given } : {}))
    .join(" ");
  const says = [
    wrong,
    begun && begun.typed !== given?.typed ? beginWords(input, begun) : "",
  ].filter(Boolean);
  return html`<${Row} class=${wrong ? "is-wrong" : isMissing ? "is-due" : ""} title=${label(input.name, sum.key)} side=${side}
    detail=${says.length ? html`${detail}${says.map((text) => html`<span class="row-says" key=${text}>${text}</span>`)}` : detail}
    disabled=${!input.by_hand} onTap=${onOpen} />`;
}

/**
 * @param {object} props
 * @param {SumRow} props.sum
 * @param {SumInput} props.input
 * @param {string} props.scope
 * @param {SumGiven} [props.given]
 * @param {Answer["known"] | null} props.known
 * @param {string | null} props.chosen
 * @param {(name: string, value: SumGiven | null) => void} props.onGive
 * @param {() => void} props.onBack
 */
function Pad({ sum, input, scope, given, known, chosen, onGive, onBack }) {
  const Kind =
    input.kind === "choice"
      ? ChoicePad
      : input.kind === "series"
        ? TablePad
        : NumberPad;
  const told = known?.some((fact) => fact.name === input.name);
  const wayBack = t(
    told ? "sums.keep_make" : input.default ? "sums.keep_back" : "sums.take_out",
  );
  const give = (/** @type {SumGiven | null} */ value, staysOpen = false) => {
    onGive(input.name, value);
    if (!staysOpen) onBack();
  };
  return html`<${Kind} sum=${sum} input=${input} scope=${scope} given=${given} chosen=${chosen} wayBack=${wayBack} onGive=${give} onBack=${onBack} />`;
}

/**
 * One sum: its answer, what goes in, and what it rests on.
 *
 * @param {object} props
 * @param {SumRow} props.sum
 * @param {string} [props.scope] where what is typed is kept
 * @param {Answer | null} props.answer
 * @param {Record<string, SumGiven>} props.given
 * @param {Answer["known"] | null} [props.known] what the make knows
 * @param {string} [props.input] name of the input whose pad is open
 * @param {string} [props.title]
 * @param {Names} [props.names]
 * @param {Record<string, {title?: string}>} [props.sources] the recipe's, by key
 * @param {string} [props.lead]
 * @param {any} [props.foot]
 * @param {(name: string | null) => void} props.onInput
 * @param {(name: string, value: SumGiven | null) => void} props.onGive
 * @param {() => void} props.onClear
 * @param {() => void} props.onBack
 */
export function SumSheet({
  sum,
  scope = sum.key,
  answer,
  given,
  known = null,
  input,
  title,
  names,
  sources,
  lead,
  foot,
  onInput,
  onGive,
  onClear,
  onBack,
}) {
  const open = sum.inputs.find((field) => field.name === input);
  if (open && open.by_hand) {
    const rests = answer?.rests_on.find((origin) => origin.name === open.name);
    return html`<${Pad} key=${open.name} sum=${sum} input=${open} scope=${scope} given=${given[open.name]} known=${known}
      chosen=${given[open.name]?.value ?? (rests?.from === "default" ? rests.value : null)}
      onGive=${onGive} onBack=${() => onInput(null)} />`;
  }
  const missing = answer?.missing ?? [];
  const problemsOf = (/** @type {SumInput} */ field) =>
    (answer?.problems ?? []).filter(
      (problem) => String(problem.field).split(".")[0] === field.name,
    );
  const isKnown = (/** @type {SumInput} */ field) =>
    known?.some((fact) => fact.name === field.name);
  const isOfTank = known?.some((fact) => fact.from === "tank");
  const isAsked = (/** @type {SumInput} */ field) =>
    missing.includes(field.name) ||
    Boolean(given[field.name]) ||
    Boolean(draftOf(scope, field.name)) ||
    problemsOf(field).length > 0 ||
    (!field.optional && !field.default && !isKnown(field));
  const groups = /** @type {[string, SumInput[]][]} */ ([
    ["sums.asked", sum.inputs.filter(isAsked)],
    ["sums.known", sum.inputs.filter((field) => !isAsked(field) && isKnown(field))],
    ["sums.others", sum.inputs.filter((field) => !isAsked(field) && !isKnown(field))],
  ]).filter(([, rows]) => rows.length);
  const list = (/** @type {SumInput[]} */ rows) =>
    html`<div class="rows">${rows.map(
      (
        field,
      ) => html`<${InputRow} key=${field.name} sum=${sum} input=${field} scope=${scope}
    given=${given[field.name]} known=${known} problems=${problemsOf(field)} isMissing=${missing.includes(field.name)} onOpen=${() => onInput(field.name)} />`,
    )}</div>`;
  return html`<${Sheet} title=${title ?? t("sum." + sum.key)} onBack=${onBack} foot=${foot}>
    ${lead ? html`<p class="quiet">${lead}</p>` : null}
    <div class="columns">
      <div class="column"><${Answer} answer=${answer} sum=${sum} given=${given} names=${names} />
        ${groups.filter(([key]) => key === "sums.asked").map(([key, rows]) => html`<section class="block" key=${key}><h2>${t(key)}</h2>${list(rows)}</section>`)}
      </div>
      <div class="column">
        ${groups
          .filter(([key]) => key !== "sums.asked")
          .map(
            ([
              key,
              rows,
            ]) => html`<section class="block" key=${key}><h2>${t(key === "sums.known" && isOfTank ? "sums.known_tank" : key)}</h2>
          ${key === "sums.known" ? html`<p class="quiet">${t("sums.known_detail")}</p>` : null}${list(rows)}</section>`,
          )}
        <${RestsOn} answer=${answer} sum=${sum} sources=${sources} />
        ${Object.keys(given).length ? html`<div class="rows rows-apart"><${Row} title=${t("sums.clear")} onTap=${onClear} /></div>` : null}
      </div>
    </div>
  </${Sheet}>`;
}
