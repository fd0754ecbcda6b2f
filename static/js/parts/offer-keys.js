import { html } from "./html.js";
import { Tap } from "./tap.js";
import { t } from "../messages/index.js";

/**
 * A value that was just read is often the last one, or the one that is wanted: one tap
 * by whoever reads it types and saves it.
 *
 * @typedef {{typed: string, text: string, why: "last" | "wanted", age: string}} Offered
 */

/**
 * @param {{offers: Offered[], title: string, onTake: (typed: string) => unknown}} props
 */
export function OfferKeys({ offers, title, onTake }) {
  return offers.map(
    ({ typed, text, why, age }) => html`<${Tap} key=${why + typed} class="key-offer"
      means=${`${title} ${typed}`} data-offer=${typed} onTap=${() => onTake(typed)}>
      ${t("keypad.offer_" + why, { value: text, age })}</${Tap}>`,
  );
}
