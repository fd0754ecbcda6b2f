// One scale of type for every screen, drawn for who works on them.

import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { test } from "node:test";

import { scales, sheet } from "../../demo/scales.mjs";

const CSS = new URL("../../static/css/", import.meta.url);
const SHEETS = readdirSync(CSS).map((name) => [
  name,
  readFileSync(new URL(name, CSS), "utf8"),
]);

test("no style sheet has a size of type of its own", () => {
  const own = SHEETS.flatMap(([name, css]) =>
    [...css.matchAll(/font-size: [\d.]+r?em;/g)].map(([found]) => [name, found]),
  );
  assert.deepEqual(own, []);
});

test("the steps of the scale grow, each told apart from the one before", () => {
  const rems = scales().sizes.map(([, rem]) => rem);
  assert.ok(rems.length > 5);
  assert.ok(rems.every((rem, n) => !n || rem / rems[n - 1] >= 1.05));
});

test("every step of the scale is used", () => {
  const all = SHEETS.map(([, css]) => css).join("");
  const unused = scales().sizes.filter(([name]) => !all.includes(`var(--t-${name})`));
  assert.deepEqual(unused, []);
});

test("the drawn scales are those of the theme", () => {
  const kept = new URL("../../demo/scales.svg", import.meta.url);
  assert.equal(readFileSync(kept, "utf8"), sheet());
});
