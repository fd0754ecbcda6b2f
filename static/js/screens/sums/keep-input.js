import { html } from "../../parts/html.js";
import { Tap } from "../../parts/tap.js";
import { ask } from "../../parts/source.js";
import { may } from "../../parts/people-names.js";
import { inside, t } from "../../messages/index.js";
import { go } from "../../router.js";
import { setEquipment } from "../make/equipment-sheet.js";
import { rowLabel, useRows } from "../new-make/equipment-words.js";
import { givenWords } from "./words.js";

/**
 * @param {{name: string}} row
 * @param {SumGiven} given
 */
function has(row, given) {
  return t("equip.has", {
    what: inside(rowLabel(row.name)),
    value: givenWords(row, given),
  });
}

/**
 * What was typed for a sum of a step and is of the equipment, kept by one tap: the
 * next make in this vat begins with it, and no sum of this one asks again.
 *
 * @param {object} props
 * @param {string} props.make
 * @param {string | null} props.vat
 * @param {boolean} props.isOpen
 * @param {Record<string, SumGiven>} props.given
 * @param {(name: string) => void} props.onKept
 * @returns the keys for the foot of the sum, null where nothing can be kept
 */
export function useKeep({ make, vat, isOpen, given, onKept }) {
  const typed = (useRows() ?? []).filter(
    (row) => given[row.name] && row.kind !== "text",
  );
  if (!typed.length || !isOpen || !may("equipment_set")) return null;
  const plain = typed.filter((row) => !row.agreed);
  const keep = async () => {
    for (const row of plain) {
      const one = given[row.name];
      const { value, problems } = await ask.readEquipment({
        name: row.name,
        given: one,
      });
      /** @type {EquipmentSet} */
      const set = {
        value,
        typed: one.typed === undefined ? undefined : [one.typed, one.unit],
      };
      if (!problems.length && (await setEquipment(make, row, set))) onKept(row.name);
    }
  };
  const list = plain.map((row) => has(row, given[row.name])).join(", ");
  return html`${plain.length ? html`<${Tap} class="second tall" onTap=${keep}>${t(vat ? "equip.keep_vat" : "equip.keep", { list })}</${Tap}>` : null}
    ${typed
      .filter((row) => row.agreed)
      .map(
        (row) => html`<${Tap} key=${row.name} class="second"
      onTap=${() => go("make", make, "equipment", row.name)}>${t("equip.say_who", { what: rowLabel(row.name) })}</${Tap}>`,
      )}`;
}
