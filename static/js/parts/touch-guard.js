// No touch presses what has just come under the finger.
//
// A wet finger bounces, and a hand taps what it saw half a second ago. Meanwhile the
// next button may stand in the same place, another phone's entry may have turned the
// button's meaning, or an alarm's bar may have pushed the list down by a row. So what
// a button means, and where it lay, is remembered; a press counts only where the same
// meaning has been under it for a whole second.
//
// Rules. What a button means is its words without figures (a clock ticks in them), or
// `means` where words do not say it all. A new element is new, unless it means what
// another one of that `means` meant just before. What moves with a person's own
// scrolling stays known. Keys that always do the same (digits) are `steady`. A press
// by key, pedal or screen reader has no place: there the meaning alone counts.
//
// How. The page is looked at once a frame in which something changed, never by
// polling, and before each press.

import { signal } from "@preact/signals";

/** @import { Signal } from "@preact/signals" */

export const SETTLE_MS = 1000;

/**
 * When a press was last left out because its button was new: [ms of the page].
 *
 * @type {Signal<?number>}
 */
export const leftOutAsNewMs = signal(null);

const WATCHED = [
  "class",
  "style",
  "hidden",
  "inert",
  "disabled",
  "aria-label",
  "data-means",
];
const SLACK_PX = 1;

/**
 * A button as it was last looked at.
 *
 * @typedef {object} Row
 * @property {string} name what it means
 * @property {number} sinceMs
 * @property {boolean} [wasCovered]
 * @property {{box: Place, fromMs: number}[]} boxes where it lay, the oldest first
 */
/** @typedef {ReturnType<typeof placeOf>} Place */
/** @typedef {{clientX: number, clientY: number}} At */

/** @type {Map<HTMLElement, Row>} */
let known = new Map();
let isDirty = true;
/** @type {number | undefined} */
let settling;

/** @param {HTMLElement} button */
function nameOf(button) {
  if (button.dataset.means) return button.dataset.means;
  const words = button.getAttribute("aria-label") ?? button.textContent;
  return `${location.hash} ${words.replace(/\d+/g, "#")}`;
}

/**
 * Where it lies, and where within all that scrolls: a scroll moves only the first.
 *
 * @param {HTMLElement} button
 */
function placeOf(button) {
  const { left, top, right, bottom } = button.getBoundingClientRect();
  let [across, down] = [0, 0];
  for (let element = button.parentElement; element; element = element.parentElement) {
    across += element.scrollLeft;
    down += element.scrollTop;
  }
  return { left, top, right, bottom, inLeft: left + across, inTop: top + down };
}

/** @type {(a: number, b: number) => boolean} */
const isNear = (a, b) => Math.abs(a - b) <= SLACK_PX;
/** @type {(a: Place, b: Place) => boolean} */
const isSameSize = (a, b) =>
  isNear(a.right - a.left, b.right - b.left) &&
  isNear(a.bottom - a.top, b.bottom - b.top);
/** @type {(a: Place, b: Place) => boolean} */
const isSamePlace = (a, b) => isNear(a.left, b.left) && isNear(a.top, b.top);
/** @type {(a: Place, b: Place) => boolean} */
const isScrolled = (a, b) => isNear(a.inLeft, b.inLeft) && isNear(a.inTop, b.inTop);

/** @type {(row: Row, box: Place, nowMs: number) => void} */
function follow(row, box, nowMs) {
  const last = row.boxes[row.boxes.length - 1];
  if (
    isSameSize(last.box, box) &&
    (isSamePlace(last.box, box) || isScrolled(last.box, box))
  ) {
    last.box = box;
  } else {
    row.boxes.push({ box, fromMs: nowMs });
  }
  // A place that was left a second ago says nothing any more.
  while (row.boxes.length > 1 && nowMs - row.boxes[1].fromMs >= SETTLE_MS)
    row.boxes.shift();
}

/** @type {(box: Place, at: At) => boolean} */
function isInside(box, { clientX, clientY }) {
  return (
    clientX >= box.left &&
    clientX <= box.right &&
    clientY >= box.top &&
    clientY <= box.bottom
  );
}

/** @type {(row: Row, at: At, nowMs: number) => boolean} */
function hasStood(row, at, nowMs) {
  return (
    nowMs - row.boxes[0].fromMs >= SETTLE_MS &&
    row.boxes.every(({ box }) => isInside(box, at))
  );
}

// By its middle: a button that a ticking clock makes a little wider is not new.
/** @type {(row: Row, nowMs: number) => boolean} */
function isYoung(row, nowMs) {
  const { left, top, right, bottom } = row.boxes[row.boxes.length - 1].box;
  return !hasStood(
    row,
    { clientX: (left + right) / 2, clientY: (top + bottom) / 2 },
    nowMs,
  );
}

// The mark only shows that it waits; whether a press counts is asked of `known`.
/** @type {(button: HTMLElement, young: boolean) => void} */
function show(button, young) {
  if (young && !("steady" in button.dataset)) {
    button.dataset.new = "";
  } else if ("new" in button.dataset || button.classList.contains("is-waiting")) {
    delete button.dataset.new;
    button.classList.remove("is-waiting");
  }
}

function look() {
  isDirty = false;
  const nowMs = performance.now();
  const before = known;
  const byMeans = new Map();
  for (const [button, row] of before) {
    if (button.dataset.means && !button.isConnected) byMeans.set(row.name, row);
  }
  known = new Map();
  let isAnyYoung = false;
  for (const button of /** @type {NodeListOf<HTMLElement>} */ (
    document.querySelectorAll("[data-tap]")
  )) {
    if (!button.getClientRects().length) {
      show(button, false);
      continue;
    }
    const [name, box] = [nameOf(button), placeOf(button)];
    const old = before.get(button) ?? byMeans.get(name);
    const row =
      old?.name === name
        ? old
        : { name, sinceMs: nowMs, boxes: [{ box, fromMs: nowMs }] };
    // Under the wet lock a pedal goes on pressing; a finger meets all of it anew.
    const isCovered = button.closest("[inert]") !== null;
    if (isCovered || row.wasCovered) row.boxes = [{ box, fromMs: nowMs }];
    else if (row === old) follow(row, box, nowMs);
    row.wasCovered = isCovered;
    known.set(button, row);
    const young = !isCovered && isYoung(row, nowMs);
    show(button, young);
    isAnyYoung = isAnyYoung || young;
  }
  clearTimeout(settling);
  if (isAnyYoung) settling = setTimeout(look, SETTLE_MS / 4);
}

function mark() {
  if (isDirty) return;
  isDirty = true;
  requestAnimationFrame(() => {
    if (isDirty) look();
  });
}

/** @type {(button: HTMLElement, row: Row | undefined, nowMs: number) => false} */
function leaveOut(button, row, nowMs) {
  const firstMs = row ? row.boxes[row.boxes.length - 1].fromMs : nowMs;
  button.style.setProperty(
    "--settles",
    `${Math.max(0, SETTLE_MS - (nowMs - firstMs))}ms`,
  );
  button.classList.add("is-waiting");
  leftOutAsNewMs.value = nowMs;
  return false;
}

/**
 * Tell whether a press counts; one that does not is shown on its button.
 *
 * @param {HTMLElement} button the one that was pressed
 * @param {?At} at where; null for a key's press
 */
export function isSettled(button, at) {
  if ("steady" in button.dataset) return true;
  // Always anew: a browser tells of a scroll a frame after it, and a finger may be
  // quicker.
  look();
  const nowMs = performance.now();
  const row = known.get(button);
  if (!row) return leaveOut(button, row, nowMs);
  if (!at) return nowMs - row.sinceMs >= SETTLE_MS || leaveOut(button, row, nowMs);
  return hasStood(row, at, nowMs) || leaveOut(button, row, nowMs);
}

/**
 * What a button means now: a press counts only if it means the same when let go.
 *
 * @param {HTMLElement} button
 */
export function meaningOf(button) {
  return nameOf(button);
}

/**
 * Take all buttons within as looked at: whoever types on a pad sees its other keys.
 *
 * @param {Element} within
 */
export function settle(within) {
  if (isDirty) look();
  for (const [button, row] of known) {
    if (!within.contains(button)) continue;
    row.sinceMs = -Infinity;
    row.boxes = [{ ...row.boxes[row.boxes.length - 1], fromMs: -Infinity }];
    show(button, false);
  }
}

new MutationObserver(mark).observe(document.documentElement, {
  subtree: true,
  childList: true,
  characterData: true,
  attributes: true,
  attributeFilter: WATCHED,
});
addEventListener("resize", mark);
addEventListener("scroll", mark, true);
look();
