// Resolves the page's modules as its import map does, and gives each opened page
// modules of its own: what one page remembers, another must find on disk.

import { readFileSync } from "node:fs";

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
