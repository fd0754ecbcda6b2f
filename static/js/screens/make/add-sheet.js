import { useState } from "preact/hooks";
import { html } from "../../parts/html.js";
import { Keypad } from "../../parts/keypad.js";
import { Tap } from "../../parts/tap.js";
import { TextField } from "../../parts/text-field.js";
import { act } from "../../parts/acts.js";
import { ask } from "../../parts/source.js";
import {
  amount,
  amountBand,
  amountTyped,
  asRead,
  unitName,
  unitRead,
} from "../../format.js";
import { own, t } from "../../messages/index.js";

// A lot in use is asked for once and offered again, so that it is not typed
// with wet hands at every make.
/**
 * @param {string} ingredient
 * @returns {{lot: string, use_by: string}}
 */
function lastLot(ingredient) {
  return JSON.parse(
    localStorage.getItem("lot:" + ingredient) ?? '{"lot":"","use_by":""}',
  );
}

/**
 * @param {{
 *   lot: string, useBy: string, onDone: () => void,
 *   setLot: (lot: string) => void, setUseBy: (useBy: string) => void,
 * }} props
 */
function LotFields({ lot, useBy, setLot, setUseBy, onDone }) {
  return html`<div class="lot-form">
    <${TextField} label=${t("add.lot")} value=${lot} onInput=${setLot} longest=${40} />
    <${TextField} label=${t("add.use_by")} type="date" value=${useBy} onInput=${setUseBy} longest=${10} />
    <${Tap} class="second" onTap=${onDone}>${t("word.done")}</${Tap}>
  </div>`;
}

/**
 * Say how much of an ingredient went in, and from which lot.
 *
 * @param {{make: string, step: string, add: Add, onBack: () => void}} props
 */
export function AddSheet({ make, step, add, onBack }) {
  const known = lastLot(add.ingredient);
  const [lot, setLot] = useState(known.lot);
  const [useBy, setUseBy] = useState(known.use_by);
  const [isEditing, setEditing] = useState(false);
  const unit = add.planned?.unit ?? add.added[0]?.unit ?? "g";
  const [typedIn] = useState(unitRead(unit)); // the entry keeps the plan's own
  const planned = add.planned?.value ?? null;
  const shown = asRead(planned, unit).value;
  const decimals = planned === null || shown < 10 ? 2 : shown < 100 ? 1 : 0;
  const save = async (/** @type {number} */ value) => {
    /** @type {Record<string, any>} */
    const data = { ingredient: add.ingredient, amount: value, unit, step };
    if (planned !== null) data.planned = planned;
    if (lot.trim()) data.lot = lot.trim();
    if (useBy) data.use_by = useBy;
    const said = t("said.added", { what: own(add.title), amount: amount(value, unit) });
    const event = await act("ingredient_added", { make, data }, said);
    if (!event) return false;
    localStorage.setItem(
      "lot:" + add.ingredient,
      JSON.stringify({ lot: lot.trim(), use_by: useBy }),
    );
    onBack();
    return true;
  };
  const lotWords = lot
    ? t("add.lot_known", { lot, use_by: useBy || "–" })
    : t("add.no_lot");
  return html`<div class="sheet">
    ${
      isEditing
        ? html`<div class="scroll"><${LotFields} lot=${lot} useBy=${useBy} setLot=${setLot} setUseBy=${setUseBy} onDone=${() => setEditing(false)} /></div>`
        : html`<${Keypad} onBack=${onBack} title=${own(add.title)} unit=${unitName(typedIn)} decimals=${decimals}
          start=${amountTyped(planned, unit, decimals)}
          hint=${add.planned ? t("add.plan", { amount: amount(planned, unit), band: amountBand(add.planned.low, add.planned.high, unit) }) : t("add.no_plan")}
          last=${add.added.length ? { typed: amountTyped(add.added[0].amount, unit, decimals), text: amount(add.added[0].amount, unit) } : null}
          read=${(/** @type {string} */ typed) => ask.readField({ kind: "ingredient_added", field: "amount", typed, unit: typedIn, kept: unit })}
          save=${save} saveWord=${t("add.save")}>
          <${Tap} class="row" onTap=${() => setEditing(true)}><span class="row-main">${lotWords}</span><span class="row-side">${t("word.change")}</span></${Tap}>
        </${Keypad}>`
    }
  </div>`;
}
