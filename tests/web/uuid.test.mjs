import assert from "node:assert/strict";
import { test } from "node:test";

import { uuid4, uuid7 } from "../../static/js/data/uuid.js";

test("a version 7 UUID begins with its instant", () => {
  // RFC 9562, appendix A.6: 0x017F22E279B0 is 2022-02-22 19:22:22.000 UTC.
  const atMs = Date.UTC(2022, 1, 22, 19, 22, 22);
  assert.match(
    uuid7(atMs),
    /^017f22e2-79b0-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/,
  );
});

test("a version 4 UUID carries its version and variant", () => {
  assert.match(
    uuid4(),
    /^[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/,
  );
});

test("ten thousand UUIDs of one instant all differ", () => {
  const made = new Set(Array.from({ length: 10000 }, () => uuid7(1)));
  assert.equal(made.size, 10000);
});
