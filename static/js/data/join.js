// Joining the creamery, for the app and for the set-up page alike.

import { post } from "./api.js";
import { deviceId, setSaved } from "./db.js";
import { uuid4 } from "./uuid.js";

/**
 * Ask the server to pair this phone.
 *
 * @param {string} code as typed, or from the address that a QR code carries
 * @param {{device_name: string, person_name?: string}} names
 * @returns {Promise<Me>} rejects with ApiError
 */
export async function askToJoin(code, names) {
  const device = await deviceId(uuid4);
  const { person } = await post("/pair", { ...names, code, device });
  return { person, device };
}

/**
 * Keep who this phone belongs to, for the app's next opening.
 *
 * @param {Me} mine
 * @param {string} language
 */
export async function keepJoined(mine, language) {
  await setSaved("me", mine);
  await setSaved("person", mine.person.id);
  if (!mine.person.language)
    await setSaved("reads", { [mine.person.id]: { language } });
}
