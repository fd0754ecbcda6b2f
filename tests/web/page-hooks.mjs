// Resolves the page's modules as its import map does, and gives each opened page
// modules of its own: what one page remembers, another must find on disk. They see
// the browser of their own page too: one that an earlier test left behind must not
// speak to the server of the next.

import { readFileSync } from "node:fs";

import { BROWSER } from "./page-browser.mjs";

const STATIC = new URL("../../static/", import.meta.url);
const html = readFileSync(new URL("index.html", STATIC), "utf8");
const [, map] = html.match(/<script type="importmap">([\s\S]*?)<\/script>/);
const { imports } = JSON.parse(map);

export async function resolve(specifier, context, next) {
  const page = new URL(context.parentURL ?? "file:///").searchParams.get("page");
  const address = imports[specifier];
  const inPage = page !== null || specifier.includes("?page=");
  if (!inPage) return next(specifier, context);
  const path = address ?? (specifier.startsWith("/js/") ? specifier : null);
  const wanted = path ? new URL(path.slice(1), STATIC).href : specifier;
  const found = await next(wanted, context);
  const url = new URL(found.url);
  if (page !== null) url.searchParams.set("page", page);
  return { ...found, url: url.href };
}

export async function load(address, context, next) {
  const page = new URL(address).searchParams.get("page");
  if (page === null) return next(address, context);
  const text = readFileSync(new URL(address), "utf8");
  const names = BROWSER.join(", ");
  // On the first line, so that all others keep their numbers.
  const source = `const { ${names} } = globalThis.browsers[${page}];${text}`;
  return { format: "module", source, shortCircuit: true };
}
