import { useState } from "preact/hooks";

// What was typed and not saved, for whoever comes back to the same pad. It lives as
// long as the app is open on this phone, and says when it was typed.

/** @typedef {{typed: string, at_ms: number}} Draft */

const HEAD = "typed:";

/**
 * @param {string} place
 * @returns {?Draft}
 */
function read(place) {
  try {
    return JSON.parse(sessionStorage.getItem(HEAD + place) ?? "null");
  } catch {
    return null;
  }
}

/** @type {(place: string, draft: ?Draft) => void} */
function keep(place, draft) {
  try {
    if (draft) sessionStorage.setItem(HEAD + place, JSON.stringify(draft));
    else sessionStorage.removeItem(HEAD + place);
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
  const [place] = useState(() => name && `${location.hash} ${name}`);
  const [found] = useState(() => (place ? read(place) : null));
  return {
    found,
    hold: (typed) =>
      place && keep(place, typed === "" ? null : { typed, at_ms: nowMs() }),
    drop: () => place && keep(place, null),
  };
}
