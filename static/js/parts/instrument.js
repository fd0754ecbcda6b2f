import { html } from "./html.js";
import { INSTRUMENTS, instrumentOf } from "./instruments.js";

/**
 * The drawing of the instrument that a reading is taken with. The reading's name
 * stands beside it and says all: a screen reader is told nothing twice.
 *
 * @param {{quantity: string}} props
 */
export function Instrument({ quantity }) {
  const { solid, line } = INSTRUMENTS[instrumentOf(quantity)];
  return html`<svg class="mark-shape" viewBox="0 0 24 24" aria-hidden="true">${solid ? html`<path d=${solid} />` : null}${line ? html`<path class="line" d=${line} />` : null}</svg>`;
}
