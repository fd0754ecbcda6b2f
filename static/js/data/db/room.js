// Room on a full phone: what is a copy of what the server has may go.

import { attempt } from "./stores.js";

/** @import { Tx } from "./stores.js" */

// Only the cache of finished makes may go; what the phone alone holds stays.
export async function freeRoom() {
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
export function isOver(make) {
  return make.is_open === false;
}

/** @param {Tx<"readwrite">} tx @param {string[]} makes */
export async function forgetMakes(tx, makes) {
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
