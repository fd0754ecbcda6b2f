// The app's own files: kept for offline, and renewed only when a person says so.
//
// Installed copies may not look for a new version for days, so the page asks. A
// new version waits; a tap lets it in while nothing is being written or sent.

import { scriptAddress } from "../trusted.js";
import { get } from "./api.js";
import { isWriting } from "./record.js";
import { core, offlineReady, syncing, unsaved, updateReady } from "./state.js";

// What a phone starts without and cannot do without once the network is gone.
const REST = "/core-later.json";
const HOUR_MS = 3600000;
const HEARD_MS = 8000;

/** @type {ServiceWorkerRegistration | null} */
let registration = null;
let letIn = false;

function look() {
  registration?.update().catch(() => {}); // no network: the next look finds it
}

/** @param {ServiceWorker | null | undefined} worker */
function watchFor(worker) {
  worker?.addEventListener("statechange", () => {
    if (worker.state === "installed" && navigator.serviceWorker.controller) {
      updateReady.value = true;
    }
  });
}

async function lookForRest() {
  // Vary names the compression, which is undone by now.
  if (await caches.match(REST, { ignoreVary: true })) offlineReady.value = "ready";
}

/**
 * Keep what one screen or one person alone needs, once all else runs.
 *
 * @param {() => void} then called when it was tried: the core may take its rest
 */
export async function keepLater(then) {
  if (!navigator.serviceWorker || offlineReady.value === "unavailable") {
    then();
    return;
  }
  const { active } = await navigator.serviceWorker.ready;
  const { port1, port2 } = new MessageChannel();
  port1.onmessage = () => {
    then();
    lookForRest();
  };
  active?.postMessage("later", [port2]);
}

/** Keep the app for offline use; plain http on a network cannot. */
export async function keepOffline() {
  if (!("serviceWorker" in navigator)) {
    offlineReady.value = "unavailable";
    return;
  }
  const workers = navigator.serviceWorker;
  const hadOne = Boolean(workers.controller);
  workers.addEventListener("controllerchange", () => {
    if (letIn) location.reload();
    // Another tab let the new version in: this one still runs the old.
    else if (hadOne) updateReady.value = true;
  });
  try {
    registration = await workers.register(scriptAddress("/sw.js"), {
      updateViaCache: "none",
    });
  } catch {
    offlineReady.value = workers.controller ? "ready" : "unavailable";
    return;
  }
  if (!registration) {
    offlineReady.value = "unavailable"; // a browser that says yes and does nothing
    return;
  }
  if (registration.waiting && workers.controller) updateReady.value = true;
  watchFor(registration.installing);
  registration.addEventListener("updatefound", () =>
    watchFor(registration?.installing),
  );
  workers.ready.then(lookForRest);
  setInterval(look, HOUR_MS);
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "visible") look();
  });
}

// Chromium leaves the new version waiting when it is let in while the old one is
// handing out a file, and then forgets the wish. So the wish comes in a quiet
// moment, and if it was not heard all the same, the page takes the new version
// straight from the server, having made sure that the server is there.
/** @param {ServiceWorkerRegistration} known @param {ServiceWorker} waiting */
async function letNewIn(known, waiting) {
  letIn = true;
  waiting.postMessage("activate");
  await new Promise((resolve) => setTimeout(resolve, HEARD_MS));
  try {
    await get("/health");
    await known.unregister();
    location.reload();
  } catch {
    letIn = false; // no network: the next tap tries again
  }
}

/**
 * Let the new version in, after a tap on "new version ready".
 *
 * @returns {boolean} false when something is being loaded, written or sent just
 *     now, or a value on the screen is not saved yet
 */
export function applyUpdate() {
  const isBusy =
    isWriting() ||
    syncing.value ||
    core.value === "starting" ||
    unsaved.value.length > 0;
  if (!registration || isBusy) return false;
  if (registration.waiting) letNewIn(registration, registration.waiting);
  else location.reload();
  return true;
}
