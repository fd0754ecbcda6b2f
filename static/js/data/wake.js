// Keeps the screen on during a make or a shift, where the phone allows it.

/** @type {Set<string>} */
const wishes = new Set();
/** @type {WakeLockSentinel | null} */
let lock = null;

async function hold() {
  if (!wishes.size || lock || document.visibilityState !== "visible") return;
  try {
    lock = await navigator.wakeLock.request("screen");
    lock.addEventListener("release", () => {
      lock = null;
    });
  } catch {
    lock = null; // an old phone, plain http, or a low battery
  }
}

/** True when this phone can keep its screen on from here. */
export function canKeepAwake() {
  return "wakeLock" in navigator;
}

/** True while the phone has promised to keep its screen on. */
export function isKeptAwake() {
  return lock !== null;
}

/**
 * Ask for the screen to stay on, or let it sleep again once nobody asks.
 *
 * @param {boolean} on
 * @param {string} who each asker's own name: a make, a shift
 */
export function keepAwake(on, who = "make") {
  if (on) wishes.add(who);
  else wishes.delete(who);
  if (on) return hold();
  return wishes.size ? undefined : lock?.release();
}

// The phone takes the lock back whenever the page goes out of sight.
document.addEventListener("visibilitychange", hold);
