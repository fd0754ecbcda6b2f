// From a tap to the disk: what is entered is never lost, whatever fails.

import assert from "node:assert/strict";
import { test } from "node:test";

import { phone } from "../page.mjs";

const OWNER = { id: "person-1", name: "Owner", role: "owner" };

async function atWork(world, core = () => ({ problems: [], view: null })) {
  const page = await world.open();
  world.core = (name, named) => core(name, named);
  page.state.me.value = { device: "device-1", person: OWNER };
  page.state.people.value = [OWNER];
  page.state.person.value = OWNER.id;
  return page;
}

const note = (page, text = "curd soft") =>
  page.record.record("note_added", { make: "make-1", data: { text } });

test("an entry carries who, where, when and its counter, and lies on disk", async () => {
  const page = await atWork(phone());
  const event = await note(page);
  assert.equal(event.seq, 1);
  assert.equal(event.device, "device-1");
  assert.equal(event.person, OWNER.id);
  assert.equal(event.entered_ms, event.at_ms);
  assert.match(event.id, /^[0-9a-f-]{14}7/);
  assert.deepEqual(await page.db.oldest(1), [event]);
});

test("the exchange is started after the entry is on disk, not before", async () => {
  const page = await atWork(phone());
  let waiting = null;
  page.record.afterRecord(() => {
    waiting = page.db.pending();
  });
  await note(page);
  assert.equal((await waiting).count, 1);
});

test("what the core refuses stands in sight with its reasons, and not on disk", async () => {
  const problems = [{ field: "text", key: "too_long", limit: 2000 }];
  const page = await atWork(phone(), () => ({ problems, view: null }));
  await assert.rejects(note(page), { name: "RecordError", problems });
  const [kept] = page.state.unsaved.value;
  assert.equal(kept.data.text, "curd soft");
  assert.deepEqual(kept.problems, problems);
  assert.equal((await page.db.pending()).count, 0);
});

test("a core that fails costs no entry: the server checks it too", async () => {
  const page = await atWork(phone(), () => {
    throw new TypeError("a fault of ours");
  });
  await note(page);
  assert.equal((await page.db.pending()).count, 1);
  assert.deepEqual(page.state.unsaved.value, []);
});

test("what the disk refuses outlives the page and can be saved later", async () => {
  const world = phone();
  const page = await atWork(world);
  const { IDBDatabase } = globalThis;
  const real = IDBDatabase.prototype.transaction;
  IDBDatabase.prototype.transaction = function transaction(...given) {
    if (given.length === 3) throw new DOMException("", "UnknownError");
    return real.apply(this, given);
  };
  try {
    await assert.rejects(note(page), { key: "storage_failed" });
  } finally {
    IDBDatabase.prototype.transaction = real;
  }
  const later = await atWork(world);
  later.record.restoreUnsaved();
  const [row] = later.state.unsaved.value;
  await later.record.retryUnsaved(row.id);
  const [stored] = await later.db.oldest(1);
  assert.equal(stored.data.text, "curd soft");
  assert.equal(stored.id, row.id);
  assert.deepEqual(later.state.unsaved.value, []);
});

test("the core is asked with the roles of the phone and of who taps", async () => {
  const asked = [];
  const page = await atWork(phone(), (name, { roles }) => {
    if (name === "tap") asked.push(roles);
    return { problems: [], view: null };
  });
  const helper = { id: "person-2", name: "Helper", role: "helper" };
  page.state.people.value = [OWNER, helper];
  page.state.person.value = helper.id;
  await note(page);
  assert.deepEqual(asked, [["owner", "helper"]]);
});

test("without a person nothing is recorded, and the value is kept in sight", async () => {
  const page = await atWork(phone());
  page.state.person.value = null;
  await assert.rejects(note(page), { key: "not_paired" });
  assert.equal(page.state.unsaved.value[0].data.text, "curd soft");
});
