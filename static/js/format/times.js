// Instants of this phone's clock, and spans.

import { hasNot } from "./numbers.js";
import { locale } from "./reads.js";

/** @import { MaybeNumber } from "./numbers.js" */

const MINUTE_S = 60;
const HOUR_S = 3600;
const DAY_S = 86400;

/** @param {number} value @param {number} decimals */
export function days(value, decimals) {
  /** @type {Intl.NumberFormatOptions} */
  const form = {
    style: "unit",
    unit: "day",
    unitDisplay: "long",
    minimumFractionDigits: decimals,
    maximumFractionDigits: decimals,
  };
  return new Intl.NumberFormat(locale(), form).format(value).replace(/\s/, "\u00a0");
}

/** @param {number} value */
function two(value) {
  return String(value).padStart(2, "0");
}

/**
 * A running clock: "4:07", "1:02:34". Always of a positive span.
 *
 * @param {number} seconds
 */
export function ticks(seconds) {
  const whole = Math.floor(Math.abs(seconds));
  const hours = Math.floor(whole / HOUR_S);
  const minutes = Math.floor((whole % HOUR_S) / MINUTE_S);
  const tail = two(whole % MINUTE_S);
  if (hours >= 24) return span(whole);
  return hours > 0 ? `${hours}:${two(minutes)}:${tail}` : `${minutes}:${tail}`;
}

/**
 * A span in words: "45 s", "12 min", "1 h 05 min", "3 days".
 *
 * @param {MaybeNumber} seconds
 */
export function span(seconds) {
  if (hasNot(seconds)) return "–";
  const size = Math.abs(seconds);
  if (size < 90) return `${Math.round(size)}\u00a0s`;
  const minutes = Math.round(size / MINUTE_S);
  if (minutes < 60) return `${minutes}\u00a0min`;
  if (size < 2 * DAY_S) {
    const rest = minutes % 60;
    const hours = `${Math.floor(minutes / 60)}\u00a0h`;
    return rest ? `${hours} ${two(rest)}\u00a0min` : hours;
  }
  return days(Math.round(size / DAY_S), 0);
}

/**
 * A span to the finest that is used: "12 min", "1 h 05 min", "2.6 days".
 *
 * @param {MaybeNumber} seconds
 */
export function fineSpan(seconds) {
  if (hasNot(seconds)) return "–";
  const sign = seconds < 0 ? "−" : "";
  if (Math.abs(seconds) < 2 * DAY_S) return sign + span(seconds);
  return sign + days(Math.abs(seconds) / DAY_S, 1);
}

/**
 * The time of day on this phone: "14:05".
 *
 * @param {MaybeNumber} ms
 */
export function clock(ms) {
  if (hasNot(ms)) return "–";
  const at = new Date(ms);
  return `${two(at.getHours())}:${two(at.getMinutes())}`;
}

/**
 * The day: "Tue 25 Nov".
 *
 * @param {number} ms
 */
export function day(ms) {
  return new Date(ms).toLocaleDateString(locale(), {
    weekday: "short",
    day: "numeric",
    month: "short",
  });
}

/**
 * The time, with its day when that is not the day of `nowMs`.
 *
 * @param {MaybeNumber} ms
 * @param {number} [nowMs]
 */
export function clockDay(ms, nowMs) {
  if (hasNot(ms)) return "–";
  const isToday = new Date(ms).toDateString() === new Date(nowMs ?? NaN).toDateString();
  return isToday ? clock(ms) : `${day(ms)} ${clock(ms)}`;
}

const WEEK_MS = 6 * DAY_S * 1000;
const NEAR_MS = (DAY_S / 4) * 1000; // nobody takes a time so near for tomorrow's

/**
 * Until when, in few words: today and past midnight soon the time, in the days after
 * it the weekday with it, later the date alone.
 *
 * @param {number} ms
 * @param {number} nowMs
 */
export function clockSoon(ms, nowMs) {
  const isNear = ms >= nowMs && ms - nowMs < NEAR_MS;
  if (isNear || clockDay(ms, nowMs) === clock(ms)) return clock(ms);
  const isFar = ms - nowMs > WEEK_MS;
  const named = new Date(ms).toLocaleDateString(
    locale(),
    isFar ? { day: "numeric", month: "short" } : { weekday: "short" },
  );
  return isFar ? named : `${named} ${clock(ms)}`;
}

/**
 * From one instant to another; what both share is said once.
 *
 * @param {MaybeNumber} fromMs
 * @param {MaybeNumber} toMs
 * @param {number} [nowMs]
 */
export function clockSpan(fromMs, toMs, nowMs) {
  if (hasNot(fromMs) || hasNot(toMs)) return "–";
  const isSameDay = new Date(fromMs).toDateString() === new Date(toMs).toDateString();
  return `${clockDay(fromMs, nowMs)} – ${isSameDay ? clock(toMs) : clockDay(toMs, nowMs)}`;
}

/**
 * How old something is.
 *
 * @param {number} ms
 */
export function age(ms) {
  return span(Math.max(0, ms) / 1000);
}
