import { html } from "../../parts/html.js";
import { core } from "../../parts/source.js";
import { isLateComing, Late } from "../late.js";

/**
 * Whether Begin waits: until the core has said which cautions are owed, nobody begins
 * past them. A core that failed will not say, and the work goes on without.
 *
 * @param {View} shown
 * @param {StepCautions | undefined} row those of the step
 */
export function awaitsCautions(shown, row) {
  if (!shown.cautions) return core.value !== "failed";
  return row?.stands === "before" && isLateComing();
}

/**
 * The cautions that a person has still to see, beside what they belong to.
 *
 * @param {string} make
 * @param {StepCautions | undefined} row
 */
export function cautionBand(make, row) {
  if (!row) return null;
  return html`<${Late} screen="CautionBand" isPart missing="caution.missing" make=${make} row=${row} />`;
}
