import { html } from "./html.js";
import { secondMs } from "./ticker.js";
import { clock, clockDay, clockSoon, ticks } from "../format.js";
import { t } from "../messages/index.js";

/**
 * How many figures wide a text is: points and spaces are about half as wide.
 *
 * @param {string} text
 */
export function widthOf(text) {
  return text.length - 0.4 * (text.match(/[:.,\s]/g)?.length ?? 0);
}

/**
 * Time left to an instant, or how far past it: absolute, never a tick count.
 *
 * @param {{dueMs: number, lowMs?: ?number, class?: string}} props
 */
export function Countdown({ dueMs, lowMs, class: name = "" }) {
  const leftS = (dueMs - secondMs.value) / 1000;
  const isOver = leftS <= 0;
  const shown = isOver ? Math.floor(-leftS) : Math.ceil(leftS);
  const text = (isOver ? "+" : "") + ticks(shown);
  return html`<div class=${`countdown ${isOver ? "is-over" : ""} ${name}`} role="timer">
    <div class="timer" style=${{ "--letters": widthOf(text) + (isOver ? 1 : 0) }}>${text}</div>
    <div class="timer-words">
      ${isOver ? t("countdown.over", { at: clockDay(dueMs, secondMs.value) }) : t("countdown.left", { at: clockSoon(dueMs, secondMs.value) })}
      ${!isOver && lowMs ? html`<span> ${t("countdown.from", { at: clock(lowMs) })}</span>` : null}
    </div>
  </div>`;
}

/**
 * The same in one short line, for lists.
 *
 * @param {{dueMs: number}} props
 */
export function CountdownWords({ dueMs }) {
  const leftS = (dueMs - secondMs.value) / 1000;
  return leftS > 0
    ? t("countdown.line_left", { time: ticks(Math.ceil(leftS)) })
    : t("countdown.line_over", { time: ticks(-leftS) });
}

/**
 * The figures alone, "+" before what is over: for where a mark says which it is.
 *
 * @param {{dueMs: number}} props
 */
export function Ticks({ dueMs }) {
  const leftS = (dueMs - secondMs.value) / 1000;
  return (leftS <= 0 ? "+" : "") + ticks(leftS <= 0 ? -leftS : Math.ceil(leftS));
}
