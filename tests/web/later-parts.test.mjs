// Parts that come later are functions of a kit: here of a kit without a browser.

import { test } from "node:test";
import assert from "node:assert/strict";
import htm from "htm";
import { h } from "preact";
import { make as makePin } from "../../static/js/parts/later/pin.js";
import { make as makeProof } from "../../static/js/parts/later/pin-proof.js";
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
    may: () => true,
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

const ANN = { id: "ann", name: "Ann" };
const PinPad = shows("pad");

/** A page on which Ann's pad is open; `sign` stands in for the cryptography. */
async function pinPage(sign) {
  const page = { tries: [], proofs: [], said: [] };
  const parts = {
    "pin-pad": { PinPad },
    seal: { sign, actText: () => new Uint8Array(1) },
    "pin-tries": {
      afterWrong: () => ({ wrong: 1 }),
      isLocked: () => false,
      left: () => 4,
      waitMs: () => 0,
    },
  };
  page.pins = { value: { pins: [{ key: "old", person: "ann" }], granted: [] } };
  const kit = {
    html,
    later: async (name) => parts[name],
    pins: page.pins,
    me: { value: { person: ANN } },
    tapper: () => ANN,
    nowMs: () => 0,
    secondMs: { value: 1 },
    freshenPins: async () => {},
    restorePins: async () => {},
    triesOf: async () => null,
    setTries: async (who, tries) => page.tries.push(tries),
    act: async (kind, given) => page.proofs.push(await given.prove({ person: "ann" })),
    useEffect: () => {},
    useState: (first) => [
      first === false ? true : first,
      (next) => next?.problem && page.said.push(next.problem),
    ],
    t: (key, values) => `${key} ${values?.name ?? ""}`,
    whyOf: (problem) => problem.message,
  };
  parts["pin-proof"] = await makeProof(kit);
  const { PinStep } = await makePin(kit);
  const step = nodesOf(html`<${PinStep} kind="make_held" onDone=${() => {}} />`);
  page.type = step.find((one) => one?.type === PinPad).props.onPin;
  return page;
}

test("a proof names the key that signed it, though a newer one came meanwhile", async () => {
  const page = await pinPage(async () => {
    page.pins.value = { pins: [{ key: "new", person: "ann" }], granted: [] };
    return "signed";
  });
  await page.type("1234");
  assert.deepEqual(page.proofs, [{ by: "pin", key: "old", sig: "signed" }]);
});

test("a PIN that the owner reset while its pad was open costs no try", async () => {
  const page = await pinPage(async () => "signed");
  page.pins.value = { pins: [], granted: [] };
  await page.type("1234");
  assert.deepEqual(page.tries, []);
  assert.deepEqual(page.said, ["pin.not_here Ann"]);
});
