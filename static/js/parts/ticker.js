import { signal } from "@preact/signals";
import { nowMs } from "./source.js";

// Browsers slow or stop timers of a hidden page. So nothing counts ticks: each
// second, and each time the page comes back, the clock is simply read again.

/** The corrected time, renewed each second while the page is seen. */
export const secondMs = signal(nowMs());

let timer = 0;

function tick() {
  clearTimeout(timer);
  secondMs.value = nowMs();
  if (document.visibilityState === "hidden") return;
  timer = setTimeout(tick, 1000 - (secondMs.value % 1000) + 5);
}

for (const name of ["visibilitychange", "pageshow", "focus"]) {
  addEventListener(name, tick, true);
}
tick();
