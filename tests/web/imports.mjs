// Who imports whom in the page's modules, and where that points the wrong way.

import { readdirSync, readFileSync } from "node:fs";

const COMMENTS = /\/\*[\s\S]*?\*\/|^\s*\/\/.*$/gm;
const IMPORTS = /(?:\bfrom\s+|\bimport\s+|\bimport\(\s*)"([^"]+)"/g;

// From the top: a module may import those of its own row and of the rows below.
export const ROWS = [
  ["app.js", "first.js"],
  ["screens"],
  ["parts"],
  ["router.js"],
  ["data"],
  ["core"],
  ["format", "format.js"],
  ["messages", "units", "trusted.js"],
];

/**
 * Read what each module imports, by its path below the folder.
 *
 * @param {URL} folder
 * @returns {Map<string, string[]>}
 */
export function graphOf(folder) {
  const names = readdirSync(folder, { recursive: true }).filter((name) =>
    name.endsWith(".js"),
  );
  return new Map(
    names.map((name) => {
      const text = readFileSync(new URL(name, folder), "utf8").replace(COMMENTS, "");
      const found = [...text.matchAll(IMPORTS)].map(([, named]) => named);
      return [name, found.map((named) => resolved(named, name))];
    }),
  );
}

/**
 * Tell the modules that come with one of them: what it imports, and what those do. What
 * is asked for by a call of import() comes later and is none of them.
 *
 * @param {URL} folder
 * @param {string} start
 * @returns {string[]}
 */
export function cameWith(folder, start) {
  const found = new Set([start]);
  for (const name of found) {
    const text = readFileSync(new URL(name, folder), "utf8").replace(COMMENTS, "");
    for (const [, named] of text.matchAll(/\b(?:from|import)\s+"(\.[^"]+)"/g))
      found.add(resolved(named, name));
  }
  return [...found];
}

function resolved(named, from) {
  return named.startsWith(".")
    ? new URL(named, `file:///${from}`).pathname.slice(1)
    : named;
}

function rowOf(name) {
  return ROWS.findIndex((row) => row.includes(name.split("/")[0]));
}

/** Tell each import that points upwards: ["parts/a.js > screens/b.js"]. */
export function upward(graph) {
  return pairs(graph)
    .filter(([from, to]) => rowOf(to) < rowOf(from))
    .map(([from, to]) => `${from} > ${to}`);
}

/** Tell the modules of no row, and those that are imported and not there. */
export function homeless(graph) {
  const lost = pairs(graph).filter(([, to]) => !graph.has(to));
  return [...[...graph.keys()].filter((name) => rowOf(name) < 0), ...lost.flat()];
}

/** Name a module of each circle, by walking from every module with its way back. */
export function circles(graph) {
  const done = new Set();
  const found = [];
  const walk = (name, way) => {
    if (way.includes(name)) found.push([...way.slice(way.indexOf(name)), name]);
    if (done.has(name) || way.includes(name)) return;
    for (const next of graph.get(name) ?? []) walk(next, [...way, name]);
    done.add(name);
  };
  for (const name of graph.keys()) walk(name, []);
  return found.map((way) => way.join(" > "));
}

function pairs(graph) {
  return [...graph].flatMap(([from, all]) =>
    all
      .filter((to) => to.endsWith(".js") && !to.startsWith("/"))
      .map((to) => [from, to]),
  );
}
