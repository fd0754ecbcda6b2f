import { html } from "./html.js";
import { MARKS } from "./marks.js";
import { t } from "../messages/index.js";

/**
 * How something stands, as shape and word: a step in one of the core's eight words,
 * what asks to be looked at as act or check, what is well as ok. A bare one says its
 * word to a screen reader alone. What an older page kept has no mark: none is shown.
 *
 * @param {{state?: keyof typeof MARKS | null, word?: string, bare?: boolean}} props
 */
export function StateMark({ state, word, bare = false }) {
  const shape = state && MARKS[state];
  if (!shape) return null;
  const said = word ?? t("state." + state);
  return html`<span class=${`mark mark-${state}`} role=${bare ? "img" : null} aria-label=${bare ? said : null}>
    <svg class="mark-shape" viewBox="0 0 24 24" aria-hidden="true">${shape.solid ? html`<path d=${shape.solid} />` : null}${shape.line ? html`<path class="line" d=${shape.line} />` : null}</svg>
    ${bare ? null : html`<span class="mark-word">${said}</span>`}
  </span>`;
}
