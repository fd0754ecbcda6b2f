import { useEffect, useState } from "preact/hooks";
import { html } from "./html.js";
import { ClashLines } from "./clash-lines.js";
import { Row } from "./sheet.js";
import { Tap } from "./tap.js";
import { ask, board, nowMs } from "./source.js";
import { clockDay } from "../format.js";
import { t, tn } from "../messages/index.js";

const MIN_MS = 60000;
/** @type {[string, number][]} */
const SHIFTS = [
  ["sooner", -15],
  ["after", 15],
  ["hour", 60],
  ["day", 1440],
];

/**
 * @param {Recipe} recipe
 * @param {Treatment} treatment
 * @param {number} startMs
 */
function useClashesIf(recipe, treatment, startMs) {
  const [foreseen, setForeseen] = useState(/** @type {?ClashesIf} */ (null));
  useEffect(() => {
    let isCurrent = true;
    ask.clashesIf({ recipe, treatment, startMs }).then(
      (answer) => isCurrent && setForeseen(answer),
      () => isCurrent && setForeseen(null),
    );
    return () => {
      isCurrent = false;
    };
  }, [recipe, treatment, startMs, board.value]);
  return foreseen;
}

/**
 * What a make opened now or later would clash with, and when it would not.
 *
 * @param {{recipe: Recipe, treatment: Treatment}} props
 */
export function ClashesIf({ recipe, treatment }) {
  const [laterMin, setLaterMin] = useState(0);
  const [baseMs] = useState(nowMs());
  const startMs = Math.max(nowMs(), baseMs + laterMin * MIN_MS);
  const asked = laterMin > 0 ? startMs : baseMs;
  const foreseen = useClashesIf(recipe, treatment, asked);
  const isBeside = board.value?.makes.some((make) => make.is_open);
  if (!foreseen || !isBeside) return null;
  const at = clockDay(asked, nowMs());
  const better = foreseen.better;
  return html`<section class="block clashes-if"><h2>${t("clash.if_title")}</h2>
    <p role="status">${foreseen.count ? tn("clash.if", foreseen.count, { at }) : t("clash.if_none", { at })}</p>
    <${ClashLines} clashes=${foreseen.clashes} count=${foreseen.count} nowMs=${nowMs()} title="" />
    ${
      better
        ? html`<div class="rows"><${Row} title=${t("clash.better", { at: clockDay(better.start_ms, nowMs()) })}
      detail=${better.count ? tn("clash.better_some", better.count) : t("clash.better_none")}
      onTap=${() => setLaterMin(Math.max(0, Math.round((better.start_ms - baseMs) / MIN_MS)))} /></div>`
        : null
    }
    <div class="clash-shifts">${SHIFTS.map(
      ([
        name,
        min,
      ]) => html`<${Tap} key=${name} class="second" disabled=${laterMin + min < 0}
      onTap=${() => setLaterMin(laterMin + min)}>${t("clash." + name)}</${Tap}>`,
    )}</div>
    <p class="quiet">${t("clash.if_hint")}</p>
  </section>`;
}
