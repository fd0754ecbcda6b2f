// The live view's line: it reads on from the cursor, falls back, and comes back.

import assert from "node:assert/strict";
import { test } from "node:test";

import { phone, until } from "../page.mjs";

const EPOCH = "epoch-1";
const GATHER_MS = 80; // entries that come together are kept together

function entry(id) {
  return {
    id,
    make: "make-1",
    kind: "note_added",
    at_ms: 1,
    off_ms: 0,
    seq: 1,
    data: {},
  };
}

const message = (data, n, kind) =>
  `${kind ? `event: ${kind}\n` : ""}${n ? `id: ${n}\n` : ""}data: ${JSON.stringify(data)}\n\n`;

/** A server whose stream the test writes; each connection is one line. */
function server(world) {
  const state = { lines: [], refuse: null, picture: { makes: [] }, pulls: 0 };
  const line = (signal) => {
    const encoder = new TextEncoder();
    let control;
    const body = new ReadableStream({
      start: (given) => {
        control = given;
      },
    });
    signal.addEventListener("abort", () => {
      mine.isOver = true;
      try {
        control.error(signal.reason);
      } catch {
        // It is over already.
      }
    });
    const mine = {
      isOver: false,
      say: (text) => control.enqueue(encoder.encode(text)),
      end: () => control.close(),
    };
    state.lines.push(mine);
    return new Response(body);
  };
  world.server = async ({ path, signal }) => {
    if (path.startsWith("/live")) {
      state.asked = path;
      return state.refuse ?? line(signal);
    }
    if (path.startsWith("/makes?open")) return { body: state.picture };
    if (path.startsWith("/sync/pull")) {
      state.pulls += 1;
      return { body: { epoch: EPOCH, events: [], next: 0, more: false } };
    }
    return { body: { upto: 0, missing: [], results: [] } };
  };
  return state;
}

async function watching(world, state) {
  const page = await world.open();
  world.core = () => ({ changed: [], problems: [] });
  await page.db.beginEpoch(EPOCH);
  const end = page.live.watch();
  if (!state.refuse) await until(() => state.lines.length, "a line");
  return { page, end };
}

test("the line begins at the cursor, and its entries are kept", async () => {
  const world = phone();
  const told = server(world);
  const { page, end } = await watching(world, told);
  assert.match(told.asked, /after=0/);
  const [line] = told.lines;
  line.say(message({ epoch: EPOCH, head: 1 }, null, "head"));
  await until(() => page.state.live.value === "live", "the line to be live");
  line.say(message({ n: 1, recv_ms: 1, event: entry("a") }, 1));
  await until(() => world.pass(GATHER_MS), "the entry to be heard");
  await until(async () => (await page.db.place()).cursor === 1, "the cursor");
  assert.deepEqual(
    (await page.db.everything()).map(({ id }) => id),
    ["a"],
  );
  end();
  assert.equal(page.state.live.value, "off");
  await until(() => line.isOver, "the line to be given back");
});

test("a server without a place is asked by turns instead", async () => {
  const world = phone();
  const told = server(world);
  told.refuse = new Response('{"error": {"key": "no_place"}}', {
    status: 503,
    headers: { "Retry-After": "5" },
  });
  const { page, end } = await watching(world, told);
  await until(() => page.state.live.value === "polling", "polling");
  await until(() => told.pulls > 0, "a pull");
  end();
});

test("a line of another epoch is given up and nothing of it is kept", async () => {
  const world = phone();
  const told = server(world);
  const { page, end } = await watching(world, told);
  const [line] = told.lines;
  line.say(message({ epoch: "epoch-2", head: 1 }, null, "head"));
  line.say(message({ n: 1, recv_ms: 1, event: entry("a") }, 1));
  await until(() => line.isOver, "the line to be given up");
  assert.equal(world.pass(GATHER_MS), 0);
  assert.deepEqual(await page.db.everything(), []);
  end();
});

test("out of sight no line is held, and in sight a new one is taken", async () => {
  const world = phone();
  const told = server(world);
  const { end } = await watching(world, told);
  world.isVisible = false;
  world.tell("visibilitychange");
  await until(() => told.lines[0].isOver, "the line to be given back");
  world.isVisible = true;
  world.tell("visibilitychange");
  await until(() => told.lines.length === 2, "a new line");
  end();
});

test("the picture is behind only where it names a later word than this phone has", async () => {
  const { live } = await phone().open();
  const make = (id, last_word_ms) => ({ id, last_word_ms });
  assert.equal(live.isBehind(null, null), false);
  assert.equal(live.isBehind({ makes: [make("a", 5)] }, null), true);
  const own = { makes: [make("a", 5)] };
  assert.equal(live.isBehind({ makes: [make("a", 5)] }, own), false);
  assert.equal(live.isBehind({ makes: [make("a", 6)] }, own), true);
  assert.equal(live.isBehind({ makes: [make("b", 1)] }, own), true);
});
