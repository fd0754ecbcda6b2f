// What the store says of wheels that do not ripen yet.

import assert from "node:assert/strict";
import { test } from "node:test";

import { phone } from "./page.mjs";

const page = await phone().open(["screens/store/ageing", "messages/index"]);
const { beforeWords } = page["screens/store/ageing"];
const { loadRest, setLanguage } = page["messages/index"];
await loadRest();

const STEPS = [{ key: "dry", title: { en: "Dry the wheels" } }];

test("wheels that dry are said to dry, in every language", async () => {
  const before_store = { step: "dry", begins_ms: Date.now() + 3600000 };
  const told = [];
  for (const code of ["en", "es", "fr"]) {
    await setLanguage(code);
    const [words] = beforeWords({ make: { before_store }, steps: STEPS });
    assert.ok(!words.includes("store.before") && !words.includes("{"), words);
    assert.match(words, /\d/);
    told.push(words);
  }
  assert.match(told[0], /Dry the wheels/);
  assert.equal(new Set(told).size, 3);
});

test("of wheels that ripen nothing is said to come before", () => {
  assert.deepEqual(beforeWords({ make: { before_store: null }, steps: STEPS }), []);
  // As an older page kept it.
  assert.deepEqual(beforeWords({ make: {}, steps: STEPS }), []);
});
