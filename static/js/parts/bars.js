import { html } from "./html.js";
import { count } from "../format.js";
import { t } from "../messages/index.js";

/** @param {number | null} frac */
const percent = (frac) => ((frac ?? 0) * 100).toFixed(1) + "%";

/**
 * What a bar shows, said: how much of the way is behind, or how it lies in its band.
 *
 * @param {Bar} bar
 */
export function barWords({ at_frac: at, side }) {
  if (side) return t("bar." + side);
  return t("bar.grown", { share: count(Math.round(at * 100)) });
}

/**
 * A bar that fills as something grows; or a line with a band on it, a post where the
 * value lies, and a notch at what is wanted. Told apart by shape, not by colour. The
 * figures stand beside it.
 *
 * @param {{bar: Bar}} props
 */
export function DrawnBar({ bar }) {
  const { at_frac: at, low_frac: low, high_frac: high, aim_frac: aim } = bar;
  const isBand = low !== null && high !== null;
  return html`<span class=${isBand ? "drawn-bar is-band" : "drawn-bar"} role="img" aria-label=${barWords(bar)} style=${{ "--at": percent(at) }}>
    ${
      isBand
        ? html`<span class="bar-band" style=${{ left: percent(low), right: percent(1 - high) }}></span>
      ${aim === null ? null : html`<span class="bar-aim" style=${{ left: percent(aim) }}></span>`}
      <span class="bar-post"></span>`
        : null
    }</span>`;
}
