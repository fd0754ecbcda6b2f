// What the creamery has, in words: the core's rows, and a make's values of them.

import { signal } from "@preact/signals";
import { useEffect } from "preact/hooks";
import { ask } from "../../parts/source.js";
import { sumValue, typedValue } from "../../format.js";
import { capital, has, inside, t } from "../../messages/index.js";
import { label, pickWords, restsValue } from "../sums/words.js";

/** @import { Signal } from "@preact/signals" */

/**
 * Every row that can be entered, see the core's sums.equipment.layout; null before it came.
 *
 * @type {Signal<EquipmentRow[] | null>}
 */
export const rows = signal(null);
/** @type {Promise<void> | null} */
let asking = null;

/** Ask the core for the rows, once. */
export function loadRows() {
  asking ??= ask
    .equipmentRows()
    .then((layout) => {
      rows.value = layout;
    })
    .catch(() => {
      asking = null;
    });
}

/** The rows, loaded when a screen first needs them. */
export function useRows() {
  useEffect(loadRows, []);
  return rows.value;
}

/**
 * What a row is called in a list, where the sum's own label says too little.
 *
 * @param {string} name
 */
export function rowLabel(name) {
  return has("equip." + name) ? t("equip." + name) : label(name);
}

/**
 * A value of one row: as it was typed, else in its own unit; "" without one.
 *
 * @param {{name: string} & Partial<EquipmentRow>} row
 * @param {any} value
 * @param {string[] | null} [typed]
 */
export function rowValue(row, value, typed) {
  if (value === undefined || value === null) return "";
  if (row?.kind === "choice" || has(`pick.${row?.name}.${value}`))
    return inside(pickWords(row.name, value));
  if (typed) return typedValue(typed[0], typed[1]);
  if (typeof value !== "number") return String(value);
  return row?.unit === "s"
    ? sumValue(value, "s")
    : restsValue({ name: row?.name, value, unit: row?.unit ?? "" }, row);
}

/**
 * One row and its value in a few words: "bore of the cylinder 80 mm".
 *
 * @param {EquipmentRow} row
 * @param {Equipment} equipment
 */
export function rowWords(row, equipment) {
  const value = rowValue(row, equipment[row.name], equipment.typed[row.name]);
  if (row.agreed && equipment.gap_agreed_with)
    return t("equip.gap", { value, name: equipment.gap_agreed_with });
  return t("equip.has", { what: inside(rowLabel(row.name)), value });
}

// What a maker looks for first when the line has room for three.
const FIRST = ["gap_max_s", "bore_m", "heating", "strength_imcu_per_ml", "length_m"];
const SHOWN = 3;

/**
 * What is known, in one line; "" when nothing is.
 *
 * @param {EquipmentRow[] | null} all
 * @param {Equipment} equipment
 */
export function summary(all, equipment) {
  const rank = (/** @type {EquipmentRow} */ row) =>
    FIRST.includes(row.name) ? FIRST.indexOf(row.name) : FIRST.length;
  const known = (all ?? [])
    .filter((row) => equipment[row.name] !== undefined)
    .sort((a, b) => rank(a) - rank(b));
  const texts = known.slice(0, SHOWN).map((row) => rowWords(row, equipment));
  if (known.length > SHOWN) texts.push(t("equip.more", { n: known.length - SHOWN }));
  return capital(texts.join(", "));
}
