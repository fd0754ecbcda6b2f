// A round of a hold is one act: what its undo takes back.

import assert from "node:assert/strict";
import { test } from "node:test";

import { phone } from "./page.mjs";

const OWNER = { id: "person-1", name: "Owner", role: "owner" };
const MAKE = "make-1";
const STEP = {
  key: "hold",
  targets: [],
  hold: { together: ["milk_temp_c", "air_space_temp_c"] },
};

/** A phone at the pad of a round's reading. */
async function atRound() {
  const world = phone();
  const page = await world.open(["parts/acts", "screens/make/round-sheet"]);
  world.core = () => ({ problems: [], view: null });
  page.state.me.value = { device: "device-1", person: OWNER };
  page.state.people.value = [OWNER];
  page.state.person.value = OWNER.id;
  return { ...page["parts/acts"], ...page["screens/make/round-sheet"], db: page.db };
}

/** What the pad of a round would enter a reading with. */
const padOf = ({ RoundSheet }, name, at) =>
  RoundSheet({ make: MAKE, step: STEP, name, at: at && String(at) }).props;

/** Enter one reading of the round, as its pad does. */
function read(page, name, at) {
  const { atMs, joins } = padOf(page, name, at);
  const data = { quantity: name, value: 64, step: "hold" };
  return page.act("reading_taken", { make: MAKE, data, atMs, joins }, `${name} saved`);
}

const instantOf = (event) => event.at_ms + event.off_ms;

async function struck({ db }) {
  const kept = await db.oldest(20);
  return kept.filter((one) => one.kind === "entry_struck").map((one) => one.ref);
}

test("one undo takes back both readings of a round", async () => {
  const page = await atRound();
  const milk = await read(page, "milk_temp_c");
  const air = await read(page, "air_space_temp_c", instantOf(milk));
  assert.equal(instantOf(air), instantOf(milk));
  assert.equal(page.lastAct.value.said, "milk_temp_c saved · air_space_temp_c saved");
  await page.undo();
  assert.deepEqual((await struck(page)).sort(), [milk.id, air.id].sort());
  assert.equal(page.lastAct.value, null);
});

test("a round's first reading is not struck twice", async () => {
  const page = await atRound();
  const milk = await read(page, "milk_temp_c");
  await page.undo();
  const air = await read(page, "air_space_temp_c", instantOf(milk));
  await page.undo();
  assert.deepEqual(await struck(page), [milk.id, air.id]);
});

test("readings of two moments are two acts", async () => {
  const page = await atRound();
  const milk = await read(page, "milk_temp_c");
  const air = await read(page, "air_space_temp_c", instantOf(milk) - 61000);
  assert.notEqual(air.id, milk.id);
  await page.undo();
  assert.deepEqual(await struck(page), [air.id]);
});

test("an act of another make between the two is undone by itself", async () => {
  const page = await atRound();
  const milk = await read(page, "milk_temp_c");
  const note = { make: "make-2", data: { text: "soft" } };
  await page.act("note_added", note, "Note saved");
  const air = await read(page, "air_space_temp_c", instantOf(milk));
  await page.undo();
  assert.deepEqual(await struck(page), [air.id]);
});

const DUE = {
  key: "receive",
  targets: [{ quantity: "ph", size: null, low: 6.5, high: 6.7 }],
  pads: [
    { quantity: "fat_frac", size: null, is_due: false, last: null, offers: [] },
    { quantity: "ph", size: null, is_due: true, last: null, offers: [] },
    {
      quantity: "press_gauge_kpa",
      size: "small",
      is_due: true,
      last: null,
      offers: [],
    },
  ],
};

/** The pad of a reading of several that are due, and where saving it leads. */
async function saved(name, size) {
  const page = await atRound();
  let isBack = false;
  const { props } = page.RoundSheet({
    make: MAKE,
    step: DUE,
    name,
    size,
    onBack: () => (isBack = true),
  });
  let place = null;
  const browser = Object.values(globalThis.browsers).at(-1);
  browser.location.replace = (next) => (place = next);
  props.onSaved({ at_ms: 1, off_ms: 0 });
  return { props, place, isBack };
}

test("what was saved leads to the next that is due, the last one back", async () => {
  const ph = await saved("ph");
  assert.equal(ph.place, "#/make/make-1/reading/receive/press_gauge_kpa/small");
  assert.equal(ph.props.pad, DUE.pads[1]);
  assert.equal(ph.props.target, DUE.targets[0]);
  assert.ok(ph.props.hint.includes("press gauge"), ph.props.hint);
  const gauge = await saved("press_gauge_kpa", "small");
  assert.deepEqual([gauge.place, gauge.isBack], [null, true]);
  assert.equal(gauge.props.place, "small");
});

test("what was not due is entered alone", async () => {
  const fat = await saved("fat_frac");
  assert.deepEqual([fat.place, fat.isBack], [null, true]);
  assert.equal(fat.props.hint, undefined);
});
