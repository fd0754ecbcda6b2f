// Looks at what this browser gives. Nothing here waits for a person's answer.

import { scriptAddress } from "/js/trusted.js";
import { alarmsOf } from "./needs.js";

// On an iPhone, true within a browser's tab and absent elsewhere.
export const isIphoneTab = navigator.standalone === false;

/**
 * Keep the app on this phone; tells "good" or "bad" when it knows.
 *
 * @param {(worker: "good" | "bad") => void} tell
 */
export async function lookAtWorker(tell) {
  const workers = navigator.serviceWorker;
  if (!workers) return tell("bad");
  workers.addEventListener("controllerchange", () => tell("good"));
  /** @type {ServiceWorkerRegistration | null} */
  let made = null;
  try {
    made = await workers.register(scriptAddress("/sw.js"), { updateViaCache: "none" });
  } catch {
    return tell(workers.controller ? "good" : "bad");
  }
  const first = made?.installing;
  first?.addEventListener("statechange", () => {
    // No room, or a file that did not come: the next visit tries again.
    if (first?.state === "redundant" && !workers.controller) tell("bad");
  });
  await workers.ready;
  if (workers.controller) tell("good");
}

/**
 * Ask the browser to keep the data; Firefox asks the person and is silent meanwhile.
 *
 * @param {(isKept: boolean) => void} tell
 */
export function lookAtKept(tell) {
  const kept = navigator.storage;
  if (!kept || !kept.persist) return tell(false);
  return kept.persist().then(tell, () => tell(false));
}

/**
 * Tell by how much the phone's clock is ahead [ms], undefined when not known.
 *
 * Each answer carries the server's date to a second; its exact time is for phones
 * that have joined.
 *
 * @param {(offMs: number | undefined) => void} tell
 */
export async function lookAtClock(tell) {
  const beganMs = Date.now();
  try {
    const answer = await fetch("/api/v1/health", { cache: "no-store" });
    const toldMs = Date.parse(answer.headers.get("Date") ?? "");
    tell(Number.isNaN(toldMs) ? undefined : (beganMs + Date.now()) / 2 - toldMs);
  } catch {
    tell(undefined);
  }
}

/** Whether alarms can come here, see `alarmsOf`. */
export function lookAtAlarms() {
  const hasPush =
    "Notification" in globalThis &&
    ("PushManager" in globalThis || "pushManager" in globalThis);
  return alarmsOf({
    isIphoneTab,
    hasPush,
    permission: hasPush && Notification.permission,
  });
}

const TONE_S = 1.2;

/** Play a tone; only within a tap. Returns false where there is no sound. */
export function playTone() {
  const Context = globalThis.AudioContext || globalThis.webkitAudioContext;
  if (!Context) return false;
  const { audioSession } = navigator;
  if (audioSession) audioSession.type = "playback"; // past the mute switch
  const context = new Context();
  context.resume();
  const tone = context.createOscillator();
  tone.type = "square";
  tone.frequency.value = 1046;
  tone.connect(context.destination);
  tone.start();
  tone.stop(context.currentTime + TONE_S);
  tone.onended = () => context.close();
  return true;
}
