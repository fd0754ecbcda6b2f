// Entries on their way to the server, and what became of each.

import { read, write } from "./work.js";

/** @import { Aside, Queued, Tx } from "./stores.js" */

/**
 * Keep an entry for sending, and count it in the same transaction.
 *
 * @param {Entry} event an envelope without `seq`
 * @returns {Promise<Recorded>} the entry with its `seq`, on disk
 */
export function enqueue(event) {
  return write(["queue", "meta"], async (tx) => {
    const queue = tx.objectStore("queue");
    const meta = tx.objectStore("meta");
    // Asked together: each answer of the disk costs a slow phone a turn.
    const [known, last] = await Promise.all([queue.get(event.id), meta.get("seq")]);
    // A try that seemed to fail may have been written after all.
    if (known) return known.event;
    const seq = (last ?? 0) + 1;
    const counted = { ...event, seq };
    await Promise.all([
      meta.put(seq, "seq"),
      queue.put({ id: event.id, seq, event: counted }),
    ]);
    return counted;
  });
}

/**
 * Return the oldest unsent entries, at most `limit`.
 *
 * @param {number} limit
 * @returns {Promise<Recorded[]>}
 */
export async function oldest(limit) {
  const rows = await read(["queue"], (tx) =>
    tx.objectStore("queue").index("seq").getAll(null, limit),
  );
  return rows.map((row) => row.event);
}

/**
 * Return {count, oldestMs, aside} of what the server has not accepted.
 *
 * @returns {Promise<{count: number, oldestMs: number | null, aside: number}>}
 */
export function pending() {
  return read(["queue", "needs_look"], async (tx) => {
    const queue = tx.objectStore("queue");
    const first = await queue.index("seq").getAll(null, 1);
    return {
      count: await queue.count(),
      oldestMs: first[0] ? first[0].event.at_ms + first[0].event.off_ms : null,
      aside: await tx.objectStore("needs_look").count(),
    };
  });
}

/**
 * Move entries by the server's verdicts; one without a verdict stays queued.
 *
 * @param {SentVerdict[]} results
 * @param {number} nowMs
 */
export function settle(results, nowMs) {
  return write(["queue", "sent", "needs_look"], async (tx) => {
    const queue = tx.objectStore("queue");
    const rows = await Promise.all(results.map((result) => queue.get(result.id)));
    results.forEach((result, at) => {
      const row = rows[at];
      if (!row) return;
      const kept = { id: row.id, seq: row.seq, event: row.event, n: result.n };
      if (result.st === "stored" || result.st === "duplicate") {
        tx.objectStore("sent").put({ ...kept, acked_ms: nowMs, pulled: false });
      } else if (result.st === "needs_look") {
        tx.objectStore("needs_look").put({ ...kept, why: result.why, at_ms: nowMs });
      } else {
        return;
      }
      queue.delete(row.id);
    });
  });
}

/**
 * Return what was put aside: [{id, event, why, n, at_ms}].
 *
 * @returns {Promise<Aside[]>}
 */
export function putAside() {
  return read(["needs_look"], (tx) => tx.objectStore("needs_look").getAll());
}

/**
 * Return every entry that the server has not accepted, put aside or queued.
 *
 * @returns {Promise<Recorded[]>}
 */
export async function unaccepted() {
  const rows = await read(["queue", "needs_look"], async (tx) => [
    ...(await tx.objectStore("queue").index("seq").getAll()),
    ...(await tx.objectStore("needs_look").getAll()),
  ]);
  return rows.map((row) => row.event);
}

/**
 * @param {Tx<"readwrite">} tx
 * @param {"sent" | "needs_look"} from
 * @param {(row: Queued) => boolean} wanted
 */
export async function moveBack(tx, from, wanted) {
  let moved = 0;
  for (const row of await tx.objectStore(from).getAll()) {
    if (!wanted(row)) continue;
    const { id, seq, event } = row;
    tx.objectStore("queue").put({ id, seq, event });
    tx.objectStore(from).delete(id);
    moved += 1;
  }
  return moved;
}

/**
 * Queue again what the server turns out not to have.
 *
 * @param {(seq: number) => boolean} lacks
 * @returns {Promise<number>} how many were moved
 */
export function offerAgain(lacks) {
  return write(["queue", "sent"], (tx) =>
    moveBack(tx, "sent", (row) => lacks(row.seq)),
  );
}

/**
 * Queue one entry again that was put aside, after a person asked for it.
 *
 * @param {string} id
 */
export function sendAsideAgain(id) {
  return write(["queue", "needs_look"], (tx) =>
    moveBack(tx, "needs_look", (row) => row.id === id),
  );
}
