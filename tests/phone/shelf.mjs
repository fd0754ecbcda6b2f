// The core's files, put into the interpreter as the browser's worker puts them.

import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, sep } from "node:path";
import { fileURLToPath } from "node:url";

const SHEAF = "/lib/sheaf";
export const root = join(dirname(fileURLToPath(import.meta.url)), "..", "..");

/** Return the Python files below a folder, each text by its path in it. */
export function textsIn(folder, before = "") {
  const names = readdirSync(folder, { recursive: true }).filter((name) =>
    name.endsWith(".py"),
  );
  return Object.fromEntries(
    names.map((name) => [
      before + name.split(sep).join("/"),
      readFileSync(join(folder, name), "utf8"),
    ]),
  );
}

/** Return the core as it lies on disk, with the page's own files that start it. */
export function coreTexts() {
  return {
    ...textsIn(join(root, "server", "core"), "core/"),
    ...textsIn(join(root, "static", "js", "core")),
  };
}

/** Put the first files on the interpreter's shelf, the shelf itself among them. */
export function furnish(python, files) {
  python.FS.mkdirTree("/lib");
  python.FS.writeFile("/lib/shelf.py", files["shelf.py"]);
  shelve(python, files);
}

/** Put files on the shelf that stands. */
export function shelve(python, files) {
  const encoder = new TextEncoder();
  const names = Object.keys(files);
  const sheets = names.map((name) => encoder.encode(files[name]));
  const index = names.map((name, place) => `${name} ${sheets[place].length}`);
  python.FS.writeFile(SHEAF, encoder.encode(names.map((name) => files[name]).join("")));
  python.pyimport("shelf").take(SHEAF, index.join("\n"));
}
