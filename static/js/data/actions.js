// What a screen may ask of the data, besides recording.

import { clock } from "./clock.js";
import * as db from "./db.js";
import * as desk from "./desk.js";
import { get } from "./api.js";
import { askToJoin } from "./join.js";
import { adoptPicked } from "./reads.js";
import { freshenRecipes } from "./recipes.js";
import { countUnsent } from "./record.js";
import { me, net, people, person, unsaved } from "./state.js";
import { kick } from "./sync.js";
import { tell } from "./tabs.js";

export { dropUnsaved, retryUnsaved } from "./record.js";
export { applyUpdate } from "./update.js";
export { freshenRecipes } from "./recipes.js";
export { putAside } from "./db.js";
export { watch } from "./live.js";
export { canKeepAwake, keepAwake } from "./wake.js";

/**
 * Show a make, or none; resolves when the core's view is shown.
 *
 * @param {string | null} id
 */
export async function openMake(id) {
  db.setSaved("open", id).catch(() => {});
  await desk.showMake(id);
}

/** Bring what is shown up to this moment, and ask the server. */
export async function refresh() {
  kick("asked");
  await desk.refresh();
}

/**
 * Read who this phone is paired to; keeps what is known when offline.
 *
 * @returns {Promise<Me | null>} rejects with ApiError
 */
export async function readMe() {
  const answer = await get("/me");
  const device = idOf(answer.device);
  if ((await db.getMeta("device")) !== device) {
    const { upto } = await get(`/sync/have?device=${device}`);
    await db.adoptDevice(device, upto ?? 0);
  }
  await learnMe({ person: answer.person, device }, answer.people);
  return me.value;
}

/** @param {string | {id: string}} device @returns {string} */
function idOf(device) {
  return typeof device === "string" ? device : device.id;
}

/** @param {Me} mine @param {Person[] | null} all */
async function learnMe(mine, all) {
  me.value = mine;
  people.value = all ?? people.value;
  if (!people.value.some((one) => one.id === person.value)) {
    person.value = mine.person.id;
  }
  await Promise.all([
    db.setSaved("me", me.value),
    db.setSaved("people", people.value),
    db.setSaved("person", person.value),
  ]);
}

/**
 * Pair this phone with the creamery's server.
 *
 * @param {string} code as typed, or from the address that a QR code carries
 * @param {{device_name: string, person_name?: string}} names
 * @returns {Promise<Me | null>} who it is paired to; rejects with ApiError
 */
export async function pair(code, names) {
  const mine = await askToJoin(code, names);
  person.value = mine.person.id;
  await learnMe(mine, null);
  await readMe().catch(() => {}); // asked again each minute
  await adoptPicked();
  freshenRecipes({ now: true }).catch(() => {});
  net.value = "online";
  kick("asked");
  return me.value;
}

/**
 * Say who taps from now on; entries carry this person.
 *
 * @param {string} id
 */
export async function setPerson(id) {
  person.value = id;
  tell({ person: id });
  await db.setSaved("person", id);
}

/**
 * Send an entry again that the server had put aside.
 *
 * @param {string} id
 */
export async function sendAgain(id) {
  await db.sendAsideAgain(id);
  await countUnsent();
  await desk.rebuild();
  kick("tap");
}

/**
 * Offer everything that is only on this phone as a file.
 *
 * @returns {Promise<{name: string, text: string}>} what the file holds
 */
export async function exportQueue() {
  const events = await db.unaccepted().catch(() => []);
  const kept = {
    vatside: "unsent entries",
    device: me.value?.device ?? null,
    made_ms: clock.nowMs(),
    events,
    unsaved: unsaved.value.map((entry) => entry.event),
  };
  const day = new Date(clock.nowMs()).toISOString().slice(0, 10);
  const file = { name: `vatside-unsent-${day}.json`, text: JSON.stringify(kept) };
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([file.text], { type: "application/json" }));
  link.download = file.name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60000);
  return file;
}
