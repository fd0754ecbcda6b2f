// What the store says of wheels that do not ripen yet.

import assert from "node:assert/strict";
import { test } from "node:test";

import { phone } from "./page.mjs";

const page = await phone().open(["screens/store/ageing", "messages/index"]);
const { beforeRows, curingRows } = page["screens/store/ageing"];
const { loadRest, setLanguage } = page["messages/index"];
await loadRest();

const TITLES = {
  en: "Dry the wheels",
  es: "Secar las piezas",
  fr: "Sécher les meules",
};
const STEPS = [{ key: "dry", title: { en: "Dry the wheels" } }];

test("wheels that dry are said to dry, in every language", async () => {
  const before_store = { step: "dry", begins_ms: Date.now() + 3600000 };
  const told = [];
  for (const code of ["en", "es", "fr"]) {
    await setLanguage(code);
    const [now, ripens] = beforeRows({ make: { before_store }, steps: STEPS });
    assert.equal(now[1], TITLES[code]);
    assert.match(ripens[1], /\d/);
    const words = [now[0], ripens[0]].join();
    assert.ok(!words.includes("fact.") && !words.includes("{"), words);
    told.push(words);
  }
  assert.equal(new Set(told).size, 3);
});

test("of wheels that ripen nothing is said to come before", () => {
  assert.deepEqual(beforeRows({ make: { before_store: null }, steps: STEPS }), []);
  // As an older page kept it.
  assert.deepEqual(beforeRows({ make: {}, steps: STEPS }), []);
});

const figure = (name, value, more = {}) => ({ name, value, low: null, ...more });
const BAR = {
  at_frac: 0.25,
  low_frac: null,
  high_frac: null,
  aim_frac: null,
  side: null,
};
const days = (...values) => [{ key: "curing_days", values, notes: [] }];

test("the days that count stand against those asked, with the core's own bar", async () => {
  await setLanguage("en");
  const counted = figure("counted_days", 15, { low: 60, bar: BAR });
  const [first, cold, unknown, met] = curingRows(
    days(counted, figure("below_days", 0), figure("unknown_days", 0.81)),
  );
  assert.deepEqual(first, ["Days that count", "15.0 of 60", { bar: BAR }]);
  // No day was too cold: nothing is said of it.
  assert.equal(cold[1], null);
  assert.equal(unknown[1], "0.8");
  assert.ok(!met[1]);
});

test("where no days are asked, or none is known to count, no bar is drawn", async () => {
  await setLanguage("en");
  const asked = figure("verdict", "not_asked");
  const counted = figure("counted_days", 15, { low: 60, bar: BAR });
  for (const sums of [days(asked, counted), days(), []]) {
    const [[, words, more]] = curingRows(sums);
    assert.ok(words.length > 10, words);
    assert.equal(more.bar, undefined);
  }
});
