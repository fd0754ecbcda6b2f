// News without asking, for a screen that someone watches from elsewhere.
//
// It reads on from the same cursor as the exchange, so nothing is told twice or
// left out when it falls back to asking every five seconds.

import { stream } from "./api.js";
import { waitMs } from "./backoff.js";
import { clock } from "./clock.js";
import { place } from "./db.js";
import { lastWordMs, live } from "./state.js";
import { reader } from "./stream.js";
import { absorb, kick } from "./sync.js";

const POLL_MS = 5000;
const SILENT_MS = 40000; // the server says something every 15 s
const GATHER_MS = 80;

let watchers = 0;
let ending = null;
let failures = 0;
let retrying = null;
let polling = null;

function stopPolling() {
  clearInterval(polling);
  polling = null;
}

function poll() {
  live.value = "polling";
  polling ??= setInterval(() => kick("poll"), POLL_MS);
}

function gatherer(epoch) {
  let rows = [];
  let timer = null;
  let last = Promise.resolve();
  const flush = () => {
    timer = null;
    const told = rows;
    rows = [];
    last = last
      .then(() => absorb(told, epoch, told.at(-1).n))
      .catch(() => kick("asked"));
  };
  return (row) => {
    rows.push(row);
    timer ??= setTimeout(flush, GATHER_MS);
  };
}

async function listen(signal, alive) {
  const { epoch, cursor } = await place();
  const body = await stream(`/live?after=${cursor}`, signal);
  const split = reader();
  const gather = gatherer(epoch);
  const words = body.pipeThrough(new TextDecoderStream()).getReader();
  for (;;) {
    const { value, done } = await words.read();
    if (done) return;
    alive();
    for (const { event, data } of split(value)) {
      const told = JSON.parse(data);
      if (event === "head") {
        if (told.epoch !== epoch) throw new Error("another epoch");
        failures = 0;
        live.value = "live";
        stopPolling();
      } else if (told.event) gather(told);
    }
  }
}

async function connect() {
  if (!watchers || ending || document.visibilityState === "hidden") return;
  clearTimeout(retrying);
  const mine = new AbortController();
  ending = mine;
  let silence = setTimeout(() => mine.abort(), SILENT_MS);
  let retryAfterS = null;
  try {
    await listen(mine.signal, () => {
      lastWordMs.value = clock.nowMs();
      clearTimeout(silence);
      silence = setTimeout(() => mine.abort(), SILENT_MS);
    });
  } catch (failure) {
    failures += 1;
    retryAfterS = failure.retryAfterS ?? null;
  }
  clearTimeout(silence);
  mine.abort(); // a line that was given up would keep its place on the server
  if (ending !== mine) return; // ended on purpose
  ending = null;
  if (failures) poll();
  if (failures) kick("poll");
  retrying = setTimeout(connect, failures ? waitMs(failures, retryAfterS) : 100);
}

function disconnect() {
  const mine = ending;
  ending = null;
  mine?.abort();
  clearTimeout(retrying);
  stopPolling();
}

/**
 * Watch live until the returned function is called.
 *
 * @returns {() => void}
 */
export function watch() {
  watchers += 1;
  if (watchers === 1) {
    live.value = "waiting";
    connect();
  }
  let ended = false;
  return () => {
    if (ended) return;
    ended = true;
    watchers -= 1;
    if (watchers) return;
    disconnect();
    live.value = "off";
  };
}

document.addEventListener("visibilitychange", () => {
  if (!watchers) return;
  // A line that slept may be dead without knowing it: always take a new one.
  disconnect();
  failures = 0;
  live.value = "waiting";
  if (document.visibilityState === "visible") connect();
});
