// A later screen is asked for by its name, and gets properties of its own beside it.
import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { test } from "node:test";

const SCREENS = new URL("../../static/js/screens/", import.meta.url);

function read(name) {
  return readFileSync(new URL(name, SCREENS), "utf8");
}

const files = readdirSync(SCREENS, { recursive: true }).filter((one) =>
  one.endsWith(".js"),
);
const asked = files.flatMap((one) => read(one).match(/<\$\{Late\}[^>]*?\/>/g) ?? []);

test("no property of a later screen is given twice", () => {
  assert.ok(asked.length > 10);
  for (const tag of asked) {
    const names = [...tag.matchAll(/ (\w+)=/g)].map(([, name]) => name);
    assert.deepEqual(names, [...new Set(names)], tag);
  }
});

test("every later screen that is asked for is there", () => {
  const there = read("later.js");
  for (const tag of asked) {
    const [, name] = /screen="(\w+)"/.exec(tag);
    assert.match(there, new RegExp(`\\b${name}\\b`));
  }
});
