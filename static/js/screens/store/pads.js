import { useState } from "preact/hooks";
import { html } from "../../parts/html.js";
import { Keypad } from "../../parts/keypad.js";
import { ask } from "../../parts/source.js";
import {
  amount,
  asRead,
  decimalsTyped,
  inUnit,
  quantity,
  typedValue,
  unitName,
  unitRead,
} from "../../format.js";
import { inside, t } from "../../messages/index.js";
import { Units } from "../sums/pads.js";
import { keepUnit, unitFor } from "../sums/units.js";
import { CHOICES } from "../../units/table.js";

export const MASSES = CHOICES.mass_unit;
export const VOLUMES = CHOICES.volume_unit;

/** @typedef {{typed: string, unit: string}} Typed */
/** @typedef {Pick<Problem, "key" | "limit">} Doubt */

/**
 * A kept mass as it is typed, without zeros that nobody weighed.
 *
 * @param {number | null} massKg
 */
export function typedMass(massKg) {
  return massKg === null ? "" : String(Number(asRead(massKg, "kg").value.toFixed(3)));
}

/**
 * Type an amount that an entry needs: by mass, or by volume where that can be.
 *
 * @param {object} props
 * @param {string} props.kind of the entry
 * @param {string} props.title
 * @param {string} props.name under which the unit is remembered
 * @param {string[]} [props.units] that may be typed
 * @param {number | null} [props.saltFrac] of what is measured by volume
 * @param {number | null} [props.tempC] of what is measured by volume
 * @param {Typed | null} [props.begun] what was typed before
 * @param {{typed: string, text: string} | null} [props.last] the value before
 * @param {string} [props.hint]
 * @param {number | null} [props.beforeKg] what the same wheels weighed before
 * @param {(kg: number, told: Typed) => Promise<boolean>} props.onSave
 * @param {string} [props.saveWord]
 * @param {() => void} props.onBack
 */
export function AmountPad({
  kind,
  title,
  name,
  units = MASSES,
  saltFrac = 0,
  tempC = null,
  begun,
  last,
  hint,
  beforeKg,
  onSave,
  saveWord,
  onBack,
}) {
  const input = { name: "store_" + name, unit: "kg", units };
  const [unit, setUnit] = useState(
    begun?.unit ?? (last ? unitRead("kg") : unitFor(input)),
  );
  const words = (/** @type {Problem[]} */ problems, /** @type {string} */ typed) =>
    problems
      .map((problem) =>
        t("refused." + problem.key, {
          field: title,
          value: typedValue(typed, unit),
          limit: inUnit(problem.limit, "kg"),
        }),
      )
      .join(" ");
  const save = async (/** @type {number} */ value, /** @type {string} */ typed) => {
    keepUnit(input, unit);
    return onSave(value, { typed, unit });
  };
  return html`<div class="sheet"><${Keypad} onBack=${onBack} title=${title} hint=${hint} unit=${unitName(unit)} decimals=${decimalsTyped(unit)}
    start=${begun?.typed ?? ""} last=${last} isBare=${!last} read=${(/** @type {string} */ typed) => ask.readMass({ kind, typed, unit, saltFrac, tempC, beforeKg })}
    problemWords=${words} askText=${(/** @type {Doubt} */ ask, /** @type {string} */ typed) => t("sums.ask", { value: typedValue(typed, unit), side: inside(t("keypad." + ask.key)), limit: amount(ask.limit, "kg") })}
    save=${save} saveWord=${saveWord}><${Units} units=${units} unit=${unit} onUnit=${setUnit} /></${Keypad}></div>`;
}

/**
 * What was typed, for the body of an entry.
 *
 * @param {Typed} told
 */
export function typedData({ typed, unit }) {
  return { typed, typed_unit: unit };
}

/**
 * Type a whole count or a number of days of an entry.
 *
 * @param {object} props
 * @param {string} props.kind of the entry
 * @param {string} props.field of its body
 * @param {string} props.title
 * @param {string} props.unit
 * @param {number} [props.decimals]
 * @param {string} [props.start]
 * @param {(value: number) => Promise<boolean>} props.onSave
 * @param {() => void} props.onBack
 */
export function CountPad({
  kind,
  field,
  title,
  unit,
  decimals = 0,
  start = "",
  onSave,
  onBack,
}) {
  return html`<div class="sheet"><${Keypad} isBare onBack=${onBack} title=${title} unit=${unit} decimals=${decimals} start=${start}
    read=${(/** @type {string} */ typed) => ask.readField({ kind, field, typed })} save=${onSave} saveWord=${t("word.next")} /></div>`;
}

/**
 * Type the strength of a brine in percent.
 *
 * @param {object} props
 * @param {string} [props.start]
 * @param {(saltFrac: number) => Promise<boolean>} props.onSave
 * @param {() => void} props.onBack
 */
export function StrengthPad({ start = "", onSave, onBack }) {
  const words = (/** @type {Problem[]} */ problems, /** @type {string} */ typed) =>
    problems
      .map((problem) =>
        t("refused." + problem.key, {
          field: t("quantity.brine_salt_frac"),
          value: typedValue(typed, "%"),
          limit: quantity("brine_salt_frac", problem.limit),
        }),
      )
      .join(" ");
  return html`<div class="sheet"><${Keypad} isBare onBack=${onBack} title=${t("store.salt")} unit="%" decimals=${2} start=${start}
    read=${(/** @type {string} */ typed) => ask.readTyped({ quantity: "brine_salt_frac", typed, unit: "%" })} problemWords=${words}
    askText=${(/** @type {Problem} */ ask, /** @type {string} */ typed) => t("sums.ask", { value: typedValue(typed, "%"), side: inside(t("keypad." + ask.key)), limit: quantity("brine_salt_frac", ask.limit) })} save=${onSave} saveWord=${t("word.next")} /></div>`;
}
