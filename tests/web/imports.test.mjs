// Imports of the page point one way: screens, parts, data, the bridge to the core.

import assert from "node:assert/strict";
import { test } from "node:test";

import { circles, graphOf, homeless, upward } from "./imports.mjs";

const PAGE = graphOf(new URL("../../static/js/", import.meta.url));
const SETUP = graphOf(new URL("../../static/setup/", import.meta.url));

function importersOf(name) {
  return [...PAGE].filter(([, all]) => all.includes(name)).map(([from]) => from);
}

test("every module has a row, and what it imports is there", () => {
  assert.ok(PAGE.size > 100);
  assert.deepEqual(homeless(PAGE), []);
});

test("no module imports one of a row above its own", () => {
  assert.deepEqual(upward(PAGE), []);
});

test("no modules import each other in a circle", () => {
  assert.deepEqual(circles(PAGE), []);
  assert.deepEqual(circles(SETUP), []);
});

test("what breaks these rules is named", () => {
  const wrong = new Map([
    ["parts/a.js", ["screens/b.js"]],
    ["screens/b.js", ["screens/c.js", "preact"]],
    ["screens/c.js", ["screens/b.js"]],
    ["attic/d.js", ["data/gone.js"]],
  ]);
  assert.deepEqual(upward(wrong), ["parts/a.js > screens/b.js"]);
  assert.deepEqual(circles(wrong), ["screens/b.js > screens/c.js > screens/b.js"]);
  assert.deepEqual(homeless(wrong), ["attic/d.js", "attic/d.js", "data/gone.js"]);
});

test("the core is asked by the file of questions alone", () => {
  const around = ["data/desk.js", "data/start.js"]; // they start it, and ask nothing
  assert.deepEqual(importersOf("core/bridge.js").sort(), ["data/ask.js", ...around]);
  assert.deepEqual(importersOf("core/worker.js"), []);
});

test("what comes later imports nothing, so that it shares the page's signals", () => {
  const later = [...PAGE].filter(([name]) => name.startsWith("parts/later/"));
  assert.ok(later.length > 5);
  for (const [name, all] of later) assert.deepEqual(all, [], name);
});

test("the set-up page imports nothing of an app that is not trusted yet", () => {
  const found = new Set(["plain.js"]);
  for (const name of found) for (const next of SETUP.get(name) ?? []) found.add(next);
  assert.ok(found.size > 5);
  for (const name of found) assert.ok(SETUP.has(name), name);
});
