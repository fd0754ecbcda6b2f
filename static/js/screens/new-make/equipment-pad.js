import { useState } from "preact/hooks";
import { html } from "../../parts/html.js";
import { Sheet } from "../../parts/sheet.js";
import { Tap } from "../../parts/tap.js";
import { TextField } from "../../parts/text-field.js";
import { ask } from "../../parts/source.js";
import { span } from "../../format.js";
import { t } from "../../messages/index.js";
import { ChoicePad, NumberPad } from "../sums/pads.js";
import { rowLabel, rowValue } from "./equipment-words.js";

/**
 * @param {{
 *   title: string, lead?: string, start: string, longest: number,
 *   onDone: (text: string) => void, onBack: () => void,
 * }} props
 */
function WordsSheet({ title, lead, start, longest, onDone, onBack }) {
  const [text, setText] = useState(start);
  return html`<${Sheet} title=${title} onBack=${onBack}
    foot=${html`<${Tap} class="primary" disabled=${text.trim() === ""} onTap=${() => onDone(text.trim())}>${t("word.done")}</${Tap}>`}>
    ${lead ? html`<p class="lead">${lead}</p>` : null}
    <${TextField} label=${title} value=${text} onInput=${setText} longest=${longest} />
  </${Sheet}>`;
}

/**
 * Enter one row of the equipment: a number in a unit of choice, a word of several,
 * or words; and for an agreement with whom it was agreed.
 *
 * @param {{
 *   row: EquipmentRow, equipment: Equipment, mayTakeOut?: boolean, onBack: () => void,
 *   onSet: (set: EquipmentSet | null) => any,
 * }} props onSet(null) takes it out, where mayTakeOut
 */
export function EquipmentPad({ row, equipment, mayTakeOut = false, onSet, onBack }) {
  // What was typed, until it is said with whom.
  const [agreeing, setAgreeing] = useState(/** @type {EquipmentSet | null} */ (null));
  const known = equipment[row.name];
  const typed = equipment.typed[row.name];
  const give = async (/** @type {any} */ given) => {
    if (given === null) return onSet(null);
    const { value } = await ask.readEquipment({ name: row.name, given });
    /** @type {EquipmentSet} */
    const set =
      given.typed === undefined
        ? { value }
        : { value, typed: [given.typed, given.unit] };
    return row.agreed ? setAgreeing(set) : onSet(set);
  };
  if (agreeing) {
    return html`<${WordsSheet} title=${t("equip.agreed_with")} lead=${t("equip.agreed_lead", { value: span(agreeing.value) })}
      start=${equipment.gap_agreed_with ?? ""} longest=${80} onDone=${(/** @type {string} */ name) => onSet({ ...agreeing, agreed_with: name })} onBack=${() => setAgreeing(null)} />`;
  }
  if (row.kind === "text") {
    return html`<${WordsSheet} title=${rowLabel(row.name)} start=${known ?? ""} longest=${row.longest}
      onDone=${(/** @type {string} */ value) => give({ value })} onBack=${onBack} />`;
  }
  const mayGive = mayTakeOut && known !== undefined;
  const sum = { key: row.sum, inputs: [row] };
  if (row.kind === "choice") {
    return html`<${ChoicePad} sum=${sum} input=${row} chosen=${known} given=${mayGive ? { value: known } : null} wayBack=${t("sums.take_out")} onGive=${give} onBack=${onBack} />`;
  }
  const given = typed ? { typed: typed[0], unit: typed[1] } : undefined;
  return html`<${NumberPad} sum=${sum} input=${row} scope="equipment" given=${mayGive ? (given ?? {}) : undefined} wayBack=${t("sums.take_out")}
    onGive=${give} onBack=${onBack} />`;
}

/**
 * What was entered, for the line that says it was kept.
 *
 * @param {EquipmentRow} row
 * @param {EquipmentSet} set
 */
export function setWords(row, set) {
  return t("equip.has", {
    what: rowLabel(row.name),
    value: rowValue(row, set.value, set.typed),
  });
}
