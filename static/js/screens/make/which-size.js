import { html } from "../../parts/html.js";
import { Row, Sheet } from "../../parts/sheet.js";
import { band, clock, quantity } from "../../format.js";
import { own, t } from "../../messages/index.js";
import { swap } from "../../router.js";
import { sizesOf } from "./round-sheet.js";

/** @param {Target | undefined} target */
function detail(target) {
  if (!target || target.value === null) return "";
  const wanted = band(target.quantity, target.low, target.high);
  const last =
    target.last &&
    t("target.last", {
      value: quantity(target.quantity, target.last.value),
      at: clock(target.last.at_ms),
    });
  return [quantity(target.quantity, target.value), wanted, last]
    .filter(Boolean)
    .join(" \u00b7 ");
}

/**
 * Ask of which size of wheel a reading is: each has a figure of its own.
 *
 * @param {{make: string, step: Step, name: string, onBack: () => void}} props
 */
export function WhichSize({ make, step, name, onBack }) {
  const targetOf = (/** @type {string} */ size) =>
    step.targets.find((target) => target.quantity === name && target.size === size);
  return html`<${Sheet} title=${t("mould.title")} onBack=${onBack}>
    <p class="quiet">${t("quantity." + name)}</p>
    <div class="rows">${sizesOf(step, name).map(
      ({
        size,
        title,
      }) => html`<${Row} key=${size} title=${own(title)} detail=${detail(targetOf(size))}
      onTap=${() => swap("make", make, "reading", step.key, name, size)} />`,
    )}</div>
  </${Sheet}>`;
}
