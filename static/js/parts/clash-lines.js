import { html } from "./html.js";
import { StateMark } from "./state-mark.js";
import { stepTitle } from "./step-title.js";
import { clock, clockDay } from "../format.js";
import { t, tn } from "../messages/index.js";

/**
 * What an act asks for: a step by name, or a timer by its label.
 *
 * @param {Act} act
 */
function actTitle(act) {
  if (act.what === "timer") return act.label;
  return act.what === "end" ? t("clash.end", { step: stepTitle(act) }) : stepTitle(act);
}

/** @type {(clash: Clash, nowMs: number) => string} */
function moveText({ acts, move }, nowMs) {
  if (!move) return t("clash.none");
  const key = "clash." + move.way + (move.clears ? "" : "_short");
  return t(key, { what: actTitle(acts[move.act]), at: clockDay(move.to_ms, nowMs) });
}

/** @param {{clash: Clash, nowMs: number}} props */
function ClashItem({ clash, nowMs }) {
  return html`<li class="clash">
    <b>${t("clash.head", { n: clash.acts.length, at: clockDay(clash.at_ms, nowMs) })}</b>
    ${clash.acts.map(
      (
        act,
      ) => html`<span key=${act.make + act.wait} class="clash-act">${clock(act.at_ms)} ${actTitle(act)}
      <span class="quiet">${act.make ? act.make_name : t("clash.new_make")}${act.vat ? " · " + act.vat : ""}</span></span>`,
    )}
    <span>${moveText(clash, nowMs)}</span>
  </li>`;
}

/**
 * What falls together ahead, and what of it may move; `make` shows its own only.
 *
 * @param {{clashes?: Clash[], count?: number, nowMs: number, make?: ?string,
 *   title?: string}} props
 */
export function ClashLines({
  clashes = [],
  count = 0,
  nowMs,
  make = null,
  title = t("clash.title"),
}) {
  const shown = clashes.filter(
    (clash) => !make || clash.acts.some((act) => act.make === make),
  );
  if (!shown.length) return null;
  const left = make ? 0 : count - shown.length;
  return html`<section class="clashes" aria-label=${title}>
    ${title ? html`<h2><${StateMark} state="check" word=${title} /></h2>` : null}
    <ul>${shown.map((clash) => html`<${ClashItem} key=${clash.at_ms} clash=${clash} nowMs=${nowMs} />`)}</ul>
    ${left > 0 ? html`<p class="quiet">${tn("clash.more", left)}</p>` : null}
  </section>`;
}
