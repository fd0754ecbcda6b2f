import { html } from "./html.js";

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
