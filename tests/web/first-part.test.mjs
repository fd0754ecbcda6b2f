// What a phone has once it has loaded the page, before the parts that come later.
import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { test } from "node:test";

import { APART } from "../../static/js/messages/en/apart.js";
import { TEXTS } from "../../static/js/messages/en/index.js";
import { PAGE } from "../../static/js/messages/en/page.js";
import { cameWith } from "./imports.mjs";

const JS = new URL("../../static/js/", import.meta.url);
const FIRST = cameWith(JS, "app.js");
const KEYS = /"((?:\w+\.)+\w+)"/g;

// Who names them does without, for the moment until the rest of the texts is there.
const MAY_WAIT = Object.keys(APART);

test("what wet hands enter first is on a phone that has the page and no more", () => {
  for (const name of ["reading-sheet", "add-sheet", "timer-sheet", "primary"])
    assert.ok(FIRST.includes(`screens/make/${name}.js`), name);
  assert.ok(FIRST.includes("parts/keypad.js"));
  assert.ok(!FIRST.includes("screens/later.js"));
});

test("each text that the page names comes with it", () => {
  const named = FIRST.filter((name) => !name.startsWith("messages/")).flatMap((name) =>
    [...readFileSync(new URL(name, JS), "utf8").matchAll(KEYS)].map(([, key]) => key),
  );
  assert.ok(named.filter((key) => key in PAGE).length > 200);
  const lacking = named.filter((key) =>
    [key, `${key}.one`].some((text) => text in TEXTS && !MAY_WAIT.includes(text)),
  );
  assert.deepEqual(lacking, []);
});

test("what comes with the page, and each part apart, has its rules at once", () => {
  const css = (/** @type {string} */ name) =>
    readFileSync(new URL(`../css/${name}`, JS), "utf8");
  const sheets = [...css("later.css").matchAll(/@import url\("([^"]+)"\)/g)];
  const words = new Set(
    sheets.flatMap(([, name]) =>
      [
        ...css(name)
          .replace(/\/\*[\s\S]*?\*\//g, "")
          .matchAll(/^ *\.([a-z][\w-]+)/gm),
      ].map(([, word]) => word),
    ),
  );
  const atOnce = css("app.css")
    .match(/[\w-]+\.css/g)
    .map(css)
    .join();
  // What app.css knows as well is only placed anew by a later screen.
  const later = [...words].filter((word) => !atOnce.includes(`.${word}`));
  assert.ok(later.length > 40);
  const apart = readdirSync(new URL("parts/later/", JS)).map(
    (name) => `parts/later/${name}`,
  );
  const shown = [...FIRST, ...apart, "first.js"].filter(
    (name) => !/^(messages|data|format|units)/.test(name),
  );
  const lacking = shown.flatMap((name) => {
    const text = readFileSync(new URL(name, JS), "utf8");
    const classes = [...text.matchAll(/class="([^"]+)"/g)].flatMap(([, all]) =>
      all.split(/\s+/),
    );
    return later.filter((word) => classes.includes(word)).map((word) => [name, word]);
  });
  assert.deepEqual(lacking, []);
});

test("no text comes both with the page and after it", () => {
  assert.deepEqual(
    Object.keys(PAGE).filter((key) => key in TEXTS),
    [],
  );
});
