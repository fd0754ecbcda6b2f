// How long to wait before asking again. Jitter, so that all phones of a room
// do not come back in the same second.

export const LONGEST_S = 60;

/**
 * Return the wait before the next try.
 *
 * @param {number} failures in a row, 1 or more
 * @param {number|null} retryAfterS what the server asked for
 * @param {() => number} random 0..1
 * @returns {number} milliseconds
 */
export function waitMs(failures, retryAfterS = null, random = Math.random) {
  const spanS = Math.min(LONGEST_S, 2 ** (failures - 1));
  const waitS = spanS * (0.5 + random() / 2);
  return 1000 * Math.max(waitS, retryAfterS ?? 0);
}
