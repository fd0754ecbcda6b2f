// Work in the database that holds, or says why it could not.
//
// A write has happened only when its transaction is complete, with strict
// durability: browsers default to relaxed, and a phone's battery can drop out.
// On a dead handle: drop it, open again, repeat, at most three times; every piece
// of work can be repeated without harm.

import { freeRoom } from "./room.js";
import { attempt, drop, problem } from "./stores.js";

/** @import { Store, Tx } from "./stores.js" */

const TRIES = 3;
const WAIT_MS = 8000;
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
export const read = (stores, work) => run("readonly", stores, work, "default");

/**
 * @template T
 * @param {Store[]} stores
 * @param {(tx: Tx<"readwrite">) => T | Promise<T>} work
 */
export const write = (stores, work) => run("readwrite", stores, work);

/**
 * As `write`, for what can be had again: a lost one does no harm.
 *
 * @template T
 * @param {Store[]} stores
 * @param {(tx: Tx<"readwrite">) => T | Promise<T>} work
 */
export const writeLightly = (stores, work) => run("readwrite", stores, work, "relaxed");
