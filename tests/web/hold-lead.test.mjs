// What leads a hold, put into words: of a Step as the core tells it.

import { test } from "node:test";
import assert from "node:assert/strict";

import { phone } from "./page.mjs";

const page = await phone().open(["screens/make/hold-lead", "messages/index", "format"]);
const { HoldLead, HoldMore } = page["screens/make/hold-lead"];
const { loadRest, setLanguage } = page["messages/index"];
const { setReads } = page.format;
await loadRest();

const AT = 1790000000000;
const MIN = 60000;

/** Every text below a node, components rendered. */
function wordsOf(node) {
  if (Array.isArray(node)) return node.map(wordsOf).join(" ");
  if (node === null || node === undefined || typeof node !== "object")
    return typeof node === "string" ? node : "";
  const { type, props } = node;
  if (typeof type === "function") return wordsOf(type(props));
  return wordsOf(props.children);
}

function held(says, more = {}) {
  const asked = { F: { temp: 145, air_temp: 150 }, C: { temp: 63, air_temp: 66 } };
  const last = [
    ["milk_temp_c", 62.67],
    ["air_space_temp_c", 66.67],
  ].map(([quantity, value]) => ({
    quantity,
    value,
    at_ms: AT,
    is_low: quantity === "milk_temp_c",
    is_other_unit: false,
  }));
  const hold = {
    rule: "us_heat_treatment",
    is_own: false,
    asked,
    gap: { gap_s: 120 },
    together: ["milk_temp_c", "air_space_temp_c"],
    rounds: [],
    last,
    due_ms: AT + MIN,
    lost_ms: AT + 2 * MIN,
    end_ms: AT + 30 * MIN,
    is_whole: false,
    says,
    ...more,
  };
  const step = { status: "running", hold };
  return `${wordsOf(HoldLead({ step }))} ${wordsOf(HoldMore({ step }))}`;
}

const LINES = [
  { key: "meets_so_far", end_ms: AT + 30 * MIN, left_s: 840 },
  { key: "whole", end_ms: AT },
  { key: "waiting", end_ms: AT },
  { key: "last_round", end_ms: AT },
  { key: "lost", end_ms: AT, span_s: 120 },
  { key: "milk_cold", value: 144.8, limit: 145, unit: "F", end_ms: AT },
  { key: "air_cold", value: 149.9, limit: 150, unit: "F", end_ms: AT },
  {
    key: "again_milk_cold",
    value: 144.8,
    limit: 145,
    unit: "F",
    at_ms: AT,
    start_ms: AT,
    end_ms: AT,
  },
  {
    key: "again_air_cold",
    value: 149.9,
    limit: 150,
    unit: "F",
    at_ms: AT,
    start_ms: AT,
    end_ms: AT,
  },
  { key: "again_gap", span_s: 180, gap_s: 120, at_ms: AT, start_ms: AT, end_ms: AT },
  { key: "fat_decides", fat_frac: 0.1, raised: { F: 150, C: 66 } },
  { key: "chart_lacks", missing: ["plant_name", "product_amount"] },
];

for (const code of ["en", "es", "fr"])
  test(`every line of a hold is a whole sentence in ${code}`, async () => {
    await setLanguage(code);
    for (const line of LINES) {
      const told = held([line]);
      assert.doesNotMatch(told, /[{}]|hold\.says|undefined|NaN|chart_/, line.key);
    }
    await setLanguage("en");
  });

test("a rule's figure is told in the unit that the phone types in", () => {
  setReads({ units: { C: "F" } });
  assert.match(held([LINES[0]]), /at least 145.0.°F/);
  setReads({ units: {} });
  assert.match(held([LINES[0]]), /at least 63.0.°C/);
});

test("a thermometer that is too cold says so in words", () => {
  assert.match(held([LINES[5]]), /Milk too cold: 144\.8.°F, at least 145/);
});

test("before the begin no round is counted down to", () => {
  assert.doesNotMatch(
    held([], { due_ms: null, lost_ms: null, last: [] }),
    /Next round/,
  );
});
