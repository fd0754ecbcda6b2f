import { useState } from "preact/hooks";

// What was typed and not saved, for whoever comes back to the same pad. It lives as
// long as the app is open on this phone, and says when it was typed.

/** @typedef {{typed: string, at_ms: number}} Draft */

const HEAD = "typed:";

/**
 * @param {string} key
 * @returns {?Draft}
 */
function read(key) {
  try {
    return JSON.parse(sessionStorage.getItem(HEAD + key) ?? "null");
  } catch {
    return null;
  }
}

/** @type {(place: string, draft: ?Draft) => void} */
function keep(key, draft) {
  try {
    if (draft) sessionStorage.setItem(HEAD + key, JSON.stringify(draft));
    else sessionStorage.removeItem(HEAD + key);
  } catch {
    /* a full disk: it lives as long as the pad is open */
  }
}

/**
 * A draft of what a pad at this address asks for.
 *
 * @param {?string} name of the pad; null for a pad that keeps its own
 * @param {() => number} nowMs
 * @returns {{found: ?Draft, hold: (typed: string) => unknown, drop: () => unknown}}
 */
export function useDraft(name, nowMs) {
  const [key] = useState(() => name && `${location.hash} ${name}`);
  const [draft] = useState(() => (key ? read(key) : null));
  return {
    found: draft,
    hold: (typed) => key && keep(key, typed === "" ? null : { typed, at_ms: nowMs() }),
    drop: () => key && keep(key, null),
  };
}
