import { useEffect, useRef, useState } from "preact/hooks";
import { html } from "./html.js";
import { touchMs } from "./tap.js";
import { t } from "../messages/index.js";

// A finger lets go when it is told to; a drop stays, and is no finger.
const LONGEST_MS = 6000;
const AGAIN_MS = 5000;
const AFTER_TOUCH_MS = 1000; // a click this soon after a touch belongs to it

/** @typedef {"rest" | "held" | "full" | "water" | "again"} HoldPhase */

/** @type {Partial<Record<HoldPhase, string>>} */
const SAID = { full: "lock.let_go", water: "lock.water", again: "hold.again" };

/**
 * A bar to hold: filled while held, done when let go. One contact alone counts.
 *
 * A key or a screen reader holds nothing: there one press does it, or two in turn
 * where it cannot be taken back (`isTwice`).
 *
 * @param {{words: any, hint: string, onDone: () => unknown, holdMs: number,
 *   class?: string, disabled?: boolean, isTwice?: boolean, isFocused?: boolean}} props
 */
export function HoldBar({
  words,
  hint,
  onDone,
  holdMs,
  class: name = "",
  disabled = false,
  isTwice = false,
  isFocused = false,
}) {
  const [phase, setPhase] = useState(/** @type {HoldPhase} */ ("rest"));
  const contacts = useRef(/** @type {Set<number>} */ (new Set()));
  const sinceMs = useRef(/** @type {?number} */ (null));
  const button = useRef(/** @type {?HTMLElement} */ (null));
  const clocks = useRef(/** @type {number[]} */ ([]));
  const isByKey = useRef(false);
  const settle = (/** @type {HoldPhase} */ next) => {
    clocks.current.forEach(clearTimeout);
    clocks.current = [];
    sinceMs.current = null;
    setPhase(next);
  };
  const isInside = (/** @type {PointerEvent} */ event) => {
    if (!button.current) return false;
    const box = button.current.getBoundingClientRect();
    return (
      event.clientX >= box.left &&
      event.clientX <= box.right &&
      event.clientY >= box.top &&
      event.clientY <= box.bottom
    );
  };
  useEffect(() => {
    if (isFocused) button.current?.focus({ preventScroll: true });
    return () => clocks.current.forEach(clearTimeout);
  }, []);
  const onPointerDown = (/** @type {PointerEvent} */ event) => {
    if (disabled || event.button > 0) return;
    contacts.current.add(event.pointerId);
    if (contacts.current.size > 1) {
      settle("water");
      return;
    }
    settle("held");
    sinceMs.current = performance.now();
    clocks.current = [
      setTimeout(() => setPhase("full"), holdMs),
      setTimeout(() => settle("water"), LONGEST_MS),
    ];
  };
  const onPointerMove = (/** @type {PointerEvent} */ event) => {
    if (sinceMs.current !== null && !isInside(event)) settle("rest");
  };
  const onPointerEnd = (/** @type {PointerEvent} */ event) => {
    contacts.current.delete(event.pointerId);
    const heldMs = sinceMs.current === null ? 0 : performance.now() - sinceMs.current;
    const isHeld = event.type === "pointerup" && isInside(event) && heldMs >= holdMs;
    if (contacts.current.size === 0) settle("rest");
    if (isHeld) onDone();
  };
  const onClick = () => {
    const isTouch = !isByKey.current && performance.now() - touchMs() <= AFTER_TOUCH_MS;
    isByKey.current = false;
    if (disabled || isTouch) return;
    const isAsked = isTwice && phase !== "again";
    settle(isAsked ? "again" : "rest");
    if (!isAsked) onDone();
    else clocks.current = [setTimeout(() => settle("rest"), AGAIN_MS)];
  };
  const onKeyDown = (/** @type {KeyboardEvent} */ event) => {
    if (event.repeat) event.preventDefault();
    else isByKey.current = event.key === "Enter" || event.key === " ";
  };
  const said = SAID[phase];
  return html`<p class="hold-hint" id="hold-hint">${hint}</p>
    <button type="button" class=${`hold-bar is-${phase} ${name}`} ref=${button} disabled=${disabled}
      style=${{ "--hold": `${holdMs}ms` }} aria-describedby="hold-hint"
      onPointerDown=${onPointerDown} onPointerMove=${onPointerMove} onPointerUp=${onPointerEnd}
      onPointerCancel=${onPointerEnd} onClick=${onClick} onKeyDown=${onKeyDown}
      onContextMenu=${(/** @type {MouseEvent} */ event) => event.preventDefault()}>
      <span class="hold-fill"></span><span aria-live="polite">${said ? t(said) : words}</span></button>`;
}
