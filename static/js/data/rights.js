// Who may do what, as the core told it last: kinds of entry, and what is no entry.

import * as ask from "./ask.js";
import { setSaved } from "./db.js";
import { rights } from "./state.js";

/** Take the rights from the core, and keep them for the next opening. */
export async function learnRights() {
  rights.value = await ask.rights();
  await setSaved("rights", rights.value);
}

/**
 * Tell whether a role may record a kind of entry, or do what is no entry.
 *
 * @param {Role | undefined} role
 * @param {string} act
 */
export function roleMay(role, act) {
  return role !== undefined && (rights.value[act] ?? []).includes(role);
}
