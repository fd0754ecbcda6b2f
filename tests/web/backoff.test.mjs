import assert from "node:assert/strict";
import { test } from "node:test";

import { waitMs } from "../../static/js/data/backoff.js";

const longest = () => 1;
const shortest = () => 0;

test("the wait doubles from one second to one minute and no further", () => {
  const waits = [1, 2, 3, 4, 5, 6, 7, 20].map((n) => waitMs(n, null, longest));
  assert.deepEqual(waits, [1000, 2000, 4000, 8000, 16000, 32000, 60000, 60000]);
});

test("jitter takes off at most half", () => {
  assert.equal(waitMs(3, null, shortest), 2000);
});

test("a server that asks for more time gets it", () => {
  assert.equal(waitMs(1, 30, longest), 30000);
});
