import { signal } from "@preact/signals";

// What was typed for sums, kept for the visit and no longer: a sum is not an
// entry. A scope is a sum of its own, or one step of one make. Figures left
// half typed are kept too, so that a touch of Back by a wet drop loses nothing.

const PLACE = "sum-typed";

/**
 * @typedef {Record<string, Record<string, SumGiven>>} Typed by scope and input
 * @returns {{typed?: Typed, drafts?: Record<string, any>}}
 */
function before() {
  try {
    return JSON.parse(sessionStorage.getItem(PLACE) ?? "null") ?? {};
  } catch {
    return {}; // kept by an older page, or a browser that keeps nothing
  }
}

const { typed: typedBefore = {}, drafts: draftsBefore = {} } = before();
const typed = signal(typedBefore);
const drafts = draftsBefore;

function keep() {
  try {
    sessionStorage.setItem(PLACE, JSON.stringify({ typed: typed.value, drafts }));
  } catch {
    // What is typed is still there while the page is.
  }
}

/**
 * What was typed in a scope: {input: {typed, unit} or {value} or {rows, unit}}.
 *
 * @param {string} scope
 */
export function givenIn(scope) {
  return typed.value[scope] ?? NOTHING;
}
/** @type {Record<string, SumGiven>} */
const NOTHING = {};

/**
 * Keep one input of a scope; null takes it out.
 *
 * @param {string} scope
 * @param {string} name
 * @param {SumGiven | null} value
 */
export function give(scope, name, value) {
  const next = { ...givenIn(scope) };
  if (value === null) delete next[name];
  else next[name] = value;
  typed.value = { ...typed.value, [scope]: next };
  keep();
}

/**
 * Forget all that was typed in a scope.
 *
 * @param {string} scope
 */
export function clearGiven(scope) {
  typed.value = { ...typed.value, [scope]: NOTHING };
  for (const key of Object.keys(drafts))
    if (key.startsWith(scope + ">")) delete drafts[key];
  keep();
}

/**
 * What was begun for an input and not kept, or null.
 *
 * @param {string} scope
 * @param {string} name
 * @returns {any} what the input's own pad kept
 */
export function draftOf(scope, name) {
  return drafts[`${scope}>${name}`] ?? null;
}

/**
 * Remember what is begun for an input; null once it is kept or taken back.
 *
 * @param {string} scope
 * @param {string} name
 * @param {any} value
 */
export function keepDraft(scope, name, value) {
  if (value === null) delete drafts[`${scope}>${name}`];
  else drafts[`${scope}>${name}`] = value;
  keep();
}
