import { effect, signal } from "@preact/signals";
import { html } from "./html.js";
import { Later } from "./later.js";
import { Tap } from "./tap.js";
import { lastAct, UNDO_MS } from "./acts.js";
import { keepAwake, nowMs } from "./source.js";
import { t } from "../messages/index.js";

// Drops, steam and a cloth tap a screen as fingers do. Under the lock the screen
// only shows; it is left by a hold that water does not make. What it shows is
// fetched when it is first used, and a phone that cannot fetch it is not locked:
// nobody may be shut out of a make.

const KEPT = "wet-lock";

/** True while touches do nothing; kept over a reload. */
export const isLocked = signal(localStorage.getItem(KEPT) === "on");

/** @param {boolean} on */
function keep(on) {
  isLocked.value = on;
  try {
    if (on) localStorage.setItem(KEPT, "on");
    else localStorage.removeItem(KEPT);
  } catch {
    /* a full disk: locked until the next reload */
  }
}

export function lock() {
  keep(true);
}

export function unlock() {
  // What a pedal recorded under lock can be undone once hands are there again.
  const last = lastAct.value;
  if (last && nowMs() < last.untilMs)
    lastAct.value = { ...last, untilMs: nowMs() + UNDO_MS };
  keep(false);
}

/** In the status bar: one tap locks. */
export function LockButton() {
  return html`<${Tap} class="status-button is-icon" means="lock" label=${t("lock.button_label")} onTap=${lock}><svg viewBox="0 0 24 24" aria-hidden="true"><path d="M5 10.5h14v11H5zM8 10V6.5a4 4 0 0 1 8 0V10" /></svg></${Tap}>`;
}

/** The cover over every screen while it is locked. */
export function WetLock() {
  if (!isLocked.value) return null;
  return html`<div class="wet-lock" role="dialog" aria-modal="true" aria-label=${t("lock.title")}
    onContextMenu=${(/** @type {MouseEvent} */ event) => event.preventDefault()}>
    <${Later} part="wet-lock" name="Locked" onLeave=${unlock} onFail=${unlock}><p class="lead">${t("lock.opening")}</p></${Later}>
  </div>`;
}

effect(() => {
  const page = document.getElementById("app");
  if (page) page.inert = isLocked.value;
  keepAwake(isLocked.value, KEPT);
});
