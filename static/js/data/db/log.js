// What the server told, and all that the phone knows by it.

import { forgetMakes, isOver } from "./room.js";
import { read, write } from "./work.js";

const DAY_MS = 86400000;
const KEEP_SENT_MS = 14 * DAY_MS;
const KEEP_CLOSED_MS = 30 * DAY_MS;

/**
 * Keep what the server told, and only then where to go on.
 *
 * @param {PulledRow[]} rows
 * @param {string} epoch the log they belong to
 * @param {number} next
 * @returns {Promise<boolean>} false when the epoch changed meanwhile
 */
export function storePulled(rows, epoch, next) {
  return write(["log", "sent", "meta"], async (tx) => {
    const meta = tx.objectStore("meta");
    if ((await meta.get("epoch")) !== epoch) return false;
    const sent = tx.objectStore("sent");
    const own = await Promise.all(rows.map((row) => sent.get(row.event.id)));
    own.forEach((row) => row && !row.pulled && sent.put({ ...row, pulled: true }));
    for (const row of rows) {
      const { n, recv_ms: recvMs, event, receipt, proof_state: proofState } = row;
      const { id, make } = event;
      const kept = { id, make, n, recvMs, event, receipt, proofState, epoch };
      tx.objectStore("log").put(kept);
    }
    const cursor = (await meta.get("cursor")) ?? 0;
    await meta.put(Math.max(cursor, next), "cursor");
    return true;
  });
}

/**
 * An entry as the core files it: with what the server found of its proof.
 *
 * @param {Recorded} event
 * @param {string | null | undefined} proofState
 * @returns {Recorded}
 */
export function filed(event, proofState) {
  return proofState ? { ...event, proof_state: proofState } : event;
}

/**
 * Return every entry the phone knows of and the server did not put aside.
 *
 * In order of happening, because the core is quickest when told in order.
 *
 * @returns {Promise<Recorded[]>}
 */
export async function everything() {
  /** @type {{id: string, event: Recorded, proofState?: string | null}[]} */
  const rows = await read(["log", "sent", "queue"], async (tx) => [
    ...(await tx.objectStore("sent").getAll()),
    ...(await tx.objectStore("queue").getAll()),
    // Last, so that what the server found of a proof counts.
    ...(await tx.objectStore("log").getAll()),
  ]);
  const byId = new Map(rows.map((row) => [row.id, filed(row.event, row.proofState)]));
  return [...byId.values()].sort(
    (a, b) => a.at_ms + a.off_ms - b.at_ms - b.off_ms || a.seq - b.seq,
  );
}

/**
 * Forget what nobody needs on a phone any more.
 *
 * @param {number} nowMs
 * @param {MakeSummary[]} makes as the board lists them
 */
export function prune(nowMs, makes) {
  const old = makes.filter(
    (make) => isOver(make) && (make.last_word_ms ?? 0) < nowMs - KEEP_CLOSED_MS,
  );
  return write(["log", "sent", "saved"], async (tx) => {
    const sent = tx.objectStore("sent");
    for (const row of await sent.getAll()) {
      if (row.pulled && row.acked_ms < nowMs - KEEP_SENT_MS) sent.delete(row.id);
    }
    await forgetMakes(
      tx,
      old.map((make) => make.id),
    );
  });
}
