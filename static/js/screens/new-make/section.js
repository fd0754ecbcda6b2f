import { useEffect, useRef, useState } from "preact/hooks";
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

/**
 * The equipment that a make is opened with: as in the newest make before it, and
 * what was altered since.
 *
 * @param {string} vat
 */
export function useEquipment(vat) {
  const [vats, setVats] = useState(/** @type {string[]} */ ([]));
  const [known, setKnown] = useState({
    before: /** @type {EquipmentBefore | null} */ (null),
    equipment: NONE,
    is_any: false,
  });
  const before = useRef(known.before);
  const edits = useRef(/** @type {Record<string, EquipmentSet | null>} */ ({}));
  const isReady = core.value === "ready"; // a core that starts does not hold the makes yet
  // Both may become others while the core answers.
  const settle = async () => {
    const asked = { before: before.current, edits: edits.current };
    const equipment = asked.before?.equipment ?? NONE;
    const answer = await ask.alterEquipment({ equipment, edits: asked.edits });
    if (asked.before === before.current && asked.edits === edits.current)
      setKnown({ before: asked.before, ...answer });
    else await settle();
  };
  useEffect(() => {
    if (isReady) ask.vats().then(setVats, () => {});
  }, [isReady]);
  useEffect(() => {
    if (!isReady) return undefined;
    let isCurrent = true;
    const look = async () => {
      const answer = await ask.equipmentBefore({ vat: vat.trim() });
      if (!isCurrent) return;
      before.current = answer;
      await settle();
    };
    const waits = setTimeout(() => look().catch(() => {}), TYPING_MS);
    return () => {
      isCurrent = false;
      clearTimeout(waits);
    };
  }, [vat, isReady]);
  const alter = async (
    /** @type {EquipmentRow} */ row,
    /** @type {EquipmentSet | null} */ set,
  ) => {
    edits.current = { ...edits.current, [row.name]: set };
    await settle();
  };
  return { ...known, vats, alter };
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
