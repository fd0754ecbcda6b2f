import { signal } from "@preact/signals";

// Which step is looked at: by itself the one the core puts in focus; another
// while a person has chosen it, until that step is over.
/** @type {import("@preact/signals").Signal<Record<string, string | undefined>>} */
const chosen = signal({});
// Makes whose chosen step was chosen by beginning it.
/** @type {Set<string>} */
const begun = new Set();

/** @type {(make: string, key: string) => void} */
export function chooseStep(make, key) {
  begun.delete(make);
  chosen.value = { ...chosen.value, [make]: key };
}

/**
 * Keep the step that was just begun in front: the next one's cautions must not take
 * its place while hands are at it.
 *
 * @param {string} make
 * @param {string} key
 */
export function stayAt(make, key) {
  chooseStep(make, key);
  begun.add(make);
}

/**
 * Whoever comes back to a make sees again what wants a hand first.
 *
 * @param {string} make
 */
export function leaveMake(make) {
  if (begun.delete(make)) chosen.value = { ...chosen.value, [make]: undefined };
}

/**
 * The step shown for a make: the chosen one while open, else the focus.
 *
 * @param {View} view
 */
export function stepShown(view) {
  const key = chosen.value[view.make.id];
  const picked = view.steps.find((step) => step.key === key);
  if (picked && picked.status !== "ended" && picked.status !== "skipped") return picked;
  return view.steps.find((step) => step.key === view.focus) ?? null;
}
