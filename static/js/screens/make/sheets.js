import { html } from "../../parts/html.js";
import { may } from "../../parts/people-names.js";
import { swap } from "../../router.js";
import { AddSheet } from "./add-sheet.js";
import { cautionBand } from "./caution-band.js";
import { ReadingSheet } from "./reading-sheet.js";
import { RoundSheet, sizesOf } from "./round-sheet.js";
import { TimerSheet } from "./timer-sheet.js";
import { Late } from "../late.js";

/** @typedef {{make: string, shown: View, rest: string[], onBack: () => void}} Asked */

// A reading, a dose and a timer must open on a phone that has the page and no more:
// they are what wet hands enter first. All other sheets come with the later screens.

/** @param {Asked} asked */
function ofMake({ make, shown, rest: [name, key], onBack }) {
  if (name === "steps")
    return html`<${Late} screen="StepsScreen" make=${make} view=${shown} onBack=${onBack} />`;
  if (name === "record")
    return html`<${Late} screen="RecordScreen" make=${make} view=${shown} entry=${key} onBack=${onBack} />`;
  if (name === "curve")
    return html`<${Late} screen="CurveScreen" make=${make} view=${shown} onBack=${onBack} />`;
  if (name === "batch")
    return html`<${Late} screen="BatchSheet" make=${make} view=${shown} onBack=${onBack} />`;
  if (name === "equipment")
    return html`<${Late} screen="EquipmentSheet" make=${make} shown=${shown} start=${key} onBack=${onBack} />`;
  if (name === "lab")
    return html`<${Late} screen="LabSheet" make=${make} shown=${shown} onBack=${onBack} />`;
  if (name === "matters")
    return html`<${Late} screen="MattersSheet" make=${make} shown=${shown} about=${key} canAct=${may("work")} onBack=${onBack} />`;
  if (name === "milk")
    return html`<${Late} screen="MilkSheet" make=${make} shown=${shown} onBack=${onBack} />`;
  return null;
}

/** @param {Asked & {step: Step | null}} asked */
function entry({ make, shown, rest: [name, key, arg, size, n], step, onBack }) {
  if (name === "note")
    return html`<${Late} screen="NotePad" make=${make} step=${key} onBack=${onBack} />`;
  if (name === "other")
    return html`<${Late} screen="OtherReading" make=${make} step=${key} onBack=${onBack} />`;
  if (name === "timer")
    return html`<${TimerSheet} make=${make} step=${key} onBack=${onBack} />`;
  if (name === "reading" && arg === "wheel_mass_kg")
    return html`<${Late} screen="WeighSheet" make=${make} shown=${shown} step=${step} size=${size} n=${n} onBack=${onBack} />`;
  if (name === "reading") return readingFor(make, shown, step, arg, size, onBack);
  return null;
}

/**
 * @param {string} make
 * @param {View} shown
 * @param {Step | null} step
 * @param {string} name
 * @param {string | undefined} size
 * @param {() => void} onBack
 */
function readingFor(make, shown, step, name, size, onBack) {
  const cautions = shown.cautions?.find((row) => row.quantity === name);
  const band = cautionBand(make, cautions);
  const isHold = step?.hold?.rounds.some((round) => round.quantity === name);
  const sizes = isHold ? [] : sizesOf(step, name);
  const chosen = sizes.find((one) => one.size === size)?.size;
  if (step && sizes.length && !chosen)
    return html`<${Late} screen="WhichSize" make=${make} step=${step} name=${name} onBack=${onBack} />`;
  if (step)
    return html`<${RoundSheet} make=${make} step=${step} name=${name} size=${chosen} at=${isHold ? size : undefined} onBack=${onBack}>${band}</${RoundSheet}>`;
  return html`<${ReadingSheet} make=${make} name=${name} onBack=${onBack}>${band}</${ReadingSheet}>`;
}

/** @param {Asked & {step: Step}} asked */
function ofStep({ make, shown, rest, step, onBack }) {
  const [name, , arg] = rest;
  const add = step.adds.find((dose) => dose.ingredient === arg);
  if (name === "add" && add)
    return html`<${AddSheet} make=${make} step=${step.key} add=${add} onBack=${onBack} />`;
  if (name === "judge" && step.judge)
    return html`<${Late} screen="JudgeSheet" make=${make} step=${step} onBack=${onBack} />`;
  if (name === "mould")
    return html`<${Late} screen="MouldSheet" make=${make} step=${step} size=${arg} onBack=${onBack} />`;
  if (name === "sum")
    return html`<${Late} screen="StepSumPage" make=${make} shown=${shown} step=${step} rest=${rest.slice(2)} onBack=${onBack} />`;
  if (name === "begin")
    return html`<${Late} screen="BeginWhy" make=${make} view=${shown} step=${step} onBack=${onBack} />`;
  if (name === "end")
    return html`<${Late} screen="EndWhy" make=${make} step=${step} onBack=${onBack} />`;
  if (name === "skip")
    return html`<${Late} screen="SkipWhy" make=${make} step=${step} onBack=${onBack} />`;
  return null;
}

/**
 * The sheet over a make that an address names, or null.
 *
 * @param {string} make
 * @param {View} shown
 * @param {string[]} rest the address after the make
 * @param {Step | null} step the step that it is about
 */
export function sheetFor(make, shown, rest, step) {
  const asked = { make, shown, rest, onBack: () => swap("make", make) };
  return (
    ofMake(asked) ?? entry({ ...asked, step }) ?? (step && ofStep({ ...asked, step }))
  );
}
