// A page without a browser: the app's own data modules among fakes of what a
// browser gives them. The database is fake-indexeddb, which follows the standard;
// server and core are functions of the test.

import { register } from "node:module";

import "fake-indexeddb/auto";
import { IDBFactory } from "fake-indexeddb";

import { heldTimers } from "./page-timers.mjs";

register("./page-hooks.mjs", import.meta.url);

const STATIC = new URL("../../static/js/", import.meta.url);
let pages = 0;

globalThis.browsers = []; // of each page, where its modules take it from
delete globalThis.BroadcastChannel; // it would keep the process alive

function storage() {
  const held = new Map();
  return {
    getItem: (key) => held.get(key) ?? null,
    setItem: (key, value) => void held.set(key, String(value)),
    removeItem: (key) => void held.delete(key),
  };
}

// Nothing is drawn here, so nothing changes on the screen.
class Unwatched {
  observe() {}
}

// Answers each question in turn, as the worker does; `core` may be replaced.
function workerOf(world) {
  return class {
    constructor() {
      world.starts += 1;
      setImmediate(() => this.onmessage?.({ data: { ready: true, version: "test" } }));
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
 *   core: Function, server: Function, starts: number, isVisible: boolean,
 *   pass: (ms: number) => number, soon: () => number}}
 *   open(more) gives the data modules by name, and more of the page by their paths;
 *   core(name, named) answers the page's questions to the core;
 *   server({method, path, body}) answers {status, headers, body} or a Response;
 *   pass and soon are those of heldTimers.
 */
export function phone() {
  const listeners = new Map();
  const { fakes: timers, pass, soon } = heldTimers();
  const world = {
    disk: new IDBFactory(),
    core: () => null,
    server: () => ({ status: 503, body: { error: { key: "closed" } } }),
    asked: [],
    starts: 0,
    isVisible: true,
    pass,
    soon,
    tell: (kind) => (listeners.get(kind) ?? []).forEach((listener) => listener({})),
  };
  const addEventListener = (kind, listener) =>
    listeners.set(kind, [...(listeners.get(kind) ?? []), listener]);
  const browser = {
    indexedDB: world.disk,
    addEventListener,
    document: {
      documentElement: { dataset: {} },
      querySelectorAll: () => [],
      addEventListener,
      get visibilityState() {
        return world.isVisible ? "visible" : "hidden";
      },
    },
    navigator: { onLine: true, storage: {}, languages: ["en"] },
    localStorage: storage(),
    location: { hash: "", replace: () => {} },
    fetch: fetchOf(world),
    Worker: workerOf(world),
    MutationObserver: Unwatched,
    ...timers,
  };
  world.open = async (more = []) => {
    pages += 1;
    const page = pages;
    globalThis.browsers[page] = browser;
    const of = (name) => import(new URL(`${name}.js?page=${page}`, STATIC).href);
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

const NEVER_MS = 60000; // ends a test of what never comes; no slow machine's measure

/** Wait until an answer is true; return it. */
export async function until(question, what) {
  const endMs = Date.now() + NEVER_MS;
  for (;;) {
    const answer = await question();
    if (answer) return answer;
    if (Date.now() > endMs) throw new Error(`it never came: ${what}`);
    await new Promise((done) => setTimeout(done, 5));
  }
}
