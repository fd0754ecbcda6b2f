import { html } from "./html.js";
import { FigureValue } from "./figure-value.js";
import { measured, quantity } from "../format.js";
import { t } from "../messages/index.js";

/** @param {number} litres */
function litresText(litres) {
  return measured(litres, "L");
}

/** @param {number | null} degrees */
function warmthText(degrees) {
  return quantity("water_temp_c", degrees);
}

/** @param {WashWater} water */
function wholeWords(water) {
  const whole = litresText(water.water_l);
  if (water.low_l === null || water.high_l === null)
    return t("water.whole", { amount: whole });
  return t("water.whole_of", {
    amount: whole,
    low: litresText(water.low_l),
    high: litresText(water.high_l),
  });
}

/** @param {WashWater} water */
function nextWords(water) {
  const stop = quantity("curd_temp_c", water.stop_c);
  if (water.added_l) return t("water.stop", { stop });
  return t("water.then_read", {
    after: quantity("curd_temp_c", water.after_first_c),
    stop,
  });
}

/** @param {{water: WashWater}} props */
function Enough({ water }) {
  return html`<div class="figure">
    <div class="figure-label">${t("water.enough")}</div>
    <${FigureValue} text=${litresText(water.added_l)} />
    <p class="figure-next">${t("water.measure")}</p>
  </div>`;
}

/**
 * The water of a wash: how much to pour next, how hot, and where to stop.
 *
 * @param {{main: MainWater, water: WashWater}} props
 */
export function WaterFigure({ main, water }) {
  if (main.part === "rest" && main.value === 0)
    return html`<${Enough} water=${water} />`;
  const text = `${litresText(main.value)} · ${warmthText(main.temp_c)}`;
  return html`<div class="figure">
    <div class="figure-label">${t("water." + main.part)}</div>
    <${FigureValue} text=${text} />
    <div class="figure-band">${t(water.is_read ? "water.at_read" : "water.at_wanted")}</div>
    <p class="figure-next">${nextWords(water)}</p>
    <p class="quiet figure-origin">${water.added_l ? t("water.in", { amount: litresText(water.added_l) }) + " " : ""}${wholeWords(water)}${water.loss_k === null ? "" : " " + t("water.learnt", { loss: measured(water.loss_k, "K") })}</p>
  </div>`;
}
