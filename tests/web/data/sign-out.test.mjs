// Signing out: what the phone forgets, and what it must not.

import assert from "node:assert/strict";
import { test } from "node:test";

import { phone } from "../page.mjs";

const ENTRY = { id: "a", make: "m", kind: "note_added", at_ms: 1, off_ms: 0, data: {} };
const MARA = { person: { id: "p1", name: "Mara", role: "maker" }, device: "d1" };

async function signedIn(server = () => new Response(null, { status: 204 })) {
  const world = phone();
  world.server = server;
  const page = await world.open();
  await page.db.setSaved("me", MARA);
  await page.db.setSaved("people", [MARA.person]);
  await page.db.setMeta("device", "d1");
  page.state.me.value = MARA;
  page.state.people.value = [MARA.person];
  page.state.person.value = "p1";
  return { world, ...page, signOut: page["sign-out"].signOut };
}

test("the server is told, and the phone forgets who it belonged to", async () => {
  const { world, db, state, signOut } = await signedIn();
  await signOut();
  assert.deepEqual(
    world.asked.map(({ method, path }) => `${method} ${path}`),
    ["POST /me/sign-out"],
  );
  assert.equal(state.me.value, null);
  assert.deepEqual(state.people.value, []);
  assert.equal(state.person.value, null);
  assert.equal(state.net.value, "not_paired");
  assert.deepEqual(await db.getSaved(["me", "people"]), [undefined, undefined]);
  const after = await world.open();
  assert.deepEqual(await after.db.getSaved(["me", "person"]), [undefined, undefined]);
  // The copy stays the same copy: a new pairing counts on from its last entry.
  assert.equal(await after.db.getMeta("device"), "d1");
});

test("while entries wait it refuses, says how many, and asks no server", async () => {
  const { world, db, state, signOut } = await signedIn();
  await db.enqueue(ENTRY);
  await assert.rejects(signOut(), { key: "unsent_wait", limit: 1 });
  assert.deepEqual(world.asked, []);
  assert.deepEqual(state.me.value, MARA);
});

test("an entry that never reached the disk counts as one that waits", async () => {
  const { state, signOut } = await signedIn();
  state.unsaved.value = [{ id: "x", event: ENTRY }];
  await assert.rejects(signOut(), { key: "unsent_wait", limit: 1 });
});

test("what a person leaves behind stays in the queue, word for word", async () => {
  const { world, db, signOut } = await signedIn();
  await db.enqueue(ENTRY);
  const before = await db.oldest(10);
  await signOut({ leave: true });
  assert.deepEqual(await db.oldest(10), before);
  const after = await world.open();
  assert.deepEqual(await after.db.oldest(10), before);
});

test("with no network nobody is signed out by halves", async () => {
  const { state, db, signOut } = await signedIn(() => {
    throw new TypeError("no network");
  });
  await assert.rejects(signOut(), { key: "unreachable" });
  assert.deepEqual(state.me.value, MARA);
  assert.deepEqual(await db.getSaved(["me"]), [MARA]);
});

test("a phone that the server no longer knows is signed out here too", async () => {
  const body = { error: { key: "not_paired" } };
  const { state, signOut } = await signedIn(() => ({ status: 401, body }));
  await signOut();
  assert.equal(state.me.value, null);
});
