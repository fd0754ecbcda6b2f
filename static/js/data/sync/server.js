// Which server speaks: one with another epoch was restored or is new, and is offered
// everything.

import { clock } from "../clock.js";
import * as db from "../db.js";
import { countUnsent } from "../record.js";
import { clockWarning, lastWordMs } from "../state.js";

/** What the exchange that runs leaves to the next one. */
export const round = { again: false };

export function heard() {
  lastWordMs.value = clock.nowMs();
  clockWarning.value = clock.warning();
}

/** @param {string} epoch */
export async function meetEpoch(epoch) {
  const known = await db.place();
  if (known.epoch !== epoch) await startOver(epoch);
}

/** @param {string} epoch */
export async function startOver(epoch) {
  await db.beginEpoch(epoch);
  await countUnsent();
  round.again = true; // what is offered again goes up in the next round
}
