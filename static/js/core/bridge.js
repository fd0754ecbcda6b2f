// The page's way to the core. Calls are answered in the order they were made, but
// for those that must wait for a part of the core that comes later.

import { scriptAddress } from "../trusted.js";

const BOOT_WAIT_MS = 30000;

/** @typedef {{resolve: (value: any) => void, reject: (problem: CoreError) => void}} Promised */
/**
 * A worker that starts or runs, and the calls that wait for its answers.
 *
 * @typedef {Promised & {worker: Worker, ready: Promise<string>,
 *     waiting: Map<number, Promised>}} Running
 */

/** A call that the core could not answer. */
export class CoreError extends Error {
  /** @param {string} type @param {string} text */
  constructor(type, text) {
    super(text);
    this.name = "CoreError";
    this.type = type;
  }
}

/** @type {Running | null} */
let running = null;
let count = 0;
/** @type {Set<() => void>} */
const lostListeners = new Set();

/**
 * Be told when the core had to be started anew and knows nothing.
 *
 * @param {() => void} listener
 */
export function onLost(listener) {
  lostListeners.add(listener);
}

/** @param {Running} mine @param {CoreError} problem */
function stop(mine, problem) {
  if (running !== mine) return;
  running = null;
  mine.worker.terminate();
  mine.reject(problem);
  for (const { reject } of mine.waiting.values()) reject(problem);
  mine.waiting.clear();
}

/** @param {Running} mine @param {{n: number, text: string, failed?: string}} data */
function answered(mine, data) {
  const asked = mine.waiting.get(data.n);
  mine.waiting.delete(data.n);
  if (data.failed) {
    asked?.reject(new CoreError("Lost", data.failed));
    stop(mine, new CoreError("Lost", data.failed));
    for (const listener of lostListeners) listener();
    return;
  }
  const answer = JSON.parse(data.text);
  if (answer.error) {
    asked?.reject(new CoreError(answer.error.type, answer.error.text));
  } else {
    asked?.resolve(answer.ok);
  }
}

/**
 * Start the core if it does not run; resolves with its version when it answers.
 *
 * @returns {Promise<string>}
 */
export function start() {
  if (running) return running.ready;
  const mine = /** @type {Running} */ ({ waiting: new Map() });
  running = mine;
  mine.ready = new Promise((resolve, reject) => {
    mine.resolve = resolve;
    mine.reject = reject;
  });
  mine.ready.catch(() => {}); // each caller hears of it through its own call
  mine.worker = new Worker(scriptAddress("/js/core/worker.js"), { type: "module" });
  const late = setTimeout(
    () => stop(mine, new CoreError("Boot", "the core did not start in time")),
    BOOT_WAIT_MS,
  );
  mine.worker.onmessage = ({ data }) => {
    if (data.ready || (data.failed && data.n === undefined)) clearTimeout(late);
    if (data.ready) mine.resolve(data.version);
    else if (data.n === undefined) stop(mine, new CoreError("Boot", data.failed));
    else answered(mine, data);
  };
  mine.worker.onerror = (event) => {
    clearTimeout(late);
    stop(mine, new CoreError("Boot", event.message ?? "the worker did not load"));
  };
  return mine.ready;
}

/** Start the core anew with an empty desk. */
export function restart() {
  if (running) stop(running, new CoreError("Lost", "started anew"));
  return start();
}

/** Let the core take the rest of its files, now that there is time for it. */
export function takeRest() {
  running?.worker.postMessage({ later: true });
}

/**
 * Ask the core's desk; only data/ask.js does, which says what there is to ask.
 *
 * @param {string} name of the question
 * @param {Record<string, any>} named its arguments by name, JSON values
 * @param {{desk?: boolean}} options desk: put the phone's one desk first
 * @returns {Promise<any>} rejects with CoreError
 */
export function call(name, named = {}, { desk = false } = {}) {
  start();
  const mine = /** @type {Running} */ (running);
  count += 1;
  const n = count;
  const text = JSON.stringify({ module: "desk", name, kwargs: named, desk });
  return new Promise((resolve, reject) => {
    mine.waiting.set(n, { resolve, reject });
    mine.worker.postMessage({ n, text });
  });
}
