import { html } from "../../parts/html.js";
import { StateMark } from "../../parts/state-mark.js";
import { Tap } from "../../parts/tap.js";
import { WhoseLine } from "../../parts/whose.js";
import { act } from "../../parts/acts.js";
import { signal } from "@preact/signals";
import { own, t } from "../../messages/index.js";
import { begin } from "./primary.js";

/** @import { Signal } from "@preact/signals" */

// Cautions come before the step they belong to, once for each make and step.
// The record says who read them; this phone remembers so as not to ask again.
/** @type {Signal<string[]>} */
const read = signal(JSON.parse(localStorage.getItem("cautions") ?? "[]"));
const KEPT = 200;

/**
 * @param {string} make
 * @param {string} step
 */
function nameFor(make, step) {
  return `${make}:${step}`;
}

/**
 * Tell whether this step's cautions must still be read on this phone.
 *
 * @param {string} make
 * @param {Step} step
 */
export function hasUnreadCautions(make, step) {
  const isOpen = step.status === "ready" || step.status === "running";
  return (
    isOpen && step.cautions.length > 0 && !read.value.includes(nameFor(make, step.key))
  );
}

/** @param {{make: string, step: Step}} props */
export function Cautions({ make, step }) {
  const accept = async () => {
    const event = await act("alert_acknowledged", {
      make,
      data: { alert: "caution:" + step.key },
    });
    if (!event) return false;
    read.value = [...read.value, nameFor(make, step.key)].slice(-KEPT);
    localStorage.setItem("cautions", JSON.stringify(read.value));
    return true;
  };
  // Who opened the step to begin it need not tap twice for that.
  const canBegin = step.status === "ready" && step.button?.act === "begin";
  const acceptAndBegin = async () => {
    if (await accept()) await begin(make, step);
  };
  return html`<div class="sheet">
    <div class="scroll">
      <p class="quiet">${t("caution.before", { step: own(step.title) })}<${WhoseLine} /></p>
      <h1>${t("caution.title")}</h1>
      <ul class="cautions">${step.cautions.map(
        (key) => html`<li key=${key}>
        <${StateMark} state="check" word=${t("caution." + key)} />
        <p>${t("caution_do." + key)}</p>
      </li>`,
      )}</ul>
      ${canBegin ? html`<${Tap} class="second wide" onTap=${accept}>${t("caution.read")}</${Tap}>` : null}
    </div>
    <div class="foot">${
      canBegin
        ? html`<${Tap} class="primary" onTap=${acceptAndBegin}><span class="primary-does">${t("caution.begin")}</span><${WhoseLine} /></${Tap}>`
        : html`<${Tap} class="primary" onTap=${accept}>${t("caution.read")}</${Tap}>`
    }</div>
  </div>`;
}
