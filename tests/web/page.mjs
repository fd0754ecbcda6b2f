// A page without a browser: the app's own data modules among fakes of what a
// browser gives them. The database is fake-indexeddb, which follows the standard;
// server and core are functions of the test.

import { register } from "node:module";

import {
  IDBCursor,
  IDBCursorWithValue,
  IDBDatabase,
  IDBFactory,
  IDBIndex,
  IDBKeyRange,
  IDBObjectStore,
  IDBOpenDBRequest,
  IDBRequest,
  IDBTransaction,
  IDBVersionChangeEvent,
} from "fake-indexeddb";

register("./page-hooks.mjs", import.meta.url);

const STATIC = new URL("../../static/js/", import.meta.url);
const idb = {
  IDBCursor,
  IDBCursorWithValue,
  IDBDatabase,
  IDBFactory,
  IDBIndex,
  IDBKeyRange,
  IDBObjectStore,
  IDBOpenDBRequest,
  IDBRequest,
  IDBTransaction,
  IDBVersionChangeEvent,
};
const REAL = { setTimeout, setInterval };
let pages = 0;

function give(name, value) {
  Object.defineProperty(globalThis, name, {
    value,
    configurable: true,
    writable: true,
  });
}

// The page waits for ever; a test must not.
function unrefLong(start) {
  return (work, ms, ...given) => {
    const timer = start(work, ms, ...given);
    if (ms >= 1000) timer.unref();
    return timer;
  };
}

function storage() {
  const held = new Map();
  return {
    getItem: (key) => held.get(key) ?? null,
    setItem: (key, value) => void held.set(key, String(value)),
    removeItem: (key) => void held.delete(key),
  };
}

// Answers each question in turn, as the worker does; `core` may be replaced.
function workerOf(world) {
  return class {
    constructor() {
      world.starts += 1;
      setTimeout(() => this.onmessage?.({ data: { ready: true, version: "test" } }));
    }

    async postMessage({ n, text }) {
      const { name, kwargs } = JSON.parse(text);
      let answer;
      try {
        answer = { ok: (await world.core(name, kwargs)) ?? null };
      } catch (failure) {
        answer = { error: { type: failure.name, text: failure.message } };
      }
      if (!this.isOver) this.onmessage?.({ data: { n, text: JSON.stringify(answer) } });
    }

    terminate() {
      this.isOver = true;
    }
  };
}

function fetchOf(world) {
  return async (address, { method = "GET", body, signal } = {}) => {
    signal?.throwIfAborted?.();
    const path = address.replace("/api/v1", "");
    const sent = typeof body === "string" ? JSON.parse(body) : body;
    world.asked.push({ method, path, body: sent });
    const answer = await world.server({ method, path, body: sent, signal });
    if (answer instanceof Response) return answer;
    const { status = 200, headers = {}, ...rest } = answer;
    return new Response(JSON.stringify(rest.body ?? {}), { status, headers });
  };
}

/**
 * Make a phone: its disk stays while pages come and go.
 *
 * @returns {{open: (more?: string[]) => Promise<object>, disk: IDBFactory, asked: object[],
 *   core: Function, server: Function, starts: number, isVisible: boolean}}
 *   open(more) gives the data modules by name, and more of the page by their paths;
 *   core(name, named) answers the page's questions to the core;
 *   server({method, path, body}) answers {status, headers, body} or a Response.
 */
export function phone() {
  const listeners = new Map();
  const world = {
    disk: new IDBFactory(),
    core: () => null,
    server: () => ({ status: 503, body: { error: { key: "closed" } } }),
    asked: [],
    starts: 0,
    isVisible: true,
    tell: (kind) => (listeners.get(kind) ?? []).forEach((listener) => listener({})),
  };
  const addEventListener = (kind, listener) =>
    listeners.set(kind, [...(listeners.get(kind) ?? []), listener]);
  const fakes = {
    ...idb,
    indexedDB: world.disk,
    addEventListener,
    document: {
      documentElement: {},
      addEventListener,
      get visibilityState() {
        return world.isVisible ? "visible" : "hidden";
      },
    },
    navigator: { onLine: true, storage: {}, languages: ["en"] },
    localStorage: storage(),
    fetch: fetchOf(world),
    Worker: workerOf(world),
    setTimeout: unrefLong(REAL.setTimeout),
    setInterval: unrefLong(REAL.setInterval),
  };
  delete globalThis.BroadcastChannel; // it would keep the process alive
  world.open = async (more = []) => {
    for (const [name, value] of Object.entries(fakes)) give(name, value);
    pages += 1;
    const of = (name) => import(new URL(`${name}.js?page=${pages}`, STATIC).href);
    const names = [
      ...["db", "state", "record", "desk", "sync", "live", "clock", "tabs"],
      "sign-out",
    ];
    const paths = [...names.map((name) => `data/${name}`), ...more];
    const modules = await Promise.all(paths.map(of));
    return Object.fromEntries(
      [...names, ...more].map((name, at) => [name, modules[at]]),
    );
  };
  return world;
}

/** Wait until an answer is true; return it. */
export async function until(question, what) {
  const endMs = Date.now() + 5000;
  for (;;) {
    const answer = await question();
    if (answer) return answer;
    if (Date.now() > endMs) throw new Error(`not within 5 s: ${what}`);
    await new Promise((done) => setTimeout(done, 5));
  }
}
