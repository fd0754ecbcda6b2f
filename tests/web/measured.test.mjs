// An amount to measure out is told as the tool at hand shows it.
import assert from "node:assert/strict";
import { beforeEach, test } from "node:test";

import * as format from "../../static/js/format.js";
import { following } from "../../static/js/units/convert.js";

const NB = "\u00a0";
const AMERICAN = following([
  ["L", "gal"],
  ["kPa", "psi"],
]);

beforeEach(() => format.setReads({ language: "en", units: {} }, () => {}));

test("no figure is finer than the jug, the scale or the gauge that shows it", () => {
  // Seen on the screens: 52.45 L, 24.64 kPa, 301.9 mL.
  const told = [
    [52.45, "L", "52"],
    [24.64, "kPa", "25"],
    [105.5, "kPa", "105"],
    [8.2, "kPa", "8.0"],
    [301.9, "mL", "300"],
    [157.5, "mL", "158"],
    [48.46, "mL", "48.5"],
    [119.21, "g", "119"],
    [15.02, "g", "15.0"],
    [3.8625, "kg", "3.86"],
  ];
  for (const [value, unit, text] of told)
    assert.equal(format.measured(value, unit), text + NB + unit);
});

test("packs and tablets are counted, a part of one as far as it can be parted", () => {
  assert.equal(format.measured(1.2, "pack"), `1.2${NB}pack`);
  assert.equal(format.measured(12, "tablet"), `12${NB}tablet`);
  assert.equal(format.measured(2.46, "tablet"), `2.5${NB}tablet`);
  format.setReads({ language: "fr" });
  assert.equal(format.measured(2.5, "tablet"), `2,5${NB}comprimé`);
});

test("the tool is that of the unit that the person reads", () => {
  format.setReads({ language: "en", units: AMERICAN });
  // 200 L are 52.83 gal, 1500 L 396.3; 24.64 kPa are 3.57 psi.
  assert.equal(format.measuredBand(200, 1500, "L"), `53 – 396${NB}gal`);
  assert.equal(format.measured(24.64, "kPa"), `3.6${NB}psi`);
});

test("a small amount is never rounded to nothing", () => {
  assert.equal(format.measured(0.004, "kg"), `0.0040${NB}kg`);
  assert.equal(format.measured(0.03, "g"), `0.030${NB}g`);
  assert.equal(format.measured(0, "L"), `0.00${NB}L`);
});

test("a pad begins with what can be measured, with a point in every language", () => {
  format.setReads({ language: "es" });
  assert.equal(format.measuredTyped(157.5, "mL"), "158");
  assert.equal(format.measuredTyped(48.46, "mL"), "48.5");
  assert.equal(format.measuredTyped(null, "mL"), "");
});

test("what was put in is told as it was entered, on no tool's steps", () => {
  assert.equal(format.amount(63.4, "mL"), `63.4${NB}mL`);
});

test("the two ends of a band are told in the same steps", () => {
  assert.equal(format.measuredBand(149.6, 165.4, "mL"), `150 – 165${NB}mL`);
  assert.equal(format.measuredBand(9.62, 10.6, "g"), `9.6 – 10.6${NB}g`);
  assert.equal(format.measuredBand(null, 20, "L"), `≤ 20${NB}L`);
});
