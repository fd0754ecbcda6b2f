// News without asking, for a screen that someone watches from elsewhere.
//
// It reads on from the same cursor as the exchange, so nothing is told twice or
// left out when it falls back to asking every five seconds.
//
// First comes a picture: the board of open makes as the server folds it, a few
// hundred bytes, shown while this phone's own log is behind it. The log follows
// packed, by the exchange; only then the stream, whose entries are small.

import { signal } from "@preact/signals";
import { get, stream } from "./api.js";
import { waitMs } from "./backoff.js";
import { clock } from "./clock.js";
import { place } from "./db.js";
import { board, lastWordMs, live, net } from "./state.js";
import { reader } from "./stream.js";
import { absorb, kick } from "./sync.js";

/** @import { Signal } from "@preact/signals" */

const POLL_MS = 5000;
const SILENT_MS = 40000; // the server says something every 15 s
const GATHER_MS = 80;
const LOOK_MS = 60000; // phones of the room speak once a minute
const CATCH_UP_MS = 30000;
const CATCH_UP_LOOK_MS = 200;

/**
 * What the server last told at a glance, or null.
 *
 * @type {Signal<Picture | null>}
 */
export const picture = signal(null);

let watchers = 0;
/** @type {AbortController | null} */
let ending = null;
let failures = 0;
/** @type {number | undefined} */
let retrying;
/** @type {number | undefined} */
let polling;
/** @type {number | undefined} */
let looking;
/** @type {Promise<void> | null} */
let early = null;

/**
 * Tell whether this phone's own board lacks what the server's picture has.
 *
 * @param {Picture | null} told the picture
 * @param {Board | null} own the board as the core on this phone folds it
 */
export function isBehind(told, own) {
  return (told?.makes ?? []).some((make) => {
    const mine = own?.makes.find((summary) => summary.id === make.id);
    return !mine || (mine.last_word_ms ?? 0) < (make.last_word_ms ?? 0);
  });
}

// What first.js asked for before this page was here counts, once.
async function ask() {
  const asked = globalThis.vatsidePicture;
  globalThis.vatsidePicture = null;
  return (await asked) ?? get("/makes?open=true");
}

async function look() {
  const told = await ask();
  picture.value = told;
  lastWordMs.value = clock.nowMs();
  net.value = "online"; // the exchange may still be on its way to find out
}

/**
 * Ask for the picture ahead of everything else; resolves once it came or failed.
 *
 * On a slow link the core's files would else share the line with it.
 *
 * @param {number} mostMs longest wait
 */
export function lookFirst(mostMs) {
  early = look().catch(() => {});
  return Promise.race([early, new Promise((done) => setTimeout(done, mostMs))]);
}

// The stream is not packed: what is far behind comes by the exchange first.
/** @param {AbortSignal} signal_ */
async function catchUp(signal_) {
  await (early ?? look().catch(() => {}));
  early = null;
  const endMs = Date.now() + CATCH_UP_MS;
  let lookMs = Date.now() + POLL_MS;
  if (isBehind(picture.value, board.value)) kick("poll");
  while (isBehind(picture.value, board.value) && Date.now() < endMs) {
    await new Promise((done) => setTimeout(done, CATCH_UP_LOOK_MS));
    if (signal_.aborted) return;
    if (Date.now() < lookMs) continue;
    lookMs = Date.now() + POLL_MS;
    look().catch(() => {});
  }
}

function stopPolling() {
  clearInterval(polling);
  polling = undefined;
}

function poll() {
  live.value = "polling";
  polling ??= setInterval(() => kick("poll"), POLL_MS);
}

/** @param {string} epoch */
function gatherer(epoch) {
  /** @type {PulledRow[]} */
  let rows = [];
  /** @type {number | null} */
  let timer = null;
  /** @type {Promise<unknown>} */
  let last = Promise.resolve();
  const flush = () => {
    timer = null;
    const told = rows;
    rows = [];
    last = last
      .then(() => absorb(told, epoch, told[told.length - 1].n))
      .catch(() => kick("asked"));
  };
  return (/** @type {PulledRow} */ row) => {
    rows.push(row);
    timer ??= setTimeout(flush, GATHER_MS);
  };
}

/** @param {AbortSignal} signal @param {() => void} alive */
async function listen(signal, alive) {
  const { epoch, cursor } = await place();
  const body = await stream(`/live?after=${cursor}`, signal);
  if (!body) throw new Error("a stream without a body");
  const split = reader();
  const gather = gatherer(epoch ?? ""); // a head without it ends the reading
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
  looking ??= setInterval(() => look().catch(() => {}), LOOK_MS);
  try {
    await catchUp(mine.signal);
    clearTimeout(silence);
    silence = setTimeout(() => mine.abort(), SILENT_MS);
    await listen(mine.signal, () => {
      lastWordMs.value = clock.nowMs();
      clearTimeout(silence);
      silence = setTimeout(() => mine.abort(), SILENT_MS);
    });
  } catch (/** @type {any} */ failure) {
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
  clearInterval(looking);
  looking = undefined;
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
