import { act } from "../../parts/acts.js";
import { html } from "../../parts/html.js";
import { amount, typedValue } from "../../format.js";
import { t } from "../../messages/index.js";
import { UNITS } from "../../units/table.js";
import { AmountPad, MASSES, VOLUMES, typedData } from "./pads.js";

/** @import { Typed } from "./pads.js" */

/**
 * Record that salt or water went into a tank; water by volume too.
 *
 * @param {object} props
 * @param {string} props.tank
 * @param {"salt_added" | "water_added_to_tank"} props.kind
 * @param {string} props.title
 * @param {() => void} props.onBack
 */
export function AddPad({ tank, kind, title, onBack }) {
  const isWater = kind === "water_added_to_tank";
  const save = async (/** @type {number} */ value, /** @type {Typed} */ told) => {
    const said = t("said." + kind, {
      mass:
        UNITS[told.unit].dimension === "mass"
          ? amount(value, "kg")
          : typedValue(told.typed, told.unit),
    });
    const event = await act(
      kind,
      { make: tank, data: { mass_kg: value, ...typedData(told) } },
      said,
    );
    if (event) onBack();
    return Boolean(event);
  };
  return html`<${AmountPad} kind=${kind} name=${kind} title=${title} units=${isWater ? [...MASSES, ...VOLUMES] : MASSES} onSave=${save} onBack=${onBack} />`;
}
