// Times the core on the phone's interpreter, one fresh process a run.
//
// Usage: node core_on_phone.mjs FILE; FILE holds {"files", "make", "now_ms",
// "events", "taps"} as JSON. Prints one JSON object of times in ms.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { performance } from "node:perf_hooks";

import { root, furnish } from "../phone/shelf.mjs";

const lib = join(root, "static", "lib");
const work = JSON.parse(readFileSync(process.argv[2], "utf8"));

async function timed(act) {
  const start = performance.now();
  const value = await act();
  return { ms: performance.now() - start, value };
}

const boot = await timed(async () => {
  const { loadMicroPython } = await import(join(lib, "micropython.mjs"));
  return loadMicroPython({
    url: join(lib, "micropython.wasm"),
    heapsize: 16 * 1024 * 1024,
    linebuffer: true,
    stdout: (line) => process.stderr.write(`${line}\n`),
    stderr: (line) => process.stderr.write(`${line}\n`),
  });
});
const python = boot.value;

let host;
function ask(name, ...args) {
  const text = host.call(JSON.stringify({ module: "desk", name, desk: true, args }));
  const answer = JSON.parse(text);
  if (answer.error) throw new Error(answer.error.text);
  return { value: answer.ok, bytes: Buffer.byteLength(text) };
}

// The first call brings in the core; a board of nothing costs nothing itself.
const imported = await timed(() => {
  furnish(python, work.files);
  host = python.pyimport("host");
  return ask("board", work.now_ms);
});

const folds = [];
for (const event of work.events) {
  const { ms, value } = await timed(() => ask("take", [event]).value);
  if (value.problems.length) throw new Error(JSON.stringify(value.problems));
  folds.push(ms);
}
const first = await timed(() => ask("view", work.make, work.now_ms));

const views = [];
const boards = [];
for (const [place, event] of work.taps.entries()) {
  ask("take", [event]);
  if (place % 2) {
    views.push((await timed(() => ask("view", work.make, work.now_ms))).ms);
  } else {
    boards.push((await timed(() => ask("board", work.now_ms))).ms);
  }
}

process.stdout.write(
  JSON.stringify({
    boot: boot.ms,
    import: imported.ms,
    folds,
    first_view: first.ms,
    views,
    boards,
    view_bytes: first.value.bytes,
  }),
);
