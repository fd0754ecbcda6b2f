// The page converts by the core's table. What is asked here is exact by definition;
// that every conversion is the core's own is asked by tests/test_page_units.py.
import assert from "node:assert/strict";
import { test } from "node:test";

import { convert, following, moreDecimals } from "../../static/js/units/convert.js";

test("the fixed points of both scales of temperature meet", () => {
  assert.ok(Math.abs(convert(0, "C", "F") - 32) < 1e-9);
  assert.ok(Math.abs(convert(100, "C", "F") - 212) < 1e-9);
  assert.ok(Math.abs(convert(5, "K", "F_rise") - 9) < 1e-9);
});

test("a share is told in percent to the last digit", () => {
  assert.equal(convert(57, "%", "fraction"), 0.57);
});

test("what does not convert is refused and never shown as if it did", () => {
  assert.throws(() => convert(6.5, "pH", "fraction lactic"), /does not convert/);
  assert.throws(() => convert(1, "stone", "kg"), /does not convert/);
  assert.equal(convert(1, "stone", "stone"), 1);
});

test("a larger unit takes a decimal more, percent takes two fewer", () => {
  assert.equal(moreDecimals("L", "gal"), 1);
  assert.equal(moreDecimals("kPa", "psi"), 1);
  assert.equal(moreDecimals("fraction", "%"), -2);
  assert.equal(Math.abs(moreDecimals("kg", "lb")), 0);
});

test("with the scale of temperature go its differences and rates", () => {
  const chosen = [
    ["C", "F"],
    ["kg", "kg"],
  ];
  assert.deepEqual(following(chosen), { C: "F", K: "F_rise", "K/min": "F/min" });
});
