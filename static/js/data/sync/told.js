// What others did, from the server or from another tab: kept, then shown.

import * as db from "../db.js";
import { refreshBoard, refreshView, take } from "../desk.js";
import { countUnsent } from "../record.js";
import { openMakeId } from "../state.js";
import { tell } from "../tabs.js";

let touched = false; // the make on the screen, by entries not shown yet

/**
 * Keep entries that the server told, then let the core and the screens know.
 *
 * @param {PulledRow[]} rows
 * @param {string} epoch
 * @param {number} next
 * @param {boolean} more whether the server has still more to tell: half a day's
 *     entries would show alarms that the other half answers
 */
export async function absorb(rows, epoch, next, more = false) {
  if (!(await db.storePulled(rows, epoch, next))) return false;
  if (!rows.length) return true;
  const events = rows.map((row) => db.filed(row.event, row.proof_state));
  tell({ events });
  show(events, more); // not waited for: a core that hangs must not stop the exchange
  return true;
}

/** @param {Recorded[]} events @param {boolean} more */
async function show(events, more = false) {
  // What the core missed here it finds on disk at its next start.
  const taken = await take(events).catch(() => null);
  touched ||= !taken?.changed || taken.changed.includes(openMakeId.value ?? "");
  if (more) return;
  if (touched) refreshView().catch(() => {});
  touched = false;
  refreshBoard().catch(() => {});
}

/**
 * Show what another tab recorded or pulled.
 *
 * @param {Recorded[]} events
 */
export function fromOtherTab(events) {
  countUnsent().catch(() => {});
  return show(events);
}
