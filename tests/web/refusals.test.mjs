// What a formula refuses is said in each language, in the unit that a person typed.
import assert from "node:assert/strict";
import { test } from "node:test";

import { phone } from "./page.mjs";

const page = await phone().open([
  "screens/sums/refusals",
  "screens/sums/notes",
  "messages/index",
]);
const { sumProblem } = page["screens/sums/refusals"];
const { noteWords } = page["screens/sums/notes"];
const { loadRest, setLanguage, sourceWords } = page["messages/index"];
await loadRest();

const INPUT = { unit: "C", units: ["C", "F"], columns: null };
const HEAT = {
  key: "heat_time",
  inputs: [{ ...INPUT, name: "target_temp_c" }],
};
const PART = { of: null, figures: {}, from: "formula" };
const BEYOND = {
  ...PART,
  field: "target_temp_c",
  key: "beyond_jacket",
  value: 70,
  limit: 60,
  unit: "C",
};

function plain(text) {
  return text.replace(/[\u00a0\u202f]/g, " ");
}

test("a refusal is said in the words of each language", async () => {
  const said = [];
  for (const code of ["en", "es", "fr"]) {
    await setLanguage(code);
    said.push(plain(sumProblem(BEYOND, HEAT)));
  }
  await setLanguage("en");
  assert.deepEqual(said, [
    "Temperature wanted 70.0 °C is beyond the jacket, 60.0 °C.",
    "Temperatura deseada 70,0 °C: más allá de la camisa, 60,0 °C.",
    "Température voulue 70,0 °C : au-delà de la double enveloppe, 60,0 °C.",
  ]);
});

test("value and limit follow the unit that was typed", () => {
  const given = { target_temp_c: { typed: "158", unit: "F" } };
  assert.equal(
    plain(sumProblem(BEYOND, HEAT, given)),
    "Temperature wanted 158 °F is beyond the jacket, 140.0 °F.",
  );
});

test("what only follows from an input is named with that input", () => {
  const row = { name: "cheese_kg", unit: "kg", units: ["kg"], columns: null };
  const sum = { key: "actual_yield", inputs: [row] };
  const problem = {
    ...PART,
    field: "cheese_kg",
    of: "yield_frac",
    key: "above",
    value: 1.5,
    limit: 1,
    unit: "fraction",
  };
  const said = plain(sumProblem(problem, sum));
  assert.match(said, /^Yield, share of the milk 150\.00 %: at most 100\.00 %/);
  assert.match(said, /It follows from this entry: .+\.$/);
});

test("what a sentence speaks of besides has its own unit", () => {
  const row = {
    name: "brine_salt_frac",
    unit: "fraction",
    units: ["%"],
    columns: null,
  };
  const sum = { key: "brine_make_up", inputs: [row] };
  const problem = {
    ...PART,
    field: "brine_salt_frac",
    key: "above_saturation",
    value: 0.265,
    limit: 0.2636,
    unit: "fraction",
    figures: { at_c: { value: 10, unit: "C" } },
  };
  assert.match(plain(sumProblem(problem, sum)), /26\.36 % at 10\.0 °C\.$/);
});

test("a range that a value must lie in gives both its ends", () => {
  const row = { name: "target_ph", unit: "pH", units: ["pH"], columns: null };
  const sum = { key: "acid_ends", inputs: [row] };
  const problem = {
    ...PART,
    field: "target_ph",
    key: "off_curve",
    value: 5.1,
    limit: [5.2, 6.6],
    unit: "pH",
  };
  assert.match(plain(sumProblem(problem, sum)), /between 5\.20 and 6\.60,/);
});

test("a note tells what was refused after its own sentence", () => {
  const refused = { ...PART, field: "salt_out_kg", key: "above", value: 3, limit: 2 };
  const note = { key: "note.tank.cannot_be", refused: { ...refused, unit: "kg" } };
  assert.match(
    plain(noteWords(note)),
    /^An entry cannot be right\. Salt that left the brine 3 kg: at most 2 kg /,
  );
});

test("a source is told by its id, and somebody's own words as they are", async () => {
  const told = [];
  for (const code of ["en", "es", "fr"]) {
    await setLanguage(code);
    told.push(sourceWords("common_practice"));
    assert.equal(sourceWords("Our supplier, spring 2026"), "Our supplier, spring 2026");
    // As makes that were begun before sources had ids keep them.
    assert.equal(
      sourceWords("common practice, no source"),
      "common practice, no source",
    );
  }
  await setLanguage("en");
  assert.equal(told[0], "common practice, no source");
  assert.equal(new Set(told).size, 3);
});
