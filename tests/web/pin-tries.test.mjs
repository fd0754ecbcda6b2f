// What wrong PINs cost on this phone.
import assert from "node:assert/strict";
import { test } from "node:test";

import {
  afterWrong,
  isLocked,
  left,
  waitMs,
} from "../../static/js/parts/later/pin-tries.js";

const NOON = 1790000000000;
const MIN = 60000;

function wrong(times, nowMs = NOON) {
  let tries = null;
  for (let n = 0; n < times; n += 1) tries = afterWrong(tries, nowMs);
  return tries;
}

test("four wrong PINs cost nothing but are counted", () => {
  assert.deepEqual(
    [0, 1, 2, 3, 4].map((n) => left(wrong(n))),
    [5, 4, 3, 2, 1],
  );
  assert.deepEqual(
    [0, 1, 4].map((n) => waitMs(wrong(n), NOON)),
    [0, 0, 0],
  );
});

test("from the fifth on each costs more, and after nine the server alone looks", () => {
  const waits = [5, 6, 7, 8, 9].map((n) => waitMs(wrong(n), NOON) / MIN);
  assert.deepEqual(waits, [1, 5, 15, 60, 60]);
  assert.deepEqual(
    [9, 10, 11].map((n) => isLocked(wrong(n))),
    [false, true, true],
  );
});

test("the wait ends when it was said to", () => {
  assert.equal(waitMs(wrong(5), NOON + MIN - 1), 1);
  assert.equal(waitMs(wrong(5), NOON + MIN), 0);
});

test("a clock set back makes no wait shorter", () => {
  assert.equal(waitMs(wrong(7), NOON - 100 * MIN), 15 * MIN);
});
