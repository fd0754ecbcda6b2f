import { html } from "./html.js";
import { widthOf } from "./countdown.js";

/**
 * The large number of a step, as large as its letters leave room for.
 *
 * @param {{text: string}} props
 */
export function FigureValue({ text }) {
  return html`<div class="figure-value" style=${{ "--letters": widthOf(text) }}>${text}</div>`;
}
