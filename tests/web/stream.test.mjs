import assert from "node:assert/strict";
import { test } from "node:test";

import { reader } from "../../static/js/data/stream.js";

test("a message cut anywhere by the network is put together again", () => {
  const text = 'event: head\ndata: {"head":3}\n\n: alive\n\nid: 4\ndata: {"n":4}\n\n';
  for (let cut = 0; cut <= text.length; cut += 1) {
    const read = reader();
    const told = [...read(text.slice(0, cut)), ...read(text.slice(cut))];
    assert.deepEqual(told, [
      { event: "head", id: null, data: '{"head":3}' },
      { event: "message", id: "4", data: '{"n":4}' },
    ]);
  }
});

test("a comment alone tells nothing", () => {
  assert.deepEqual(reader()(": alive\n\n"), []);
});

test("several data lines are one text", () => {
  assert.equal(reader()("data: a\ndata: b\n\n")[0].data, "a\nb");
});
