// What the server has and this phone lacks, or the other way round.

import { get } from "../api.js";
import * as db from "../db.js";
import { countUnsent } from "../record.js";
import { serverDisk } from "../state.js";
import { heard, meetEpoch, startOver } from "./server.js";
import { absorb } from "./told.js";

const PAGE = 500;
const ROUNDS = 200;

let selfChecked = false;

export async function pull() {
  for (let round = 0; round < ROUNDS; round += 1) {
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
export async function selfCheck(device) {
  if (selfChecked || !device) return 0;
  const have = await get(`/sync/have?device=${device}`);
  const missing = new Set(have.missing ?? []);
  const offered = await db.offerAgain((seq) => seq > have.upto || missing.has(seq));
  selfChecked = true;
  await countUnsent();
  return offered;
}
