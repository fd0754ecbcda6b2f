// The service worker among fakes of what a browser gives it.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import vm from "node:vm";

const SOURCE = readFileSync(new URL("../../static/sw.js", import.meta.url), "utf8");
const LATER = [
  "/lib/page-later-ABCD2345.js",
  "/lib/uplot.js",
  "/lib/lang-es.js",
  "/lib/lang-fr.js",
  "/icons/vatside-512.png",
];

function path(asked) {
  return new URL(asked.url ?? asked, "https://floor.creamery.org").pathname;
}

function fakeCaches(held) {
  const boxes = new Map(
    Object.entries(held).map(([name, files]) => [name, new Set(files)]),
  );
  const box = (name) => {
    if (!boxes.has(name)) boxes.set(name, new Set());
    return boxes.get(name);
  };
  return {
    boxes,
    keys: async () => [...boxes.keys()],
    delete: async (name) => boxes.delete(name),
    match: async (file) =>
      [...boxes.values()].some((one) => one.has(path(file))) || undefined,
    open: async (name) => ({
      addAll: async (requests) => requests.forEach((one) => box(name).add(path(one))),
      add: async (file) => box(name).add(path(file)),
      match: async (file) => box(name).has(path(file)) || undefined,
      keys: async () =>
        [...box(name)].map((one) => ({ url: "https://floor.creamery.org" + one })),
    }),
  };
}

/** Start a worker of a version; `tell(kind, event)` waits for what it keeps going. */
function worker(version, held = {}, fetch = undefined) {
  const listeners = {};
  const caches = fakeCaches(held);
  const self = {
    location: { origin: "https://floor.creamery.org" },
    addEventListener: (kind, listener) => {
      listeners[kind] = listener;
    },
    skipWaiting: () => {},
    clients: { claim: async () => {} },
  };
  const shell = JSON.stringify({ version, files: ["/", "/lib/page.js"], later: LATER });
  const text = SOURCE.replace(/^const SHELL = .*;/, `const SHELL = ${shell};`);
  class Request {
    constructor(url) {
      this.url = url;
    }
  }
  vm.runInNewContext(text, { self, caches, fetch, Request, URL });
  return {
    caches,
    tell: async (kind, event = {}) => {
      const going = [];
      listeners[kind]({ ...event, waitUntil: (one) => going.push(one) });
      await Promise.all(going);
    },
  };
}

test("a new version brings the languages along that the old one had", async () => {
  const old = ["/", "/lib/page.js", "/lib/lang-es.js"];
  const { caches, tell } = worker("2", { "vatside-shell-1": old });
  await tell("install");
  assert.deepEqual(
    [...caches.boxes.get("vatside-shell-2")],
    ["/", "/lib/page.js", "/lib/lang-es.js"],
  );
  await tell("activate");
  assert.deepEqual(await caches.keys(), ["vatside-shell-2"]);
});

test("a new version brings the screens along that the old one had, as they are now", async () => {
  const old = ["/", "/lib/page.js", "/lib/page-later-ZYXW6543.js"];
  const { caches, tell } = worker("2", { "vatside-shell-1": old });
  await tell("install");
  assert.deepEqual(
    [...caches.boxes.get("vatside-shell-2")],
    ["/", "/lib/page.js", "/lib/page-later-ABCD2345.js"],
  );
});

test("a first visit installs without what comes later", async () => {
  const { caches, tell } = worker("1");
  await tell("install");
  assert.deepEqual([...caches.boxes.get("vatside-shell-1")], ["/", "/lib/page.js"]);
});

test("in quiet time every language is kept, and no large icon", async () => {
  const { caches, tell } = worker("1");
  await tell("install");
  await tell("message", { data: "later" });
  const kept = [...caches.boxes.get("vatside-shell-1")];
  assert.deepEqual(kept.slice(2), [
    "/lib/page-later-ABCD2345.js",
    "/lib/uplot.js",
    "/lib/lang-es.js",
    "/lib/lang-fr.js",
  ]);
});

function asked(path, mode) {
  const answers = [];
  const request = { url: "https://floor.creamery.org" + path, method: "GET", mode };
  return { event: { request, respondWith: (one) => answers.push(one) }, answers };
}

const HELD = { "vatside-shell-1": ["/", "/lib/page.js"] };

test("the self-check comes from the server, not from what is kept", async () => {
  const { tell } = worker("1", HELD, async () => "from the server");
  for (const [path, mode] of [
    ["/setup", "navigate"],
    ["/setup/check.js", "cors"],
  ]) {
    const { event, answers } = asked(path, mode);
    await tell("fetch", event);
    assert.equal(await answers[0], "from the server");
  }
});

test("with no network the self-check's address opens the app", async () => {
  const { tell } = worker("1", HELD, async () => {
    throw new TypeError("failed");
  });
  const page = asked("/setup", "navigate");
  await tell("fetch", page.event);
  assert.equal(await page.answers[0], true);
  const file = asked("/setup/check.js", "cors");
  await tell("fetch", file.event);
  await assert.rejects(file.answers[0], /failed/);
});

test("an address that only begins like the self-check's is the app's", async () => {
  const { tell } = worker("1", HELD, async () => "from the server");
  const page = asked("/setups", "navigate");
  await tell("fetch", page.event);
  assert.equal(await page.answers[0], true);
});
