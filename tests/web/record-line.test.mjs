// One entry of the record: what, how much, and what else it says, each by itself.

import assert from "node:assert/strict";
import { test } from "node:test";

import { phone } from "./page.mjs";

const page = await phone().open([
  "messages/index",
  "screens/record/line-text",
  "screens/record/line-words",
]);
const { lineParts, lineRows, lineText } = page["screens/record/line-text"];
const { correctionWords, markWords, struckWords } = page["screens/record/line-words"];
await page["messages/index"].loadRest();

const STEPS = [
  {
    key: "set",
    title: { en: "Set" },
    adds: [{ ingredient: "rennet", title: { en: "Rennet" } }],
  },
];
const line = (kind, data, more = {}) => ({
  kind,
  data,
  step: "set",
  corrections: [],
  struck: null,
  ...more,
});

test("the value of a reading stands apart from what was read", () => {
  const read = line("reading_taken", {
    quantity: "curd_temp_c",
    value: 32.8,
    place: "",
  });
  assert.deepEqual(lineParts(read, STEPS), ["Curd temperature", "32.8\u00a0°C"]);
  assert.deepEqual(lineRows(read), []);
});

test("a reading of one size of wheel says of which", () => {
  const data = { quantity: "wheel_mass_kg", value: 8.05, place: "large" };
  const [[label, size]] = lineRows(line("reading_taken", data));
  assert.deepEqual([label, size], ["Size", "Large"]);
});

test("of what was added amount and lot stand apart, and no lot is no line", () => {
  const added = (lot) =>
    line("ingredient_added", { ingredient: "rennet", amount: 237, unit: "mL", lot });
  assert.deepEqual(lineParts(added("R-7"), STEPS), ["Added: Rennet", "237\u00a0mL"]);
  assert.deepEqual(lineRows(added("R-7")), [["Lot", "R-7"]]);
  assert.equal(lineRows(added(undefined))[0][1], undefined);
});

test("what has no figure is told in words, all of them", () => {
  for (const one of [
    line("step_begun", {}),
    line("note_added", { text: "Probe rinsed" }),
    line("step_skipped", { why: "no time" }),
  ]) {
    assert.deepEqual(lineParts(one, STEPS), [lineText(one, STEPS), null]);
    assert.deepEqual(lineRows(one), []);
  }
});

test("below an entry stands how it was put right, struck, and when it came", () => {
  const who = { by: "0193", at_ms: 1790000000000, why: "Typed wrong" };
  const wrong = line(
    "reading_taken",
    { quantity: "ph", value: 6.4 },
    {
      corrections: [{ ...who, id: "c", set: { value: 6.4 }, before: { value: 4.6 } }],
      struck: { ...who, id: "s" },
      late_entry_s: 600,
      clock_off_s: null,
      proved: null,
      later_of: null,
      leads_nowhere: null,
    },
  );
  assert.match(correctionWords(wrong)[0], /4\.60 → 6\.40.*Why: Typed wrong/);
  assert.match(struckWords(wrong)[0], /^Struck out\./);
  assert.deepEqual(markWords(wrong), ["Entered 10\u00a0min after it happened"]);
  assert.deepEqual(struckWords(line("note_added", { text: "" })), []);
});
