// Figures as each person reads them. By definition 212 °F is 100 °C, a gallon is 231
// cubic inches, a pound 0.45359237 kg.
import assert from "node:assert/strict";
import { beforeEach, test } from "node:test";

import * as format from "../../static/js/format.js";
import { following } from "../../static/js/units/convert.js";

const AMERICAN = following([
  ["C", "F"],
  ["L", "gal"],
  ["kg", "lb"],
  ["kPa", "psi"],
]);
const NB = "\u00a0";

function read(language, units = {}) {
  format.setReads({ language, units }, () => {});
}

beforeEach(() => read("en"));

test("a pack is named in the person's language", () => {
  assert.equal(format.inUnit(0.002, "pack/L"), `0.002${NB}pack/L`);
  read("es");
  assert.equal(format.inUnit(0.002, "pack/L"), `0,002${NB}sobre/L`);
  read("fr");
  assert.equal(format.amount(2, "pack"), `2,00${NB}sachet`);
});

test("a kept temperature is shown in the unit that the person reads", () => {
  assert.equal(format.quantity("milk_temp_c", 31.5), `31.5${NB}°C`);
  read("en", AMERICAN);
  // By hand: 31.5 × 1.8 + 32 = 88.7.
  assert.equal(format.quantity("milk_temp_c", 31.5), `88.7${NB}°F`);
  assert.equal(format.band("milk_temp_c", 30, 32), `86.0 – 89.6${NB}°F`);
  assert.equal(format.inUnit(31, "C"), `87.8${NB}°F`);
  assert.equal(format.bandIn(30, null, "C"), `≥ 86${NB}°F`);
  // Where a recipe is changed, its own figure stands beside the field.
  assert.equal(format.inOwnUnit(31, "C"), `31${NB}°C`);
  assert.equal(format.inOwnUnit(0.04, "fraction"), `4${NB}%`);
});

test("a difference of temperatures is converted without the offset", () => {
  read("en", AMERICAN);
  // One degree Celsius warmer is 1.8 degrees Fahrenheit warmer.
  assert.equal(format.change("milk_temp_c", 32, 31), `+1.8${NB}°F`);
  assert.equal(format.change("milk_temp_c", 31, 32), `−1.8${NB}°F`);
  assert.deepEqual(format.asRead(5, "K"), { value: 9, unit: "F_rise" });
});

test("volumes, masses and pressures follow too, percent and pH do not", () => {
  read("en", AMERICAN);
  assert.equal(format.quantity("milk_volume_l", 378.5411784), `100.0${NB}gal`);
  assert.equal(format.quantity("wheel_mass_kg", 4.5359237), `10.00${NB}lb`);
  assert.equal(format.quantity("press_gauge_kpa", 68.94757293168361), `10.0${NB}psi`);
  assert.equal(format.amount(0.45359237, "kg"), `1.00${NB}lb`);
  assert.equal(format.amountBand(0.45359237, 0.9071847, "kg"), `1.00 – 2.00${NB}lb`);
  assert.equal(format.amount(66, "mL"), `66.0${NB}mL`);
  assert.equal(format.quantity("fat_frac", 0.04), `4.00${NB}%`);
  assert.equal(format.quantity("ph", 6.5), "6.50");
});

test("the keypad types in the unit that is shown, and tells the core which", () => {
  assert.deepEqual(
    [format.formOf("milk_temp_c").typed, format.typedFrom("milk_temp_c", 31.5)],
    ["", "31.5"],
  );
  read("es", AMERICAN);
  // Typed text keeps the point, which the core and every colleague reads.
  assert.deepEqual(
    [format.formOf("milk_temp_c").typed, format.typedFrom("milk_temp_c", 31.5)],
    ["F", "88.7"],
  );
  assert.equal(format.formOf("fat_frac").typed, "%");
});

test("what was typed is shown as it was typed, whatever the person reads", () => {
  read("fr", AMERICAN);
  assert.equal(format.typedValue("31.5", "C"), `31,5${NB}°C`);
  assert.equal(format.sumValue(31.5, "C"), `31,5${NB}°C`);
});

test("a share of a quantity is read in percent, of the acid too", () => {
  assert.equal(format.quantity("titratable_acidity_frac", 0.0016), `0.160${NB}%`);
  assert.equal(format.formOf("titratable_acidity_frac").typed, "%");
  assert.equal(format.inUnit(0.0016, "fraction lactic"), `0.16${NB}%`);
});

test("a quantity without a unit of its own is shown and typed without one", () => {
  assert.equal(format.quantity("ph", 6.5), "6.50");
  assert.equal(format.formOf("ph").typed, "");
  assert.equal(format.quantity("drug_test", "negative"), "negative");
});

test("a rate of warming is told by the minute, as the person reads degrees", () => {
  assert.equal(format.sumValue(1 / 60, "K/s"), `1.00${NB}°C/min`);
  assert.equal(format.sumValue(1.8, "F/min"), `1.80${NB}°F/min`);
});

test("decimals, days and dates follow the language", () => {
  const at = Date.UTC(2026, 10, 25, 12);
  const told = (language) => {
    read(language);
    return [
      format.number(-1234567.5, 1),
      format.plain(6.45),
      format.span(3 * 86400),
      format.day(at),
    ];
  };
  // Names of days and months: the browser's own (Unicode CLDR).
  assert.deepEqual(told("en"), [
    "−1\u202f234\u202f567.5",
    "6.45",
    `3${NB}days`,
    "Wed 25 Nov",
  ]);
  assert.deepEqual(told("es"), [
    "−1\u202f234\u202f567,5",
    "6,45",
    `3${NB}días`,
    "mié, 25 nov",
  ]);
  assert.deepEqual(told("fr"), [
    "−1\u202f234\u202f567,5",
    "6,45",
    `3${NB}jours`,
    "mer. 25 nov.",
  ]);
  assert.equal(format.sumValue(2.5, "d"), `2,5${NB}jours`);
});

test("comma and point are the same to a field without a quantity", () => {
  assert.equal(format.readNumber("2,5"), 2.5);
  assert.equal(format.readNumber("2.5"), 2.5);
  assert.equal(format.readNumber("2,5,1"), null);
});

test("whoever shows a figure is told what it rests on", () => {
  let asked = 0;
  format.setReads({ language: "en", units: AMERICAN }, () => {
    asked += 1;
  });
  for (const write of [
    () => format.number(1.5, 1),
    () => format.quantity("milk_temp_c", 31),
    () => format.clockDay(0, 1e12),
    () => format.amount(1, "kg"),
    () => format.span(1e6),
    () => format.typedText("1.5"),
  ]) {
    asked = 0;
    write();
    assert.ok(asked > 0, String(write));
  }
});

test("an amount is typed to the hundredth when small, whole when large", () => {
  const typed = (value) => format.amountTypedDecimals(value, "g");
  assert.deepEqual([null, 9.9, 10, 99, 100].map(typed), [2, 2, 1, 1, 0]);
});

test("until when is told in the fewest words that leave no doubt", () => {
  const now = new Date(2026, 10, 28, 9, 0).getTime(); // a Saturday
  const at = (...when) => format.clockSoon(new Date(2026, ...when).getTime(), now);
  assert.equal(at(10, 28, 14, 5), "14:05");
  assert.equal(at(10, 29, 6, 30), "Sun 06:30");
  assert.equal(at(11, 4, 8, 0), "Fri 08:00");
  // A week on, the weekday would be today's.
  assert.equal(at(11, 5, 14, 0), "5 Dec");
  // Of a hold that goes on past midnight nobody asks the day.
  const late = new Date(2026, 10, 28, 23, 35).getTime();
  const from = (...when) => format.clockSoon(new Date(2026, ...when).getTime(), late);
  assert.equal(from(10, 29, 0, 5), "00:05");
  assert.equal(from(10, 29, 5, 30), "05:30");
  assert.equal(from(10, 29, 5, 40), "Sun 05:40");
  assert.equal(from(10, 27, 23, 50), "Fri 23:50");
});
