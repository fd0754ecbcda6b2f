import { html } from "../../parts/html.js";
import { Row, Sheet } from "../../parts/sheet.js";
import { readingText } from "../../parts/reading-text.js";
import { clock } from "../../format.js";
import { own, t } from "../../messages/index.js";
import { swap } from "../../router.js";
import { ReadingSheet } from "./reading-sheet.js";

// A wheel is compared with the last one of its own size only.
/**
 * @param {View} shown
 * @param {string} [size]
 * @returns {LastValue | null}
 */
function lastOf(shown, size) {
  const weighed = shown.log.filter(
    (one) =>
      one.kind === "reading_taken" &&
      one.data.quantity === "wheel_mass_kg" &&
      one.data.place === size &&
      !one.struck,
  );
  return (
    weighed
      .map((one) => ({ value: one.data.value, at_ms: one.at_ms }))
      .sort((a, b) => b.at_ms - a.at_ms)[0] ?? null
  );
}

/**
 * Weigh a wheel: of the step's own size, or of the one that is asked for first.
 *
 * @param {{
 *   make: string, shown: View, step: Step | null, size?: string, onBack: () => void,
 * }} props
 */
export function WeighSheet({ make, shown, step, size, onBack }) {
  const sizes = step?.size ? [step.size] : (shown.make.sizes ?? []);
  const chosen = sizes.length > 1 ? size : sizes[0];
  const rows = shown.make.moulds.filter((one) => sizes.includes(one.size));
  if (sizes.length > 1 && !(chosen && sizes.includes(chosen))) {
    return html`<${Sheet} title=${t("mould.title")} onBack=${onBack}>
      <p class="quiet">${t("quantity.wheel_mass_kg")}</p>
      <div class="rows">${rows.map((one) => {
        const last = lastOf(shown, one.size);
        return html`<${Row} key=${one.size} title=${own(one.title)}
          detail=${last ? t("reading.last", { value: readingText("wheel_mass_kg", last.value), at: clock(last.at_ms) }) : t("reading.none")}
          onTap=${() => swap("make", make, "reading", step?.key ?? "-", "wheel_mass_kg", one.size)} />`;
      })}</div>
    </${Sheet}>`;
  }
  return html`<${ReadingSheet} make=${make} step=${step?.key} name="wheel_mass_kg" place=${chosen}
    hint=${own(rows.find((one) => one.size === chosen)?.title)} last=${lastOf(shown, chosen)} onBack=${onBack} />`;
}
