// What this phone knows of PINs: everyone's wrapped key, and wrong tries made here.
//
// A PIN is never kept. The wrapped keys are a cache of the server's; the tries are
// counted on disk, so that a reload does not forget them.

import { signal } from "@preact/signals";

import { get } from "./api.js";
import { getMeta, getSaved, setMeta, setSaved } from "./db.js";
import { roleMay } from "./rights.js";
import { me } from "./state.js";

/** @import { Signal } from "@preact/signals" */
/** @typedef {{wrong: number, fromMs: number, untilMs: number}} Tries */

/**
 * Everyone's wrapped key and who may set a PIN here, or null until known.
 *
 * @type {Signal<{pins: KnownPin[], granted: {person: string, until_ms: number}[]} | null>}
 */
export const pins = signal(null);

/** Ask the server who has a PIN; rejects with ApiError. */
export async function freshenPins() {
  if (!roleMay(me.value?.person.role, "pin")) return;
  const told = await get("/pins");
  const before = JSON.stringify(pins.value);
  const now = { pins: told.pins, granted: told.granted };
  pins.value = now;
  if (JSON.stringify(now) !== before) await setSaved("pins", now);
}

/** Bring back what was known last, for a phone without a network. */
export async function restorePins() {
  if (pins.value) return;
  const [kept] = await getSaved(["pins"]);
  pins.value ??= kept ?? { pins: [], granted: [] };
}

/**
 * Wrong tries made on this phone at one person's PIN, or null.
 *
 * @param {string} person
 * @returns {Promise<Tries | null>}
 */
export async function triesOf(person) {
  return ((await getMeta("pin_tries")) ?? {})[person] ?? null;
}

/**
 * Keep the wrong tries at one person's PIN; null when it was right.
 *
 * @param {string} person
 * @param {Tries | null} tries
 */
export async function setTries(person, tries) {
  const all = (await getMeta("pin_tries")) ?? {};
  await setMeta("pin_tries", { ...all, [person]: tries });
}
