import { useEffect, useState } from "preact/hooks";
import { html } from "../../parts/html.js";
import { Keypad } from "../../parts/keypad.js";
import { Choices, Sheet } from "../../parts/sheet.js";
import { Tap } from "../../parts/tap.js";
import { act } from "../../parts/acts.js";
import { readingText } from "../../parts/reading-text.js";
import { ask, core } from "../../parts/source.js";
import {
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
 * @returns {LastValue | null | undefined}
 */
export function useLast(make, quantity, size) {
  const [last, setLast] = useState(
    /** @type {LastValue | null | undefined} */ (undefined),
  );
  const isReady = core.value === "ready"; // a core that starts knows no reading yet
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
  return last;
}

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
const CHOICES = ["drug_test", "phosphatase_test"];

/**
 * Enter one reading of a quantity into the make.
 *
 * @param {{
 *   make: string, step?: string, name: string, hint?: string, place?: string,
 *   target?: Target, onBack: () => void,
 * }} props
 */
export function ReadingSheet({ make, step, name, hint, place, target, onBack }) {
  const form = useForm(name);
  const last = useLast(make, name, place);
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
    const event = await act("reading_taken", { make, data }, said);
    if (event) onBack();
    return Boolean(event);
  };
  if (CHOICES.includes(name))
    return html`<${ChoiceReading} name=${name} onSave=${save} onBack=${onBack} />`;
  return html`<div class="sheet">
    <${Keypad} onBack=${onBack} title=${t("quantity." + name)} quantity=${name} unit=${unitName(form.unit)} decimals=${form.decimals}
      signed=${form.signed} hint=${hint} read=${read} save=${save}
      last=${last === undefined ? WAITING : last && { typed: typedFrom(name, last.value), text: quantity(name, last.value) }}
      wanted=${target ? band(name, target.low, target.high) : ""}
      difference=${last ? (/** @type {number} */ value) => change(name, value, last.value) : null}
      askText=${askWords(name, last)} />
  </div>`;
}
