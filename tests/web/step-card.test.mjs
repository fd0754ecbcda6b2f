// What to do now, put into words: of a Step as the core tells it.

import assert from "node:assert/strict";
import { test } from "node:test";

import { phone } from "./page.mjs";

const page = await phone().open(["parts/step-card", "messages/index"]);
const { nowWords } = page["parts/step-card"];
const NB = "\u00a0";

const figure = (name, quantity, unit, value) => ({ name, quantity, unit, value });
const WASH = {
  text: { en: "Pour {pour/water_added_l} at {pour/water_temp_c} for {lasts}." },
  figures: [
    figure("pour/water_added_l", null, "L", 47),
    figure("pour/water_temp_c", "water_temp_c", null, 46),
    figure("lasts", null, "s", 1800),
  ],
};

test("a sentence is told with the figures of the make, each with its unit", () => {
  assert.equal(
    nowWords({ now: WASH, do: [], title: { en: "Wash" } }),
    `Pour 47${NB}L at 46.0${NB}°C for 30${NB}min.`,
  );
});

test("a step that was kept before there were sentences is told by its first line", () => {
  const lines = [{ en: "Stop the stirrer." }, { en: "Lift it." }];
  assert.equal(nowWords({ do: lines, title: { en: "Settle" } }), "Stop the stirrer.");
  assert.equal(nowWords({ do: [], title: { en: "Settle" } }), "Settle");
});
