// What a value of an answer is told as: by its role and units, and by no name.
import assert from "node:assert/strict";
import { before, test } from "node:test";

import { TEXTS } from "../../static/js/messages/en/index.js";
import { phone } from "./page.mjs";

const NB = "\u00a0";
const VALUE = {
  name: "reach_s",
  value: 600,
  low: null,
  high: null,
  read: null,
  unit: "s",
  ends_unit: "s",
  as_read: false,
  of: null,
  nth: null,
  across_m: null,
  role: "estimate",
  headline: true,
  sense: null,
  called: "both",
  repeats: null,
};
let page;

function told(more) {
  return page.values.valueWords({ ...VALUE, ...more });
}

before(async () => {
  const opened = await phone().open([
    "screens/sums/values",
    "screens/sums/notes",
    "screens/sums/units",
    "messages/index",
    "format",
  ]);
  await opened["messages/index"].loadRest();
  page = {
    values: opened["screens/sums/values"],
    notes: opened["screens/sums/notes"],
    units: opened["screens/sums/units"],
    format: opened.format,
  };
});

test("the same ends are told as a range, as limits or as what is wanted", () => {
  const ends = { value: 0.4, low: 0.3, high: 0.5, unit: "fraction" };
  const detail = (role) => told({ ...ends, ends_unit: "fraction", role }).detail;
  assert.equal(detail("estimate"), `between 30 and 50${NB}%`);
  assert.equal(detail("limit"), `limits 30.00 to 50.00${NB}%`);
  assert.equal(detail("band"), `wanted between 30.00 and 50.00${NB}%`);
});

test("a range says what it is the range of", () => {
  const dose = { value: 157.5, low: 105, high: 165, unit: "mL", ends_unit: "mL" };
  const detail = (range_of) => told({ ...dose, range_of }).detail;
  assert.equal(detail("estimate"), `between 105 and 165${NB}mL`);
  assert.equal(detail("usual"), `usual doses come to 105 to 165${NB}mL`);
  assert.equal(detail("nine_in_ten"), `nine makes in ten: 105 to 165${NB}mL`);
});

test("a figure is told as finely as its range and its tool leave it known", () => {
  // Seen: "between 77.13 and 112.4 L" beside 77.13 L.
  const water = { value: 77.13, low: 70.47, high: 112.4, unit: "L", ends_unit: "L" };
  assert.equal(told(water).main, `77${NB}L`);
  assert.equal(told(water).detail, `between 70 and 112${NB}L`);
  // Half a percent either way leaves a tenth known, five percent a half.
  const share = { unit: "fraction", ends_unit: "fraction", value: 0.64287 };
  assert.equal(told({ ...share, low: 0.6379, high: 0.6479 }).main, `64.30${NB}%`);
  assert.equal(told({ ...share, low: 0.59, high: 0.69 }).main, `64.5${NB}%`);
});

test("what a rule prints is told as it is printed", () => {
  const limit = { value: 119.98, low: null, high: 119.98, unit: "g", ends_unit: "g" };
  assert.equal(told({ ...limit, role: "limit" }).main, `120.0${NB}g`);
  assert.equal(told({ ...limit, role: "limit", value: 26.49 }).main, `26.49${NB}g`);
  // By its tool, a gram here and a tenth there.
  assert.equal(told({ ...limit, high: null }).main, `120${NB}g`);
});

test("a limit says which side must not be passed", () => {
  const day = { value: 7, unit: "d", ends_unit: "d", role: "limit" };
  assert.equal(told({ ...day, low: 60 }).detail, `asked: at least 60${NB}days`);
  assert.equal(told({ ...day, high: 60 }).detail, `asked: at most 60${NB}days`);
});

test("a verdict tells what was read and its rule, in the unit that was read", () => {
  const verdict = { value: "meets", unit: "key", ends_unit: "C", role: "limit" };
  const cold = { ...verdict, read: 7, high: 7.2 };
  page.format.setReads({ units: { C: "F" } });
  assert.equal(told(cold).detail, `read 44.6${NB}°F; the rule: 45.0${NB}°F`);
  assert.equal(
    told({ ...cold, as_read: true }).detail,
    `read 7.0${NB}°C; the rule: 7.2${NB}°C`,
  );
  page.format.setReads({ units: {} });
});

test("what was read in words stands in its sentence as any other word", () => {
  const milk = { value: "meets", unit: "key", ends_unit: "key", role: "limit" };
  assert.equal(
    told({ ...milk, read: "raw", low: "raw_if_cured" }).detail,
    "read not pasteurised; the rule: raw only if cured",
  );
});

test("of a time against another the sign says later or earlier", () => {
  assert.match(told({ value: 300, sense: "later" }).main, /later$/);
  assert.match(told({ value: 300, sense: "earlier" }).main, /earlier$/);
  assert.match(told({ value: -300, sense: "earlier" }).main, /later$/);
});

test("a value is called by its name, by what it is of, or by both", () => {
  const title = (more) => told(more).label;
  assert.equal(title({ of: "press_1", called: "name" }), title({}));
  assert.equal(title({ of: "press_1", called: "of" }), "First press");
  assert.equal(title({ of: "press_1" }), `${title({})}, first press`);
  assert.equal(title({ of: "make", nth: 3 }), `${title({})}, make 3`);
  const mould = { of: "press_1", across_m: 0.3 };
  assert.equal(title(mould), `${title({})}, first press, 300${NB}mm`);
});

test("the headline stands first, and what another tells is not told again", () => {
  const values = [
    { ...VALUE, name: "density_kg_l", headline: false },
    { ...VALUE, name: "reach_s", repeats: "reach_ms" },
    { ...VALUE, name: "reach_ms" },
  ];
  const names = (list) => list.map((value) => value.name);
  assert.deepEqual(names(page.values.inOrder(values)), ["reach_ms", "density_kg_l"]);
  assert.deepEqual(names(page.values.headlines(values)), ["reach_ms"]);
  assert.deepEqual(names(page.values.headlines(values.slice(0, 1))), ["density_kg_l"]);
});

test("a note's numbers are told in the units that it carries", () => {
  const note = { key: "note.hold_too_short", value: 1200, limit: 1800 };
  const units = { value: "s", limit: "s" };
  assert.equal(
    page.notes.noteWords({ ...note, units, as_read: false }),
    TEXTS["note.hold_too_short"]
      .replace("{value}", `20${NB}min`)
      .replace("{limit}", `30${NB}min`),
  );
});

test("an instant in a note is told as its day", () => {
  const since = Date.UTC(2026, 10, 3, 12);
  const note = { key: "check_overdue", since_ms: since, limit: 7 };
  const said = page.notes.noteWords(note);
  assert.ok(said.includes(page.format.day(since)), said);
  assert.ok(!said.includes(String(since)));
});

test("differences and rates of temperature follow the scale that is chosen", () => {
  page.units.chooseUnit(["C", ["C", "F"]], "F");
  assert.equal(page.units.unitUsed("K"), "F_rise");
  assert.equal(page.units.unitUsed("K/s"), "F/min");
  page.units.chooseUnit(["C", ["C", "F"]], "C");
  assert.equal(page.units.unitUsed("K"), "K");
});

test("the pad begins with the unit that is usual for the input", () => {
  const row = (units) => ({ name: "time_s", unit: units.at(-1), units });
  assert.equal(page.units.unitFor(row(["d", "min", "h", "s"])), "d");
  assert.equal(page.units.unitFor(row(["mm", "cm", "in", "m"])), "mm");
  assert.equal(page.units.unitFor(row(["%", "fraction"])), "%");
  page.units.keepUnit(row(["mm", "cm", "in", "m"]), "in");
  assert.equal(page.units.unitFor(row(["mm", "cm", "in", "m"])), "in");
});
