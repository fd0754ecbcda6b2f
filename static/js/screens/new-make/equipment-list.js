import { useEffect, useRef, useState } from "preact/hooks";
import { html } from "../../parts/html.js";
import { Row, Sheet } from "../../parts/sheet.js";
import { t } from "../../messages/index.js";
import { EquipmentPad } from "./equipment-pad.js";
import { rowLabel, rowValue, useRows } from "./equipment-words.js";

/**
 * @param {EquipmentRow} row
 * @param {Equipment} equipment
 */
function isShown({ name, beside }, equipment) {
  if (!beside || equipment[name] !== undefined) return true;
  const word = equipment[beside.name];
  return word === undefined ? beside.usual : beside.words.includes(word);
}

/**
 * What the creamery has, by group; a row opens its pad.
 *
 * @param {{
 *   equipment: Equipment, lead: string, start?: string | null, canSet?: boolean,
 *   mayTakeOut?: boolean, onBack: () => void,
 *   onSet: (row: EquipmentRow, set: EquipmentSet | null) => any,
 * }} props start: row to open with; onSet: see EquipmentPad; false keeps the pad
 */
export function EquipmentList({
  equipment,
  lead,
  start = null,
  canSet = true,
  mayTakeOut,
  onSet,
  onBack,
}) {
  const all = useRows();
  const [name, setName] = useState(start);
  // The row tapped last stands in sight when one comes back.
  const last = useRef(/** @type {string | null} */ (null));
  const list = useRef(/** @type {HTMLElement | null} */ (null));
  useEffect(() => {
    if (!name && last.current)
      list.current
        ?.querySelector(`[data-row="${last.current}"]`)
        ?.scrollIntoView({ block: "center" });
  }, [name]);
  if (!all)
    return html`<${Sheet} title=${t("equip.title")} onBack=${onBack}><p class="lead" role="status">${t("sums.loading")}</p></${Sheet}>`;
  const open = all.find((row) => row.name === name);
  if (open) {
    const close = () => {
      last.current = name;
      setName(null);
    };
    return html`<${EquipmentPad} key=${name} row=${open} equipment=${equipment} mayTakeOut=${mayTakeOut} onBack=${close}
      onSet=${async (/** @type {EquipmentSet | null} */ set) => {
        if ((await onSet(open, set)) !== false) close();
      }} />`;
  }
  const groups = [...new Set(all.map((row) => row.group))];
  return html`<${Sheet} title=${t("equip.title")} onBack=${onBack}><div ref=${list}>
    <p class="quiet">${lead}</p>
    ${groups.map(
      (
        group,
      ) => html`<section class="block" key=${group}><h2>${t("equip_group." + group)}</h2>
      <div class="rows two">${all
        .filter((row) => row.group === group && isShown(row, equipment))
        .map(
          (row) => html`<${Row}
        key=${row.name} title=${html`<span data-row=${row.name}>${rowLabel(row.name)}</span>`} disabled=${!canSet}
        detail=${row.agreed && equipment.gap_agreed_with ? t("equip.agreed", { name: equipment.gap_agreed_with }) : null}
        side=${rowValue(row, equipment[row.name], equipment.typed[row.name]) || t("equip.open")} onTap=${() => setName(row.name)} />`,
        )}</div></section>`,
    )}
  </div></${Sheet}>`;
}
