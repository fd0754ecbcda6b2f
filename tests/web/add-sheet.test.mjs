// The pad of a dose: what it says of the lot in hand.

import assert from "node:assert/strict";
import { test } from "node:test";

import { phone } from "./page.mjs";

const world = phone();
const page = await world.open(["screens/make/add-sheet", "messages/index", "data/ask"]);
const { LabelRow } = page["screens/make/add-sheet"];
await page["messages/index"].loadRest();

/** The row of a dose told for a bottle, while another lot is in hand. */
function row(lot, bottle, fellBack = null) {
  const planned = { bottle, origin: { fell_back: fellBack } };
  return LabelRow({ make: "m", add: { planned }, lot });
}

test("a dose that is told for the lot in hand needs no other label", () => {
  assert.equal(row("B7", { lot: "B7", of_label: "A1", is_read: true }), null);
});

test("a dose of another bottle, or of an unread label, says so", () => {
  const words = (node) => JSON.stringify(node.props.children);
  assert.match(words(row("B7", { lot: "A1", of_label: "A1", is_read: true })), /A1/);
  const unread = row("B7", { lot: "B7", of_label: "A1", is_read: false }, "missing");
  assert.match(words(unread), /no label entered/);
});

test("the core is asked for the dose of the lot as it was typed", async () => {
  const asked = [];
  world.core = (name, named) => {
    asked.push([name, named]);
    return { ingredient: "rennet", planned: { value: 78.75 } };
  };
  const told = await page["data/ask"].addFromLot({
    ...{ make: "m", step: "rennet", ingredient: "rennet", lot: "B7" },
  });
  assert.equal(told.planned.value, 78.75);
  const [[name, named]] = asked.slice(-1);
  assert.equal(name, "add_from_lot");
  const { now_ms: _, ...rest } = named;
  const wanted = { make_id: "m", key: "rennet", ingredient: "rennet", lot: "B7" };
  assert.deepEqual(rest, wanted);
});
