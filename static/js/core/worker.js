// The core's home on the phone: MicroPython in a worker, so that folding a long
// make never holds up a finger. It talks in text only; host.py reads it.
//
// In: {n, text}. Out: {ready, version} once, or {failed: text} once, and then
// {n, text} for each call, in the order asked.

import { loadMicroPython } from "/lib/micropython.mjs";

// A make of a thousand entries takes about 3 MB; the heap grows beyond this by
// itself, but collecting is quickest when it rarely has to.
const HEAP_BYTES = 16 * 1024 * 1024;

function folderOf(path) {
  return path.slice(0, path.lastIndexOf("/"));
}

async function files() {
  const answer = await fetch("/core.json");
  if (!answer.ok) throw new Error(`core.json: ${answer.status}`);
  return answer.json();
}

async function boot() {
  const [python, shipped] = await Promise.all([
    loadMicroPython({
      url: "/lib/micropython.wasm",
      heapsize: HEAP_BYTES,
      stdout: (line) => console.log(line),
      stderr: (line) => console.error(line),
    }),
    files(),
  ]);
  for (const [path, text] of Object.entries(shipped.files)) {
    const place = `/lib/${path}`;
    python.FS.mkdirTree(folderOf(place));
    python.FS.writeFile(place, text);
  }
  const host = python.pyimport("host");
  // A phone may still hold files of before the rules were sent along.
  host.take_rules(JSON.stringify(shipped.rules ?? {}));
  return { host, version: shipped.version };
}

const booted = boot();
booted.then(
  ({ version }) => postMessage({ ready: true, version }),
  (problem) => postMessage({ failed: String(problem) }),
);

addEventListener("message", async ({ data: { n, text } }) => {
  const { host } = await booted;
  try {
    postMessage({ n, text: host.call(text) });
  } catch (problem) {
    // host.call answers for every Python failure; what comes here is the
    // interpreter itself giving up, and it cannot be used again.
    postMessage({ n, failed: String(problem) });
  }
});
