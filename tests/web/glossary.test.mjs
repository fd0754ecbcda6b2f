// One word of the trade for one thing: what GLOSSARY.md says holds in every text.
import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { test } from "node:test";

import { TEXTS } from "../../static/js/messages/en/index.js";
import { PAGE } from "../../static/js/messages/en/page.js";
import * as es from "../../static/js/messages/es/index.js";
import * as fr from "../../static/js/messages/fr/index.js";
import { TEXTS as SETUP_EN } from "../../static/setup/texts-en.js";
import { TEXTS as SETUP_ES } from "../../static/setup/texts-es.js";
import { TEXTS as SETUP_FR } from "../../static/setup/texts-fr.js";

const ROOT = new URL("../../", import.meta.url);
const read = (place) => readFileSync(new URL(place, ROOT), "utf8");
const json = (place) => JSON.parse(read(place));

// Every text under a value, by the way to it.
function flat(value, path) {
  if (typeof value === "string") return [[path, value]];
  if (value === null || typeof value !== "object") return [];
  return Object.entries(value).flatMap(([name, part]) => flat(part, `${path}.${name}`));
}

// What a file of data says in words: not its keys, units and numbers.
function told(folder) {
  const files = readdirSync(new URL(folder, ROOT)).filter((name) =>
    name.endsWith(".json"),
  );
  assert.ok(files.length > 0);
  return files
    .flatMap((name) => flat(json(folder + name), name))
    .filter(([path]) => /\.(?:en|title|note|words|text)$/.test(path));
}

function texts(code, catalogue, recipe, setup) {
  return [
    ...Object.entries(catalogue),
    ...Object.entries(recipe),
    ...flat(setup, "setup"),
    ...flat(json(`server/alarm/texts/${code}.json`), "alarm_texts"),
  ];
}

const SAID = {
  en: [
    ...texts("en", { ...TEXTS, ...PAGE }, {}, SETUP_EN),
    ...told("server/recipes/"),
    ...told("server/rules/"),
  ],
  es: texts("es", es.TEXTS, es.RECIPE, SETUP_ES),
  fr: texts("fr", fr.TEXTS, fr.RECIPE, SETUP_FR),
};
const CODES = Object.keys(SAID);

// A word that ends in … stands for all that begin so.
function pattern(word) {
  const plain = word.replace(/…$/, "").replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
  const end = word.endsWith("…") ? "" : "(?![\\p{L}-])";
  return new RegExp(`(?<![\\p{L}-])${plain}${end}`, "iu");
}

function rows(width) {
  return read("static/js/messages/GLOSSARY.md")
    .split("\n")
    .filter((line) => line.startsWith("| "))
    .map((line) => line.split("|").slice(1, -1))
    .map((cells) => cells.map((cell) => cell.trim()))
    .filter((cells) => cells.length === width)
    .slice(1); // the head
}

const TERMS = rows(7).map(([thing, ...cells]) => ({
  thing,
  goesTogether: thing.startsWith("★"),
  wanted: { en: cells[0], es: cells[2], fr: cells[4] },
  not: {
    en: cells[1].split(", "),
    es: cells[3].split(", "),
    fr: cells[5].split(", "),
  },
}));
const ELSEWHERE = rows(4).map(([code, word, where]) => ({
  code,
  word,
  where: where.split("; "),
}));

function matches(key, names) {
  return names.some((name) =>
    name.endsWith("…") ? key.startsWith(name.slice(0, -1)) : key === name,
  );
}

function unwanted(code, said) {
  const words = TERMS.flatMap((term) => term.not[code]);
  return words.flatMap((word) =>
    said.filter(([, text]) => pattern(word).test(text)).map(([key]) => ({ word, key })),
  );
}

function isAllowed(code, { word, key }) {
  return ELSEWHERE.some(
    (row) => row.code === code && row.word === word && matches(key, row.where),
  );
}

test("the glossary has the words that a make is told with", () => {
  assert.ok(TERMS.length >= 40);
  assert.equal(new Set(TERMS.map((term) => term.thing)).size, TERMS.length);
  for (const { thing, wanted, not } of TERMS)
    for (const code of CODES) {
      assert.ok(wanted[code], `${thing}: ${code}`);
      assert.ok(not[code].every(Boolean), `${thing}: ${code}`);
      assert.ok(!not[code].includes(wanted[code]), `${thing}: ${code}`);
    }
});

for (const code of CODES) {
  test(`${code} says each thing by the one word that is wanted`, () => {
    const never = TERMS.filter(({ wanted }) => {
      const word = pattern(wanted[code] + "…");
      return !SAID[code].some(([, text]) => word.test(text));
    });
    assert.deepEqual(
      never.map(({ wanted }) => wanted[code]),
      [],
    );
  });

  test(`${code} says none of the words that are not wanted`, () => {
    const left = unwanted(code, SAID[code]).filter((hit) => !isAllowed(code, hit));
    assert.deepEqual(left, []);
  });

  test(`${code} still needs each place where such a word means something else`, () => {
    const hits = unwanted(code, SAID[code]);
    const idle = ELSEWHERE.filter((row) => row.code === code).flatMap((row) =>
      row.where.filter(
        (name) =>
          !hits.some((hit) => hit.word === row.word && matches(hit.key, [name])),
      ),
    );
    assert.deepEqual(idle, []);
  });
}

for (const code of ["es", "fr"]) {
  test(`${code} has its word where English has the one it goes together with`, () => {
    const own = new Map(SAID[code]);
    // A title in quotation marks is said as it was printed.
    const pairs = SAID.en
      .flatMap(([key, text]) => [
        [text.replace(/"[^"]*"/g, ""), own.get(key)],
        [text, own.get(text)],
      ])
      .filter(([, theirs]) => theirs !== undefined);
    const together = TERMS.filter((term) => term.goesTogether);
    assert.ok(together.length > 10);
    const lacking = together.flatMap(({ wanted }) =>
      pairs
        .filter(([english]) =>
          [wanted.en, wanted.en + "s"].some((word) => pattern(word).test(english)),
        )
        .filter(([, theirs]) => !pattern(wanted[code] + "…").test(theirs))
        .map(([english, theirs]) => ({ word: wanted[code], english, theirs })),
    );
    assert.deepEqual(lacking, []);
  });
}

test("a word is found whole, in any case, and by its beginning where … says so", () => {
  assert.ok(pattern("lactosérum").test("Du Lactosérum"));
  assert.ok(!pattern("force").test("renforcer, forces"));
  assert.ok(pattern("force…").test("forces"));
  assert.ok(!pattern("cave").test("caves-bar"));
  assert.deepEqual(unwanted("fr", [["a", "Peser le lactosérum"]]), [
    { word: "lactosérum", key: "a" },
  ]);
});
