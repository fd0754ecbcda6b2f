// Where the names of lines stand on a chart: at their lines, and never over each other.

import assert from "node:assert/strict";
import { test } from "node:test";

import { apart } from "../../static/js/screens/curve/paint.js";
import { phone } from "./page.mjs";

const page = await phone().open(["parts/line-chart"]);
const { nameAt } = page["parts/line-chart"];

const HIGH = 20;
const heights = (...ys) =>
  apart(
    ys.map((y, at) => ({ y, name: at })),
    HIGH,
    10,
    190,
  );

test("names with room stay at the height of their lines", () => {
  assert.deepEqual(
    heights(100, 40).map((one) => [one.name, one.y]),
    [
      [1, 40],
      [0, 100],
    ],
  );
});

test("two lines that end together have their names one below the other", () => {
  assert.deepEqual(
    heights(100, 100, 101).map((one) => one.y),
    [100, 120, 140],
  );
});

test("at the foot names make room upwards, and none leaves the chart", () => {
  assert.deepEqual(
    heights(189, 190, 250).map((one) => one.y),
    [150, 170, 190],
  );
  assert.deepEqual(
    heights(-50).map((one) => one.y),
    [10],
  );
});

test("the line of makes is named where it lies farthest from the middle", () => {
  assert.deepEqual(nameAt([6.4, 6.5, 6.1, 6.4, 6.4, 6.4, 6.4], 6.4), {
    place: 2,
    isAbove: false,
    anchor: "start",
  });
  assert.deepEqual(nameAt([6.4, 6.4, 6.9], 6.4), {
    place: 2,
    isAbove: true,
    anchor: "end",
  });
  // One make alone, or all alike: at the first.
  assert.equal(nameAt([6.4], 6.4).place, 0);
  assert.equal(nameAt([6.4, 6.4], 6.4).place, 0);
});
