// What must survive on the phone: IndexedDB, and the ways in which it fails.
//
// queue       entries not yet acknowledged; never deleted, only moved
// sent        acknowledged entries, kept 14 days and until seen in a pull, so
//             that a server restored from a backup gets them again
// needs_look  entries that the server put aside, with its reasons
// log         entries as the server told them, with its receipt and the epoch it
//             told them in; a cache, unless the server was set back meanwhile
// meta        device, counter, cursor, epoch
// saved       what was painted last, recipes, people; a cache
//
// A write has happened only when its transaction is complete, with strict
// durability: browsers default to relaxed, and a phone's battery can drop out.
// Phones close the database of a page in the background and leave its handle
// dead. So on a dead handle: drop it, open again, repeat, at most three times;
// every piece of work below can be repeated without harm.

import { openDB } from "idb";

import { storage } from "./state.js";

/** @typedef {{id: string, seq: number, event: Recorded}} Queued */
/** @typedef {Queued & {n: number, acked_ms: number, pulled: boolean}} Sent */
/** @typedef {Queued & {n: number, why: any, at_ms: number}} Aside */
/**
 * @typedef {{id: string, make: string | null, n: number, recvMs: number, event: Recorded,
 *     receipt?: any, proofState?: string | null, epoch: string}} Pulled
 */
/**
 * @typedef {{
 *   queue: {key: string, value: Queued, indexes: {seq: number}},
 *   sent: {key: string, value: Sent},
 *   needs_look: {key: string, value: Aside},
 *   log: {key: string, value: Pulled, indexes: {make: string}},
 *   meta: {key: string, value: any},
 *   saved: {key: string, value: any},
 * }} Stores
 */
/** @typedef {keyof Stores} Store */
/** @typedef {import("idb").IDBPDatabase<Stores>} Opened */
/**
 * @template {"readonly" | "readwrite"} M
 * @typedef {import("idb").IDBPTransaction<Stores, Store[], M>} Tx
 */

const NAME = "vatside";
const VERSION = 1;
const TRIES = 3;
const WAIT_MS = 8000;
const DAY_MS = 86400000;
const KEEP_SENT_MS = 14 * DAY_MS;
const KEEP_CLOSED_MS = 30 * DAY_MS;
const DEAD = [
  "InvalidStateError",
  "UnknownError",
  "AbortError",
  "TransactionInactiveError",
  "TimeoutError",
];

/** Says with a message key why the phone could not keep something. */
export class StorageError extends Error {
  /** @param {string} key @param {any} [cause] */
  constructor(key, cause) {
    super(`${key}: ${cause?.name ?? ""} ${cause?.message ?? ""}`.trim());
    this.name = "StorageError";
    this.key = key;
  }
}

/** @param {Opened} db */
function upgrade(db) {
  // Only ever add: an old page must still be able to send what it holds.
  if (!db.objectStoreNames.contains("queue")) {
    db.createObjectStore("queue", { keyPath: "id" }).createIndex("seq", "seq");
    db.createObjectStore("sent", { keyPath: "id" });
    db.createObjectStore("needs_look", { keyPath: "id" });
    db.createObjectStore("log", { keyPath: "id" }).createIndex("make", "make");
    db.createObjectStore("meta");
    db.createObjectStore("saved");
  }
}

/** @type {Promise<Opened> | null} */
let opening = null;

/** @param {string | null} key */
function problem(key) {
  if (storage.value.problem !== key) {
    storage.value = { ...storage.value, problem: key };
  }
}

function drop() {
  const old = opening;
  opening = null;
  old?.then((db) => db.close()).catch(() => {});
}

/** @template T @param {Promise<T>} promise @param {number} ms @returns {Promise<T>} */
function within(promise, ms) {
  /** @type {number | undefined} */
  let timer;
  /** @type {Promise<never>} */
  const late = new Promise((_, reject) => {
    timer = setTimeout(() => reject(new DOMException("", "TimeoutError")), ms);
  });
  return Promise.race([promise, late]).finally(() => clearTimeout(timer));
}

function open() {
  opening ??= openDB(NAME, VERSION, {
    upgrade,
    blocked: () => problem("storage_blocked"),
    blocking: drop, // a newer page wants to upgrade: let go at once
    terminated: drop,
  });
  return opening;
}

/**
 * @template T
 * @template {"readonly" | "readwrite"} M
 * @param {M} mode
 * @param {Store[]} stores
 * @param {IDBTransactionDurability} durability
 * @param {(tx: Tx<M>) => T | Promise<T>} work
 * @returns {Promise<T>}
 */
async function attempt(mode, stores, durability, work) {
  const db = await open();
  const tx = db.transaction(stores, mode, { durability });
  tx.done.catch(() => {}); // reported below, never as "unhandled"
  try {
    const value = await work(tx);
    await tx.done;
    return value;
  } catch (failure) {
    try {
      tx.abort();
    } catch {
      // It is over already.
    }
    throw tx.error ?? failure;
  }
}

/**
 * @template T
 * @template {"readonly" | "readwrite"} M
 * @param {M} mode
 * @param {Store[]} stores
 * @param {(tx: Tx<M>) => T | Promise<T>} work
 * @param {IDBTransactionDurability} [durability]
 * @returns {Promise<T>}
 */
async function run(mode, stores, work, durability = "strict") {
  let freed = false;
  for (let tries = 1; ; tries += 1) {
    try {
      const value = await within(attempt(mode, stores, durability, work), WAIT_MS);
      // A disk that can be read may still refuse to be written.
      if (mode === "readwrite") problem(null);
      return value;
    } catch (/** @type {any} */ failure) {
      if (failure.name === "QuotaExceededError" && !freed) {
        freed = true;
        if (await freeRoom()) continue;
      }
      if (failure.name === "QuotaExceededError") {
        problem("storage_full");
        throw new StorageError("storage_full", failure);
      }
      drop();
      if (!DEAD.includes(failure.name) || tries >= TRIES) {
        problem("storage_failed");
        throw new StorageError("storage_failed", failure);
      }
    }
  }
}

/**
 * @template T
 * @param {Store[]} stores
 * @param {(tx: Tx<"readonly">) => T | Promise<T>} work
 */
const read = (stores, work) => run("readonly", stores, work, "default");
/**
 * @template T
 * @param {Store[]} stores
 * @param {(tx: Tx<"readwrite">) => T | Promise<T>} work
 */
const write = (stores, work) => run("readwrite", stores, work);

// Only the cache of finished makes may go; what the phone alone holds stays.
async function freeRoom() {
  try {
    const board = await attempt("readonly", ["saved"], "default", (tx) =>
      tx.objectStore("saved").get("board"),
    );
    /** @type {MakeSummary[]} */
    const makes = board?.makes ?? [];
    const ids = makes.filter((make) => isOver(make)).map((make) => make.id);
    /** @param {Tx<"readwrite">} tx */
    const work = (tx) => forgetMakes(tx, ids);
    return (await attempt("readwrite", ["saved", "log"], "strict", work)) > 0;
  } catch {
    return false;
  }
}

/**
 * Of a board saved by an older app nothing is known, and so nothing is forgotten.
 *
 * @param {Pick<MakeSummary, "is_open">} make
 */
function isOver(make) {
  return make.is_open === false;
}

/** @param {Tx<"readwrite">} tx @param {string[]} makes */
async function forgetMakes(tx, makes) {
  const log = tx.objectStore("log");
  let forgotten = 0;
  for (const make of makes) {
    const ids = await log.index("make").getAllKeys(make);
    for (const id of ids) log.delete(id);
    tx.objectStore("saved").delete(`view:${make}`);
    forgotten += ids.length;
  }
  return forgotten;
}

/**
 * Return a value of `meta`, or undefined.
 *
 * @param {string} key
 * @returns {Promise<any>}
 */
export function getMeta(key) {
  return read(["meta"], (tx) => tx.objectStore("meta").get(key));
}

/**
 * Keep a value in `meta`.
 *
 * @param {string} key
 * @param {any} value
 */
export function setMeta(key, value) {
  return write(["meta"], (tx) => tx.objectStore("meta").put(value, key));
}

/**
 * Return several saved paintings at once, in the order asked.
 *
 * @param {string[]} keys
 */
export function getSaved(keys) {
  return read(["saved"], (tx) =>
    Promise.all(keys.map((key) => tx.objectStore("saved").get(key))),
  );
}

/**
 * Return what the first painting needs, in one go: the clock, the paintings of
 * these keys, and the view of the make that was open.
 *
 * @param {string[]} keys
 * @returns {Promise<{clock?: any, saved: any[], open?: string, view?: View}>}
 */
export function getFirst(keys) {
  return read(["meta", "saved"], async (tx) => {
    const saved = tx.objectStore("saved");
    const [clock, open, ...rest] = await Promise.all([
      tx.objectStore("meta").get("clock"),
      saved.get("open"),
      ...keys.map((key) => saved.get(key)),
    ]);
    const view = open ? await saved.get(`view:${open}`) : undefined;
    return { clock, saved: rest, open, view };
  });
}

/**
 * Keep a painting; it can be had again, so a lost one does no harm.
 *
 * @param {string} key
 * @param {any} value
 */
export function setSaved(key, value) {
  return run(
    "readwrite",
    ["saved"],
    (tx) => tx.objectStore("saved").put(value, key),
    "relaxed",
  );
}

/**
 * Return this installed copy's id, made at the first call.
 *
 * @param {() => string} make gives a new one
 */
export function deviceId(make) {
  return write(["meta"], async (tx) => {
    const meta = tx.objectStore("meta");
    const known = await meta.get("device");
    if (known) return known;
    const device = make();
    await meta.put(device, "device");
    return device;
  });
}

/**
 * Go on as the copy that the server knows, when the database was lost and the
 * pairing was not; counts on from what the server has of it.
 *
 * @param {string} device
 * @param {number} upto highest counter the server has
 */
export function adoptDevice(device, upto) {
  return write(["meta"], async (tx) => {
    const meta = tx.objectStore("meta");
    const seq = (await meta.get("seq")) ?? 0;
    await Promise.all([
      meta.put(device, "device"),
      meta.put(Math.max(seq, upto), "seq"),
    ]);
  });
}

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
async function moveBack(tx, from, wanted) {
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

/** Find out whether the database still answers, and open it again if not. */
export async function probe() {
  try {
    await getMeta("device");
    return true;
  } catch {
    return false;
  }
}
