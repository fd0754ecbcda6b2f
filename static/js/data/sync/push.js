// What this phone has and the server lacks: its own entries, and those of others that
// a server set back to a backup no longer has.

import { post } from "../api.js";
import { clock } from "../clock.js";
import * as db from "../db.js";
import { rebuild } from "../desk.js";
import { countUnsent } from "../record.js";
import { heard, meetEpoch } from "./server.js";

/**
 * @typedef {{epoch: string, results: SentVerdict[], kept?: SentVerdict[],
 *     have?: {upto: number, missing?: number[]}}} PushAnswer
 */

const MOST = 200;
const MOST_BYTES = 1000000; // the server takes 1 MiB
const ROUNDS = 50;

let app = "unknown";
let batch = MOST;

/**
 * Name this app's version in each exchange.
 *
 * @param {string} version
 */
export function setAppVersion(version) {
  app = version;
}

/** @template T @param {T[]} events @returns {T[]} */
function cut(events) {
  let fits = events.slice(0, batch);
  while (fits.length > 1 && JSON.stringify(fits).length > MOST_BYTES) {
    fits = fits.slice(0, Math.ceil(fits.length / 2));
  }
  return fits;
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

export async function push() {
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
export async function giveBack() {
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
