import { html } from "./html.js";
import { StateMark } from "./state-mark.js";
import { t } from "../messages/index.js";

/**
 * That a dose goes by the label of another bottle than the one in hand, or by none.
 *
 * @param {{bottle: Bottle | null | undefined}} props
 */
export function OtherBottle({ bottle }) {
  if (!bottle?.lot || bottle.is_read) return null;
  const words = bottle.of_label
    ? t("bottle.other", { lot: bottle.lot, label: bottle.of_label })
    : t("bottle.unread", { lot: bottle.lot });
  return html`<p class="figure-last is-off"><${StateMark} state="check" /> ${words}</p>`;
}
