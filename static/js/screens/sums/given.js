import { signal } from '@preact/signals';

// What was typed for sums, kept while the app is open and no longer: a sum is
// not an entry. A scope is a sum of its own, or one step of one make.

const typed = signal({});

/** What was typed in a scope: {input: {typed, unit} or {value} or {rows, unit}}. */
export function givenIn(scope) {
  return typed.value[scope] ?? NOTHING;
}
const NOTHING = {};

/** Keep one input of a scope; null takes it out. */
export function give(scope, name, value) {
  const next = { ...givenIn(scope) };
  if (value === null) delete next[name];
  else next[name] = value;
  typed.value = { ...typed.value, [scope]: next };
}

/** Forget all that was typed in a scope. */
export function clearGiven(scope) {
  typed.value = { ...typed.value, [scope]: NOTHING };
}
