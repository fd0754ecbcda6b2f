// What wrong PINs cost on this phone. The server counts its own.

const MIN_MS = 60000;
const FREE = 5;
const WAITS_MS = [1, 5, 15, 60, 60].map((minutes) => minutes * MIN_MS);
const MOST = FREE + WAITS_MS.length; // from here on the server alone looks

/** @import { Tries } from "../../data/pins.js" */

/**
 * How many wrong PINs are left before one must wait.
 *
 * @param {?Tries} tries
 */
export function left(tries) {
  return Math.max(0, FREE - (tries?.wrong ?? 0));
}

/**
 * Tell whether this phone looks at no PIN of this person any more.
 *
 * @param {?Tries} tries
 */
export function isLocked(tries) {
  return (tries?.wrong ?? 0) >= MOST;
}

/**
 * How long to wait before the next try [ms].
 *
 * @param {?Tries} tries
 * @param {number} nowMs the phone's own clock: set back, it makes no wait shorter
 */
export function waitMs(tries, nowMs) {
  if (!tries || isLocked(tries)) return 0;
  if (nowMs < tries.fromMs) return tries.untilMs - tries.fromMs;
  return Math.max(0, tries.untilMs - nowMs);
}

/**
 * The tries after one more that was wrong.
 *
 * @param {?Tries} tries
 * @param {number} nowMs
 * @returns {Tries}
 */
export function afterWrong(tries, nowMs) {
  const wrong = (tries?.wrong ?? 0) + 1;
  return { wrong, fromMs: nowMs, untilMs: nowMs + (WAITS_MS[wrong - FREE] ?? 0) };
}

export const make = () => ({ afterWrong, isLocked, left, waitMs });
