import { html } from "../../parts/html.js";
import { Instrument } from "../../parts/instrument.js";
import { Row, Sheet } from "../../parts/sheet.js";
import { t } from "../../messages/index.js";
import { swap } from "../../router.js";

const COMMON = [
  "milk_temp_c",
  "curd_temp_c",
  "ph",
  "titratable_acidity_frac",
  "water_temp_c",
  "room_temp_c",
  "milk_volume_l",
  "whey_drained_l",
  "water_added_l",
  "press_gauge_kpa",
  "bed_load_kg",
  "wheel_mass_kg",
  "brine_temp_c",
  "brine_salt_frac",
  "brine_ph",
  "store_temp_c",
  "store_humidity_frac",
  "milk_age_h",
  "fat_frac",
  "snf_frac",
  "protein_frac",
  "milk_mass_kg",
  "air_space_temp_c",
  "jacket_temp_c",
  "indicator_temp_c",
  "recorder_temp_c",
  "check_temp_c",
  "drug_test",
];

/**
 * Any reading that the step did not ask for.
 *
 * @param {{make: string, step?: string, onBack: () => void}} props
 */
export function OtherReading({ make, step, onBack }) {
  return html`<${Sheet} title=${t("more.reading")} onBack=${onBack}>
    <div class="rows">${COMMON.map(
      (
        name,
      ) => html`<${Row} key=${name} title=${t("quantity." + name)} side=${html`<${Instrument} quantity=${name} />`}
      onTap=${() => swap("make", make, "reading", step ?? "-", name)} />`,
    )}</div>
  </${Sheet}>`;
}
