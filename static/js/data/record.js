// From a tap to an entry that cannot get lost.
//
// Compose, let the core check and take it, write to disk, show it, and only then
// think of the server. The core is asked once, since each exchange with it costs
// a slow phone; what it answers is painted when the write is complete, never
// before. Whatever fails until then leaves the value in `unsaved`, in sight.

import { clock, tzMin } from "./clock.js";
import { enqueue, pending, StorageError } from "./db.js";
import { rebuild, refreshBoard, refreshView, showView, take, tap } from "./desk.js";
import {
  me,
  needsLook,
  oldestUnsentMs,
  people,
  person,
  unsaved,
  unsent,
} from "./state.js";
import { tell } from "./tabs.js";
import { uuid4, uuid7 } from "./uuid.js";

/**
 * @typedef {{make?: string | null, data?: object, ref?: string | null,
 *     atMs?: number | null, by?: string | null,
 *     prove?: (event: Entry) => Promise<object>}} Given
 */

const VERSION = 1;
// A core that starts on an old phone takes up to two seconds; one that takes
// longer must not hold up the writing.
const CORE_WAIT_MS = 4000;
const SPARE = "vatside-unsaved";
const boot = uuid4();
let writing = 0;
let tapped = 0;
/** @type {(why: string) => void} */
let kick = () => {};

/** What was refused, as the core's problems: [{field, key, limit}]. */
export class RecordError extends Error {
  /** @param {Problem[]} problems */
  constructor(problems) {
    super(
      problems.map((problem) => `${problem.field ?? ""} ${problem.key}`).join(", "),
    );
    this.name = "RecordError";
    this.key = "refused";
    this.problems = problems;
  }
}

/**
 * Name what is to be started after each entry: the exchange with the server.
 *
 * @param {(why: string) => void} start
 */
export function afterRecord(start) {
  kick = start;
}

/** True while an entry is between tap and disk. */
export function isWriting() {
  return writing > 0;
}

/** Count what the server has not acknowledged, for the screens. */
export async function countUnsent() {
  const { count, oldestMs, aside } = await pending();
  unsent.value = count;
  oldestUnsentMs.value = oldestMs;
  needsLook.value = aside;
}

/** @param {string} kind @param {Given} given @returns {Entry} */
function compose(kind, { make = null, data = {}, ref = null, atMs = null, by = null }) {
  const stamp = clock.stamp(atMs);
  return {
    id: uuid7(stamp.entered_ms),
    make: make ?? (kind === "make_opened" ? uuid7(stamp.entered_ms) : null),
    device: me.value?.device ?? null,
    person: by ?? person.value,
    tz_min: tzMin(stamp.entered_ms),
    boot,
    ...stamp,
    kind,
    v: VERSION,
    ref,
    data,
  };
}

/**
 * Whose hand an entry of now would be of.
 *
 * @returns {Hand}
 */
export function hand() {
  const { device, person: by, boot: of, entered_ms: enteredMs } = compose("", {});
  return { device, person: by, boot: of, entered_ms: enteredMs };
}

/** @template T @param {Promise<T>} answer @returns {Promise<T>} */
function fromCore(answer) {
  /** @type {Promise<never>} */
  const late = new Promise((_, reject) => {
    setTimeout(() => reject(new Error("the core is late")), CORE_WAIT_MS);
  });
  return Promise.race([answer, late]);
}

/** @param {Entry} event @returns {Promise<View | null>} */
async function askCore(event) {
  const tapping = people.value.find((one) => one.id === event.person);
  const roles = new Set(
    [me.value?.person.role, tapping?.role].filter((role) => role !== undefined),
  );
  // The counter is given on disk; this one only orders entries of one instant.
  tapped += 1;
  let answer;
  try {
    answer = await fromCore(tap({ ...event, seq: tapped }, [...roles]));
  } catch {
    // A core that does not answer must not cost an entry: the server checks too.
    return null;
  }
  if (answer.problems.length) throw new RecordError(answer.problems);
  return answer.view;
}

/** @param {Unsaved[]} rows */
function remember(rows) {
  unsaved.value = rows;
  try {
    if (rows.length) localStorage.setItem(SPARE, JSON.stringify(rows));
    else localStorage.removeItem(SPARE);
  } catch {
    // A second net only; the values are on the screen.
  }
}

/** @param {Entry} event @param {any} failure */
function keepUnsaved(event, failure) {
  const { id, kind, make, data, ref } = event;
  const entry = {
    id,
    kind,
    make,
    data,
    ref,
    event,
    key: failure.key ?? "storage_failed",
    problems: failure.problems ?? [],
  };
  remember([...unsaved.value.filter((other) => other.id !== id), entry]);
}

/** Show again what an earlier page could not save. */
export function restoreUnsaved() {
  try {
    unsaved.value = JSON.parse(localStorage.getItem(SPARE) ?? "[]");
  } catch {
    unsaved.value = [];
  }
}

/** @param {Entry} event */
async function save(event) {
  writing += 1;
  /** @type {View | null | undefined} */
  let shown;
  try {
    shown = await askCore(event);
    return { stored: await enqueue(event), shown };
  } catch (/** @type {any} */ failure) {
    keepUnsaved(event, failure);
    // The core may know what the disk does not: it is filled from disk again.
    if (shown !== undefined) rebuild().catch(() => {});
    throw failure;
  } finally {
    writing -= 1;
  }
}

/** @param {Recorded} event @param {View | null} shown */
async function show(event, shown) {
  if (shown) showView(shown);
  // A core that fails here takes the entry from disk when it starts again.
  else await Promise.allSettled([fromCore(take([event])), fromCore(refreshView())]);
  tell({ events: [event] });
  setTimeout(() => refreshBoard().catch(() => {}));
}

/** @param {Entry} event @returns {Promise<Recorded>} */
async function put(event) {
  const { stored, shown } = await save(event);
  await show(stored, shown);
  await countUnsent().catch(() => {});
  kick("tap");
  return stored;
}

/**
 * Record what happened; resolves when it is on disk and the core knows it.
 *
 * @param {string} kind a kind of entry
 * @param {Given} given
 *     atMs: corrected instant of what was seen, when that was not now; by: who, if
 *     not who taps; prove: gives the proof of the entry, and when it rejects then
 *     nothing is recorded
 * @returns {Promise<Recorded>} the entry; rejects with RecordError or StorageError,
 *     and the value then stands in `unsaved`
 */
export async function record(kind, given = {}) {
  const event = compose(kind, given);
  if (!event.device || !event.person) {
    const failure = new StorageError("not_paired");
    keepUnsaved(event, failure);
    throw failure;
  }
  if (given.prove) event.proof = await given.prove(event);
  return put(event);
}

/**
 * Try again to save a value that could not be saved, as it was entered.
 *
 * @param {string} id
 * @returns {Promise<Recorded | null>}
 */
export async function retryUnsaved(id) {
  const entry = unsaved.value.find((one) => one.id === id);
  if (!entry) return null;
  const device = entry.event.device ?? me.value?.device ?? null;
  const who = entry.event.person ?? person.value;
  const stored = await put({ ...entry.event, device, person: who });
  dropUnsaved(id);
  return stored;
}

/**
 * Let go of a value that could not be saved, because a person says so.
 *
 * @param {string} id
 */
export function dropUnsaved(id) {
  remember(unsaved.value.filter((entry) => entry.id !== id));
}
