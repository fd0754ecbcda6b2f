// The marks without a browser: each state has one, and no two look alike.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";

import { sheet } from "../../demo/marks.mjs";
import { PAGE } from "../../static/js/messages/en/page.js";
import * as es from "../../static/js/messages/es/index.js";
import * as fr from "../../static/js/messages/fr/index.js";
import { INSTRUMENTS, instrumentOf } from "../../static/js/parts/instruments.js";
import { MARKS } from "../../static/js/parts/marks.js";
import { QUANTITIES } from "../../static/js/units/table.js";
import { blurred, chains, dots, outline, unlikeFrac } from "./raster.mjs";

const FINE = 48; // two dots to a unit of the field
const NAMES = Object.keys(MARKS);
const DRAWN = { ...MARKS, ...INSTRUMENTS };
const ALL = Object.keys(DRAWN);
// The same shape half a unit lower differs by about 0.05 of the field, as painted by
// a browser; what is told apart must differ by several times that.
const UNLIKE_FRAC = 0.2;
const OUTLINE_UNLIKE_FRAC = 0.15;

const pairsOf = (names) =>
  names.flatMap((one, n) => names.slice(0, n).map((other) => [one, other]));

/** Each pair that differs by less than a share, once drawn so. */
function alike(drawn, leastFrac, names = ALL) {
  const pictures = Object.fromEntries(names.map((name) => [name, drawn(DRAWN[name])]));
  return pairsOf(names)
    .map(([one, other]) => [one, other, unlikeFrac(pictures[one], pictures[other])])
    .filter(([, , frac]) => !(frac >= leastFrac));
}

/** The words that the core tells a step's state in. */
function wordsOfCore() {
  const types = readFileSync(new URL("../../static/js/shapes.d.ts", import.meta.url));
  const [, told] = /type StepMark =([^;]*);/.exec(types);
  return [...told.matchAll(/"(\w+)"/g)].map(([, word]) => word);
}

test("every state that the core tells has a mark", () => {
  assert.equal(wordsOfCore().length, 8);
  assert.deepEqual([...NAMES].sort(), ["act", "check", "ok", ...wordsOfCore()].sort());
});

test("every mark has a word of its own in three languages", () => {
  for (const texts of [PAGE, es.TEXTS, fr.TEXTS]) {
    const words = NAMES.map((name) => texts["state." + name]);
    assert.ok(words.every(Boolean), words.join());
    assert.equal(new Set(words).size, NAMES.length, words.join());
  }
});

test("every mark stays in its field, and no path is used twice", () => {
  const paths = ALL.flatMap((name) => Object.values(DRAWN[name]));
  assert.equal(new Set(paths).size, paths.length);
  for (const name of ALL) {
    for (const [part, path] of Object.entries(DRAWN[name])) {
      const rim = part === "line" ? 1.5 : 0;
      for (const place of chains(path).flat(2))
        assert.ok(place >= rim - 0.01 && place <= 24 - rim + 0.01, `${name}: ${place}`);
    }
  }
});

test("in black alone no two marks look alike", () => {
  assert.deepEqual(
    alike((mark) => dots(mark, FINE), UNLIKE_FRAC),
    [],
  );
});

test("every reading has its instrument, and none is drawn for nothing", () => {
  const drawn = Object.keys(QUANTITIES).map(instrumentOf);
  assert.deepEqual([...new Set(drawn)].sort(), Object.keys(INSTRUMENTS).sort());
  assert.equal(instrumentOf("brine_salt_frac"), "float");
  assert.equal(instrumentOf("press_gauge_kpa"), "gauge");
  assert.equal(instrumentOf("drug_test"), "vial");
});

test("the outlines of the marks alone tell them apart", () => {
  assert.deepEqual(
    alike((mark) => outline(dots(mark, FINE)), OUTLINE_UNLIKE_FRAC, NAMES),
    [],
  );
});

test("an eye of half acuity tells them apart on the wall, five metres off", () => {
  // Two minutes of arc are 2.9 mm at 5 m: a mark 35 mm high is twelve such dots.
  assert.deepEqual(
    alike((mark) => blurred(dots(mark, FINE), FINE / 12), UNLIKE_FRAC, NAMES),
    [],
  );
});

test("the comparison tells a shape from itself and from its shadow", () => {
  const drawn = dots(MARKS.due, FINE);
  assert.equal(unlikeFrac(drawn, drawn), 0);
  assert.ok(unlikeFrac(drawn, dots({}, FINE)) > 0.4);
  // A disc of radius 6 covers pi 36 of 576; a square in it leaves the even-odd hole.
  const disc = "M12 6c3.31 0 6 2.69 6 6s-2.69 6-6 6-6-2.69-6-6 2.69-6 6-6z";
  const ink = (shape) => unlikeFrac(dots(shape, 96), dots({}, 96)) * 576;
  assert.ok(Math.abs(ink({ solid: disc }) - Math.PI * 36) < 1);
  assert.ok(Math.abs(ink({ solid: disc + "M10 10h4v4h-4z" }) - Math.PI * 36 + 16) < 1);
  // A line of 10, three wide, with round ends.
  assert.ok(Math.abs(ink({ line: "M7 12h10" }) - 30 - Math.PI * 2.25) < 1);
});

test("the sheet of marks shows them as they are", () => {
  const kept = new URL("../../demo/marks.svg", import.meta.url);
  assert.equal(readFileSync(kept, "utf8"), sheet());
});
