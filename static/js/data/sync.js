// The exchange with the server: first what this phone has, then what others did.
//
// One exchange at a time, over all tabs. An entry leaves the queue only by a
// verdict on its own id. The cursor moves only after what it covers is on disk.
// A server with another epoch was restored or is new: it is offered everything, once
// its log was read also what others had told and it lacks.

import { ApiError } from "./api.js";
import { LONGEST_S, waitMs } from "./backoff.js";
import { clock } from "./clock.js";
import * as db from "./db.js";
import { countUnsent } from "./record.js";
import { net, netProblem, serverDisk, syncing } from "./state.js";
import { pull, selfCheck } from "./sync/pull.js";
import { giveBack, push } from "./sync/push.js";
import { round } from "./sync/server.js";
import { alone } from "./tabs.js";

export { setAppVersion } from "./sync/push.js";
export { absorb, fromOtherTab } from "./sync/told.js";

const EVERY_MS = 15000;
const REMOVED = ["removed_device", "inactive_person"];
const OVER_QUOTA = "over_quota";
/** @type {Record<string, string>} */
const DISK = { disk_full: "full", disk_read_only: "read_only" };

let failures = 0;
/** @type {number | undefined} */
let timer;
let notBeforeMs = 0;
/**
 * This phone's day is full on the server until then.
 *
 * @type {{failure: ApiError, untilMs: number} | null}
 */
let heldBack = null;

async function exchange() {
  const device = await db.getMeta("device");
  const stuck = await offer(device);
  // What was read whole can be compared: what is missing from it is lost there.
  if ((await pull()) && (await giveBack())) {
    await countUnsent();
    await pull();
  }
  await db.setMeta("clock", clock.save());
  if (stuck) throw stuck;
}

// What is known there can still be read where nothing more can be recorded.
/** @param {string | undefined} device @returns {Promise<any>} */
async function offer(device) {
  if (heldBack && Date.now() < heldBack.untilMs) return heldBack.failure;
  heldBack = null;
  try {
    await push();
    if (await selfCheck(device)) await push();
    return null;
  } catch (/** @type {any} */ failure) {
    if (failure.key === OVER_QUOTA) {
      const waitS = failure.retryAfterS ?? LONGEST_S;
      heldBack = { failure, untilMs: Date.now() + waitS * 1000 };
    } else if (!DISK[failure.key]) throw failure;
    return failure;
  }
}

/** @param {any} failure @returns {number | null} */
function failed(failure) {
  failures += 1;
  netProblem.value = { key: failure.key ?? "unexpected", text: failure.message };
  if (!(failure instanceof ApiError)) return null; // ours, not the network's
  if (DISK[failure.key]) {
    net.value = "online";
    serverDisk.value = DISK[failure.key];
  } else if (failure.key === OVER_QUOTA) {
    // Only sending waits, perhaps for hours; what others did is read as ever.
    failures = 0;
    net.value = "slowed";
    return EVERY_MS / 1000;
  } else if (failure.status === 401) net.value = "not_paired";
  else if (REMOVED.includes(failure.key)) net.value = "removed";
  else if (failure.key === "too_many_requests") net.value = "slowed";
  else net.value = navigator.onLine === false ? "offline" : "server_gone";
  if (failure.retryAfterS) notBeforeMs = Date.now() + failure.retryAfterS * 1000;
  return failure.retryAfterS;
}

async function run() {
  syncing.value = true;
  round.again = false;
  let delayMs = EVERY_MS;
  try {
    await alone("vatside-sync", exchange);
    failures = 0;
    net.value = "online";
    netProblem.value = null;
    if (round.again) delayMs = 0; // something was recorded meanwhile
  } catch (/** @type {any} */ failure) {
    delayMs = waitMs(failures + 1, failed(failure));
  } finally {
    syncing.value = false;
  }
  clearTimeout(timer);
  timer = setTimeout(tick, delayMs);
}

function tick() {
  // Out of sight nothing is gained by asking; coming back into sight kicks.
  if (document.visibilityState === "hidden" && failures === 0 && !round.again) {
    timer = setTimeout(tick, EVERY_MS);
    return;
  }
  if (!syncing.value) run();
}

/**
 * Exchange now: at a start, a tap, a return of the network or of the eyes.
 *
 * @param {string} why "start|tap|online|visible|poll|asked"
 */
export function kick(why) {
  if (why === "asked") heldBack = null;
  if (syncing.value) {
    round.again = true;
    return;
  }
  if (Date.now() < notBeforeMs && why !== "asked") return;
  failures = 0;
  clearTimeout(timer);
  run();
}
