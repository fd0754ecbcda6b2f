// The stores of the phone's database, and one piece of work in it.
//
// Phones close the database of a page in the background and leave its handle dead:
// whoever meets that drops it here, and the next piece of work opens it again.

import { openDB } from "idb";

import { storage } from "../state.js";

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
export function problem(key) {
  if (storage.value.problem !== key) {
    storage.value = { ...storage.value, problem: key };
  }
}

export function drop() {
  const old = opening;
  opening = null;
  old?.then((db) => db.close()).catch(() => {});
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
export async function attempt(mode, stores, durability, work) {
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
