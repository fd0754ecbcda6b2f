import { useState } from "preact/hooks";
import { html } from "../../parts/html.js";
import { Keypad } from "../../parts/keypad.js";
import { Row, Sheet } from "../../parts/sheet.js";
import { Tap } from "../../parts/tap.js";
import { decimalsTyped, typedValue, unitName } from "../../format.js";
import { inside, t } from "../../messages/index.js";
import { draftOf, keepDraft } from "./given.js";
import { Units, isSigned, readInput } from "./pads.js";
import { keepUnit, unitFor, unitsOf } from "./units.js";
import { askWords, sumProblem } from "./refusals.js";
import { label } from "./words.js";

/** @import { PadProps } from "./pads.js" */
/** @typedef {SumInput & {columns: (SumInput & {low: number, high: number})[]}} Table */
/** @typedef {{cells: SumCells, at: number, typed?: string}} RowDraft at which column */

/**
 * The unit of a table: of its one column that may be typed in several, or in
 * another than its own, as a share is typed in percent.
 *
 * @param {Table} table
 */
function unitColumn(table) {
  const isChosen = (/** @type {SumInput} */ column) =>
    unitsOf(column).length > 1 || unitsOf(column)[0] !== column.unit;
  return table.columns.find((column) => !column.rises && isChosen(column)) ?? null;
}

/**
 * Time must rise and no cell may be empty for the core to look at the one typed.
 *
 * @param {Table} table
 * @param {SumCells} cells
 */
function filled(table, cells) {
  const whole = { ...cells };
  for (const column of table.columns) {
    if (whole[column.name] === undefined && !column.optional)
      whole[column.name] = (column.low + column.high) / 2;
  }
  return whole;
}

/**
 * @param {object} props
 * @param {SumRow} props.sum
 * @param {Table} props.table
 * @param {SumCells[]} props.rows
 * @param {RowDraft} props.draft
 * @param {SumInput} props.column
 * @param {string} props.unit
 * @param {string[]} props.units
 * @param {(unit: string) => void} props.onUnit
 * @param {(typed: string) => void} props.onTyped
 * @param {(typed: string | undefined) => void} props.onCell
 * @param {() => void} props.onBack
 */
function CellPad({
  sum,
  table,
  rows,
  draft,
  column,
  unit,
  units,
  onUnit,
  onTyped,
  onCell,
  onBack,
}) {
  const cellUnit = column.units.includes(unit) ? unit : column.unit;
  const index = rows.length;
  const given = (/** @type {string} */ typed) => ({
    rows: [...rows, filled(table, { ...draft.cells, [column.name]: typed })],
    unit,
  });
  const field = `${table.name}.${index + 1}.${column.name}`;
  const problems = (/** @type {Problem[]} */ list, /** @type {string} */ typed) =>
    list
      .map((problem) => sumProblem(problem, sum, { [table.name]: given(typed) }))
      .join(" ");
  return html`<div class="sheet" key=${column.name}><${Keypad} isBare onBack=${onBack} title=${`${label(column.name, sum.key)} · ${inside(t("sums.row", { n: index + 1 }))}`}
    unit=${unitName(cellUnit)} decimals=${column.kind === "count" ? 0 : decimalsTyped(cellUnit)} signed=${isSigned(column)} start=${draft.typed ?? ""}
    onTyped=${onTyped} read=${(/** @type {string} */ typed) => readInput(sum, table.name, field, given(typed))} save=${async (
      /** @type {unknown} */ value,
      /** @type {string} */ typed,
    ) => {
      onCell(typed);
      return true;
    }}
    saveWord=${t("word.next")} askText=${(/** @type {Problem} */ ask, /** @type {string} */ typed) => askWords(ask, sum, table.name, typed, cellUnit)} problemWords=${problems}
    aside=${column.optional ? html`<${Tap} class="second aside" onTap=${() => onCell(undefined)}>${t("sums.row_leave")}</${Tap}>` : null}>
    ${column === unitColumn(table) && rows.length === 0 ? html`<${Units} units=${units} unit=${unit} onUnit=${onUnit} />` : null}
  </${Keypad}></div>`;
}

/**
 * @param {SumRow} sum
 * @param {Table} table
 * @param {SumCells} cells
 * @param {string} unit
 */
function cellsWords(sum, table, cells, unit) {
  return table.columns
    .filter((column) => cells[column.name] !== undefined)
    .map(
      (column) =>
        `${column.rises ? "" : inside(label(column.name, sum.key)) + " "}${typedValue(/** @type {string} */ (cells[column.name]), column.units.includes(unit) ? unit : column.unit)}`,
    )
    .join(" · ");
}

/**
 * Type a table of readings row by row; a row that was begun is kept.
 *
 * @param {PadProps & {input: Table}} props
 */
export function TablePad({ sum, input, scope, given, wayBack, onGive, onBack }) {
  const rows = given?.rows ?? [];
  const column = unitColumn(input);
  const begun = draftOf(scope, input.name);
  const [unit, setUnit] = useState(
    given?.unit ?? begun?.unit ?? (column ? unitFor(column) : ""),
  );
  const [draft, setDraft] = useState(/** @type {RowDraft | null} */ (null));
  const hold = (/** @type {RowDraft | null} */ next) =>
    keepDraft(scope, input.name, next && { ...next, unit });
  const keep = (/** @type {SumCells[]} */ next) =>
    onGive(next.length ? { rows: next, unit, sure: true } : null, true);
  if (draft) {
    const asked = input.columns[draft.at];
    const onCell = (/** @type {string | undefined} */ typed) => {
      const cells = { ...draft.cells, [asked.name]: typed };
      if (draft.at + 1 < input.columns.length) {
        const next = { cells, at: draft.at + 1 };
        hold(next);
        return setDraft(next);
      }
      if (column) keepUnit(column, unit);
      hold(null);
      keep([...rows, cells]);
      return setDraft(null);
    };
    return html`<${CellPad} key=${asked.name} sum=${sum} table=${input} rows=${rows} draft=${draft} column=${asked} unit=${unit}
      units=${column ? unitsOf(column) : []} onUnit=${setUnit} onTyped=${(/** @type {string} */ typed) => hold({ ...draft, typed })} onCell=${onCell} onBack=${() => setDraft(null)} />`;
  }
  return html`<${Sheet} title=${label(input.name, sum.key)} onBack=${onBack}
    foot=${html`<${Tap} class="primary" onTap=${() => setDraft(begun ?? { cells: {}, at: 0 })}>${begun ? t("sums.row_go_on", { n: rows.length + 1 }) : t("sums.row_add")}</${Tap}>
      <${Tap} class="second" onTap=${onBack}>${t("sums.rows_done")}</${Tap}>`}>
    ${input.columns[0].rises ? html`<p class="quiet">${t("sums.row_lead")}</p>` : null}
    ${rows.length && column && unitsOf(column).length > 1 ? html`<p class="quiet">${t("sums.row_unit_fixed", { unit: unitName(unit) })}</p>` : null}
    <div class="rows">${rows.map(
      (cells, index) => html`<div class="row row-still" key=${index}>
      <span class="row-main"><span class="row-title">${index + 1}. ${cellsWords(sum, input, cells, unit)}</span></span>
      <span class="row-buttons"><${Tap} class="second" label=${t("sums.row_remove", { n: index + 1 })}
        onTap=${() => keep(rows.filter((_, at) => at !== index))}>⌫</${Tap}></span></div>`,
    )}</div>
    ${given ? html`<div class="rows rows-apart"><${Row} title=${wayBack} onTap=${() => onGive(null)} /></div>` : null}
  </${Sheet}>`;
}
