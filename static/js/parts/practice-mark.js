import { html } from "./html.js";
import { t } from "../messages/index.js";

/**
 * The word beside a make that is opened for practice; nothing beside a real one.
 *
 * @param {{of: ?{practice?: boolean}}} props
 */
export function PracticeMark({ of }) {
  return of?.practice
    ? html`<span class="practice">${t("practice.mark")}</span>`
    : null;
}
