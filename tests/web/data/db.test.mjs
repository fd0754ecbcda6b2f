// What the phone keeps, and what it does when the disk will not.

import assert from "node:assert/strict";
import { test } from "node:test";

import { phone } from "../page.mjs";

const MAKE = "make-1";

function entry(id, atMs = 1000) {
  return { id, make: MAKE, kind: "note_added", at_ms: atMs, off_ms: 0, data: {} };
}

const told = (id, n, atMs = 1000) => ({
  n,
  recv_ms: 1,
  event: { ...entry(id, atMs), seq: n },
});

test("entries are counted 1, 2, 3 in the order they were kept", async () => {
  const { db } = await phone().open();
  for (const id of ["a", "b", "c"]) await db.enqueue(entry(id));
  assert.deepEqual(
    (await db.oldest(10)).map(({ id, seq }) => [id, seq]),
    [
      ["a", 1],
      ["b", 2],
      ["c", 3],
    ],
  );
});

test("the same entry kept twice is counted once", async () => {
  const { db } = await phone().open();
  const first = await db.enqueue(entry("a"));
  assert.deepEqual(await db.enqueue(entry("a")), first);
  assert.equal((await db.pending()).count, 1);
});

test("the next page of this phone counts on from the last one", async () => {
  const world = phone();
  await (await world.open()).db.enqueue(entry("a"));
  const { db } = await world.open();
  assert.equal((await db.enqueue(entry("b"))).seq, 2);
});

test("an entry leaves the queue only by a verdict on its own id", async () => {
  const { db } = await phone().open();
  for (const id of ["a", "b", "c", "d"]) await db.enqueue(entry(id));
  const results = [
    { id: "a", st: "stored", n: 1 },
    { id: "b", st: "needs_look", n: 2, why: [{ key: "unknown" }] },
    { id: "c", st: "a word of a later server" },
    { id: "gone", st: "stored", n: 9 },
  ];
  await db.settle(results, 5000);
  assert.deepEqual(
    (await db.oldest(10)).map(({ id }) => id),
    ["c", "d"],
  );
  const aside = await db.putAside();
  assert.deepEqual(
    aside.map(({ id, why }) => [id, why]),
    [["b", [{ key: "unknown" }]]],
  );
});

test("what the server put aside is not among what the core is told", async () => {
  const { db } = await phone().open();
  for (const id of ["a", "b"]) await db.enqueue(entry(id));
  await db.settle([{ id: "a", st: "needs_look", n: 1, why: [] }], 5000);
  assert.deepEqual(
    (await db.everything()).map(({ id }) => id),
    ["b"],
  );
});

test("the core is told in order of happening", async () => {
  const { db } = await phone().open();
  await db.beginEpoch("e");
  await db.enqueue(entry("late", 3000));
  await db.storePulled([told("early", 1, 1000), told("mid", 2, 2000)], "e", 2);
  assert.deepEqual(
    (await db.everything()).map(({ id }) => id),
    ["early", "mid", "late"],
  );
});

test("entries of another epoch move neither the log nor the cursor", async () => {
  const { db } = await phone().open();
  await db.beginEpoch("new");
  assert.equal(await db.storePulled([told("a", 1)], "old", 1), false);
  assert.deepEqual(await db.place(), { epoch: "new", cursor: 0 });
  assert.deepEqual(await db.everything(), []);
});

test("a new epoch is offered all that this phone recorded, and read from 0", async () => {
  const { db } = await phone().open();
  await db.beginEpoch("old");
  for (const id of ["a", "b", "c"]) await db.enqueue(entry(id));
  await db.settle(
    [
      { id: "a", st: "stored", n: 1 },
      { id: "b", st: "needs_look", n: 2, why: [] },
    ],
    5000,
  );
  await db.storePulled([told("a", 1)], "old", 1);
  await db.beginEpoch("new");
  assert.deepEqual(
    (await db.oldest(10)).map(({ id }) => id),
    ["a", "b", "c"],
  );
  assert.deepEqual(await db.place(), { epoch: "new", cursor: 0 });
});

test("acknowledged entries go only when pulled and fourteen days old", async () => {
  const { db } = await phone().open();
  const day = 86400000;
  await db.beginEpoch("e");
  for (const id of ["pulled", "not"]) await db.enqueue(entry(id));
  await db.settle(
    [
      { id: "pulled", st: "stored", n: 1 },
      { id: "not", st: "stored", n: 2 },
    ],
    0,
  );
  await db.storePulled([told("pulled", 1)], "e", 1);
  const again = async () => {
    const moved = await db.offerAgain(() => true);
    await db.settle(
      (await db.oldest(10)).map(({ id, seq: n }) => ({ id, st: "stored", n })),
      0,
    );
    return moved;
  };
  await db.prune(14 * day, []);
  assert.equal(await again(), 2);
  await db.storePulled([told("pulled", 1)], "e", 1);
  await db.prune(14 * day + 1, []);
  assert.equal(await again(), 1);
});

test("a finished make's entries are forgotten after a month, an open one's never", async () => {
  const { db } = await phone().open();
  const day = 86400000;
  await db.beginEpoch("e");
  await db.storePulled([told("a", 1)], "e", 1);
  const make = (is_open) => [{ id: MAKE, is_open, last_word_ms: 0 }];
  await db.prune(31 * day, make(true));
  assert.equal((await db.everything()).length, 1);
  await db.prune(31 * day, make(undefined)); // of an older app's board
  assert.equal((await db.everything()).length, 1);
  await db.prune(30 * day, make(false));
  assert.equal((await db.everything()).length, 1);
  await db.prune(30 * day + 1, make(false));
  assert.equal((await db.everything()).length, 0);
});

// Make the next `times` transactions of this disk fail as phones' do.
function failing(page, times, name) {
  const { IDBDatabase } = globalThis;
  const real = IDBDatabase.prototype.transaction;
  let left = times;
  IDBDatabase.prototype.transaction = function transaction(...given) {
    // Opening a database takes a transaction of its own, without options.
    if (left > 0 && given.length === 3) {
      left -= 1;
      throw new DOMException("", name);
    }
    return real.apply(this, given);
  };
  return {
    left: () => left,
    heal: () => {
      IDBDatabase.prototype.transaction = real;
    },
  };
}

test("a dead handle is dropped, and the entry is kept at the second try", async () => {
  const page = await phone().open();
  await page.db.enqueue(entry("a"));
  const disk = failing(page, 2, "InvalidStateError");
  try {
    assert.equal((await page.db.enqueue(entry("b"))).seq, 2);
    assert.equal(disk.left(), 0);
  } finally {
    disk.heal();
  }
  assert.equal(page.state.storage.value.problem, null);
});

test("a disk that stays dead says so, and is well again with the next write", async () => {
  const page = await phone().open();
  const disk = failing(page, 3, "UnknownError");
  try {
    await assert.rejects(page.db.enqueue(entry("a")), { key: "storage_failed" });
    assert.equal(page.state.storage.value.problem, "storage_failed");
  } finally {
    disk.heal();
  }
  await page.db.enqueue(entry("a"));
  assert.equal(page.state.storage.value.problem, null);
});

test("a full disk frees the cache of finished makes and never what is unsent", async () => {
  const page = await phone().open();
  const { db } = page;
  await db.beginEpoch("e");
  await db.storePulled([told("old", 1)], "e", 1);
  await db.setSaved("board", { makes: [{ id: MAKE, is_open: false }] });
  await db.enqueue({ ...entry("mine"), make: "make-2" });
  const disk = failing(page, 1, "QuotaExceededError");
  try {
    await db.enqueue({ ...entry("next"), make: "make-2" });
  } finally {
    disk.heal();
  }
  assert.deepEqual(
    (await db.everything()).map(({ id }) => id),
    ["mine", "next"],
  );
  assert.equal(page.state.storage.value.problem, null);
});

test("a full disk with nothing to free refuses the entry in words", async () => {
  const page = await phone().open();
  const disk = failing(page, 1, "QuotaExceededError");
  try {
    await assert.rejects(page.db.enqueue(entry("a")), { key: "storage_full" });
  } finally {
    disk.heal();
  }
  assert.equal(page.state.storage.value.problem, "storage_full");
  assert.equal((await page.db.pending()).count, 0);
});
