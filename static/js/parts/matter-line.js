import { html } from "./html.js";
import { StateMark } from "./state-mark.js";
import { Tap } from "./tap.js";
import { own, t } from "../messages/index.js";
import { go } from "../router.js";

/**
 * The matters that are told: what only waits is told to who would go past it.
 *
 * @param {Matter[] | undefined} matters
 */
export function toldOf(matters) {
  return (matters ?? []).filter((matter) => matter.level !== "wait");
}

/**
 * Those that still ask for somebody.
 *
 * @param {Matter[] | undefined} matters
 */
export function openOf(matters) {
  return toldOf(matters).filter((matter) => !matter.decided);
}

/** @param {Pick<Matter, "key">} matter */
export function matterText(matter) {
  return t("matter." + matter.key);
}

/**
 * What to do: the recipe's own words, else those of the house.
 *
 * @param {Matter} matter
 */
export function matterDo(matter) {
  return matter.do ? own(matter.do) : t("matter_do." + matter.key);
}

/**
 * One matter: what stands, what to do, and the way to who decides.
 *
 * @param {{matter: Matter, make: string, isShort?: boolean}} props isShort where the
 *   large button below leads to the rest
 */
export function MatterLine({ matter, make, isShort = false }) {
  const says = html`<p class="alert-says"><${StateMark} state=${matter.level} /> ${matterText(matter)}</p>`;
  const boxed = `alert alert-${matter.level} matter`;
  if (isShort) return html`<div class=${boxed} role="alert">${says}</div>`;
  return html`<div class=${boxed} role="alert">
    <div class="alert-text">${says}
      <p class="alert-do"><b>${t("alert.do")}</b> ${matterDo(matter)}</p>
    </div>
    <${Tap} class="second alert-button" onTap=${() => go("make", make, "matters", matter.id)}>${t("button.stands")}</${Tap}>
  </div>`;
}
