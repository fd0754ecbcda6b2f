// The make as one band: each stage drawn, and all of it said in whole sentences.

import { test } from "node:test";
import assert from "node:assert/strict";

import { phone } from "./page.mjs";

const page = await phone().open(["parts/day-band", "messages/index", "format"]);
const { DayBand, bandWords } = page["parts/day-band"];
const { loadRest, setLanguage, t } = page["messages/index"];
const { clockDay } = page.format;
await loadRest();

const AT = 1790000000000;
const MIN = 60000;
const at = (minutes) => clockDay(AT + minutes * MIN, AT);

function stage(key, how, begin, end, more = {}) {
  return {
    key,
    how,
    begin_ms: AT + begin * MIN,
    end_ms: AT + end * MIN,
    has_end: key !== "store",
    share_frac: 0.25,
    late_s: 0,
    ...more,
  };
}

const DAY = [
  stage("milk", "done", -60, -40),
  stage("heat", "left_open", -40, -30),
  stage("set", "running", -30, 10),
  stage("cut", "to_come", 10, 70),
];

/** Every element drawn below a node, components rendered. */
function drawn(node) {
  if (Array.isArray(node)) return node.flatMap(drawn);
  if (node === null || typeof node !== "object") return [];
  const { type, props } = node;
  if (typeof type === "function") return drawn(type(props));
  return [node, ...drawn(props.children ?? null)];
}

const stages = (band) =>
  drawn(DayBand({ band })).filter(({ props }) => props.class?.includes("band-stage"));

/** All that is written below a node. */
const written = (node) =>
  [node].flat(Infinity).reduce((text, part) => {
    if (part === null || part === undefined || typeof part === "boolean") return text;
    if (typeof part !== "object") return text + part;
    const { type, props } = part;
    return text + written(typeof type === "function" ? type(props) : props.children);
  }, "");

test("the band says in sentences what it shows, each stage once", () => {
  assert.equal(
    bandWords(DAY, AT),
    `Milk: done at ${at(-40)}. Heat: left open. Set: now, until about ${at(10)}. ` +
      `Cut and wash: from about ${at(10)}.`,
  );
  const [band] = drawn(DayBand({ band: DAY }));
  assert.equal(band.props.role, "img");
  assert.match(band.props["aria-label"], /^Milk: done at .+ Cut and wash: from about/);
});

test("a stage that is late says by how much", () => {
  const late = stage("set", "running", -30, 10, { late_s: 720 });
  assert.match(bandWords([late], AT), /^Set: now, until about .+, 12\smin late\.$/);
});

test("no end is promised for the store", () => {
  const inStore = stage("store", "running", -30, 90000);
  assert.equal(bandWords([inStore], AT), "Store: now.");
  assert.match(
    bandWords([{ ...inStore, late_s: 7200 }], AT),
    /^Store: now, 2\sh late\.$/,
  );
});

test("each stage is drawn by its share, named, and told apart by its class", () => {
  const late = { ...DAY[2], late_s: 720 };
  const found = stages([DAY[0], DAY[1], late, DAY[3]]);
  assert.deepEqual(
    found.map(({ props }) => props.class),
    [
      "band-stage band-done",
      "band-stage band-left_open",
      "band-stage band-running is-late",
      "band-stage band-to_come",
    ],
  );
  for (const { props } of found) assert.equal(props.style["--share"], 0.25);
  const names = drawn(DayBand({ band: DAY })).filter(
    ({ props }) => props.class === "band-name",
  );
  assert.deepEqual(
    names.map(({ props }) => props.children),
    ["Milk", "Heat", "Set", "Cut and wash"],
  );
});

test("the stage that is late says so beside its name, and each when it begins", () => {
  const [, , late, to] = stages([DAY[0], DAY[1], { ...DAY[2], late_s: 720 }, DAY[3]]);
  assert.match(written(late), /^\s*Set 12\smin late/);
  assert.ok(written(late).includes(at(-30)));
  assert.ok(written(to).includes(at(10)));
});

test("a thin band has names alone, and says the same", () => {
  const band = [DAY[0], { ...DAY[2], late_s: 720 }];
  const thin = drawn(DayBand({ band, isThin: true }));
  assert.equal(thin[0].props.class, "day-band is-thin");
  const [full] = drawn(DayBand({ band }));
  assert.equal(thin[0].props["aria-label"], full.props["aria-label"]);
  assert.match(full.props["aria-label"], /^Milk: done at .+ late\.$/);
  assert.equal(written(thin[0]), "MilkSet");
});

test("now stands in the stage in proportion to time, and never outside of it", () => {
  const past = (begin, end) => {
    const now = page["parts/day-band"].pastPercent;
    return now(stage("set", "running", begin, end), AT);
  };
  assert.equal(past(-30, 10), 75);
  assert.equal(past(-30, -10), 100);
  assert.equal(past(10, 30), 0);
  assert.equal(past(0, 0), 0);
});

test("a make that is over, or that an older page kept, has no band", () => {
  assert.equal(DayBand({ band: [] }), null);
  assert.equal(DayBand({}), null);
});

test("every stage and every way has its words in each language", async () => {
  const keys = ["milk", "heat", "set", "cut", "press", "brine", "store"];
  for (const language of ["en", "es", "fr"]) {
    await setLanguage(language);
    const names = keys.map((key) => t("stage." + key));
    assert.equal(new Set(names).size, keys.length, language);
    for (const name of names) assert.doesNotMatch(name, /stage\./);
    for (const how of ["done", "left_open", "running", "to_come"])
      assert.ok(bandWords([stage("cut", how, -10, 10)], AT).startsWith(names[3]));
  }
  await setLanguage("en");
});
