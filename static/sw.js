const SHELL = { version: "from disk", files: ["/"] };
// The line above is filled in by the server from what lies on its disk.
//
// This worker keeps the app's own files, all of one version, and hands them out
// without asking the network. It never touches /api/: entries are kept and sent by
// the page, where a failure can be seen. A new version is fetched whole, then waits
// until the page says "activate". And it shows what a push says.

const PREFIX = "vatside-shell-";
const NAME = PREFIX + SHELL.version;
const LATER = /** @type {{later?: string[]}} */ (SHELL).later ?? [];
const LARGE = "/icons/vatside-512.png"; // the browser's own, at the home screen
const worker = /** @type {ServiceWorkerGlobalScope} */ (/** @type {unknown} */ (self));
// Vary names the compression, which is undone by now.
const SAME = { ignoreVary: true };

async function keep() {
  const cache = await caches.open(NAME);
  // "no-cache" asks the server about each file, so that no older copy of the
  // browser's own cache gets mixed in. One failure fails the whole installation.
  const files = [...SHELL.files, ...(await keptLater())];
  await cache.addAll(files.map((file) => new Request(file, { cache: "no-cache" })));
}

// What the packer names after what is in it is the same part in every version.
/** @param {string} file */
const partOf = (file) => file.replace(/-[0-9A-Z]{8}(?=\.js$)/, "");

// A screen, language or chart that this phone has must not be lost with the old version.
async function keptLater() {
  const boxes = await Promise.all(
    (await caches.keys()).map((name) => caches.open(name)),
  );
  const requests = (await Promise.all(boxes.map((box) => box.keys()))).flat();
  const held = new Set(requests.map(({ url }) => partOf(new URL(url).pathname)));
  return LATER.filter((file) => held.has(partOf(file)));
}

// The page says when there is time for what nobody has asked for yet.
async function keepLater() {
  const cache = await caches.open(NAME);
  for (const file of LATER.filter((one) => one !== LARGE)) {
    if (!(await cache.match(file, SAME))) await cache.add(file);
  }
}

async function forgetOld() {
  for (const name of await caches.keys()) {
    if (name.startsWith(PREFIX) && name !== NAME) await caches.delete(name);
  }
  await worker.clients.claim();
}

// Setting a phone up needs the server; without it the app itself is more use.
/** @param {Request} request */
async function answerSetup(request) {
  try {
    return await fetch(request);
  } catch (failure) {
    if (request.mode !== "navigate") throw failure;
    return answer(request);
  }
}

/** @param {Request} request */
async function answer(request) {
  const cache = await caches.open(NAME);
  const file = request.mode === "navigate" ? "/" : request;
  const kept = await cache.match(file, SAME);
  if (kept) return kept;
  const fetched = await fetch(request);
  const isLater = LATER.includes(new URL(request.url).pathname);
  if (isLater && fetched.ok) await cache.put(file, fetched.clone());
  return fetched;
}

worker.addEventListener("install", (event) => event.waitUntil(keep()));
worker.addEventListener("activate", (event) => event.waitUntil(forgetOld()));

worker.addEventListener("message", (event) => {
  if (event.data === "activate") worker.skipWaiting();
  if (event.data !== "later") return;
  const tell = () => event.ports?.[0]?.postMessage("kept");
  event.waitUntil(keepLater().then(tell, tell));
});

worker.addEventListener("fetch", (event) => {
  const { request } = event;
  const address = new URL(request.url);
  if (request.method !== "GET" || address.origin !== worker.location.origin) return;
  if (address.pathname.startsWith("/api/")) return;
  const isSetup = /^\/setup(\/|$)/.test(address.pathname);
  event.respondWith(isSetup ? answerSetup(request) : answer(request));
});

/** @param {PushEvent} push */
function told(push) {
  const unread = { title: "Vatside", body: "An alarm asks for an answer." };
  try {
    return push.data?.json().notification ?? unread;
  } catch {
    return unread;
  }
}

// Always shown, whatever it holds: browsers end a subscription whose pushes stay
// unseen.
worker.addEventListener("push", (event) => {
  const { title, body, tag = "alarm", navigate } = told(event);
  const shown = { body, tag, renotify: true, requireInteraction: true };
  const more = { icon: "/icons/vatside-192.png", vibrate: [400, 200, 400] };
  event.waitUntil(
    worker.registration.showNotification(title, { ...shown, ...more, data: navigate }),
  );
});

/** @param {string | undefined} navigate */
async function open(navigate) {
  // Only within our own pages, wherever the push points.
  const { hash } = new URL(navigate ?? "/#/alarms", worker.location.origin);
  const pages = await worker.clients.matchAll({ type: "window" });
  if (!pages.length) return worker.clients.openWindow("/" + hash);
  await pages[0].navigate("/" + hash).catch(() => {});
  return pages[0].focus();
}

worker.addEventListener("notificationclick", (event) => {
  event.notification.close();
  event.waitUntil(open(event.notification.data));
});
