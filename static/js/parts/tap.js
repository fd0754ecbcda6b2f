import { signal } from "@preact/signals";
import { useRef } from "preact/hooks";
import { html } from "./html.js";
import { isSettled, leaveOut, meaningOf, renew, settle } from "./touch-guard.js";

// One button for wet and gloved hands.
//
// A browser sends no click when two contacts touch at once (a finger and a drop
// of water), and none after a finger drifts. So the tap is the pointerup inside
// the button of the pointer that went down on it. A click is taken only when no
// pointer made it: that is the Enter or Space key, a pedal, or a screen reader.
//
// The page may move beneath a finger, when an alarm comes or a clock's words grow
// by a line. The button that was pressed keeps the finger, and what counts is
// where it lay when it was pressed.
//
// Two contacts: when the first one lies on a button, the second is ignored (two
// buttons must never fire at once). When the first lies on nothing, it is water
// or a thumb on the edge, and the second one is the tap.
//
// What has just come under the finger takes no press: see touch-guard.js.

const GUARD_MS = 350; // wet fingers bounce; a second act this soon is no act
const AFTER_POINTER_MS = 1000; // a click this soon after a pointer belongs to it

/** @import { Signal } from "@preact/signals" */
/** @typedef {PointerEvent & {currentTarget: HTMLElement}} PressEvent */
/** @typedef {{pointerId: number, box: DOMRect, meaning: string}} Held */

/**
 * When a touch was last left out because another button was held: [ms of the page].
 *
 * @type {Signal<?number>}
 */
export const leftOutMs = signal(null);

/** @type {Map<number, boolean>} */
const holders = new Map(); // pointerId -> was it put down on a Tap
let lastPointerMs = -Infinity;

/** When the screen was last touched [ms of the page]. */
export function touchMs() {
  return lastPointerMs;
}

/**
 * Press a button as a key does: at once, whatever touched the screen before.
 *
 * @param {HTMLElement} button
 */
export function pressTap(button) {
  lastPointerMs = -Infinity;
  button.classList.add("is-down");
  setTimeout(() => button.classList.remove("is-down"), 150);
  button.click();
}

/** @param {PointerEvent} event */
function noteDown(event) {
  lastPointerMs = performance.now();
  holders.set(
    event.pointerId,
    Boolean(/** @type {Element} */ (event.target).closest?.("[data-tap]")),
  );
}

/** @param {PointerEvent} event */
function noteUp(event) {
  lastPointerMs = performance.now();
  holders.delete(event.pointerId);
}

addEventListener("pointerdown", noteDown, true);
addEventListener("pointerup", noteUp, true);
addEventListener("pointercancel", noteUp, true);

/** @param {number} pointerId */
function isAnotherTapHeld(pointerId) {
  return [...holders].some(([id, onTap]) => id !== pointerId && onTap);
}

/**
 * @param {PointerEvent} event
 * @param {DOMRect} box
 */
function isInside(event, box) {
  return (
    event.clientX >= box.left &&
    event.clientX <= box.right &&
    event.clientY >= box.top &&
    event.clientY <= box.bottom
  );
}

/**
 * A button that takes wet, drifting and double touches as a person meant them.
 *
 * @param {{onTap: () => unknown, class?: string, disabled?: boolean, label?: string,
 *   guardMs?: number, pressed?: boolean, means?: string, steady?: boolean,
 *   children?: any} & Record<string, any>} props
 *   label: spoken; means: what a press does, where the words do not say it all;
 *   steady: a key that does the same at all times, so that it may be pressed as soon
 *   as it is there
 */
export function Tap({
  onTap,
  class: name = "",
  disabled = false,
  label,
  guardMs = GUARD_MS,
  pressed,
  means,
  steady = false,
  children,
  ...rest
}) {
  const held = useRef(/** @type {?Held} */ (null));
  const lastMs = useRef(-Infinity);
  const recording = useRef(/** @type {?string} */ (null));

  const act = (/** @type {string} */ meaning, /** @type {HTMLElement} */ button) => {
    const nowMs = performance.now();
    if (disabled || nowMs - lastMs.current < guardMs) return;
    if (recording.current === meaning) {
      renew(button);
      leaveOut(button);
      return;
    }
    lastMs.current = nowMs;
    const doing = onTap();
    if (steady || !(doing instanceof Promise)) return;
    recording.current = meaning;
    doing.finally(() => {
      if (recording.current === meaning) recording.current = null;
      renew(button);
    });
  };
  const release = (/** @type {PressEvent} */ event) => {
    event.currentTarget.classList.remove("is-down");
    held.current = null;
  };
  const onPointerDown = (/** @type {PressEvent} */ event) => {
    if (disabled || event.button > 0) return;
    if (isAnotherTapHeld(event.pointerId)) {
      leftOutMs.value = performance.now(); // never silently: the screen says so
      return;
    }
    const button = event.currentTarget;
    if (!isSettled(button, event)) return;
    if (steady) settle(button.closest(".keypad") ?? button);
    held.current = {
      pointerId: event.pointerId,
      box: button.getBoundingClientRect(),
      meaning: meaningOf(button),
    };
    button.setPointerCapture?.(event.pointerId);
    button.classList.add("is-down");
  };
  const onPointerUp = (/** @type {PressEvent} */ event) => {
    if (held.current?.pointerId !== event.pointerId) return;
    const { box, meaning } = held.current;
    release(event);
    // Another phone's entry may have turned it while the finger lay on it.
    if (isInside(event, box) && meaning === meaningOf(event.currentTarget))
      act(meaning, event.currentTarget);
  };
  const onPointerCancel = (/** @type {PressEvent} */ event) => {
    if (held.current?.pointerId === event.pointerId) release(event);
  };
  const onClick = (/** @type {{currentTarget: HTMLElement}} */ event) => {
    if (
      performance.now() - lastPointerMs > AFTER_POINTER_MS &&
      isSettled(event.currentTarget, null)
    )
      act(meaningOf(event.currentTarget), event.currentTarget);
  };
  const onKeyDown = (/** @type {KeyboardEvent} */ event) => {
    if (event.repeat && (event.key === "Enter" || event.key === " ")) {
      event.preventDefault(); // a held key is one press
    } else if (event.key === "Enter" || event.key === " ") {
      lastPointerMs = -Infinity; // the click that follows is the key's own
    }
  };
  return html`<button
    type="button" data-tap data-means=${means} data-steady=${steady ? "" : undefined} class=${"tap " + name} disabled=${disabled}
    aria-label=${label} aria-pressed=${pressed}
    onPointerDown=${onPointerDown} onPointerUp=${onPointerUp}
    onPointerCancel=${onPointerCancel} onClick=${onClick} onKeyDown=${onKeyDown}
    onContextMenu=${(/** @type {MouseEvent} */ event) => event.preventDefault()} ...${rest}
  >${children}</button>`;
}
