// The exchange with the server: first what this phone has, then what others did.
//
// One exchange at a time, over all tabs. An entry leaves the queue only by a
// verdict on its own id. The cursor moves only after what it covers is on disk.
// A server with another epoch was restored or is new: it is offered everything, once
// its log was read also what others had told and it lacks.

import { ApiError, get, post } from "./api.js";
import { LONGEST_S, waitMs } from "./backoff.js";
import { clock } from "./clock.js";
import * as db from "./db.js";
import { rebuild, refreshBoard, refreshView, take } from "./desk.js";
import { countUnsent } from "./record.js";
import {
  clockWarning,
  lastWordMs,
  net,
  netProblem,
  openMakeId,
  serverDisk,
  syncing,
} from "./state.js";
import { alone, tell } from "./tabs.js";

/**
 * @typedef {{epoch: string, results: SentVerdict[], kept?: SentVerdict[],
 *     have?: {upto: number, missing?: number[]}}} PushAnswer
 */

const MOST = 200;
const MOST_BYTES = 1000000; // the server takes 1 MiB
const PAGE = 500;
const EVERY_MS = 15000;
const ROUNDS = 50;
const REMOVED = ["removed_device", "inactive_person"];
const OVER_QUOTA = "over_quota";
/** @type {Record<string, string>} */
const DISK = { disk_full: "full", disk_read_only: "read_only" };

let app = "unknown";
let batch = MOST;
let failures = 0;
/** @type {number | undefined} */
let timer;
let again = false;
let notBeforeMs = 0;
let selfChecked = false;
/**
 * This phone's day is full on the server until then.
 *
 * @type {{failure: ApiError, untilMs: number} | null}
 */
let heldBack = null;
let touched = false; // the make on the screen, by entries not shown yet

/**
 * Name this app's version in each exchange.
 *
 * @param {string} version
 */
export function setAppVersion(version) {
  app = version;
}

function heard() {
  lastWordMs.value = clock.nowMs();
  clockWarning.value = clock.warning();
}

/**
 * Keep entries that the server told, then let the core and the screens know.
 *
 * @param {PulledRow[]} rows
 * @param {string} epoch
 * @param {number} next
 * @param {boolean} more whether the server has still more to tell: half a day's
 *     entries would show alarms that the other half answers
 */
export async function absorb(rows, epoch, next, more = false) {
  if (!(await db.storePulled(rows, epoch, next))) return false;
  if (!rows.length) return true;
  const events = rows.map((row) => db.filed(row.event, row.proof_state));
  tell({ events });
  show(events, more); // not waited for: a core that hangs must not stop the exchange
  return true;
}

/** @param {Recorded[]} events @param {boolean} more */
async function show(events, more = false) {
  // What the core missed here it finds on disk at its next start.
  const taken = await take(events).catch(() => null);
  touched ||= !taken?.changed || taken.changed.includes(openMakeId.value ?? "");
  if (more) return;
  if (touched) refreshView().catch(() => {});
  touched = false;
  refreshBoard().catch(() => {});
}

/**
 * Show what another tab recorded or pulled.
 *
 * @param {Recorded[]} events
 */
export function fromOtherTab(events) {
  countUnsent().catch(() => {});
  return show(events);
}

/** @template T @param {T[]} events @returns {T[]} */
function cut(events) {
  let fits = events.slice(0, batch);
  while (fits.length > 1 && JSON.stringify(fits).length > MOST_BYTES) {
    fits = fits.slice(0, Math.ceil(fits.length / 2));
  }
  return fits;
}

/** @param {string} epoch */
async function meetEpoch(epoch) {
  const known = await db.place();
  if (known.epoch !== epoch) await startOver(epoch);
}

/** @param {string} epoch */
async function startOver(epoch) {
  await db.beginEpoch(epoch);
  await countUnsent();
  again = true; // what is offered again goes up in the next round
}

/** @param {Recorded[]} events @param {string | null} epoch @param {object[]} kept */
async function pushOnce(events, epoch, kept = []) {
  const body = { api: 1, app, epoch, t0: Date.now(), events, kept };
  try {
    return await post("/sync/push", body, { pack: true });
  } catch (/** @type {any} */ failure) {
    const sent = events.length + kept.length;
    if (failure.status !== 413 || sent === 1) throw failure;
    batch = Math.max(1, Math.floor(sent / 2));
    return null;
  }
}

async function push() {
  for (let round = 0; round < ROUNDS; round += 1) {
    const events = cut(await db.oldest(batch));
    if (!events.length) return;
    const { epoch } = await db.place();
    /** @type {PushAnswer | null} */
    const answer = await pushOnce(events, epoch);
    if (!answer) continue;
    heard();
    await db.settle(answer.results, clock.nowMs());
    const aside = answer.results.some((result) => result.st === "needs_look");
    await meetEpoch(answer.epoch);
    await offerMissing(answer.have);
    await countUnsent();
    // The core took it at the tap; the server did not, so it must go again.
    if (aside) rebuild();
    if (!answer.results.length) return;
  }
}

// Counters that the server lacks although it acknowledged them once.
/** @param {{missing?: number[]} | null | undefined} have */
async function offerMissing(have) {
  if (!have?.missing?.length) return 0;
  const missing = new Set(have.missing);
  return db.offerAgain((seq) => missing.has(seq));
}

// Entries of others that a server set back to a backup no longer has: perhaps nobody
// else holds them any more. They are facts, so they go back, with the proof that the
// server had told them; what it cannot take is put aside, in sight.
async function giveBack() {
  let given = 0;
  for (let round = 0; round < ROUNDS; round += 1) {
    const kept = cut(await db.lost(batch));
    if (!kept.length) {
      await db.compared();
      return given;
    }
    const { epoch } = await db.place();
    /** @type {PushAnswer | null} */
    const answer = await pushOnce([], epoch, kept);
    if (!answer) continue;
    if (answer.epoch !== epoch || !answer.kept?.length) return given; // another time
    await db.settleLost(answer.kept, clock.nowMs());
    given += kept.length;
    if (answer.kept.some((result) => result.st === "needs_look")) rebuild();
  }
  return given;
}

async function pull() {
  for (let round = 0; round < ROUNDS * 4; round += 1) {
    const { epoch, cursor } = await db.place();
    let answer;
    try {
      answer = await get(
        `/sync/pull?epoch=${epoch ?? ""}&after=${cursor}&limit=${PAGE}`,
      );
    } catch (/** @type {any} */ failure) {
      const told = failure.body?.epoch ?? failure.body?.error?.epoch;
      if (failure.status !== 409 || !told) throw failure;
      // Also with the epoch we know: then the server's log is shorter than we read.
      await startOver(told);
      continue;
    }
    heard();
    serverDisk.value = answer.disk ?? "fine";
    if (epoch === null) await meetEpoch(answer.epoch);
    await absorb(answer.events, answer.epoch, answer.next, answer.more);
    if (!answer.more) return true;
  }
  return false;
}

// Once per page: a server restored from a backup that kept its epoch would
// otherwise never be offered what it lost.
/** @param {string | undefined} device */
async function selfCheck(device) {
  if (selfChecked || !device) return 0;
  const have = await get(`/sync/have?device=${device}`);
  const missing = new Set(have.missing ?? []);
  const offered = await db.offerAgain((seq) => seq > have.upto || missing.has(seq));
  selfChecked = true;
  await countUnsent();
  return offered;
}

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
  again = false;
  let delayMs = EVERY_MS;
  try {
    await alone("vatside-sync", exchange);
    failures = 0;
    net.value = "online";
    netProblem.value = null;
    if (again) delayMs = 0; // something was recorded meanwhile
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
  if (document.visibilityState === "hidden" && failures === 0 && !again) {
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
    again = true;
    return;
  }
  if (Date.now() < notBeforeMs && why !== "asked") return;
  failures = 0;
  clearTimeout(timer);
  run();
}
