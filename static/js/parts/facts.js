import { html } from "./html.js";
import { DrawnBar } from "./bars.js";

/**
 * @typedef {object} More
 * @property {?Bar} [bar] drawn below the value
 * @property {boolean} [isLong] its words stand below the label, not beside it
 */
/** @typedef {[label: any, value: any, more?: More] | null | false | undefined} FactRow */

/** @param {any} value */
function isNothing(value) {
  return value === null || value === undefined || value === "" || value === false;
}

/** @param {{row: [any, any, More?], isInKey: boolean}} props */
function Fact({ row: [label, value, more = {}], isInKey }) {
  const drawn = more.bar ? html`<${DrawnBar} bar=${more.bar} />` : null;
  const name = more.isLong ? "fact is-long" : "fact";
  if (isInKey)
    return html`<span class=${name}><span class="fact-label">${label}</span> <span class="fact-value">${value}</span>${drawn}</span>`;
  return html`<div class=${name}><dt class="fact-label">${label}</dt> <dd class="fact-value">${value}</dd>${drawn ? html`<dd class="fact-bar">${drawn}</dd>` : null}</div>`;
}

/**
 * What is known of a thing, each with its label; what nobody knows is left out, and
 * nothing stands there where nothing is known.
 *
 * @param {{rows: FactRow[], isInKey?: boolean, class?: string}} props
 *   isInKey: within a button, which may hold no list; its words are read as one
 */
export function Facts({ rows, isInKey = false, class: name = "" }) {
  const told = /** @type {[any, any, More?][]} */ (
    rows.filter((row) => row && !isNothing(row[1]))
  );
  if (!told.length) return null;
  const list = told.map(
    (row, index) => html`<${Fact} key=${index} row=${row} isInKey=${isInKey} />`,
  );
  const of = ("fact-list " + name).trim();
  return isInKey
    ? html`<span class=${of}>${list}</span>`
    : html`<dl class=${of}>${list}</dl>`;
}
