// The phone's interpreter as a process: one JSON request a line in, one JSON
// answer a line out. It loads the same files that the browser's worker loads.
//
// Usage: node phone.mjs [extra folder of Python modules]

import { readdirSync, readFileSync, statSync } from "node:fs";
import { dirname, join } from "node:path";
import { createInterface } from "node:readline";
import { fileURLToPath } from "node:url";

const root = join(dirname(fileURLToPath(import.meta.url)), "..", "..");
const lib = join(root, "static", "lib");
const { loadMicroPython } = await import(join(lib, "micropython.mjs"));

const python = await loadMicroPython({
  url: join(lib, "micropython.wasm"),
  heapsize: 8 * 1024 * 1024,
  linebuffer: true,
  // Standard output carries answers only.
  stdout: (line) => process.stderr.write(`${line}\n`),
  stderr: (line) => process.stderr.write(`${line}\n`),
});

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
if (process.argv[2]) copyIn(process.argv[2], "/lib");

const host = python.pyimport("host");
process.stdout.write('{"ready": true}\n');
for await (const line of createInterface({ input: process.stdin })) {
  process.stdout.write(`${host.call(line)}\n`);
}
