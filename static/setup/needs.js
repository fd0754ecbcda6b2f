// What a phone needs for a make day, and how it stands with each.

export const CLOCK_OFF_MS = 120000;

function clockOf(offMs) {
  if (offMs === null) return ["wait", "clock.wait"];
  if (offMs === undefined) return ["bad", "clock.unknown"];
  const minutes = Math.round(Math.abs(offMs) / 60000);
  return Math.abs(offMs) > CLOCK_OFF_MS ? ["bad", "clock.bad", { minutes }] : ["good", "clock.good"];
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

const OWNER_SIGNS = 16;

/** Whether a code makes an owner, who may not have a name here yet. */
export function isOwnersCode(code) {
  return code.replace(/[\s-]/g, "").length === OWNER_SIGNS;
}

// By the field that the server names; what is not said there is said at the code.
const FIELDS = { code: "code", person_name: "name", device_name: "device" };
const SAYS = {
  wrong_code: "error.wrong_code",
  too_many_tries: "error.too_many_tries",
  inactive_person: "error.inactive_person",
  device_in_use: "error.device_in_use",
  unreachable: "error.unreachable",
  no_answer: "error.unreachable",
};

/** Return what went wrong with joining: {field, says, values}. */
export function faultOf({ key, field, limit }) {
  if (key === "missing" && field === "person_name") return { field: "name", says: "error.person_missing" };
  return { field: FIELDS[field] || "code", says: SAYS[key] || "error.other", values: { seconds: limit } };
}
