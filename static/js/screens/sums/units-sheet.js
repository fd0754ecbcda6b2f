import { html } from "../../parts/html.js";
import { Sheet } from "../../parts/sheet.js";
import { Tap } from "../../parts/tap.js";
import { unitName } from "../../format.js";
import { t } from "../../messages/index.js";
import { KINDS, chooseUnit, unitUsed } from "./units.js";

/** @param {string[]} kind */
function used(kind) {
  const unit = unitUsed(kind[0]);
  // A length is kept in metres, and nobody reads a wheel in them.
  return unit === "m" ? "mm" : unit;
}

/** @param {string[]} kind */
function choices(kind) {
  return kind[0] === "m" ? kind.slice(1) : kind;
}

/** The units that the sums are read in, as one line. */
export function unitsWords() {
  return KINDS.map((kind) => unitName(used(kind))).join(" · ");
}

/**
 * Choose the units of the sums: kept on this phone for the next time.
 *
 * @param {{onBack: () => void}} props
 */
export function UnitsSheet({ onBack }) {
  return html`<${Sheet} title=${t("sums.units")} onBack=${onBack}><p class="quiet">${t("sums.units_lead")}</p>
    ${KINDS.map(
      (
        kind,
      ) => html`<section class="block" key=${kind[0]}><h2>${t("sums.units_" + kind[0])}</h2>
      <div class="units" role="group" aria-label=${t("sums.units_" + kind[0])}>${choices(
        kind,
      ).map(
        (unit) => html`<${Tap} key=${unit}
        class=${"tab unit-tab " + (unit === used(kind) ? "is-chosen" : "")} pressed=${unit === used(kind)}
        onTap=${() => chooseUnit(kind, unit)}>${unitName(unit)}</${Tap}>`,
      )}</div></section>`,
    )}
  </${Sheet}>`;
}
