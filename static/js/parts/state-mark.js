import { html } from "./html.js";
import { t } from "../messages/index.js";

// Each state differs in shape, word and colour, so that a grey print, a colour-
// blind eye or a fogged screen still tells them apart.
/** @type {Record<string, any>} */
const SHAPES = {
  act: html`<path d="M7 1h10l6 6v10l-6 6H7l-6-6V7z" /><path class="ink" d="M10.6 5h2.8v9h-2.8zM10.6 16h2.8v3h-2.8z" />`,
  check: html`<path d="M12 1.5 23.5 22.5H.5z" /><path class="ink" d="M10.8 9h2.4v7h-2.4zM10.8 17.6h2.4v2.6h-2.4z" />`,
  due: html`<path class="line" d="M3 3h18v18H3z" />`,
  do: html`<path class="line" d="M3 3h18v18H3z" />`,
  ok: html`<path d="M3 10.5h18v3H3z" />`,
};

/**
 * One of the four states, as shape and word: act, check, due (or do), ok.
 *
 * @param {{state: string, word?: string}} props
 */
export function StateMark({ state, word }) {
  return html`<span class=${`mark mark-${state}`}>
    <svg class="mark-shape" viewBox="0 0 24 24" aria-hidden="true">${SHAPES[state]}</svg>
    <span class="mark-word">${word ?? t("state." + state)}</span>
  </span>`;
}
