// One act at a time: while it is recorded and until it shows, the same is not done again.

import assert from "node:assert/strict";
import { setTimeout as after } from "node:timers/promises";
import { test } from "node:test";

import { once } from "../../static/js/parts/once.js";

test("the same act is not done again while it is recorded, nor just after", async () => {
  const doOnce = once(20);
  let times = 0;
  let finish = () => {};
  const record = () => {
    times += 1;
    return new Promise((done) => {
      finish = done;
    });
  };
  doOnce("begin", record);
  doOnce("begin", record);
  assert.equal(times, 1);
  finish();
  await after(5);
  doOnce("begin", record);
  assert.equal(times, 1);
  await after(40);
  doOnce("begin", record);
  assert.equal(times, 2);
});

test("another act on the same button is done at once", async () => {
  const doOnce = once(20);
  const done = [];
  const act = (name) => async () => done.push(name);
  doOnce("begin", act("begin"));
  doOnce("end", act("end"));
  assert.deepEqual(done, ["begin", "end"]);
});

test("what records nothing may be done as often as it is pressed", () => {
  const doOnce = once(20);
  let times = 0;
  for (let n = 0; n < 3; n += 1) doOnce("later", () => void (times += 1));
  assert.equal(times, 3);
});

test("an act that failed may be tried again", async () => {
  const doOnce = once(5);
  let times = 0;
  const failing = () => {
    times += 1;
    const failed = Promise.reject(new Error("not kept"));
    failed.finally = (over) => failed.catch(over); // its failure is the test's own
    return failed;
  };
  doOnce("save", failing);
  await after(30);
  doOnce("save", failing);
  assert.equal(times, 2);
});
