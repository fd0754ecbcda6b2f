// What the phone knows of itself, and what it painted last.

import { read, write, writeLightly } from "./work.js";

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
  return writeLightly(["saved"], (tx) => tx.objectStore("saved").put(value, key));
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

/** Find out whether the database still answers, and open it again if not. */
export async function probe() {
  try {
    await getMeta("device");
    return true;
  } catch {
    return false;
  }
}
