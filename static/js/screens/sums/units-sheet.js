import { html } from "../../parts/html.js";
import { Sheet } from "../../parts/sheet.js";
import { Tap } from "../../parts/tap.js";
import { unitName } from "../../format.js";
import { t } from "../../messages/index.js";
import { CHOICES_OF_SUMS, chooseUnit, unitUsed } from "./units.js";

/** The units that the sums are read in, as one line. */
export function unitsWords() {
  return CHOICES_OF_SUMS.map(([own]) => unitName(unitUsed(own))).join(" · ");
}

/** @import { Choice } from "./units.js" */
/** @param {{choice: Choice}} props */
function UnitChoice({ choice }) {
  const [own, units] = choice;
  const title = t("sums.units_" + own);
  return html`<section class="block"><h2>${title}</h2>
    <div class="units" role="group" aria-label=${title}>${units.map(
      (unit) => html`<${Tap} key=${unit}
      class=${"tab unit-tab " + (unit === unitUsed(own) ? "is-chosen" : "")} pressed=${unit === unitUsed(own)}
      onTap=${() => chooseUnit(choice, unit)}>${unitName(unit)}</${Tap}>`,
    )}</div></section>`;
}

/**
 * Choose the units of the sums: kept on this phone for the next time.
 *
 * @param {{onBack: () => void}} props
 */
export function UnitsSheet({ onBack }) {
  return html`<${Sheet} title=${t("sums.units")} onBack=${onBack}><p class="quiet">${t("sums.units_lead")}</p>
    ${CHOICES_OF_SUMS.map((choice) => html`<${UnitChoice} key=${choice[0]} choice=${choice} />`)}
  </${Sheet}>`;
}
