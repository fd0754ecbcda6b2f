// The server's addresses: one way to ask, one shape of failure, and the server's
// clock read off each answer.

import { clock } from "./clock.js";

/** @typedef {{signal?: AbortSignal, waitMs?: number, pack?: boolean}} Options */

const BASE = "/api/v1";
const WAIT_MS = 20000;
const PACK_OVER_BYTES = 8192;

let packing = "CompressionStream" in globalThis;

/** What the server refused, or that it could not be reached (status 0). */
export class ApiError extends Error {
  /**
   * @param {number} status
   * @param {{key?: string, text?: string, field?: string | null, limit?: any,
   *     body?: any} | null | undefined} error
   * @param {number | null} retryAfterS
   */
  constructor(status, error, retryAfterS = null) {
    super(error?.text ?? error?.key ?? `status ${status}`);
    this.name = "ApiError";
    this.status = status;
    this.key = error?.key ?? (status ? "server_failed" : "unreachable");
    this.field = error?.field ?? null;
    this.limit = error?.limit ?? null;
    this.body = error?.body ?? null;
    this.retryAfterS = retryAfterS;
  }
}

/** @param {string} text */
async function pack(text) {
  const stream = new Blob([text]).stream().pipeThrough(new CompressionStream("gzip"));
  return new Response(stream).arrayBuffer();
}

/**
 * @param {string} method
 * @param {string} path
 * @param {any} body
 * @param {Options} options
 */
async function send(method, path, body, options) {
  /** @type {Record<string, string>} */
  const headers = { Accept: "application/json" };
  let content;
  if (method !== "GET") {
    headers["X-Vatside"] = "1";
    headers["Content-Type"] = "application/json";
    content = JSON.stringify(body ?? {});
    if (options.pack && packing && content.length > PACK_OVER_BYTES) {
      content = await pack(content);
      headers["Content-Encoding"] = "gzip";
    }
  }
  try {
    return await fetch(BASE + path, {
      method,
      headers,
      body: content,
      cache: "no-store",
      credentials: "same-origin",
      signal: options.signal ?? AbortSignal.timeout(options.waitMs ?? WAIT_MS),
    });
  } catch (/** @type {any} */ problem) {
    const key = problem.name === "TimeoutError" ? "no_answer" : "unreachable";
    throw new ApiError(0, { key, text: problem.message });
  }
}

/** @param {Response} answer @returns {Promise<any>} */
async function json(answer) {
  try {
    return await answer.json();
  } catch {
    // A proxy's own page, or an answer cut off in the middle.
    return null;
  }
}

/** @param {number} beganMs @param {any} value */
function learn(beganMs, value) {
  const told = value?.server ?? value;
  if (typeof told?.now === "number") clock.learn(beganMs, told.now, told.rate ?? 1);
}

/**
 * @param {string} method
 * @param {string} path
 * @param {any} [body]
 * @param {Options} [options]
 * @returns {Promise<any>}
 */
async function ask(method, path, body, options = {}) {
  const beganMs = clock.begin();
  const answer = await send(method, path, body, options);
  const value = answer.status === 204 ? {} : await json(answer);
  if (answer.ok && value !== null) {
    learn(beganMs, value);
    return value;
  }
  if (answer.status === 415 && options.pack && packing) {
    // A proxy in between may refuse packed requests: go on without.
    packing = false;
    return ask(method, path, body, options);
  }
  const retryAfterS = Number(answer.headers.get("Retry-After")) || null;
  const status = answer.ok ? 0 : answer.status;
  throw new ApiError(status, { ...value?.error, body: value }, retryAfterS);
}

/**
 * Read; rejects with ApiError.
 *
 * @param {string} path
 * @param {Options} [options]
 * @returns {Promise<any>}
 */
export function get(path, options) {
  return ask("GET", path, null, options);
}

/**
 * Ask for a change; rejects with ApiError.
 *
 * @param {string} path
 * @param {any} [body]
 * @param {Options} [options]
 * @returns {Promise<any>}
 */
export function post(path, body, options) {
  return ask("POST", path, body, options);
}

/**
 * Ask for a change of some fields; rejects with ApiError.
 *
 * @param {string} path
 * @param {any} [body]
 * @returns {Promise<any>}
 */
export function patch(path, body) {
  return ask("PATCH", path, body);
}

/**
 * Remove something; rejects with ApiError.
 *
 * @param {string} path
 * @returns {Promise<any>}
 */
export function remove(path) {
  return ask("DELETE", path);
}

/**
 * Open a stream of bytes that never ends by itself.
 *
 * @param {string} path
 * @param {AbortSignal} signal ends it
 */
export async function stream(path, signal) {
  const answer = await send("GET", path, null, { signal });
  if (!answer.ok) {
    const retryAfterS = Number(answer.headers.get("Retry-After")) || null;
    const value = await json(answer);
    throw new ApiError(answer.status, value?.error, retryAfterS);
  }
  return answer.body;
}
