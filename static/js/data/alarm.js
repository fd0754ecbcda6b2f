// What rings on this screen, asked again whenever it may have changed.
//
// A phone asks its own core, so that it rings without a network. The wall asks the
// server, which knows what every phone recorded with none of them awake; while
// the server is silent it asks its own core too. How loud and how often is the
// core's answer; parts/sound.js only makes the noise.

import { effect, signal } from "@preact/signals";

import { alarms as standing, sounding } from "./ask.js";
import { get, post } from "./api.js";
import { clock } from "./clock.js";
import { getSaved, oldest, setSaved } from "./db.js";
import { reads } from "./reads.js";
import { board, core, me, net, unsent } from "./state.js";

/** @import { Signal } from "@preact/signals" */

const POLL_MS = 5000;
const LOOK_MS = 15000;
const SHORTEST_MS = 250;
const WALL_WORD_MS = 20000;
const LATE_MS = 15000; // found later than this, the screen must have slept
const MAKES_DEADLINES = ["timer_started", "step_begun"];
/** @type {Ring} */
const SILENT = { ids: [], priority: null, waits_ms: null };

/**
 * What rings and will, as the core or the server answered; null at first.
 *
 * @type {Signal<Alarms | null>}
 */
export const alarms = signal(null);
/**
 * What is to be heard now.
 *
 * @type {Signal<Ring>}
 */
export const ring = signal(SILENT);
/**
 * By alarm, how late it was found [ms].
 *
 * @type {Signal<Record<string, number>>}
 */
export const foundLate = signal({});
/** How many deadlines made here the server has not been told yet. */
export const notOnWall = signal(0);
/**
 * Instant of the server's last answer to the wall, or null.
 *
 * @type {Signal<number | null>}
 */
export const wallWordMs = signal(null);
/** After how many minutes an unanswered alarm is told to the owner. */
export const escalateMin = signal(10);

/** @type {RingMemory} */
let memory = { soundings: [], ids: [] };
let asksServer = false;
/** @type {number | undefined} */
let waking;
/** @type {Promise<void> | null} */
let running = null;
let isWanted = false;

/** @returns {Promise<Alarms>} */
async function fromServer() {
  const answer = await get("/alarms", { waitMs: POLL_MS });
  wallWordMs.value = clock.nowMs();
  learnEscalation(answer.escalate_min);
  return answer;
}

/** @param {number} minutes */
function learnEscalation(minutes) {
  if (minutes === escalateMin.value) return;
  escalateMin.value = minutes;
  setSaved("escalate_min", minutes).catch(() => {});
}

/** @returns {Promise<Alarms | null>} */
async function fromCore() {
  if (core.value !== "ready") return null; // half a day's entries ring falsely
  return standing({ escalateS: escalateMin.value * 60 });
}

/** @returns {Promise<Alarms | null>} */
async function ask() {
  if (!asksServer) return fromCore();
  try {
    return await fromServer();
  } catch {
    const own = await fromCore();
    return own && { ...alarms.value, ...own };
  }
}

/** @param {Alarm[]} rows */
function noteLate(rows) {
  const known = foundLate.value;
  /** @type {Record<string, number>} */
  const counts = {};
  for (const { id, rings_ms: ringsMs, state } of rows) {
    if (state === "returned") continue;
    const lateMs = clock.nowMs() - ringsMs;
    counts[id] = known[id] ?? (lateMs > LATE_MS * clock.rate ? lateMs : 0);
  }
  foundLate.value = counts;
}

async function look() {
  const answer = await ask().catch(() => null);
  if (!answer) return;
  noteLate(answer.alarms);
  alarms.value = answer;
  const isOpen = answer.alarms.some((alarm) => alarm.is_open);
  if (!isOpen && !memory.ids.length) {
    ring.value = SILENT; // most of the day: a slow phone is spared the question
    return;
  }
  // People hear in real time, whatever the practice clock says.
  const heard = await sounding({ alarms: answer.alarms, memory, realMs: Date.now() });
  memory = heard.memory;
  if (heard.begins) setSaved("alarm_memory", memory).catch(() => {});
  ring.value = heard;
}

function wakeLater() {
  clearTimeout(waking);
  const waits = [asksServer ? POLL_MS : LOOK_MS];
  const changeMs = alarms.value?.next_change_ms;
  if (changeMs) waits.push((changeMs - clock.nowMs()) / clock.rate);
  if (ring.value.waits_ms) waits.push(ring.value.waits_ms - Date.now());
  waking = setTimeout(lookAgain, Math.max(SHORTEST_MS, Math.min(...waits) + 5));
}

/**
 * Ask again what rings; while one answer is under way, further wishes are one.
 *
 * @returns {Promise<unknown>}
 */
export async function lookAgain() {
  if (running) {
    isWanted = true;
    return running;
  }
  running = look().catch(() => {});
  await running;
  running = null;
  wakeLater();
  if (!isWanted) return null;
  isWanted = false;
  return lookAgain();
}

async function countNotOnWall() {
  if (!unsent.value || net.value === "online") {
    notOnWall.value = 0;
    return;
  }
  const events = await oldest(500).catch(() => []);
  notOnWall.value = events.filter((event) =>
    MAKES_DEADLINES.includes(event.kind),
  ).length;
}

/**
 * Let the server know that a wall lives here, and whether it can ring.
 *
 * @param {boolean} sound
 */
export function tellOfWall(sound) {
  post("/alarms/wall", { sound }).catch(() => {}); // said again in a while
}

/**
 * Show the wall: ask the server rather than this device's own core.
 *
 * @param {() => boolean} hasSound
 */
export function beWall(hasSound) {
  asksServer = true;
  lookAgain();
  const saying = setInterval(() => tellOfWall(hasSound()), WALL_WORD_MS);
  return () => {
    clearInterval(saying);
    asksServer = false;
  };
}

/** Ask the server which walls live and when the owner is told. */
export async function askServer() {
  const answer = await get("/alarms");
  learnEscalation(answer.escalate_min);
  return answer;
}

/**
 * Set after how many minutes the owner is told; for the owner.
 *
 * @param {number} minutes
 */
export async function setEscalation(minutes) {
  await post("/alarms/settings", { escalate_min: minutes });
  learnEscalation(minutes);
  lookAgain();
}

/**
 * Open a make's deadlines, or one step's, in the phone's own calendar.
 *
 * @param {string} make
 * @param {string | null} step
 */
export function openCalendar(make, step = null) {
  const link = document.createElement("a");
  const wanted = new URLSearchParams({
    language: reads.value.language,
    ...(step ? { step } : {}),
  });
  link.href = `/api/v1/makes/${make}/calendar.ics?${wanted}`;
  link.download = "make.ics";
  link.click();
}

/** Begin to look; call once, when the screens are painted. */
export async function beginAlarms() {
  const [minutes, kept] = await getSaved(["escalate_min", "alarm_memory"]).catch(
    () => [],
  );
  escalateMin.value = minutes ?? escalateMin.value;
  if (kept) memory = { ...kept, ids: [] };
  effect(() => {
    if (board.value && core.value === "ready") lookAgain();
  });
  effect(() => {
    if (unsent.value !== null && net.value) countNotOnWall();
  });
  for (const name of ["visibilitychange", "pageshow", "focus", "online"]) {
    addEventListener(name, () => lookAgain(), true);
  }
  // Asked again by the wall and by the screen; behind a guest's link nobody may.
  if (me.value) askServer().catch(() => {});
}
