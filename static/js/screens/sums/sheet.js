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

/** @param {SumInput} row */
function defaultWords(row) {
  const told = row.default;
  if (!told) return "";
  const value =
    row.kind === "choice"
      ? inside(pickWords(row.name, told.value))
      : row.kind === "series"
        ? rowsWords(told.value)
        : restsValue({ ...told, unit: row.unit, name: row.name }, row);
  return t("sums.usual", { value });
}

/**
 * @param {object} props
 * @param {SumRow} props.sum
 * @param {SumInput} props.row
 * @param {string} props.scope
 * @param {SumGiven} [props.given]
 * @param {Answer["known"] | null} props.known
 * @param {Problem[]} props.problems
 * @param {boolean} props.isMissing
 * @param {() => void} props.onOpen
 */
function InputRow({ sum, row, scope, given, known, problems, isMissing, onOpen }) {
  const told = known?.find((one) => one.name === row.name);
  const side = given
    ? givenWords(row, given)
    : told
      ? restsValue({ ...told, name: row.name }, row)
      : row.default
        ? ""
        : isMissing
          ? t(row.kind === "choice" ? "sums.choose" : "sums.needed")
          : t("sums.if_known");
  const detail = given
    ? t("sums.as_typed")
    : told
      ? t("from." + told.from)
      : row.by_hand
        ? defaultWords(row)
        : `${defaultWords(row)} · ${t("sums.own_only")}`;
  const begun = draftOf(scope, row.name);
  const wrong = problems
    .map((one) => sumProblem(one, sum, given ? { [row.name]: given } : {}))
    .join(" ");
  const says = [
    wrong,
    begun && begun.typed !== given?.typed ? beginWords(row, begun) : "",
  ].filter(Boolean);
  return html`<${Row} class=${wrong ? "is-wrong" : isMissing ? "is-due" : ""} title=${label(row.name, sum.key)} side=${side}
    detail=${says.length ? html`${detail}${says.map((text) => html`<span class="row-says" key=${text}>${text}</span>`)}` : detail}
    disabled=${!row.by_hand} onTap=${onOpen} />`;
}

/**
 * @param {object} props
 * @param {SumRow} props.sum
 * @param {SumInput} props.row
 * @param {string} props.scope
 * @param {SumGiven} [props.given]
 * @param {Answer["known"] | null} props.known
 * @param {string | null} props.chosen
 * @param {(name: string, value: SumGiven | null) => void} props.onGive
 * @param {() => void} props.onBack
 */
function Pad({ sum, row, scope, given, known, chosen, onGive, onBack }) {
  const Kind =
    row.kind === "choice" ? ChoicePad : row.kind === "series" ? TablePad : NumberPad;
  const told = known?.some((one) => one.name === row.name);
  const wayBack = t(
    told ? "sums.keep_make" : row.default ? "sums.keep_back" : "sums.take_out",
  );
  const give = (/** @type {SumGiven | null} */ value, staysOpen = false) => {
    onGive(row.name, value);
    if (!staysOpen) onBack();
  };
  return html`<${Kind} sum=${sum} row=${row} scope=${scope} given=${given} chosen=${chosen} wayBack=${wayBack} onGive=${give} onBack=${onBack} />`;
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
  const open = sum.inputs.find((one) => one.name === input);
  if (open && open.by_hand) {
    const rests = answer?.rests_on.find((one) => one.name === open.name);
    return html`<${Pad} key=${open.name} sum=${sum} row=${open} scope=${scope} given=${given[open.name]} known=${known}
      chosen=${given[open.name]?.value ?? (rests?.from === "default" ? rests.value : null)}
      onGive=${onGive} onBack=${() => onInput(null)} />`;
  }
  const missing = answer?.missing ?? [];
  const problemsOf = (/** @type {SumInput} */ row) =>
    (answer?.problems ?? []).filter(
      (one) => String(one.field).split(".")[0] === row.name,
    );
  const isKnown = (/** @type {SumInput} */ row) =>
    known?.some((one) => one.name === row.name);
  const isOfTank = known?.some((one) => one.from === "tank");
  const isAsked = (/** @type {SumInput} */ row) =>
    missing.includes(row.name) ||
    Boolean(given[row.name]) ||
    Boolean(draftOf(scope, row.name)) ||
    problemsOf(row).length > 0 ||
    (!row.optional && !row.default && !isKnown(row));
  const groups = /** @type {[string, SumInput[]][]} */ ([
    ["sums.asked", sum.inputs.filter(isAsked)],
    ["sums.known", sum.inputs.filter((row) => !isAsked(row) && isKnown(row))],
    ["sums.others", sum.inputs.filter((row) => !isAsked(row) && !isKnown(row))],
  ]).filter(([, rows]) => rows.length);
  const list = (/** @type {SumInput[]} */ rows) =>
    html`<div class="rows">${rows.map(
      (row) => html`<${InputRow} key=${row.name} sum=${sum} row=${row} scope=${scope}
    given=${given[row.name]} known=${known} problems=${problemsOf(row)} isMissing=${missing.includes(row.name)} onOpen=${() => onInput(row.name)} />`,
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
