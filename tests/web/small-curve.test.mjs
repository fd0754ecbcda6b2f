// The small curve of Live: where readings, band and the recipe's acid curve are drawn.

import { test } from "node:test";
import assert from "node:assert/strict";

import { phone } from "./page.mjs";

const page = await phone().open(["messages/index", "parts/small-curve"]);
const { drawnOf, namesOf } = page["parts/small-curve"];
await page["messages/index"].loadRest();

const AT = 1790000000000;
const MIN = 60000;
const at = (minutes) => AT + minutes * MIN;

// 100 minutes are 300 wide; what lies lowest and highest leaves 10 of 100 free.
const HAND = { quantity: "curd_temp_c", from_ms: AT, to_ms: at(100) };
const point = (minutes, value) => ({
  at_ms: at(minutes),
  value,
  low: null,
  high: null,
});
const wanted = (low, high, begin, end, is_real = true) => ({
  step: "stir",
  quantity: "curd_temp_c",
  low,
  value: low,
  high,
  begin_ms: at(begin),
  end_ms: at(end),
  is_real,
});

function curve(points, more = {}) {
  const series = [{ quantity: "curd_temp_c", points }];
  return { at_hand: HAND, series, bands: [], acid: null, ...more };
}

test("readings are placed by time and value, and the last one is told", () => {
  const drawn = drawnOf(curve([point(0, 30), point(50, 34), point(100, 38)]));
  assert.deepEqual(drawn.points, [
    [0, 90],
    [150, 50],
    [300, 10],
  ]);
  assert.equal(drawn.last.value, 38);
});

test("what was read before the stretch shown is left out", () => {
  const drawn = drawnOf(curve([point(-5, 90), point(50, 34), point(100, 38)]));
  assert.deepEqual(
    drawn.points.map(([x]) => x),
    [150, 300],
  );
});

test("a band is drawn between its limits, cut to the stretch, an open side to the edge", () => {
  const bands = [wanted(32, 36, -20, 50), wanted(null, 34, 50, 200)];
  const points = [point(10, 30), point(90, 38)];
  const drawn = drawnOf(curve(points, { bands }));
  assert.deepEqual(drawn.bands, [
    { x: 0, wide: 150, top: 30, foot: 70 },
    { x: 150, wide: 150, top: 50, foot: 100 },
  ]);
});

test("bands of other quantities, and of steps to come, are not drawn", () => {
  const bands = [
    { ...wanted(32, 36, 0, 50), quantity: "ph" },
    wanted(32, 36, 0, 50, false),
  ];
  assert.deepEqual(drawnOf(curve([point(10, 30)], { bands })).bands, []);
});

test("one value alone lies in the middle", () => {
  assert.deepEqual(drawnOf(curve([point(50, 31)])).points, [[150, 50]]);
});

test("pH lies on the recipe's own curve", () => {
  const acid = {
    is_real: true,
    points: [
      { at_ms: AT, ph: 6.5, low_ph: 6.4, high_ph: 6.6 },
      { at_ms: at(100), ph: 5.5, low_ph: 5.4, high_ph: 5.6 },
    ],
  };
  const series = [{ quantity: "ph", points: [point(50, 6)] }];
  const hand = { ...HAND, quantity: "ph" };
  const drawn = drawnOf({ at_hand: hand, series, bands: [], acid });
  assert.deepEqual(drawn.points, [[150, 50]]);
  assert.deepEqual(drawn.acid.high[0], [0, 10]);
  assert.deepEqual(drawn.acid.low[1], [300, 90]);
  const unreal = { ...acid, is_real: false };
  assert.deepEqual(drawnOf({ at_hand: hand, series, bands: [], acid: unreal }).acid, {
    high: [],
    low: [],
  });
});

test("line and band are named at themselves, away from each other", () => {
  const bands = [wanted(36, 38, 50, 100)];
  const drawn = drawnOf(curve([point(0, 30), point(50, 34), point(90, 33)], { bands }));
  // The band lies on top: its name has no room above it, and stands below it.
  const [line, band] = namesOf(drawn);
  assert.deepEqual([line.words, band.words], ["Curd", "Wanted"]);
  assert.equal(band.style.top, drawn.bands[0].foot.toFixed(1) + "%");
  assert.equal(line.style.top, "68.0%"); // 60 is the reading, 8 the room of its dot
  assert.equal(line.style.right, "10.0%"); // where the reading is: 90 of 100 minutes
});

test("without a band the line alone is named", () => {
  const drawn = drawnOf(curve([point(10, 30), point(20, 34)]));
  const [line, ...more] = namesOf(drawn);
  assert.deepEqual(more, []);
  assert.equal(line.style.left, "20.0%");
});

test("where nothing was read nothing is drawn", () => {
  assert.equal(drawnOf({ at_hand: null, series: [], bands: [], acid: null }), null);
});
