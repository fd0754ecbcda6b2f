import { clockDay, span } from "../format.js";
import { t } from "../messages/index.js";
import { widthOf } from "./countdown.js";
import { html } from "./html.js";
import { secondMs } from "./ticker.js";

/**
 * One stage of a make in a whole sentence.
 *
 * @param {BandStage} stage
 * @param {number} nowMs
 */
function stageWords(stage, nowMs) {
  const name = t("stage." + stage.key);
  const at = clockDay(stage.how === "to_come" ? stage.begin_ms : stage.end_ms, nowMs);
  if (stage.how !== "running") return t("band." + stage.how, { stage: name, at });
  const end = stage.has_end ? "band.running" : "band.running_on";
  if (!stage.late_s) return t(end, { stage: name, at });
  return t(end + "_late", { stage: name, at, by: span(stage.late_s) });
}

/**
 * What the band shows, said.
 *
 * @param {BandStage[]} band
 * @param {number} nowMs
 */
export function bandWords(band, nowMs) {
  return band.map((stage) => stageWords(stage, nowMs)).join(" ");
}

/**
 * Where now lies in a stage, in hundredths of its time. For show, as a countdown: at
 * each change the core says anew in which stage it lies.
 *
 * @param {Pick<BandStage, "begin_ms" | "end_ms">} stage
 * @param {number} nowMs
 */
export function pastPercent({ begin_ms: beginMs, end_ms: endMs }, nowMs) {
  if (endMs <= beginMs) return 0;
  return Math.min(1, Math.max(0, (nowMs - beginMs) / (endMs - beginMs))) * 100;
}

/**
 * The name of a stage; of the one that is late also by how much.
 *
 * @param {{stage: BandStage, isThin: boolean}} props
 */
function Name({ stage, isThin }) {
  const name = t("stage." + stage.key);
  if (!stage.late_s || isThin)
    return html`<span class="band-name" style=${{ "--letters": widthOf(name) }}>${name}</span>`;
  const said = t("make.late", { by: span(stage.late_s) });
  return html`<span class="band-name band-now">${name} <small>${said}</small></span>`;
}

/** @param {{stage: BandStage, nowMs: number, isThin: boolean}} props */
function Stage({ stage, nowMs, isThin }) {
  const begin = clockDay(stage.begin_ms, nowMs);
  const isLate = stage.late_s > 0 ? " is-late" : "";
  const style = {
    "--share": stage.share_frac,
    "--past": pastPercent(stage, nowMs).toFixed(1) + "%",
  };
  return html`<span class=${`band-stage band-${stage.how}${isLate}`} style=${style}>
    <span class="band-room"><${Name} stage=${stage} isThin=${isThin} /></span>
    <span class="band-line"></span>
    ${isThin ? null : html`<span class="band-room band-at"><span style=${{ "--letters": widthOf(begin) }}>${begin}</span></span>`}
  </span>`;
}

/**
 * The make as one band: its stages in proportion to time, and where now is.
 *
 * @param {{band?: BandStage[], isThin?: boolean}} props none where an older page kept
 *   the picture; a thin one has no times below it
 */
export function DayBand({ band, isThin = false }) {
  if (!band?.length) return null;
  const nowMs = secondMs.value;
  return html`<div class=${isThin ? "day-band is-thin" : "day-band"} role="img" aria-label=${bandWords(band, nowMs)}>
    ${band.map((stage) => html`<${Stage} key=${stage.key} stage=${stage} nowMs=${nowMs} isThin=${isThin} />`)}
  </div>`;
}
