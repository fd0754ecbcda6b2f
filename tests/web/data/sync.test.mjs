// The exchange with a server that answers late, in part, wrongly or not at all.

import assert from "node:assert/strict";
import { test } from "node:test";

import { phone, until } from "../page.mjs";

const EPOCH = "epoch-1";
const LOST = "lost"; // the server heard it, and its answer never came

function entry(id, atMs = 1000) {
  return { id, make: "make-1", kind: "note_added", at_ms: atMs, off_ms: 0, data: {} };
}

/** A server of one log; `faults` are answers given instead, first come first. */
function server(world, { epoch = EPOCH, faults = [], log = [] } = {}) {
  const state = { epoch, faults, log, pushes: [], kept: [], refuses: [] };
  const stored = ({ id }) => ({ id, st: "stored", n: log.length });
  world.server = async ({ method, path, body }) => {
    const fault = state.faults[0]?.({ method, path, body });
    if (fault) state.faults.shift();
    if (fault === LOST) throw new TypeError("network");
    if (fault) return fault;
    if (path.startsWith("/sync/have")) {
      const upto = Math.max(0, ...state.log.map(({ event }) => event.seq));
      return { body: { upto, missing: [] } };
    }
    if (path.startsWith("/sync/pull")) {
      const asked = new URL(path, "http://x").searchParams;
      if (asked.get("epoch") && asked.get("epoch") !== state.epoch) {
        return { status: 409, body: { error: { key: "epoch" }, epoch: state.epoch } };
      }
      const events = state.log.filter(({ n }) => n > Number(asked.get("after")));
      const next = state.log.length;
      return { body: { epoch: state.epoch, events, next, more: false } };
    }
    for (const { event, receipt } of body.kept ?? []) {
      state.kept.push([event.id, receipt]);
      if (!state.refuses.includes(event.id)) {
        state.log.push({ n: state.log.length + 1, recv_ms: 1, event });
      }
    }
    if (body.kept?.length) {
      const kept = body.kept.map(({ event }) =>
        state.refuses.includes(event.id)
          ? { id: event.id, st: "needs_look", why: [{ key: "other_device" }] }
          : stored(event),
      );
      return { body: { epoch: state.epoch, results: [], have: {}, kept } };
    }
    state.pushes.push(body.events.map(({ id }) => id));
    for (const event of body.events) {
      if (state.log.some((row) => row.event.id === event.id)) continue;
      state.log.push({ n: state.log.length + 1, recv_ms: 1, event });
    }
    return { body: { epoch: state.epoch, results: body.events.map(stored), have: {} } };
  };
  return state;
}

async function paired(world) {
  const page = await world.open();
  world.core = () => ({ changed: [], problems: [] });
  await page.db.setMeta("device", "device-1");
  await page.db.beginEpoch(EPOCH);
  return { ...page, soon: world.soon };
}

/** Wait until no exchange is under way, nor one that follows at once by itself. */
function quiet(page) {
  return until(() => !page.state.syncing.value && !page.soon(), "the exchange to end");
}

async function exchanged(page) {
  await quiet(page); // one that is under way would swallow the kick
  page.sync.kick("asked");
  await quiet(page);
}

test("what waits goes up, is acknowledged, and comes down once", async () => {
  const world = phone();
  const page = await paired(world);
  const told = server(world);
  await page.db.enqueue(entry("a"));
  await exchanged(page);
  assert.equal(page.state.net.value, "online");
  assert.equal(page.state.unsent.value, 0);
  assert.deepEqual(await page.db.place(), { epoch: EPOCH, cursor: 1 });
  await exchanged(page);
  assert.equal(told.log.length, 1);
  assert.equal((await page.db.everything()).length, 1);
});

test("an answer that is lost costs nothing: the entry goes again", async () => {
  const world = phone();
  const page = await paired(world);
  const told = server(world);
  await page.db.enqueue(entry("a"));
  const lost = ({ path, body }) => {
    if (path !== "/sync/push") return null;
    told.log.push({ n: 1, recv_ms: 1, event: body.events[0] });
    return LOST;
  };
  told.faults = [lost];
  await exchanged(page);
  assert.equal(page.state.net.value, "server_gone");
  assert.equal((await page.db.pending()).count, 1);
  await exchanged(page);
  assert.equal((await page.db.pending()).count, 0);
  assert.equal(told.log.length, 1);
});

test("an exchange that failed is tried again by itself after a wait", async () => {
  const world = phone();
  const page = await paired(world);
  server(world, { faults: [() => LOST] });
  await page.db.enqueue(entry("a"));
  await exchanged(page);
  world.pass(499); // shorter than any wait
  assert.equal(page.state.syncing.value, false);
  world.pass(501);
  await quiet(page);
  assert.equal(page.state.net.value, "online");
  assert.equal((await page.db.pending()).count, 0);
});

test("a body that is too large is halved until it fits", async () => {
  const world = phone();
  const page = await paired(world);
  const told = server(world);
  const tooLarge = ({ path, body }) =>
    path === "/sync/push" && body.events.length > 1
      ? { status: 413, body: { error: { key: "too_large" } } }
      : null;
  told.faults = [tooLarge, tooLarge];
  for (const id of ["a", "b", "c", "d"]) await page.db.enqueue(entry(id));
  await exchanged(page);
  assert.deepEqual(told.pushes, [["a"], ["b"], ["c"], ["d"]]);
  assert.equal((await page.db.pending()).count, 0);
});

test("a phone that is signed out keeps all that it holds", async () => {
  const world = phone();
  const page = await paired(world);
  server(world, {
    faults: [() => ({ status: 401, body: { error: { key: "not_paired" } } })],
  });
  await page.db.enqueue(entry("a"));
  await exchanged(page);
  assert.equal(page.state.net.value, "not_paired");
  assert.equal((await page.db.pending()).count, 1);
});

test("a server that asks for patience is left alone until then", async () => {
  const world = phone();
  const page = await paired(world);
  server(world, {
    faults: [
      () => ({
        status: 503,
        headers: { "Retry-After": "60" },
        body: { error: { key: "busy" } },
      }),
    ],
  });
  await page.db.enqueue(entry("a"));
  await exchanged(page);
  const before = world.asked.length;
  page.sync.kick("tap");
  assert.equal(page.state.syncing.value, false);
  await exchanged(page); // a person asked
  assert.ok(world.asked.length > before);
});

test("a restored server is offered again what it lost", async () => {
  const world = phone();
  const page = await paired(world);
  const told = server(world);
  await page.db.enqueue(entry("a"));
  await exchanged(page);
  told.log.length = 0;
  told.epoch = "epoch-2";
  await exchanged(page);
  await exchanged(page);
  assert.deepEqual(
    told.log.map(({ event }) => event.id),
    ["a"],
  );
  assert.deepEqual(await page.db.place(), { epoch: "epoch-2", cursor: 1 });
});

test("an answer cut off in the middle moves nothing", async () => {
  const world = phone();
  const page = await paired(world);
  const told = server(world, {
    log: [{ n: 1, recv_ms: 1, event: { ...entry("b"), seq: 1 } }],
  });
  const cut = ({ path }) =>
    path.startsWith("/sync/pull")
      ? new Response('{"epoch": "epoch-1", "events": [{"n": 1, "ev')
      : null;
  told.faults = [cut];
  await exchanged(page);
  assert.equal((await page.db.place()).cursor, 0);
  await exchanged(page);
  assert.deepEqual(
    (await page.db.everything()).map(({ id }) => id),
    ["b"],
  );
});

test("what others recorded reaches the core", async () => {
  const world = phone();
  const page = await paired(world);
  server(world, { log: [{ n: 1, recv_ms: 1, event: { ...entry("b"), seq: 1 } }] });
  const taken = [];
  world.core = (name, { events }) => {
    if (name === "take") taken.push(...events.map(({ id }) => id));
    return { changed: ["make-1"], problems: [] };
  };
  await exchanged(page);
  await until(() => taken.includes("b"), "the core to be told");
});

function told(id, n) {
  const event = { ...entry(id), device: "device-2", seq: n };
  return { n, recv_ms: 1, event, receipt: `proof of ${id}` };
}

const ids = (events) => events.map(({ id }) => id).sort();

test("what a server set back lacks of others goes back to it, once", async () => {
  const world = phone();
  const page = await paired(world);
  const state = server(world, { log: [told("kept", 1), told("lost", 2)] });
  await exchanged(page);
  state.epoch = "epoch-2";
  state.log = [state.log[0]];
  await exchanged(page);
  assert.deepEqual(state.kept, [["lost", "proof of lost"]]);
  assert.deepEqual(
    state.log.map(({ event }) => event.id),
    ["kept", "lost"],
  );
  assert.deepEqual(ids(await page.db.everything()), ["kept", "lost"]);
  await exchanged(page);
  assert.equal(state.kept.length, 1);
});

test("what it cannot take back is put aside in sight and counts no more", async () => {
  const world = phone();
  const page = await paired(world);
  const state = server(world, { log: [told("kept", 1), told("lost", 2)] });
  await exchanged(page);
  state.epoch = "epoch-2";
  state.log = [state.log[0]];
  state.refuses = ["lost"];
  await exchanged(page);
  assert.deepEqual(ids(await page.db.everything()), ["kept"]);
  const [aside] = await page.db.putAside();
  assert.equal(aside.id, "lost");
  assert.deepEqual(aside.why, [{ key: "other_device" }]);
  assert.equal(page.state.needsLook.value, 1);
});

test("nothing goes back before the server's log was read whole", async () => {
  const world = phone();
  const page = await paired(world);
  const state = server(world, { log: [told("kept", 1), told("lost", 2)] });
  await exchanged(page);
  state.epoch = "epoch-2";
  state.log = [state.log[0]];
  const isPull = ({ path }) => path.includes("after=0") && { status: 503, body: {} };
  state.faults = [isPull, isPull].map((fault) => (asked) => fault(asked) || null);
  await exchanged(page);
  assert.deepEqual(state.kept, []);
  assert.deepEqual(ids(await page.db.everything()), ["kept", "lost"]);
  state.faults = [];
  await exchanged(page);
  assert.deepEqual(state.kept, [["lost", "proof of lost"]]);
});

test("an answer that is lost on its way costs nothing and doubles nothing", async () => {
  const world = phone();
  const page = await paired(world);
  const state = server(world, { log: [told("lost", 1)] });
  await exchanged(page);
  state.epoch = "epoch-2";
  state.log = [];
  state.faults = [({ body }) => (body?.kept?.length ? LOST : null)];
  await exchanged(page);
  assert.deepEqual(ids(await page.db.everything()), ["lost"]);
  await exchanged(page);
  assert.deepEqual(
    state.log.map(({ event }) => event.id),
    ["lost"],
  );
});

/** A phone that read what others did, and whose own entry was refused for now. */
async function sendingRefused(status, key, retryAfterS) {
  const world = phone();
  const page = await paired(world);
  const state = server(world, { log: [told("others", 1)] });
  const headers = { "Retry-After": String(retryAfterS) };
  const refusal = { status, headers, body: { error: { key } } };
  state.faults = [({ path }) => path === "/sync/push" && refusal];
  await page.db.enqueue(entry("mine"));
  await exchanged(page);
  assert.deepEqual(ids(await page.db.everything()), ["mine", "others"]);
  assert.equal((await page.db.pending()).count, 1);
  return { world, page, state };
}

test("a server with a full disk is still read, and what waits goes when it can", async () => {
  const { page, state } = await sendingRefused(507, "disk_full", 30);
  assert.equal(page.state.net.value, "online"); // what is shown is not old
  assert.equal(page.state.serverDisk.value, "full");
  assert.equal(page.state.netProblem.value.key, "disk_full");
  await exchanged(page);
  assert.equal(page.state.serverDisk.value, "fine");
  assert.equal((await page.db.pending()).count, 0);
  assert.deepEqual(state.pushes, [["mine"]]);
});

test("a phone whose day is full still reads, and sends when there is room", async () => {
  const { world, page, state } = await sendingRefused(429, "over_quota", 7200);
  assert.equal(page.state.net.value, "slowed");
  // Within the two hours it does not knock again, but reads on.
  state.log.push(told("later", 2));
  world.asked.length = 0;
  page.sync.kick("visible");
  await quiet(page);
  assert.equal((await page.db.everything()).length, 3);
  assert.deepEqual(
    world.asked.filter(({ path }) => path === "/sync/push"),
    [],
  );
  // A person who asks is taken at their word.
  await exchanged(page);
  assert.equal((await page.db.pending()).count, 0);
  assert.deepEqual(state.pushes, [["mine"]]);
});
