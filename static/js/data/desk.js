// Keeps the core's desk filled, and what is painted in step with it.
//
// The first painting is last time's, from the database. The core then takes all
// entries and confirms; until it has, its answers are incomplete and not shown.

import { onLost, restart, start } from "../core/bridge.js";
import { get } from "./api.js";
import * as ask from "./ask.js";
import { waitMs } from "./backoff.js";
import { clock, tzMin } from "./clock.js";
import { everything, getSaved, setSaved } from "./db.js";
import {
  board,
  core,
  coreProblem,
  openMakeId,
  person,
  remembered,
  view,
} from "./state.js";

const BATCH = 100;
const SAVE_AFTER_MS = 400;
const LONGEST_SLEEP_MS = 60000;
const SHORTEST_SLEEP_MS = 250;

/** @type {Promise<void> | null} */
let filled = null;
let failures = 0;
/** @type {number | undefined} */
let waking;
const saving = new Map();

async function fill() {
  core.value = "starting";
  try {
    const known = everything();
    known.catch(() => {}); // told below; a disk may fail while the core still starts
    await start();
    const events = await known;
    for (let at = 0; at < events.length; at += BATCH) {
      // In pieces, so that a tap made meanwhile is answered between two.
      await take(events.slice(at, at + BATCH));
    }
    core.value = "ready";
    coreProblem.value = null;
    failures = 0;
  } catch (/** @type {any} */ problem) {
    core.value = "failed";
    coreProblem.value = String(problem.message ?? problem);
    throw problem;
  }
}

function whenFilled() {
  if (filled) return filled;
  const mine = fill();
  filled = mine;
  mine.catch(() => {
    if (filled !== mine) return;
    // The next question starts the core again; if a person has none, time does.
    filled = null;
    failures += 1;
    setTimeout(refresh, waitMs(failures));
  });
  return mine;
}

/**
 * Give entries to the core; resolves with {changed, problems}.
 *
 * @param {Recorded[]} events
 * @returns {Promise<{changed: string[], problems: {id: string | null, why: any}[]}>}
 */
export function take(events) {
  return ask.take({ events });
}

/**
 * Who taps now, and has cautions to see.
 *
 * @returns {Reader | null}
 */
function reader() {
  if (!person.value) return null;
  return { person: person.value, tz_min: tzMin(clock.nowMs()) };
}

/**
 * Let the core check an entry, take it and answer with the open make's view.
 *
 * @param {Recorded} event
 * @param {string[]} roles
 * @returns {Promise<{problems: Problem[], view: View | null}>} view is null
 *     while the core is still being filled
 */
export async function tap(event, roles) {
  const isFilled = core.value === "ready";
  const make = isFilled ? (openMakeId.value ?? "") : "";
  return ask.tap({ event, roles, make, reader: reader() });
}

function saveNow() {
  for (const [key, value] of saving) {
    // A cache: the next painting will be saved again.
    setSaved(key, value).catch(() => {});
  }
  saving.clear();
}

/** @param {string} key @param {any} value */
function saveSoon(key, value) {
  if (!saving.size) setTimeout(saveNow, SAVE_AFTER_MS);
  saving.set(key, value);
}

function wakeAtNextChange() {
  clearTimeout(waking);
  const next = [view.value?.next_change_ms, board.value?.next_change_ms].filter(
    (atMs) => typeof atMs === "number",
  );
  if (!next.length) return;
  const sleepMs = (Math.min(...next) - clock.nowMs()) / clock.rate;
  waking = setTimeout(
    refresh,
    Math.min(LONGEST_SLEEP_MS, Math.max(SHORTEST_SLEEP_MS, sleepMs)),
  );
}

// While one answer is worked out, further wishes for the same are one wish.
/** @param {() => Promise<void>} work */
function merged(work) {
  /** @type {Promise<void> | null} */
  let running = null;
  /** @type {Promise<void> | null} */
  let again = null;
  return () => {
    if (!running) {
      running = work().finally(() => {
        running = null;
      });
      return running;
    }
    again ??= running
      .catch(() => {})
      .then(() => {
        again = null;
        running = work().finally(() => {
          running = null;
        });
        return running;
      });
    return again;
  };
}

// A phone keeps finished makes for a month; the server keeps them all.
/** @param {string} id */
async function viewFromServer(id) {
  const answer = await get(`/makes/${id}/view`).catch(() => null);
  if (answer && openMakeId.value === id) view.value = answer;
}

/** Ask the core for the open make's view, and show it. */
export const refreshView = merged(async () => {
  const id = openMakeId.value;
  if (!id) return;
  await whenFilled();
  const answer = await ask.view({ make: id, reader: reader() });
  if (openMakeId.value !== id) return;
  if (answer === null) {
    await viewFromServer(id);
    return;
  }
  showView(answer);
});

/**
 * A view that the core has not given to who taps now: which cautions they have still
 * to see is not known.
 *
 * @param {View} kept
 * @returns {View}
 */
export function asKept({ cautions, ...kept }) {
  return kept;
}

// Who takes over a shared phone has seen other cautions than the one before.
person.subscribe(() => {
  if (view.value) view.value = asKept(view.value);
  refreshView().catch(() => {});
});

/**
 * Paint a view of the open make that the core has just answered.
 *
 * @param {View} answer
 */
export function showView(answer) {
  const id = answer.make.id;
  if (openMakeId.value !== id) return;
  view.value = answer;
  saveSoon(`view:${id}`, answer);
  wakeAtNextChange();
}

/** Ask the core for the board, and show it. */
export const refreshBoard = merged(async () => {
  await whenFilled();
  const answer = await ask.board();
  board.value = answer;
  remembered.value = false;
  saveSoon("board", answer);
  wakeAtNextChange();
});

/** Bring view and board up to this moment. */
export async function refresh() {
  await Promise.allSettled([refreshView(), refreshBoard()]);
  wakeAtNextChange();
}

/**
 * Show a make: last time's view at once, then the core's.
 *
 * @param {string | null} id
 */
export async function showMake(id) {
  openMakeId.value = id;
  if (view.value?.make.id !== id) view.value = null;
  if (!id) return;
  if (!view.value) {
    const [known] = await getSaved([`view:${id}`]).catch(() => []);
    if (known && openMakeId.value === id && !view.value) view.value = asKept(known);
  }
  await refreshView();
}

/** Empty the core's desk and fill it with what the phone now holds. */
export async function rebuild() {
  filled = null;
  restart();
  await refresh();
}

// A page out of sight may never come back.
document.addEventListener("visibilitychange", saveNow);

onLost(() => {
  filled = null;
  refresh();
});
