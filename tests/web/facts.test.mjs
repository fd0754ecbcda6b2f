// Labels with their values, and drawn bars: what is left out, and what is said.

import assert from "node:assert/strict";
import { test } from "node:test";

import { phone } from "./page.mjs";

const page = await phone().open([
  "messages/index",
  "parts/bars",
  "parts/facts",
  "parts/table",
]);
const { barWords, DrawnBar } = page["parts/bars"];
const { Facts } = page["parts/facts"];
const { Table } = page["parts/table"];
const { loadRest, setLanguage } = page["messages/index"];
await loadRest();

/** All that is drawn below a node, components rendered. */
function all(node) {
  if (Array.isArray(node)) return node.flatMap(all);
  if (node === null || typeof node !== "object") return [];
  if (typeof node.type === "function") return all(node.type(node.props));
  return [node, ...all(node.props.children)];
}

/** The words below a node, in order. */
function words(node) {
  if (Array.isArray(node)) return node.map(words).join("");
  if (node === null || node === undefined || typeof node === "boolean") return "";
  if (typeof node !== "object") return String(node);
  if (typeof node.type === "function") return words(node.type(node.props));
  return words(node.props.children);
}

const kinds = (node) => all(node).map((one) => one.type);

const ROWS = [
  ["Batch", "QB-259"],
  ["Days that count", "0"],
  ["Loads", 0],
  ["Humidity", null],
  ["Store", ""],
  null,
  false,
];

test("what is not known is left out, and nothing is a value", () => {
  const list = Facts({ rows: ROWS });
  assert.equal(list.type, "dl");
  const terms = all(list).filter((one) => one.type === "dt");
  assert.deepEqual(terms.map(words), ["Batch", "Days that count", "Loads"]);
  const told = all(list).filter((one) => one.type === "dd");
  assert.deepEqual(told.map(words), ["QB-259", "0", "0"]);
});

test("where nothing is known there is no empty list", () => {
  assert.equal(Facts({ rows: [["Humidity", null], null] }), null);
});

test("within a key there is no list, and label and value stay apart in its words", () => {
  const list = Facts({ rows: ROWS, isInKey: true });
  assert.deepEqual([...new Set(kinds(list))], ["span"]);
  assert.match(words(list), /Batch QB-259/);
});

const GROWN = {
  at_frac: 0.25,
  low_frac: null,
  high_frac: null,
  aim_frac: null,
  side: null,
};
const BANDED = {
  at_frac: 0.9,
  low_frac: 1 / 3,
  high_frac: 2 / 3,
  aim_frac: 0.5,
  side: "above",
};

test("a bar that fills is as long as the core says, and says it", () => {
  const bar = DrawnBar({ bar: GROWN });
  assert.equal(bar.props.role, "img");
  assert.equal(bar.props.style["--at"], "25.0%");
  assert.match(bar.props["aria-label"], /^25\u00a0% of the way$/);
  assert.deepEqual(kinds(bar), ["span"], "no band, no post, no aim");
});

test("a value in a band is a post beside its band and what is wanted", () => {
  const bar = DrawnBar({ bar: BANDED });
  const parts = all(bar).slice(1);
  assert.deepEqual(
    parts.map((one) => one.props.class),
    ["bar-band", "bar-aim", "bar-post"],
  );
  const [band, aim] = parts.map((one) => one.props.style);
  assert.deepEqual(band, { left: "33.3%", right: "33.3%" });
  assert.deepEqual(aim, { left: "50.0%" });
  const noAim = DrawnBar({ bar: { ...BANDED, aim_frac: null } });
  assert.ok(!all(noAim).some((one) => one.props.class === "bar-aim"));
});

test("a bar is said in each language, each side in words of its own", async () => {
  const bars = [
    GROWN,
    ...["below", "within", "above"].map((side) => ({ ...BANDED, side })),
  ];
  for (const code of ["en", "es", "fr"]) {
    await setLanguage(code);
    const said = bars.map(barWords);
    assert.equal(new Set(said).size, 4, said.join());
    assert.ok(!said.some((text) => text.includes("bar.") || text.includes("{")), code);
  }
  await setLanguage("en");
});

test("a table names its columns and lines, and sets its numbers to the right", () => {
  const columns = [{ title: "Size" }, { title: "Wheels", isNumber: true }];
  const rows = [{ key: "small", cells: ["Small wheel", "26"] }];
  const drawn = all(Table({ caption: "Wheels", columns, rows }));
  const heads = drawn.filter((one) => one.type === "th");
  assert.deepEqual(
    heads.map((one) => [one.props.scope, words(one)]),
    [
      ["col", "Size"],
      ["col", "Wheels"],
      ["row", "Small wheel"],
    ],
  );
  const [cell] = drawn.filter((one) => one.type === "td");
  // Where each line stands by itself the cell says what it is.
  assert.equal(cell.props["data-label"], "Wheels");
  assert.equal(cell.props.class, "is-number");
  assert.ok(drawn.some((one) => one.type === "caption" && words(one) === "Wheels"));
});
