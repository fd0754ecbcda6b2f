import { useEffect, useState } from "preact/hooks";
import { html } from "../../parts/html.js";
import { act } from "../../parts/acts.js";
import { may } from "../../parts/people-names.js";
import { ask, core } from "../../parts/source.js";
import { t } from "../../messages/index.js";
import { EquipmentList } from "../new-make/equipment-list.js";
import { setWords } from "../new-make/equipment-pad.js";

/**
 * Keep one thing that the creamery has, from now on in this make.
 *
 * @param {string} make
 * @param {EquipmentRow} row
 * @param {EquipmentSet} set
 */
export async function setEquipment(make, row, set) {
  /** @type {Record<string, any>} */
  const data = { key: row.name, value: set.value };
  if (set.typed) [data.typed, data.typed_unit] = set.typed;
  if (set.agreed_with) data.agreed_with = set.agreed_with;
  const event = await act(
    "equipment_set",
    { make, data },
    t("equip.saved", { what: setWords(row, set) }),
  );
  return Boolean(event);
}

/**
 * What this make has, to look at and to add to.
 *
 * @param {{make: string, shown: View, start?: string, onBack: () => void}} props
 */
export function EquipmentSheet({ make, shown, start, onBack }) {
  const [equipment, setKnown] = useState(/** @type {Equipment} */ ({ typed: {} }));
  const isReady = core.value === "ready";
  useEffect(() => {
    if (!isReady) return undefined;
    let isCurrent = true;
    ask.equipmentOf({ make }).then(
      (found) => isCurrent && setKnown(found),
      () => {},
    );
    return () => {
      isCurrent = false;
    };
  }, [make, shown.log, isReady]);
  const keep = (/** @type {EquipmentRow} */ row, /** @type {EquipmentSet} */ set) =>
    setEquipment(make, row, set);
  const canSet = may("equipment_set") && shown.make.is_open;
  return html`<${EquipmentList} equipment=${equipment} lead=${t("equip.lead_make")} start=${canSet ? start : null} canSet=${canSet}
    onSet=${keep} onBack=${onBack} />`;
}
