import { useState } from "preact/hooks";
import { html } from "../../parts/html.js";
import { Keypad } from "../../parts/keypad.js";
import { StateMark } from "../../parts/state-mark.js";
import { Tap } from "../../parts/tap.js";
import { TextField } from "../../parts/text-field.js";
import { act } from "../../parts/acts.js";
import { ask } from "../../parts/source.js";
import {
  amount,
  amountTyped,
  amountTypedDecimals,
  measured,
  measuredBand,
  measuredTyped,
  unitName,
  unitRead,
} from "../../format.js";
import { own, t } from "../../messages/index.js";
import { go } from "../../router.js";

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
 * That the dose shown is for another bottle than the lot in hand, or for the recipe's
 * own; a tap enters what its label says.
 *
 * @param {{make: string, add: Add, lot: string}} props
 */
export function LabelRow({ make, add, lot }) {
  const { bottle, origin } = add.planned ?? {};
  if (!bottle) return null;
  const of = bottle.lot ?? "";
  const isOther = lot !== "" && of !== "" && lot !== of;
  if (!isOther && origin?.fell_back !== "missing") return null;
  return html`<${Tap} class="row" onTap=${() => go("make", make, "equipment")}>
    <span class="row-main"><${StateMark} state="check" /> ${isOther ? t("bottle.other_short", { label: of }) : t("bottle.no_label")}</span>
    <span class="row-side">${t("bottle.enter")}</span></${Tap}>`;
}

/**
 * The pad for one lot: the dose is that lot's, in what it is measured in.
 *
 * @param {{make: string, add: Add, lot: string, lotWords: string,
 *   onSave: (value: number, unit: string) => Promise<boolean>,
 *   onLot: () => void, onBack: () => void}} props
 */
function AmountPad({ make, add, lot, lotWords, onSave, onLot, onBack }) {
  const unit = add.planned?.unit ?? add.added[0]?.unit ?? "g";
  const [typedIn] = useState(unitRead(unit)); // the entry keeps the plan's own
  const planned = add.planned?.value ?? null;
  const decimals = amountTypedDecimals(planned, unit);
  return html`<${Keypad} onBack=${onBack} title=${own(add.title)} unit=${unitName(typedIn)} decimals=${decimals}
    start=${measuredTyped(planned, unit)}
    hint=${add.planned ? t("add.plan", { amount: measured(planned, unit), band: measuredBand(add.planned.low, add.planned.high, unit) }) : t("add.no_plan")}
    last=${add.added.length ? { typed: amountTyped(add.added[0].amount, unit, decimals), text: amount(add.added[0].amount, unit) } : null}
    read=${(/** @type {string} */ typed) => ask.readField({ kind: "ingredient_added", field: "amount", typed, unit: typedIn, kept: unit })}
    save=${(/** @type {number} */ value) => onSave(value, unit)} saveWord=${t("add.save")}>
    <${LabelRow} make=${make} add=${add} lot=${lot.trim()} />
    <${Tap} class="row" onTap=${onLot}><span class="row-main">${lotWords}</span><span class="row-side">${t("word.change")}</span></${Tap}>
  </${Keypad}>`;
}

/**
 * Say how much of an ingredient went in, and from which lot.
 *
 * @param {{make: string, step: string, add: Add, onBack: () => void}} props
 */
export function AddSheet({ make, step, add: known, onBack }) {
  const before = lastLot(known.ingredient);
  const [lot, setLot] = useState(known.planned?.bottle?.lot ?? before.lot);
  const [useBy, setUseBy] = useState(lot === before.lot ? before.use_by : "");
  const [isEditing, setEditing] = useState(false);
  const [ofLot, setOfLot] = useState(/** @type {?Add} */ (null));
  const add = ofLot ?? known;
  const save = async (/** @type {number} */ value, /** @type {string} */ unit) => {
    /** @type {Record<string, any>} */
    const data = { ingredient: add.ingredient, amount: value, unit, step };
    const planned = add.planned?.value ?? null;
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
  // The pad comes back with the dose of this lot; where the core cannot tell it, the
  // row of the label says whose dose stands there.
  const chosen = async () => {
    const asked = { make, step, ingredient: add.ingredient, lot };
    setOfLot(await ask.addFromLot(asked).catch(() => null));
    setEditing(false);
  };
  const lotWords = lot
    ? t("add.lot_known", { lot, use_by: useBy || "–" })
    : t("add.no_lot");
  return html`<div class="sheet">
    ${
      isEditing
        ? html`<div class="scroll"><${LotFields} lot=${lot} useBy=${useBy} setLot=${setLot} setUseBy=${setUseBy} onDone=${chosen} /></div>`
        : html`<${AmountPad} make=${make} add=${add} lot=${lot} lotWords=${lotWords} onSave=${save} onLot=${() => setEditing(true)} onBack=${onBack} />`
    }
  </div>`;
}
