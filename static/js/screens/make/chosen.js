import { signal } from '@preact/signals';

// Which step is looked at: by itself the one the core puts in focus; another
// while a person has chosen it, until that step is over.
const chosen = signal({});

export function chooseStep(make, key) {
  chosen.value = { ...chosen.value, [make]: key };
}

/** The step shown for a make: the chosen one while open, else the focus. */
export function stepShown(view) {
  const key = chosen.value[view.make.id];
  const picked = view.steps.find((one) => one.key === key);
  if (picked && picked.status !== 'ended' && picked.status !== 'skipped') return picked;
  return view.steps.find((one) => one.key === view.focus) ?? null;
}
