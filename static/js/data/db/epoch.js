// A server that is new, or was set back to a backup: what it lacks is offered again.

import { moveBack } from "./queue.js";
import { setMeta } from "./saved.js";
import { read, write } from "./work.js";

/**
 * Meet a server that is new or was restored: offer everything, read from 0.
 *
 * @param {string} epoch the server's new name for its log
 */
export function beginEpoch(epoch) {
  return write(["queue", "sent", "needs_look", "meta"], async (tx) => {
    const meta = tx.objectStore("meta");
    await moveBack(tx, "sent", () => true);
    await moveBack(tx, "needs_look", () => true);
    await Promise.all([
      meta.put(epoch, "epoch"),
      meta.put(0, "cursor"),
      // Once all is read anew, what was not told again is nowhere but here.
      meta.put(true, "compare"),
    ]);
  });
}

/**
 * Return what the server had told of, and lacks since it was set back.
 *
 * To be asked once the log was read whole; own entries that wait are not among them.
 *
 * @param {number} limit
 * @returns {Promise<{event: Recorded, receipt: any, proof_state: string | null}[]>}
 */
export function lost(limit) {
  return read(["log", "queue", "meta"], async (tx) => {
    const meta = tx.objectStore("meta");
    if (!(await meta.get("compare"))) return [];
    const epoch = await meta.get("epoch");
    const queue = tx.objectStore("queue");
    const rows = await tx.objectStore("log").getAll();
    /** @type {{event: Recorded, receipt: any, proof_state: string | null}[]} */
    const found = [];
    for (const row of rows) {
      if (row.epoch === epoch || found.length >= limit) continue;
      if (await queue.get(row.id)) continue;
      const { event, receipt = null, proofState = null } = row;
      found.push({ event, receipt, proof_state: proofState });
    }
    return found;
  });
}

/** Note that nothing more is to be given back until the server is set back again. */
export function compared() {
  return setMeta("compare", false);
}

/**
 * Keep what became of entries given back: taken, or put aside with a reason.
 *
 * @param {SentVerdict[]} results
 * @param {number} nowMs
 */
export function settleLost(results, nowMs) {
  return write(["log", "needs_look", "meta"], async (tx) => {
    const log = tx.objectStore("log");
    const epoch = await tx.objectStore("meta").get("epoch");
    for (const result of results) {
      const row = await log.get(result.id);
      if (!row) continue;
      if (result.st === "stored" || result.st === "duplicate") {
        await log.put({ ...row, epoch });
      } else if (result.st === "needs_look") {
        const { id, event } = row;
        const aside = { id, seq: event.seq, event, n: result.n };
        await tx
          .objectStore("needs_look")
          .put({ ...aside, why: result.why, at_ms: nowMs });
        await log.delete(id);
      }
    }
  });
}

/**
 * Return {epoch, cursor}: where the next pull begins.
 *
 * @returns {Promise<{epoch: string | null, cursor: number}>}
 */
export function place() {
  return read(["meta"], async (tx) => ({
    epoch: (await tx.objectStore("meta").get("epoch")) ?? null,
    cursor: (await tx.objectStore("meta").get("cursor")) ?? 0,
  }));
}
