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

test("a line is named behind its last reading, or below where it ends at the edge", () => {
  // From 30 to 34 °C, last at a fifth of the time: in the middle of the height.
  const early = drawnOf(curve([point(10, 30), point(15, 34), point(20, 32)]));
  const [line, ...more] = namesOf(early);
  assert.deepEqual(more, []);
  assert.equal(line.words, "Curd");
  assert.deepEqual(line.style, { left: "22.0%", top: "39.0%" });
  const late = drawnOf(curve([point(0, 30), point(100, 34)]));
  assert.deepEqual(namesOf(late)[0].style, { right: "0.0%", top: "18.0%" });
  // Down in the corner there is room above alone.
  const low = drawnOf(curve([point(0, 34), point(100, 30)]));
  assert.deepEqual(namesOf(low)[0].style, { right: "0.0%", top: "60.0%" });
});

test("a band is named before it, or within where it fills the drawing", () => {
  const read = [point(0, 30), point(90, 38)];
  const named = (band) => namesOf(drawnOf(curve(read, { bands: [band] })))[1];
  const late = named(wanted(32, 36, 50, 100));
  assert.equal(late.words, "Wanted");
  assert.deepEqual(late.style, { right: "51.3%", top: "39.0%" });
  assert.deepEqual(named(wanted(32, 36, 0, 100)).style, { left: "0.0%", top: "39.0%" });
});

test("where nothing was read nothing is drawn", () => {
  assert.equal(drawnOf({ at_hand: null, series: [], bands: [], acid: null }), null);
});
