// A pedal or a clicker is a keyboard with a key or two. One key presses the large
// button of the step, another silences the alarm or says the last words again.

const GUARD_MS = 300;
// A second look is meant to be looked at.
const ASKING_MS = 1000;

/** @import { Way } from "../hands.js" */

/**
 * Listen to the keys of this phone's pedal from now on.
 *
 * @param {import("../later.js").Kit} kit
 */
export function make(kit) {
  const { alarms, later, learning, may, pedal, pressTap, route, silenceAlarm, voice } =
    kit;
  /** @type {Record<Way, number>} */
  const lastMs = { do: -Infinity, other: -Infinity };
  /** @type {Set<string>} */
  const taken = new Set(); // keys that are down and were ours
  // A key presses what has the focus only where a key put the focus there.
  let isFocusByKey = false;

  function isTyped() {
    const entered =
      document.querySelector(".keypad .entered-value")?.textContent ?? "–";
    /** @type {NodeListOf<HTMLInputElement | HTMLTextAreaElement>} */
    const fields = document.querySelectorAll("#app input, #app textarea");
    return entered !== "–" || [...fields].some((field) => field.value !== "");
  }

  function pressLarge() {
    /** @type {?HTMLElement} */
    const button = document.querySelector(
      "main .foot .primary:not(:disabled):not(.is-act)",
    );
    if (button) pressTap(button);
  }

  function answer() {
    const waiting = (alarms.value?.alarms ?? []).find((alarm) => alarm.is_open);
    if (waiting && may("alert_acknowledged")) silenceAlarm(waiting);
    else if (voice.value)
      later("voice").then(
        (made) => made.repeat(),
        () => {},
      );
  }

  /** @param {KeyboardEvent} event */
  function whichOf(event) {
    const names = [event.code, event.key];
    return /** @type {Way[]} */ (["do", "other"]).find((way) =>
      pedal.value?.[way].some((name) => names.includes(name)),
    );
  }

  /** @param {KeyboardEvent} event */
  function isLeftAlone(event) {
    const at = /** @type {Element} */ (event.target);
    if (
      event.ctrlKey ||
      event.altKey ||
      event.metaKey ||
      at.matches?.("textarea, select")
    )
      return true;
    if (at.matches?.("input")) return event.key !== "Enter";
    const isPress = event.key === "Enter" || event.key === " ";
    return isPress && isFocusByKey && Boolean(at.matches?.("button"));
  }

  // A held pedal sends its key again and again, some of them as new presses: as
  // long as they keep coming they are one.
  /** @type {(way: Way, event: KeyboardEvent) => boolean} */
  function isFirst(way, event) {
    const nowMs = performance.now();
    const sinceMs = nowMs - lastMs[way];
    lastMs[way] = nowMs;
    const guardMs = document.querySelector(".is-asking") ? ASKING_MS : GUARD_MS;
    return !event.repeat && sinceMs >= guardMs;
  }

  /** @param {KeyboardEvent} event */
  function onKeyDown(event) {
    if (event.key === "Tab") isFocusByKey = true;
    if (learning.value) return;
    const way = whichOf(event);
    const isHere = way === "other" || route.value[0] === "make";
    if (!way || !isHere || isLeftAlone(event)) return;
    if (isTyped() && event.key !== "Enter") {
      // F5 would lose what was typed, and Space press the digit touched last.
      if (/^[\d.,-]$/.test(event.key)) return;
      event.preventDefault();
      taken.add(event.code);
      return;
    }
    event.preventDefault();
    event.stopImmediatePropagation();
    taken.add(event.code);
    if (!isFirst(way, event)) return;
    if (way === "do") pressLarge();
    else answer();
  }

  // Space presses a button when it is let go.
  /** @param {KeyboardEvent} event */
  function onKeyUp(event) {
    if (taken.delete(event.code)) event.preventDefault();
  }

  addEventListener("keydown", onKeyDown, true);
  addEventListener("keyup", onKeyUp, true);
  addEventListener(
    "pointerdown",
    () => {
      isFocusByKey = false;
    },
    true,
  );
  return {};
}
