// Times the core on the phone's interpreter, one fresh process a run.
//
// Usage: node core_on_phone.mjs FILE; FILE holds {"make", "now_ms", "events",
// "taps"} as JSON. Prints one JSON object of times in ms.

import { readdirSync, readFileSync, statSync } from "node:fs";
import { dirname, join } from "node:path";
import { performance } from "node:perf_hooks";
import { fileURLToPath } from "node:url";

const root = join(dirname(fileURLToPath(import.meta.url)), "..", "..");
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
    heapsize: 8 * 1024 * 1024,
    linebuffer: true,
    stdout: (line) => process.stderr.write(`${line}\n`),
    stderr: (line) => process.stderr.write(`${line}\n`),
  });
});
const python = boot.value;

function copyIn(from, to) {
  python.FS.mkdirTree(to);
  for (const name of readdirSync(from)) {
    const path = join(from, name);
    if (statSync(path).isDirectory()) {
      if (name !== "__pycache__") copyIn(path, `${to}/${name}`);
    } else if (name.endsWith(".py")) {
      python.FS.writeFile(`${to}/${name}`, readFileSync(path));
    }
  }
}

copyIn(join(root, "server", "core"), "/lib/core");
python.FS.writeFile(
  "/lib/host.py",
  readFileSync(join(root, "static", "js", "core", "host.py")),
);

let host;
function ask(name, ...args) {
  const text = host.call(JSON.stringify({ module: "desk", name, desk: true, args }));
  const answer = JSON.parse(text);
  if (answer.error) throw new Error(answer.error.text);
  return { value: answer.ok, bytes: Buffer.byteLength(text) };
}

// The first call brings in the core; a board of nothing costs nothing itself.
const imported = await timed(() => {
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
