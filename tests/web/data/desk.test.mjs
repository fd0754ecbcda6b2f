// The core's desk on the page: filled from disk, asked once, started again.

import assert from "node:assert/strict";
import { test } from "node:test";

import { phone, until } from "../page.mjs";

const MAKE = "make-1";

function entry(id, atMs) {
  return { id, make: MAKE, kind: "note_added", at_ms: atMs, off_ms: 0, data: {} };
}

function core(world, answers = {}) {
  const asked = [];
  world.core = (name, given) => {
    asked.push([name, given]);
    return answers[name]?.(given) ?? null;
  };
  return { asked, named: (name) => asked.filter(([one]) => one === name) };
}

const view = (id, more = {}) => ({ make: { id }, next_change_ms: null, ...more });
const board = () => ({ makes: [], next_change_ms: null });

test("the desk is filled with what lies on disk before it is asked", async () => {
  const world = phone();
  const told = core(world, { board });
  const page = await world.open();
  for (let at = 0; at < 150; at += 1) await page.db.enqueue(entry(`e${at}`, at));
  await page.desk.refreshBoard();
  const names = told.asked.map(([name]) => name);
  assert.deepEqual(names, ["take", "take", "board"]);
  const filed = told.named("take").flatMap(([, { events }]) => events.map((e) => e.id));
  assert.equal(filed.length, 150);
  assert.equal(filed[149], "e149");
  assert.equal(page.state.core.value, "ready");
});

test("which cautions are owed is known only once the core has told who taps", async () => {
  // Seen: on a cold phone "Begin" could be pressed before the cautions came.
  const world = phone();
  const asked = core(world, { board, view: () => view(MAKE, { cautions: [] }) });
  const page = await world.open();
  page.state.person.value = "ann";
  await page.db.setSaved(`view:${MAKE}`, view(MAKE, { cautions: [] }));
  const seen = [];
  page.state.view.subscribe((shown) => shown && seen.push(shown.cautions));
  await page.desk.showMake(MAKE);
  assert.deepEqual(seen, [undefined, []]);
  page.state.person.value = "tove";
  assert.equal(page.state.view.value.cautions, undefined);
  await until(() => page.state.view.value.cautions, "the core's answer to Tove");
  assert.equal(asked.named("view").at(-1)[1].reader.person, "tove");
});

test("last time's view is shown at once, then the core's", async () => {
  const world = phone();
  let let_go = null;
  const told = core(world, {
    board,
    view: () =>
      new Promise((done) => {
        let_go = () => done(view(MAKE, { focus: "new" }));
      }),
  });
  const page = await world.open();
  await page.db.setSaved(`view:${MAKE}`, view(MAKE, { focus: "old" }));
  const shown = page.desk.showMake(MAKE);
  await until(() => page.state.view.value, "the saved view");
  assert.equal(page.state.view.value.focus, "old");
  await until(() => let_go, "the core to be asked");
  let_go();
  await shown;
  assert.equal(page.state.view.value.focus, "new");
  assert.equal(told.named("view").length, 1);
});

test("an answer that comes after another make was opened is not shown", async () => {
  const world = phone();
  let let_go = null;
  core(world, {
    view: ({ make_id: id }) =>
      id === MAKE
        ? new Promise((done) => {
            let_go = () => done(view(MAKE));
          })
        : view(id),
  });
  const page = await world.open();
  const first = page.desk.showMake(MAKE);
  await until(() => let_go, "the core to be asked");
  const second = page.desk.showMake("make-2");
  let_go();
  await Promise.all([first, second]);
  assert.equal(page.state.view.value.make.id, "make-2");
});

test("many wishes for the same while one is worked out are one wish", async () => {
  const world = phone();
  const told = core(world, { board });
  const page = await world.open();
  await page.desk.refreshBoard();
  await Promise.all([1, 2, 3, 4].map(() => page.desk.refreshBoard()));
  assert.equal(told.named("board").length, 3); // the first, one at work, one more
});

test("a core started anew is filled again with everything", async () => {
  const world = phone();
  const told = core(world, { board });
  const page = await world.open();
  await page.db.enqueue(entry("a", 1));
  await page.desk.refreshBoard();
  await page.desk.rebuild();
  assert.equal(world.starts, 2);
  assert.equal(told.named("take").length, 2);
});

test("a core that fails to fill says why and starts again by itself", async () => {
  const world = phone();
  let isBroken = true;
  core(world, {
    board,
    take: () => {
      if (isBroken) throw new TypeError("no such topic");
      return { changed: [], problems: [] };
    },
  });
  const page = await world.open();
  await page.db.enqueue(entry("a", 1));
  await assert.rejects(page.desk.refreshBoard());
  assert.equal(page.state.core.value, "failed");
  assert.match(page.state.coreProblem.value, /no such topic/);
  isBroken = false;
  world.pass(1000); // the longest wait after a first failure
  await until(() => page.state.core.value === "ready", "the core to start again");
  await until(() => page.state.board.value, "the board");
});

test("a make that this phone has forgotten is shown by the server", async () => {
  const world = phone();
  core(world);
  world.server = () => ({ body: view(MAKE, { focus: "from the server" }) });
  const page = await world.open();
  await page.desk.showMake(MAKE);
  assert.equal(page.state.view.value.focus, "from the server");
});
