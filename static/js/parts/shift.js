import { effect, signal } from "@preact/signals";
import { ring } from "../data/alarm.js";
import { keepAwake } from "../data/wake.js";
import { ringOn, silence, sound, unlock } from "./sound.js";
import { nowMs } from "./source.js";

/** @import { Signal } from "@preact/signals" */

/**
 * The shift on this screen, and when its test was heard; null before it.
 *
 * @type {Signal<?{heardMs: ?number}>}
 */
export const shift = signal(null);
/** True while the test alarm rings. */
export const testing = signal(false);

const TEST_PRIORITY = 2;

/** Start the shift: within a tap, since only a tap unlocks the sound. */
export async function startShift() {
  keepAwake(true, "shift");
  await unlock();
  shift.value = shift.value ?? { heardMs: null };
  return sound.value;
}

export function endShift() {
  testing.value = false;
  shift.value = null;
  keepAwake(false, "shift");
  silence();
}

export function startTest() {
  testing.value = true;
}

/**
 * End the test; only a person can tell whether it was heard.
 *
 * @param {boolean} wasHeard
 */
export function endTest(wasHeard) {
  testing.value = false;
  shift.value = { heardMs: wasHeard ? nowMs() : null };
}

/** Tell whether this screen rings: a shift, a sound, and a test that was heard. */
export function isArmed() {
  return Boolean(shift.value?.heardMs) && sound.value === "ready";
}

effect(() => {
  if (testing.value) ringOn(TEST_PRIORITY);
  else if (shift.value && ring.value.priority) ringOn(ring.value.priority);
  else silence();
});
