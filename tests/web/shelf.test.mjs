// The shelf that hands the core's files to the phone's interpreter.

import assert from "node:assert/strict";
import { join } from "node:path";
import { test } from "node:test";

import { coreTexts, furnish, root, shelve } from "../phone/shelf.mjs";

const lib = join(root, "static", "lib");
const { loadMicroPython } = await import(join(lib, "micropython.mjs"));

const FIRST = {
  "core/__init__.py": "",
  "core/milk.py": 'WORDS = "Käse bei 31 °C, 🧀"\n',
  "core/late/__init__.py": "",
};

async function phone() {
  const { "shelf.py": shelf, "host.py": host } = coreTexts();
  const python = await loadMicroPython({ url: join(lib, "micropython.wasm") });
  furnish(python, { "shelf.py": shelf, "host.py": host, ...FIRST });
  return python;
}

test("a module comes from the shelf with every letter it has", async () => {
  const python = await phone();
  python.runPython("from core.milk import WORDS\nimport core.milk");
  assert.equal(python.globals.get("WORDS"), "Käse bei 31 °C, 🧀");
  python.runPython("where = core.milk.__file__");
  assert.equal(python.globals.get("where"), "/shelf/core/milk.py");
});

test("what was asked for too early is found once the rest has come", async () => {
  const python = await phone();
  const host = python.pyimport("host");
  const request = JSON.stringify({ module: "late.sums", name: "add", args: [2, 3] });
  assert.match(host.call(request), /^\{"error": \{"type": "ImportError"/);
  shelve(python, { "core/late/sums.py": "def add(a, b):\n    return a + b\n" });
  assert.deepEqual(JSON.parse(host.call(request)), { ok: 5 });
});

test("a text that ends in the middle of a line takes nothing of the next", async () => {
  const python = await phone();
  shelve(python, { "core/a.py": "A = 1", "core/empty.py": "", "core/b.py": "B = 2" });
  python.runPython("from core import a, b, empty\ntold = a.A, b.B");
  assert.deepEqual([...python.globals.get("told")], [1, 2]);
});
