import { Facts } from "./facts.js";
import { html } from "./html.js";
import { useWide } from "./wide.js";

/**
 * @typedef {object} Column
 * @property {any} title
 * @property {boolean} [isNumber] set to the right, digit under digit
 */

/**
 * What is compared, line by line. Where it has no room for its columns each line stands
 * by itself, with its labels.
 *
 * @param {object} props
 * @param {any} [props.caption]
 * @param {string} [props.label] what it is, where no caption stands above it
 * @param {Column[]} props.columns the first one names its line
 * @param {{key: string, cells: any[], class?: string}[]} props.rows
 */
export function Table({ caption, label, columns, rows }) {
  const side = (/** @type {number} */ at) =>
    columns[at].isNumber ? "is-number" : undefined;
  return html`<div class="table-room"><table class="table" aria-label=${label}>
    ${caption ? html`<caption>${caption}</caption>` : null}
    <thead><tr>${columns.map((column, at) => html`<th key=${at} scope="col" class=${side(at)}>${column.title}</th>`)}</tr></thead>
    <tbody>${rows.map(
      (row) =>
        html`<tr key=${row.key} class=${row.class}>${row.cells.map((cell, at) =>
          at === 0
            ? html`<th key=${at} scope="row">${cell}</th>`
            : html`<td key=${at} class=${side(at)} data-label=${columns[at].title}>${cell}</td>`,
        )}</tr>`,
    )}</tbody></table></div>`;
}

/**
 * The same where there are too many columns for a phone: there each line is a list of
 * its own.
 *
 * @param {Parameters<typeof Table>[0]} props
 */
export function WideTable(props) {
  const isWide = useWide();
  if (isWide) return html`<${Table} ...${props} />`;
  const [, ...rest] = props.columns;
  return html`<div>${props.caption ? html`<h3>${props.caption}</h3>` : null}
    ${props.rows.map(
      (row) => html`<div class="told-line" key=${row.key}><b>${row.cells[0]}</b>
      <${Facts} rows=${rest.map((column, at) => [column.title, row.cells[at + 1]])} /></div>`,
    )}</div>`;
}
