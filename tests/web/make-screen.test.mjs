// The screen of a make: what its button and its bars let a person do.

import assert from "node:assert/strict";
import { test } from "node:test";

import { phone } from "./page.mjs";

const page = await phone().open([
  "data/alarm",
  "messages/index",
  "parts/alarm-bar",
  "router",
  "screens/late",
  "screens/make/caution-band",
  "screens/make/primary",
]);
const { AlarmBar, notInBar } = page["parts/alarm-bar"];
const { awaitsCautions } = page["screens/make/caution-band"];
const { NotReady, PrimaryButton } = page["screens/make/primary"];

const { loadRest } = page["messages/index"];
await loadRest();

const STEP = { key: "cut", title: { en: "Cut" }, button: { act: "begin", arg: null } };
const OWED = { step: "cut", quantity: null, stands: "before", owed: [{ id: "sharp" }] };

test("Begin waits until the core has said which cautions are owed", () => {
  page.state.core.value = "starting";
  assert.equal(awaitsCautions({}, undefined), true);
  page.state.core.value = "ready";
  assert.equal(awaitsCautions({}, undefined), true, "it is asked still");
  assert.equal(awaitsCautions({ cautions: [] }, undefined), false);
  // The screen that shows them is on its way.
  assert.equal(awaitsCautions({ cautions: [OWED] }, OWED), true);
  const beside = { ...OWED, stands: "beside" };
  assert.equal(awaitsCautions({ cautions: [beside] }, beside), false);
});

test("a core that failed keeps nobody from beginning", () => {
  page.state.core.value = "failed";
  assert.equal(awaitsCautions({}, undefined), false);
});

test("Begin that waits stands in its place and takes no press; other acts do", () => {
  const waiting = PrimaryButton({ make: "m", step: STEP, awaitsCautions: true });
  assert.equal(waiting.type, NotReady);
  const button = NotReady(waiting.props);
  assert.equal(button.props.disabled, true);
  assert.equal(button.props.onTap, undefined);
  const ready = PrimaryButton({ make: "m", step: STEP });
  assert.equal(typeof ready.props.onTap, "function");
  const reads = { ...STEP, button: { act: "end", arg: null } };
  const end = PrimaryButton({ make: "m", step: reads, awaitsCautions: true });
  assert.equal(typeof end.props.onTap, "function");
});

const MATTER = { id: "drugs", alert: "matter/drugs", key: "drug_positive" };
const OTHER = { id: "hold", alert: "matter/hold", key: "hold_not_met" };
const ALARM = {
  ...{ id: "m/matter/drugs", make: "m", make_name: "Tomme", vat: "2", step: "receive" },
  ...{ matter: "matter/drugs", kind: "matter", key: "matter.drug_positive" },
  ...{ mark: "act", is_open: true, numbers: {}, rings_ms: 0, title: null },
};

/** A make on the screen, at a step that these matters stop, and what rings. */
function show(stoppedBy, alarm = ALARM) {
  const step = { key: "pump", status: "ready", stopped_by: stoppedBy };
  const matters = [MATTER, OTHER];
  page.state.view.value = {
    make: { id: "m" },
    steps: [step],
    focus: "pump",
    matters,
  };
  page.router.route.value = ["make", "m"];
  page["data/alarm"].alarms.value = { alarms: [alarm] };
}

/** The buttons of the bar: their words, components rendered down to the taps. */
function taps(node) {
  if (Array.isArray(node)) return node.flatMap(taps);
  if (node === null || typeof node !== "object") return [];
  const { type, props } = node;
  if (type?.name === "Tap") return [[props.children].flat(9).join("")];
  if (typeof type === "function") return taps(type(props));
  return taps(props.children);
}

test("a matter in the bar is not told again below it, any other is", () => {
  show([]);
  assert.deepEqual(notInBar("m", [MATTER, OTHER]), [OTHER]);
  assert.deepEqual(notInBar("n", [MATTER]), [MATTER], "of another make");
  show([], { ...ALARM, is_open: false });
  assert.deepEqual(notInBar("m", [MATTER, OTHER]), [MATTER, OTHER], "silenced");
});

test("the bar leads to its matter where the large button does not", () => {
  show([]);
  assert.ok(taps(AlarmBar()).includes("See what stands"));
  show(["drugs"]);
  const words = taps(AlarmBar());
  assert.ok(!words.includes("See what stands") && !words.includes("Show"), words);
  page.router.route.value = ["now"];
  assert.ok(taps(AlarmBar()).includes("Show"));
});
