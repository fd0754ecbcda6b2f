import assert from "node:assert/strict";
import { test } from "node:test";

import { groups } from "../../static/js/screens/recipes/figures.js";

test("a recipe without wheels and ingredients still shows its figures", () => {
  const lasts = { value: 600, unit: "s", source: "room", status: "practice" };
  const found = groups({
    id: "warm",
    version: 1,
    title: { en: "Warm" },
    milk: {},
    steps: [{ key: "rest", title: { en: "Rest" }, lasts }],
  });
  assert.deepEqual(
    found.map((group) => [group.key, group.figures]),
    [
      ["whole", []],
      ["steps.rest", [{ path: ["steps", 0, "lasts"], figure: lasts }]],
    ],
  );
});
