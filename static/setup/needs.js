// What a phone needs for a make day, and how it stands with each.

export const CLOCK_OFF_MS = 120000;

function clockOf(offMs) {
  if (offMs === null) return ["wait", "clock.wait"];
  if (offMs === undefined) return ["bad", "clock.unknown"];
  const minutes = Math.round(Math.abs(offMs) / 60000);
  return Math.abs(offMs) > CLOCK_OFF_MS
    ? ["bad", "clock.bad", { minutes }]
    : ["good", "clock.good"];
}

const SOUND = {
  try: ["try", "sound.try"],
  asked: ["try", "sound.asked"],
  heard: ["good", "sound.good"],
  unheard: ["bad", "sound.bad"],
  none: ["bad", "sound.none"],
};

const KEPT = new Map([
  [true, ["good", "kept.good"]],
  [null, ["wait", "kept.wait"]],
  [false, ["bad", "kept.bad"]],
]);

/**
 * Return each need as {key, state, says, values}: good, bad, wait or try.
 *
 * @param {object} seen
 *   isSecure, worker ("good", "wait", "bad"), kept (true, false, null: not said),
 *   sound ("try", "asked", "heard", "unheard", "none"),
 *   offMs (null: asked, undefined: not told),
 *   alarms ("good", "not_installed", "denied", "none")
 */
export function needsOf({ isSecure, worker, kept, sound, offMs, alarms }) {
  const rows = [
    ["secure", isSecure ? ["good", "secure.good"] : ["bad", "secure.bad"]],
    ["worker", [worker, "worker." + worker]],
    ["kept", KEPT.get(kept)],
    ["sound", SOUND[sound]],
    ["clock", clockOf(offMs)],
    ["alarms", [alarms === "good" ? "good" : "bad", "alarms." + alarms]],
  ];
  return rows.map(([key, [state, says, values]]) => ({ key, state, says, values }));
}

/** Whether alarms can come to this browser by push, or why not. */
export function alarmsOf({ isIphoneTab, hasPush, permission }) {
  if (isIphoneTab) return "not_installed";
  if (!hasPush) return "none";
  return permission === "denied" ? "denied" : "good";
}
