// Keeps the screen on during a make, where the phone allows it.

let wanted = false;
let lock = null;

async function hold() {
  if (!wanted || lock || document.visibilityState !== "visible") return;
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

/** Ask for the screen to stay on, or let it sleep again. */
export function keepAwake(on) {
  wanted = on;
  if (on) return hold();
  return lock?.release();
}

// The phone takes the lock back whenever the page goes out of sight.
document.addEventListener("visibilitychange", hold);
