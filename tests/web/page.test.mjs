// The page without a browser keeps to itself what a real one would.

import assert from "node:assert/strict";
import { test } from "node:test";

import { phone, until } from "./page.mjs";

const entry = { id: "a", make: "m", kind: "note_added", at_ms: 1, off_ms: 0, data: {} };

test("a phone that an earlier test left behind speaks to its own server alone", async () => {
  const earlier = phone();
  const left = await earlier.open();
  await left.db.enqueue(entry);
  left.sync.kick("asked");
  await until(() => !left.state.syncing.value, "the exchange to fail");
  const later = phone();
  await later.open();
  earlier.asked.length = 0;
  earlier.pass(1000); // it tries again
  await until(() => !left.state.syncing.value, "the exchange to fail again");
  assert.deepEqual(
    earlier.asked.map(({ path }) => path),
    ["/sync/push"],
  );
  assert.deepEqual(later.asked, []);
});

test("what would come later comes when the test lets the time pass, in order", async () => {
  const world = phone();
  await world.open();
  const { setTimeout, setInterval, clearTimeout } = globalThis.browsers.at(-1);
  const came = [];
  setTimeout(() => came.push("late"), 30);
  setInterval(() => came.push("again"), 20);
  clearTimeout(setTimeout(() => came.push("never"), 10));
  setTimeout(() => came.push("soon"));
  await until(() => !world.soon(), "what comes at once");
  assert.deepEqual(came, ["soon"]);
  assert.equal(world.pass(19), 0);
  assert.equal(world.pass(21), 3);
  assert.deepEqual(came, ["soon", "again", "late", "again"]);
});
