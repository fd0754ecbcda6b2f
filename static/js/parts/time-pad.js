import { useState } from "preact/hooks";
import { html } from "./html.js";
import { Tap } from "./tap.js";
import { clock, day } from "../format.js";
import { t } from "../messages/index.js";

const STEPS_MIN = [-60, -10, -1, 1, 10, 60];

/**
 * Set a time of day by moving it: no field to hit, nothing to type.
 *
 * @param {{startMs: number, latestMs: number, onChange: (ms: number) => unknown}} props
 */
export function TimePad({ startMs, latestMs, onChange }) {
  const [ms, setMs] = useState(startMs);
  const move = (/** @type {number} */ minutes) => {
    const next = Math.min(ms + minutes * 60000, latestMs);
    setMs(next);
    onChange(next);
  };
  return html`<div class="time-pad">
    <div class="entered"><span class="entered-value">${clock(ms)}</span><span class="entered-unit">${day(ms)}</span></div>
    <div class="time-keys">${STEPS_MIN.map(
      (minutes) => html`<${Tap} key=${minutes} class="key" steady guardMs=${75}
      label=${t(minutes < 0 ? "time.earlier" : "time.later", { n: Math.abs(minutes) })}
      onTap=${() => move(minutes)}>${minutes < 0 ? "−" : "+"}${Math.abs(minutes)}</${Tap}>`,
    )}</div>
  </div>`;
}
