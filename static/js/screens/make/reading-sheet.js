import { useEffect, useState } from "preact/hooks";
import { html } from "../../parts/html.js";
import { Keypad } from "../../parts/keypad.js";
import { Choices, Sheet } from "../../parts/sheet.js";
import { Tap } from "../../parts/tap.js";
import { act } from "../../parts/acts.js";
import { readingText } from "../../parts/reading-text.js";
import { ask, core, nowMs } from "../../parts/source.js";
import {
  age,
  band,
  bare,
  change,
  formOf,
  quantity,
  typedFrom,
  typedText,
  unitName,
} from "../../format.js";
import { t } from "../../messages/index.js";

/** @import { Offered } from "../../parts/offer-keys.js" */

/**
 * The form that a pad keeps while it is open: figures half typed keep their unit.
 *
 * @param {string} name
 */
export function useForm(name) {
  return useState(() => formOf(name))[0];
}

/**
 * The reading before, which the core compares a new one with; undefined until told.
 *
 * @param {string} make
 * @param {string} quantity
 * @param {string} [size] of the wheel that is weighed or analysed
 * @param {Pad} [pad] that the step knows it by already
 * @returns {LastValue | null | undefined}
 */
export function useLast(make, quantity, size, pad) {
  const [last, setLast] = useState(
    /** @type {LastValue | null | undefined} */ (undefined),
  );
  // A core that starts knows no reading yet.
  const isReady = core.value === "ready" && !pad;
  useEffect(() => {
    if (!isReady) return undefined;
    let isCurrent = true;
    ask.lastReading({ make, quantity, size }).then(
      (value) => isCurrent && setLast(value),
      () => {},
    );
    return () => {
      isCurrent = false;
    };
  }, [make, quantity, size, isReady]);
  return pad ? pad.last : last;
}

/**
 * The pad of what a step reads, by the size of wheel where it is of one.
 *
 * @param {Step | null | undefined} step
 * @param {string} name
 * @param {string} [size]
 * @returns {Pad | undefined}
 */
export function padOf(step, name, size) {
  return step?.pads?.find(
    (one) => one.quantity === name && one.size === (size ?? null),
  );
}

/** @type {(name: string, pad: Pad | undefined) => Offered[]} */
const offersOf = (name, pad) =>
  (pad?.offers ?? []).map(({ value, why }) => ({
    typed: typedFrom(name, value),
    text: quantity(name, value),
    why,
    age: ageOf(pad?.last),
  }));

/** @param {LastValue | null | undefined} last */
const ageOf = (last) => (last ? age(nowMs() - last.at_ms) : "");

/**
 * @param {string} name
 * @param {LastValue | null | undefined} last
 */
export function askWords(name, last) {
  return (/** @type {Problem} */ ask, /** @type {string} */ typed) => {
    const values = {
      value: typedText(typed),
      last: last ? bare(name, last.value) : "",
    };
    if (ask.key === "jump") return t("keypad.ask_jump", values);
    if (ask.key === "far")
      return t("keypad.ask_far", { ...values, limit: quantity(name, ask.limit) });
    if (ask.key === "other_unit") {
      const [unit, other] = [formOf(name).unit, ask.limit].map(unitName);
      return t("keypad.ask_unit", { ...values, unit, other });
    }
    return t(last ? "keypad.ask_last" : "keypad.ask", {
      ...values,
      limit: quantity(name, ask.limit),
      side: t("keypad." + ask.key),
    });
  };
}

/**
 * @param {{
 *   name: string, onSave: (value: string, typed: string) => void, onBack: () => void,
 * }} props
 */
function ChoiceReading({ name, onSave, onBack }) {
  const [chosen, setChosen] = useState(/** @type {string | null} */ (null));
  const options = ["negative", "positive"].map((key) => ({
    key,
    title: t("choice." + key),
  }));
  return html`<${Sheet} title=${t("quantity." + name)} onBack=${onBack}
    foot=${html`<${Tap} class="primary" disabled=${!chosen} onTap=${() => chosen && onSave(chosen, chosen)}>${t("keypad.save")}</${Tap}>`}>
    <${Choices} label=${t("quantity." + name)} options=${options} chosen=${chosen} onChoose=${setChosen} />
  </${Sheet}>`;
}

// Before the core has said what was read last.
const WAITING = { text: "…" };
const CHOICES = ["drug_test", "phosphatase_test", "listeria_test", "salmonella_test"];

/**
 * Enter one reading of a quantity into the make.
 *
 * @param {{
 *   make: string, step?: string, name: string, hint?: string, place?: string,
 *   target?: Target, pad?: Pad, title?: string, atMs?: number | null, joins?: string | null, onBack: () => void,
 *   onSaved?: (event: Entry) => void, aside?: any, children?: any,
 * }} props pad: how the step knows it; aside: beside Save; atMs: when it was read, where not now; joins: the entry that is one act
 *   with it
 */
export function ReadingSheet({
  make,
  step,
  name,
  hint,
  place,
  target,
  pad,
  title = t("quantity." + name),
  aside,
  atMs,
  joins,
  onBack,
  onSaved = onBack,
  children,
}) {
  const form = useForm(name);
  const last = useLast(make, name, place, pad);
  const read = (/** @type {string} */ typed) =>
    ask.readReading({ make, quantity: name, typed, unit: form.typed, size: place });
  const save = async (
    /** @type {number | string} */ value,
    /** @type {string} */ typed,
  ) => {
    /** @type {Record<string, any>} */
    const data = { quantity: name, value, typed, typed_unit: form.typed };
    if (step) data.step = step;
    if (place) data.place = place; // the size of wheel that was weighed or analysed
    const said = t("said.reading", {
      what: t("quantity." + name),
      value: readingText(name, value),
    });
    const event = await act("reading_taken", { make, data, atMs, joins }, said);
    if (event) onSaved(event);
    return Boolean(event);
  };
  if (CHOICES.includes(name))
    return html`<${ChoiceReading} name=${name} onSave=${save} onBack=${onBack} />`;
  return html`<div class="sheet">
    <${Keypad} onBack=${onBack} title=${title} quantity=${name} unit=${unitName(form.unit)} decimals=${form.decimals}
      signed=${form.signed} hint=${hint} read=${read} save=${save}
      last=${last === undefined ? WAITING : last && { typed: typedFrom(name, last.value), text: quantity(name, last.value), age: ageOf(last) }}
      offers=${offersOf(name, pad)} aside=${aside}
      wanted=${target ? band(name, target.low, target.high) : ""}
      difference=${last ? (/** @type {number} */ value) => change(name, value, last.value) : null}
      askText=${askWords(name, last)}>${children}</${Keypad}>
  </div>`;
}
