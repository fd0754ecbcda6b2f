import { render } from "preact";
import { effect, signal } from "@preact/signals";
import { html } from "./html.js";
import { addToKit, later } from "./later.js";
import { WetLock } from "./wet-lock.js";

// What a person's hands are given besides touch: a lock against water, a pedal or
// clicker, and a voice. Each phone has its own; none weighs on one without it.

/** @param {string} name */
function kept(name) {
  try {
    return JSON.parse(localStorage.getItem(name) ?? "null");
  } catch {
    return null;
  }
}

/** @import { Signal } from "@preact/signals" */
/** @typedef {"do" | "other"} Way which of a pedal's two keys */

/**
 * The names of each of a pedal's keys, or null when none is used.
 *
 * @type {Signal<?Record<Way, string[]>>}
 */
export const pedal = signal(kept("pedal"));
/**
 * Which key of the pedal is being learnt, or null.
 *
 * @type {Signal<?Way>}
 */
export const learning = signal(null);
/** True while entries are read aloud on this phone. */
export const voice = signal(kept("voice") === true);

/** @type {(name: string, held: Signal) => void} */
function keep(name, held) {
  effect(() => {
    if (held.value) localStorage.setItem(name, JSON.stringify(held.value));
    else localStorage.removeItem(name);
  });
}

/**
 * Put the lock over the screens and wake what this phone uses.
 *
 * @param {import("./later.js").FromScreens} fromScreens
 */
export function startHands(fromScreens) {
  const cover = document.createElement("div");
  document.body.append(cover);
  addToKit({ ...fromScreens, later, learning, pedal, voice });
  render(html`<${WetLock} />`, cover);
  keep("pedal", pedal);
  keep("voice", voice);
  effect(() => {
    if (pedal.value) later("pedal").catch(() => {});
  });
  effect(() => {
    if (voice.value) later("voice").catch(() => {});
  });
}
