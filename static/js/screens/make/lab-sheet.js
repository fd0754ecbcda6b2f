import { useState } from "preact/hooks";
import { html } from "../../parts/html.js";
import { Row, Sheet } from "../../parts/sheet.js";
import { inside, own, t } from "../../messages/index.js";
import { ReadingSheet } from "./reading-sheet.js";

/** What a laboratory tells of the cheese, for each size of wheel. */
export const LAB = [
  "cheese_moisture_frac",
  "cheese_fat_frac",
  "cheese_salt_frac",
  "cheese_ph",
  "cheese_phosphatase_ug",
];
/** What it tells of the milk, or of the whole make. */
export const LAB_MAKE = [
  "milk_phosphatase_mu_l",
  "phosphatase_test",
  "staph_per_g",
  "listeria_test",
  "salmonella_test",
];

/**
 * Results that come days later: of a make that is closed, too.
 *
 * @param {{make: string, shown: View, onBack: () => void}} props
 */
export function LabSheet({ make, shown, onBack }) {
  const [open, setOpen] = useState(
    /** @type {{name: string, size: Mould | null} | null} */ (null),
  );
  if (open) {
    return html`<${ReadingSheet} make=${make} name=${open.name} place=${open.size?.size} hint=${own(open.size?.title)} onBack=${() => setOpen(null)} />`;
  }
  const row = (
    /** @type {string} */ name,
    /** @type {Mould | null} */ size = null,
  ) => html`<${Row} key=${name + size?.size} onTap=${() => setOpen({ name, size })}
    title=${size ? t("store.read_of", { what: t("quantity." + name), size: inside(own(size.title)) }) : t("quantity." + name)} />`;
  return html`<${Sheet} title=${t("store.lab")} onBack=${onBack}>
    <p class="quiet">${t("lab.lead")}</p>
    <div class="rows two">${shown.make.moulds.flatMap((size) => LAB.map((name) => row(name, size)))}${LAB_MAKE.map((name) => row(name))}</div>
  </${Sheet}>`;
}
