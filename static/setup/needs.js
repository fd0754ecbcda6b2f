// What a phone needs for a make day, and how it stands with each.

/** @import { Standing } from "./mark.js" */
/** @typedef {"try" | "asked" | "heard" | "unheard" | "none"} Sound */
/**
 * How a need stands, the text that says so, and what is filled in there.
 *
 * @typedef {[Standing, string, Record<string, any>?]} Said
 */
/**
 * What was seen of the phone.
 *
 * @typedef {object} Seen
 * @property {boolean} isSecure
 * @property {"good" | "wait" | "bad"} worker
 * @property {boolean | null} kept null: not said
 * @property {Sound} sound
 * @property {number | null | undefined} offMs null: asked, undefined: not told
 * @property {"good" | "not_installed" | "denied" | "none"} alarms
 */

export const CLOCK_OFF_MS = 120000;

/**
 * @param {Seen["offMs"]} offMs
 * @returns {Said}
 */
function clockOf(offMs) {
  if (offMs === null) return ["wait", "clock.wait"];
  if (offMs === undefined) return ["bad", "clock.unknown"];
  const minutes = Math.round(Math.abs(offMs) / 60000);
  return Math.abs(offMs) > CLOCK_OFF_MS
    ? ["bad", "clock.bad", { minutes }]
    : ["good", "clock.good"];
}

/** @type {Record<Sound, Said>} */
const SOUND = {
  try: ["try", "sound.try"],
  asked: ["try", "sound.asked"],
  heard: ["good", "sound.good"],
  unheard: ["bad", "sound.bad"],
  none: ["bad", "sound.none"],
};

/**
 * @param {Seen["kept"]} kept
 * @returns {Said}
 */
function keptOf(kept) {
  if (kept === null) return ["wait", "kept.wait"];
  return kept ? ["good", "kept.good"] : ["bad", "kept.bad"];
}

/**
 * Return each need as {key, state, says, values}: good, bad, wait or try.
 *
 * @param {Seen} seen
 */
export function needsOf({ isSecure, worker, kept, sound, offMs, alarms }) {
  /** @type {[string, Said][]} */
  const rows = [
    ["secure", isSecure ? ["good", "secure.good"] : ["bad", "secure.bad"]],
    ["worker", [worker, "worker." + worker]],
    ["kept", keptOf(kept)],
    ["sound", SOUND[sound]],
    ["clock", clockOf(offMs)],
    ["alarms", [alarms === "good" ? "good" : "bad", "alarms." + alarms]],
  ];
  return rows.map(([key, [state, says, values]]) => ({ key, state, says, values }));
}

/**
 * Whether alarms can come to this browser by push, or why not.
 *
 * @param {{isIphoneTab: boolean, hasPush: boolean,
 *   permission: NotificationPermission | false}} given
 * @returns {Seen["alarms"]}
 */
export function alarmsOf({ isIphoneTab, hasPush, permission }) {
  if (isIphoneTab) return "not_installed";
  if (!hasPush) return "none";
  return permission === "denied" ? "denied" : "good";
}
