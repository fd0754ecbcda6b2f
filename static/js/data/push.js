// Pushes: this browser's subscription, kept alive.
//
// Phones drop subscriptions without a word, and iPhones have no event for it. So
// at each opening the page looks whether it still has one and posts it again.

import { signal } from "@preact/signals";

import { get, post, remove } from "./api.js";
import { getSaved, setSaved } from "./db.js";
import { me } from "./state.js";

/** @import { Signal } from "@preact/signals" */

const AGAIN_MS = 3600000;

/**
 * How pushes fare: {here, server}. `here` is what this browser says: "unknown",
 * "not_secure", "no_support", "not_installed", "not_asked", "denied",
 * "no_subscription", "subscribed"; `server` is the answer of GET /push, or null.
 *
 * @type {Signal<{here: string, server: any}>}
 */
export const push = signal({ here: "unknown", server: null });

async function manager() {
  // Declarative pushes need no worker; every other browser has it on the worker.
  if (globalThis.pushManager) return globalThis.pushManager;
  const worker = await navigator.serviceWorker?.getRegistration();
  return worker?.pushManager ?? null;
}

function isIphoneTab() {
  // On an iPhone only the app on the home screen may have pushes.
  return navigator.standalone === false;
}

async function lookHere() {
  if (!globalThis.isSecureContext) return "not_secure";
  if (isIphoneTab()) return "not_installed";
  const pushes = "Notification" in globalThis ? await manager() : null;
  if (!pushes) return "no_support";
  if (Notification.permission === "default") return "not_asked";
  if (Notification.permission === "denied") return "denied";
  const existing = await pushes.getSubscription();
  return existing ? "subscribed" : "no_subscription";
}

/** Look how pushes fare, here and on the server. */
export async function lookAtPush() {
  const here = await lookHere().catch(() => "no_support");
  const server = await get("/push").catch(() => null);
  push.value = { here, server };
  return push.value;
}

/** @param {PushSubscription} subscription @param {string} text */
function sameKey(subscription, text) {
  const key = subscription.options?.applicationServerKey;
  if (!key) return true;
  const own = btoa(String.fromCharCode(...new Uint8Array(key)));
  return own.replaceAll("+", "-").replaceAll("/", "_").replace(/=+$/, "") === text;
}

/** @param {string} key */
async function subscription(key) {
  const pushes = await manager();
  if (!pushes) throw new TypeError("no pushes in this browser");
  const existing = await pushes.getSubscription();
  if (existing && sameKey(existing, key)) return existing;
  await existing?.unsubscribe(); // made for another server's key: it is dead
  return pushes.subscribe({ userVisibleOnly: true, applicationServerKey: key });
}

/** @param {string} wants */
async function postIt(wants) {
  const server = await get("/push");
  const { endpoint, keys } = (await subscription(server.public_key)).toJSON();
  await post("/push/subscriptions", { endpoint, keys, wants });
  await setSaved("push_wants", wants);
}

/**
 * Let alarms come to this phone; within a tap, which the permission needs.
 *
 * @param {string} wants "all", or "unanswered" for what nobody answers
 */
export async function turnOnPush(wants) {
  if ((await Notification.requestPermission()) === "granted") await postIt(wants);
  return lookAtPush();
}

/** Let no more alarms come to this phone. */
export async function turnOffPush() {
  await setSaved("push_wants", null);
  await remove("/push/subscriptions");
  const existing = await (await manager())?.getSubscription();
  await existing?.unsubscribe();
  return lookAtPush();
}

/** Have the server send a visible test; resolves with the service's status. */
export async function testPush() {
  const { status } = await post("/push/test");
  await lookAtPush();
  return status;
}

async function postAgain() {
  const [wants] = await getSaved(["push_wants"]).catch(() => []);
  if (!wants || !me.value || Notification?.permission !== "granted") return;
  await postIt(wants).catch(() => {}); // offline: the next opening does it
}

/** Post the subscription again, at this opening and now and then. */
export function beginPush() {
  if (!("Notification" in globalThis)) return;
  postAgain();
  setInterval(postAgain, AGAIN_MS);
}
