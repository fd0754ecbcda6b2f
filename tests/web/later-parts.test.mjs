// Parts that come later are functions of a kit: here of a kit without a browser.

import { test } from "node:test";
import assert from "node:assert/strict";
import htm from "htm";
import { h } from "preact";
import { make as makeWetLock } from "../../static/js/parts/later/wet-lock.js";

const html = htm.bind(h);
const shows = (text) => () => text;

/** Every node below, components rendered once. */
function nodesOf(node) {
  if (Array.isArray(node)) return node.flatMap(nodesOf);
  if (node === null || typeof node !== "object") return [node];
  const { type, props } = node;
  const inner = typeof type === "function" ? type(props) : props.children;
  return [node, ...nodesOf(inner)];
}

const wordsOf = (node) =>
  nodesOf(node)
    .filter((one) => typeof one === "string")
    .join(" ");

test("the wet lock names the timer of another make", async () => {
  const timer = { kind: "timer", title: null, label: "Second wash", due_ms: 60000 };
  const deadline = { id: "b/1", make: "b", make_name: "Tomme", vat: "2", ...timer };
  const kit = {
    html,
    alarms: { value: { alarms: [], deadlines: [deadline] } },
    clock: String,
    Countdown: shows("1:00"),
    HoldBar: shows("hold"),
    lastAct: { value: null },
    mayAs: () => true,
    ring: { value: { ids: [] } },
    route: { value: ["now"] },
    secondMs: { value: 0 },
    t: (key) => key,
    trouble: { value: null },
    view: { value: null },
    whoseOf: ({ vat }) => `Vat ${vat}`,
  };
  const { Locked } = makeWetLock(kit);
  assert.match(wordsOf(html`<${Locked} />`), /Second wash · Vat 2/);
});
