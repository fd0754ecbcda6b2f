// The phone's interpreter as a process: one JSON request a line in, one JSON
// answer a line out. It loads the same files that the browser's worker loads.
//
// Usage: node phone.mjs [extra folder of Python modules]

import { join } from "node:path";
import { createInterface } from "node:readline";

import { coreTexts, root, furnish, textsIn } from "./shelf.mjs";

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

const extra = process.argv[2] ? textsIn(process.argv[2]) : {};
furnish(python, { ...coreTexts(), ...extra });

const host = python.pyimport("host");
process.stdout.write('{"ready": true}\n');
for await (const line of createInterface({ input: process.stdin })) {
  process.stdout.write(`${host.call(line)}\n`);
}
