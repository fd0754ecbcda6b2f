import { useEffect, useState } from "preact/hooks";
import { html } from "../../parts/html.js";
import { Row } from "../../parts/sheet.js";
import { Tap } from "../../parts/tap.js";
import { ask, core } from "../../parts/source.js";
import { day } from "../../format.js";
import { t } from "../../messages/index.js";
import { rowLabel, summary, useRows } from "./equipment-words.js";

const TYPING_MS = 300; // the vat is asked about when its name stands
/** @type {Equipment} */
const NONE = { typed: {} };

// What was altered here stands over what an earlier make had.
/**
 * @param {Equipment} before
 * @param {Record<string, EquipmentSet | null>} edits
 */
function together(before, edits) {
  /** @type {Equipment} */
  const equipment = { ...before, typed: { ...before.typed } };
  for (const [name, set] of Object.entries(edits)) {
    delete equipment[name];
    delete equipment.typed[name];
    if (name === "gap_max_s") delete equipment.gap_agreed_with;
    if (!set) continue;
    equipment[name] = set.value;
    if (set.typed) equipment.typed[name] = set.typed;
    if (set.agreed_with) equipment.gap_agreed_with = set.agreed_with;
  }
  return equipment;
}

/**
 * The equipment that a make is opened with: as in the newest make before it, and
 * what was altered since.
 *
 * @param {string} vat
 */
export function useEquipment(vat) {
  const [before, setBefore] = useState(/** @type {EquipmentBefore | null} */ (null));
  const [vats, setVats] = useState(/** @type {string[]} */ ([]));
  const [edits, setEdits] = useState(
    /** @type {Record<string, EquipmentSet | null>} */ ({}),
  );
  const isReady = core.value === "ready"; // a core that starts does not hold the makes yet
  useEffect(() => {
    if (isReady) ask.vats().then(setVats, () => {});
  }, [isReady]);
  useEffect(() => {
    if (!isReady) return undefined;
    let isCurrent = true;
    const look = () =>
      ask.equipmentBefore({ vat: vat.trim() }).then(
        (found) => isCurrent && setBefore(found),
        () => {},
      );
    const waits = setTimeout(look, TYPING_MS);
    return () => {
      isCurrent = false;
      clearTimeout(waits);
    };
  }, [vat, isReady]);
  const alter = (
    /** @type {EquipmentRow} */ row,
    /** @type {EquipmentSet | null} */ set,
  ) => {
    setEdits({ ...edits, [row.name]: set });
  };
  return { equipment: together(before?.equipment ?? NONE, edits), before, vats, alter };
}

/**
 * The vats of earlier makes as keys below the field: one name, one spelling.
 *
 * @param {{names: string[], vat: string, onVat: (name: string) => void}} props
 */
export function Vats({ names, vat, onVat }) {
  const others = names.slice(0, 4);
  if (!others.length) return null;
  return html`<div class="units" role="group" aria-label=${t("equip.vats")}>${others.map(
    (name) => html`<${Tap}
    key=${name} class=${"tab unit-tab " + (name === vat ? "is-chosen" : "")} pressed=${name === vat} onTap=${() => onVat(name)}>${name}</${Tap}>`,
  )}</div>`;
}

/** @param {EquipmentBefore | null} before */
function fromWords(before) {
  if (!before) return t("equip.none_detail");
  return t(before.is_same_vat ? "equip.as_in" : "equip.as_elsewhere", {
    name: before.name,
    day: day(before.opened_ms),
  });
}

/**
 * One folded line of what is known; a tap opens the whole list.
 *
 * @param {{
 *   equipment: Equipment, before: EquipmentBefore | null, onOpen: () => void,
 * }} props
 */
export function EquipmentSection({ equipment, before, onOpen }) {
  const all = useRows();
  const left = before?.left_out ?? [];
  return html`<section class="block"><h2>${t("equip.title")}</h2>
    <div class="rows"><${Row} title=${summary(all, equipment) || t("equip.none")} detail=${fromWords(before)} side=${t("word.change")} onTap=${onOpen} /></div>
    ${left.map(
      (one) =>
        html`<p class="quiet" key=${one.field}>${t("equip.left_out", {
          why: t("problem." + one.key, {
            field: rowLabel(one.field),
            limit: one.limit ?? "",
          }),
        })}</p>`,
    )}
  </section>`;
}
