// Expected instants are worked out by hand beside each check.

import assert from "node:assert/strict";
import { test } from "node:test";

import { Clock } from "../../static/js/data/clock.js";

// A phone at wall time 1,000,000 whose monotonic clock shows 500.
function phone() {
  const told = { wall: 1000000, mono: 500 };
  const clock = new Clock(
    () => told.wall,
    () => told.mono,
  );
  const pass = (ms) => {
    told.wall += ms;
    told.mono += ms;
  };
  const exchange = (roundTripMs, serverNow, rate) => {
    const began = clock.begin();
    pass(roundTripMs);
    clock.learn(began, serverNow, rate);
  };
  return { told, clock, pass, exchange };
}

test("without a sample the phone's own clock is shown and its quality is unknown", () => {
  const { clock, pass } = phone();
  pass(2000);
  assert.equal(clock.nowMs(), 1002000);
  assert.equal(clock.stamp().off_ms, 0);
  assert.equal(clock.stamp().off_q_ms, null);
});

test("a sample belongs to the middle of its round trip", () => {
  const { clock, exchange } = phone();
  // The answer's 5,000,000 held 100 ms after the start; 100 ms passed since.
  exchange(200, 5000000);
  assert.equal(clock.nowMs(), 5000100);
  assert.equal(clock.stamp().off_q_ms, 100);
});

test("the shortest round trip of the last eight is believed", () => {
  const { clock, exchange, pass } = phone();
  exchange(40, 5000000); // true from here: server = 5,000,020 at the end
  pass(1000);
  exchange(900, 5001020 + 700); // a slow one, 250 ms off its middle
  assert.equal(clock.nowMs(), 5000020 + 1000 + 900);
  for (let times = 0; times < 8; times += 1) exchange(900, clock.nowMs() + 700);
  // Eight slow ones later the quick one is forgotten.
  assert.equal(clock.stamp().off_q_ms, 450);
});

test("a wall clock moved in front of the person changes no corrected time", () => {
  const { told, clock, exchange, pass } = phone();
  exchange(0, 5000000);
  told.wall += 3600000;
  pass(1000);
  assert.equal(clock.nowMs(), 5001000);
  const stamp = clock.stamp();
  assert.equal(stamp.at_ms, 1000000 + 3600000 + 1000);
  assert.equal(stamp.at_ms + stamp.off_ms, 5001000);
  assert.equal(clock.warning().jumped_ms, 3600000);
  assert.equal(clock.observe(), true, "a fresh sample is wanted");
});

test("a phone that slept with its monotonic clock stopped has not lost the time", () => {
  const { told, clock, exchange } = phone();
  exchange(0, 5000000);
  clock.observe(true);
  told.wall += 1800000; // half an hour in the apron; mono stood still
  clock.observe(false);
  assert.equal(clock.nowMs(), 5000000 + 1800000);
  assert.equal(clock.jumpedMs, 0);
});

test("a server clock that was set is followed at once", () => {
  const { clock, exchange, pass } = phone();
  exchange(10, 5000000);
  pass(1000);
  exchange(400, 9000000);
  assert.equal(clock.nowMs(), 9000200);
});

test("a practice server's faster clock is followed and gives no warning", () => {
  const { clock, exchange, pass } = phone();
  exchange(0, 5000000, 60);
  pass(1000);
  assert.equal(clock.nowMs(), 5060000);
  assert.equal(clock.warning(), null);
});

test("two minutes wrong is not warned about and more is", () => {
  for (const [offMs, warned] of [
    [120000, false],
    [120001, true],
    [-120001, true],
  ]) {
    const { clock, exchange } = phone();
    exchange(0, 1000000 + offMs);
    assert.equal(clock.warning() !== null, warned, String(offMs));
  }
});

test("an instant seen earlier keeps its corrected time", () => {
  const { clock, exchange } = phone();
  exchange(0, 5000000);
  const stamp = clock.stamp(4990000);
  assert.equal(stamp.at_ms + stamp.off_ms, 4990000);
  assert.equal(stamp.entered_ms + stamp.off_ms, 5000000);
});

test("a later page goes on from what an earlier one learned", () => {
  const { told, clock, exchange } = phone();
  exchange(0, 5000000, 2);
  const saved = clock.save();
  const later = new Clock(
    () => told.wall + 10000,
    () => 3,
  );
  later.restore(saved);
  assert.equal(later.nowMs(), 5000000 + 2 * 10000);
  assert.equal(phone().clock.save(), null);
});
