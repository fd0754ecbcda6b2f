// Signing a phone out: the server forgets its token, the phone forgets its person.
//
// What was entered here is not the person's session: entries that wait stay in the
// queue, and go up when this phone joins again, whoever it then belongs to.

import { ApiError, post } from "./api.js";
import * as db from "./db.js";
import { pins } from "./pins.js";
import { board, me, net, openMakeId, people, person, unsaved, view } from "./state.js";
import { tell } from "./tabs.js";

// Paintings that name people or show a make; they can be had again.
// With them the wrapped keys, which a PIN could be tried against.
const FORGOTTEN = ["me", "people", "person", "board", "open", "push_wants", "pins"];

/**
 * Sign this phone out.
 *
 * @param {{leave?: boolean}} how leave: entries that wait may stay on this phone
 * @returns {Promise<void>} rejects with ApiError; "unsent_wait" while entries wait
 */
export async function signOut({ leave = false } = {}) {
  const { count } = await db.pending();
  const waits = count + unsaved.value.length;
  if (waits && !leave) throw new ApiError(0, { key: "unsent_wait", limit: waits });
  await post("/me/sign-out").catch((failure) => {
    // The server knows this phone no more: then there is nothing left to undo there.
    if (failure.status !== 401) throw failure;
  });
  await forget();
  tell({ signedOut: true });
}

async function forget() {
  await Promise.all(FORGOTTEN.map((key) => db.setSaved(key, undefined)));
  showNobody();
}

/** Show that nobody is signed in on this phone; also told by another tab. */
export function showNobody() {
  openMakeId.value = null;
  view.value = null;
  board.value = null;
  people.value = [];
  person.value = null;
  me.value = null;
  pins.value = null;
  net.value = "not_paired";
}
