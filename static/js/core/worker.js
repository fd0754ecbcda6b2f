// The core's home on the phone: MicroPython in a worker, so that folding a long
// make never holds up a finger. It talks in text only; host.py reads it, and
// shelf.py holds the core's files.
//
// In: {n, text}, or {later: true} when there is time for the rest of the core.
// Out: {ready, version} once, or {failed: text} once, and then {n, text} for each
// call, in the order asked; one that needs the rest of the core waits for it alone.

import { loadMicroPython } from "/lib/micropython.mjs";

// A make of a thousand entries takes about 3 MB; the heap grows beyond this by
// itself, but collecting is quickest when it rarely has to.
const HEAP_BYTES = 16 * 1024 * 1024;
const SHEAF = "/lib/sheaf"; // all files in one, as shelf.py takes them

/** @param {string} address @returns {Promise<any>} */
async function fetched(address) {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${address}: ${answer.status}`);
  return answer.json();
}

/** @param {any} python @param {Record<string, string>} files */
function shelve(python, files) {
  const encoder = new TextEncoder();
  const names = Object.keys(files);
  const sheets = names.map((name) => encoder.encode(files[name]));
  const index = names.map((name, place) => `${name} ${sheets[place].length}`);
  python.FS.writeFile(SHEAF, encoder.encode(names.map((name) => files[name]).join("")));
  python.pyimport("shelf").take(SHEAF, index.join("\n"));
}

async function boot() {
  const [python, shipped] = await Promise.all([
    loadMicroPython({
      url: "/lib/micropython.wasm",
      heapsize: HEAP_BYTES,
      stdout: (line) => console.log(line),
      stderr: (line) => console.error(line),
    }),
    fetched("/core.json"),
  ]);
  python.FS.mkdirTree("/lib");
  python.FS.writeFile("/lib/shelf.py", shipped.files["shelf.py"]);
  shelve(python, shipped.files);
  const host = python.pyimport("host");
  // A phone may still hold files of before the rules were sent along.
  host.take_rules(JSON.stringify(shipped.rules ?? {}));
  return { python, host, version: shipped.version };
}

const booted = boot();
booted.then(
  ({ version }) => postMessage({ ready: true, version }),
  (problem) => postMessage({ failed: String(problem) }),
);

// How host.py begins to say that a module is not here (yet).
const LACKING = '{"error": {"type": "ImportError"';
/** @type {Promise<void> | null} */
let rest = null;

async function fetchRest() {
  const [{ python, host, version }, shipped] = await Promise.all([
    booted,
    fetched("/core-later.json"),
  ]);
  // Parts of two cores would be a third one that nobody has tested.
  if (shipped.version !== version) throw new Error("a new version of the app waits");
  shelve(python, shipped.files);
  host.take_rules(JSON.stringify(shipped.rules ?? {}));
}

function theRest() {
  rest ??= fetchRest().catch((problem) => {
    rest = null; // no network: the next question asks again
    throw problem;
  });
  return rest;
}

/** @param {number} n @param {string} text */
async function answer(n, text) {
  const { host } = await booted;
  const told = host.call(text);
  // Not read as a whole: a View is long, and the page reads it anyway.
  if (!told.startsWith(LACKING)) return told;
  // Modules are loaded before anything is changed, so the question can be put again.
  try {
    await theRest();
  } catch {
    return told;
  }
  return host.call(text);
}

addEventListener("message", async ({ data: { n, text, later } }) => {
  if (later) {
    theRest().catch(() => {});
    return;
  }
  try {
    postMessage({ n, text: await answer(n, text) });
  } catch (problem) {
    // host.call answers for every Python failure; what comes here is the
    // interpreter itself giving up, and it cannot be used again.
    postMessage({ n, failed: String(problem) });
  }
});
