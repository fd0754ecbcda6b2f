// Two tabs of one phone share the database but not the core: what one learns,
// it tells the others.

/**
 * What one tab tells the others.
 *
 * @typedef {{events?: Recorded[], again?: boolean, person?: string,
 *     signedOut?: boolean}} Told
 */

const channel =
  "BroadcastChannel" in globalThis ? new BroadcastChannel("vatside") : null;

/**
 * Tell the other tabs: {events}, {again: true}, {person} or {signedOut}.
 *
 * @param {Told} message
 */
export function tell(message) {
  channel?.postMessage(message);
}

/**
 * Be told what other tabs tell.
 *
 * @param {(told: Told) => void} listener
 */
export function listen(listener) {
  channel?.addEventListener("message", ({ data }) => listener(data));
}

/**
 * Do work that only one tab at a time may do.
 *
 * Without locks (a plain-http address has none) tabs may work at once; the
 * server's verdicts make that harmless.
 *
 * @param {string} name
 * @param {() => Promise<T>} work
 * @template T
 */
export function alone(name, work) {
  return navigator.locks ? navigator.locks.request(name, work) : work();
}
