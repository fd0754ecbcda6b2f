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
// scrolling stays known. A button that recorded something is new again from then on:
// on a slow phone a finger is down again before its outcome shows. Keys that always do
// the same (digits) are `steady`. A press by key, pedal or screen reader has no place:
// there the meaning alone counts.
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
 * @typedef {object} Seen
 * @property {string} name what it means
 * @property {number} sinceMs
 * @property {boolean} [wasCovered]
 * @property {{box: Place, fromMs: number}[]} boxes where it lay, the oldest first
 */
/** @typedef {ReturnType<typeof placeOf>} Place */
/** @typedef {{clientX: number, clientY: number}} At */

/** @type {Map<HTMLElement, Seen>} */
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

/** @type {(seen: Seen, box: Place, nowMs: number) => void} */
function follow(seen, box, nowMs) {
  const last = seen.boxes[seen.boxes.length - 1];
  if (
    isSameSize(last.box, box) &&
    (isSamePlace(last.box, box) || isScrolled(last.box, box))
  ) {
    last.box = box;
  } else {
    seen.boxes.push({ box, fromMs: nowMs });
  }
  // A place that was left a second ago says nothing any more.
  while (seen.boxes.length > 1 && nowMs - seen.boxes[1].fromMs >= SETTLE_MS)
    seen.boxes.shift();
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

/** @type {(seen: Seen, at: At, nowMs: number) => boolean} */
function hasStood(seen, at, nowMs) {
  return (
    nowMs - seen.boxes[0].fromMs >= SETTLE_MS &&
    seen.boxes.every(({ box }) => isInside(box, at))
  );
}

// By its middle: a button that a ticking clock makes a little wider is not new.
/** @type {(seen: Seen, nowMs: number) => boolean} */
function isYoung(seen, nowMs) {
  const { left, top, right, bottom } = seen.boxes[seen.boxes.length - 1].box;
  return !hasStood(
    seen,
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
  for (const [button, seen] of before) {
    if (button.dataset.means && !button.isConnected) byMeans.set(seen.name, seen);
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
    const seen =
      old?.name === name
        ? old
        : { name, sinceMs: nowMs, boxes: [{ box, fromMs: nowMs }] };
    // Under the wet lock a pedal goes on pressing; a finger meets all of it anew.
    const isCovered = button.closest("[inert]") !== null;
    if (isCovered || seen.wasCovered) seen.boxes = [{ box, fromMs: nowMs }];
    else if (seen === old) follow(seen, box, nowMs);
    seen.wasCovered = isCovered;
    known.set(button, seen);
    const young = !isCovered && isYoung(seen, nowMs);
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

/**
 * Leave a press out, and show on its button that it waits.
 *
 * @type {(button: HTMLElement, seen?: Seen, nowMs?: number) => false}
 */
export function leaveOut(button, seen, nowMs = performance.now()) {
  const firstMs = seen ? seen.boxes[seen.boxes.length - 1].fromMs : nowMs;
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
  const seen = known.get(button);
  if (!seen) return leaveOut(button, seen, nowMs);
  if (!at) return nowMs - seen.sinceMs >= SETTLE_MS || leaveOut(button, seen, nowMs);
  return hasStood(seen, at, nowMs) || leaveOut(button, seen, nowMs);
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
 * Take a button as new: what it did has still to be seen, however late it shows.
 *
 * @param {HTMLElement} button
 */
export function renew(button) {
  const [seen, nowMs] = [known.get(button), performance.now()];
  if (!seen) return;
  seen.sinceMs = nowMs;
  seen.boxes = [{ ...seen.boxes[seen.boxes.length - 1], fromMs: nowMs }];
  look();
}

/**
 * Take all buttons within as looked at: whoever types on a pad sees its other keys.
 *
 * @param {Element} within
 */
export function settle(within) {
  if (isDirty) look();
  for (const [button, seen] of known) {
    if (!within.contains(button)) continue;
    seen.sinceMs = -Infinity;
    seen.boxes = [{ ...seen.boxes[seen.boxes.length - 1], fromMs: -Infinity }];
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
