import { render } from "preact";
import { effect, signal } from "@preact/signals";
import { html } from "./html.js";
import { addToKit, later } from "./later.js";
import { WetLock } from "./wet-lock.js";

// What a person's hands are given besides touch: a lock against water, a pedal or
// clicker, and a voice. Each phone has its own; none weighs on one without it.

function kept(name) {
  try {
    return JSON.parse(localStorage.getItem(name));
  } catch {
    return null;
  }
}

/** Keys of a pedal: {do: [names], other: [names]}, or null when none is used. */
export const pedal = signal(kept("pedal"));
/** Which key of the pedal is being learnt: "do", "other", or null. */
export const learning = signal(null);
/** True while entries are read aloud on this phone. */
export const voice = signal(kept("voice") === true);

function keep(name, held) {
  effect(() => {
    if (held.value) localStorage.setItem(name, JSON.stringify(held.value));
    else localStorage.removeItem(name);
  });
}

/** Put the lock over the screens and wake what this phone uses. */
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
