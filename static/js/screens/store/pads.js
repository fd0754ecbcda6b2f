import { useState } from "preact/hooks";
import { html } from "../../parts/html.js";
import { Keypad } from "../../parts/keypad.js";
import { act, readField } from "../../parts/acts.js";
import { call } from "../../parts/source.js";
import {
  amount,
  asRead,
  decimalsTyped,
  inUnit,
  quantity,
  readNumber,
  typedValue,
  unitName,
  unitRead,
} from "../../format.js";
import { inside, t } from "../../messages/index.js";
import { Units } from "../sums/pads.js";
import { keepUnit, unitFor } from "../sums/units.js";

export const MASSES = ["kg", "lb"];
export const VOLUMES = ["L", "gal", "imp_gal"];

/** A kept mass as it is typed, without zeros that nobody weighed. */
export function typedMass(massKg) {
  return massKg === null ? "" : String(Number(asRead(massKg, "kg").value.toFixed(3)));
}

/** The mass of so much brine, as the core counts it. */
export function massOf({ typed, unit }, saltFrac, tempC) {
  return call("tanks", "mass_kg", [readNumber(typed), unit, saltFrac, tempC]);
}

const NOT_A_NUMBER = {
  value: null,
  problems: [{ field: "mass_kg", key: "not_a_number", limit: null }],
  ask: null,
};

async function readAmount(kind, told, saltFrac, tempC, lookTwice) {
  if (readNumber(told.typed) === null) return NOT_A_NUMBER;
  const value = await massOf(told, saltFrac, tempC);
  const all = await call("events", "check_data", [kind, { mass_kg: value }]);
  const problems = all.filter(
    (one) => one.field === "mass_kg" && one.key !== "missing",
  );
  return {
    value: problems.length ? null : value,
    problems,
    ask: !problems.length && lookTwice ? await lookTwice(value) : null,
  };
}

/**
 * Type an amount that an entry needs: by mass, or by volume where that can be.
 *
 * @param {object} props kind: of the entry; units: that may be typed; name: under
 *   which the unit is remembered; saltFrac, tempC: of what is measured by volume;
 *   begun: {typed, unit} before; lookTwice(kg): the core's doubt, or null;
 *   onSave(kg, {typed, unit})
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
  lookTwice,
  onSave,
  saveWord,
  onBack,
}) {
  const row = { name: "store_" + name, unit: "kg", units };
  const [unit, setUnit] = useState(
    begun?.unit ?? (last ? unitRead("kg") : unitFor("", row)),
  );
  const words = (problems, typed) =>
    problems
      .map((one) =>
        t("sum_problem." + one.key, {
          field: title,
          value: typedValue(typed, unit),
          limit: inUnit(one.limit, "kg"),
        }),
      )
      .join(" ");
  const save = async (value, typed) => {
    keepUnit(row, unit);
    return onSave(value, { typed, unit });
  };
  return html`<div class="sheet"><${Keypad} onBack=${onBack} title=${title} hint=${hint} unit=${unitName(unit)} decimals=${decimalsTyped(unit)}
    start=${begun?.typed ?? ""} last=${last} isBare=${!last} read=${(typed) => readAmount(kind, { typed, unit }, saltFrac, tempC, lookTwice)}
    problemWords=${words} askText=${(ask, typed) => t("sums.ask", { value: typedValue(typed, unit), side: inside(t("keypad." + ask.key)), limit: amount(ask.limit, "kg") })}
    save=${save} saveWord=${saveWord}><${Units} units=${units} unit=${unit} onUnit=${setUnit} /></${Keypad}></div>`;
}

/** What was typed, for the body of an entry. */
export function typedData({ typed, unit }) {
  return { typed, typed_unit: unit };
}

/** Type a whole count or a number of days of an entry. */
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
    read=${(typed) => readField(kind, field, typed, { whole: decimals === 0 })} save=${onSave} saveWord=${t("word.next")} /></div>`;
}

/** Type the strength of a brine in percent. */
export function StrengthPad({ start = "", onSave, onBack }) {
  const words = (problems, typed) =>
    problems
      .map((one) =>
        t("sum_problem." + one.key, {
          field: t("quantity.brine_salt_frac"),
          value: typedValue(typed, "%"),
          limit: quantity("brine_salt_frac", one.limit),
        }),
      )
      .join(" ");
  return html`<div class="sheet"><${Keypad} isBare onBack=${onBack} title=${t("store.salt")} unit="%" decimals=${2} start=${start}
    read=${(typed) => call("desk", "read_typed", ["brine_salt_frac", typed, "%"])} problemWords=${words}
    askText=${(ask, typed) => t("sums.ask", { value: typedValue(typed, "%"), side: inside(t("keypad." + ask.key)), limit: quantity("brine_salt_frac", ask.limit) })} save=${onSave} saveWord=${t("word.next")} /></div>`;
}

/** Record that salt or water went into a tank; water by volume too. */
export function AddPad({ tank, kind, title, onBack }) {
  const isWater = kind === "water_added_to_tank";
  const save = async (value, told) => {
    const said = t("said." + kind, {
      mass: MASSES.includes(told.unit)
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
