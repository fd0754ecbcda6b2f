import { signal } from "@preact/signals";

// The noise itself. A browser makes none before a tap has unlocked it, and a
// phone may take it away again: for a call, or when it is locked. So what is
// shown is what the sound really is, never what was asked for.

/** @import { Signal } from "@preact/signals" */
/** @typedef {"off" | "ready" | "interrupted" | "none"} SoundState */

/**
 * "off" until unlocked by a tap, "ready", "interrupted" (by the phone), "none".
 *
 * @type {Signal<SoundState>}
 */
export const sound = signal("AudioContext" in globalThis ? "off" : "none");

const PEAK = 0.9;
const BEEP_S = 0.18;
const GAP_S = 0.14;
// The more urgent, the more beeps, the higher and the sooner again.
/** @type {Record<number, {beeps: number, hertz: number, everyMs: number, shakes: number[]}>} */
const PATTERNS = {
  1: { beeps: 4, hertz: 1480, everyMs: 2000, shakes: [400, 150, 400, 150, 400] },
  2: { beeps: 2, hertz: 1046, everyMs: 3000, shakes: [400, 200, 400] },
  3: { beeps: 1, hertz: 784, everyMs: 6000, shakes: [300] },
};

/** @type {?AudioContext} */
let context = null;
/** @type {?{priority: number, timer: number}} */
let ringing = null;

function follow() {
  // WebKit has a state of its own, "interrupted", besides "suspended".
  const isRunning = context?.state === "running";
  sound.value = isRunning ? "ready" : "interrupted";
  if (!isRunning) delete document.documentElement.dataset.ringing;
}

/** Unlock the sound; only within a tap. Resolves with the state it has then. */
export async function unlock() {
  if (sound.value === "none") return sound.value;
  const { audioSession } = navigator;
  if (audioSession) {
    // Otherwise the switch at a phone's side mutes it.
    try {
      audioSession.type = "playback";
    } catch {
      /* an older one */
    }
  }
  if (!context) {
    context = new AudioContext();
    context.addEventListener("statechange", follow);
  }
  await resume();
  return sound.value;
}

async function resume() {
  if (!context || context.state === "closed") return;
  // Without a tap this may stay pending for ever: never waited for long.
  const late = new Promise((resolve) => {
    setTimeout(resolve, 1000);
  });
  await Promise.race([context.resume().catch(() => {}), late]);
  follow();
}

/** @type {(context: AudioContext, hertz: number, atS: number) => void} */
function beep(context, hertz, atS) {
  const tone = context.createOscillator();
  const volume = context.createGain();
  tone.type = "square"; // carries through a noisy room
  tone.frequency.value = hertz;
  volume.gain.setValueAtTime(0, atS);
  volume.gain.linearRampToValueAtTime(PEAK, atS + 0.01);
  volume.gain.setValueAtTime(PEAK, atS + BEEP_S - 0.02);
  volume.gain.linearRampToValueAtTime(0, atS + BEEP_S);
  tone.connect(volume).connect(context.destination);
  tone.start(atS);
  tone.stop(atS + BEEP_S);
}

function play() {
  if (!ringing) return;
  const { priority } = ringing;
  const { beeps, hertz, everyMs, shakes } = PATTERNS[priority];
  ringing.timer = setTimeout(play, everyMs);
  navigator.vibrate?.(shakes); // Android only; others have no such thing
  if (context?.state !== "running") {
    resume();
    return;
  }
  for (let n = 0; n < beeps; n += 1) {
    beep(context, hertz, context.currentTime + 0.02 + n * (BEEP_S + GAP_S));
  }
  document.documentElement.dataset.ringing = String(priority);
}

/**
 * Ring on until silenced: 1 act now, 2 soon, 3 when there is a hand.
 *
 * @param {number} priority
 */
export function ringOn(priority) {
  if (ringing?.priority === priority) return;
  silence();
  ringing = { priority, timer: 0 };
  play();
}

/** Tell hands that a key was not taken: a low tick, where the sound is unlocked. */
export function refuse() {
  navigator.vibrate?.(60);
  if (!ringing && context?.state === "running") beep(context, 220, context.currentTime);
}

/** Be silent at once. */
export function silence() {
  delete document.documentElement.dataset.ringing;
  if (!ringing) return;
  clearTimeout(ringing.timer);
  ringing = null;
  navigator.vibrate?.(0);
}

// A phone that comes back from a call or a lock gives the sound back, or a tap does.
document.addEventListener("visibilitychange", () => {
  if (document.visibilityState === "visible") resume();
});
addEventListener(
  "pointerup",
  () => {
    if (sound.value === "interrupted") resume();
  },
  true,
);
