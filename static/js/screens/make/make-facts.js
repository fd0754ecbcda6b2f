import { html } from "../../parts/html.js";
import { dayEndWords } from "../../parts/day-end.js";
import { t } from "../../messages/index.js";

/**
 * Which make it is: its batch, what its milk is, and when its day ends.
 *
 * @param {{shown: View}} props
 */
export function MakeFacts({ shown }) {
  const { make, day } = shown;
  return html`<div class="make-facts">
    <b>${make.name}</b>
    <span>${t("make.batch", { batch: make.batch })}</span>
    ${make.milk ? html`<span>${t("milk.short." + make.milk.is.class)}</span>` : null}
    <span>${dayEndWords(day, shown.now_ms)}</span>
  </div>`;
}
