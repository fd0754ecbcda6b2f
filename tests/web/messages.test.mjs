// Every language says all that English says, with the same figures in it.
import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { test } from "node:test";

import { TEXTS } from "../../static/js/messages/en/index.js";
import { PAGE } from "../../static/js/messages/en/page.js";
import { capital, within } from "../../static/js/messages/inside.js";
import { WHY } from "../../static/js/messages/why.js";
import * as es from "../../static/js/messages/es/index.js";
import * as fr from "../../static/js/messages/fr/index.js";

const ENGLISH = { ...TEXTS, ...PAGE };
const PACKS = { es, fr };
// Alike in every language: signs, figures, and what has one name everywhere.
const SAME =
  /^(?:[^A-Za-zÀ-ÖØ-öø-ÿ]|\{\w+\}|pH|OK|Dornic|Thörner|Soxhlet-Henkel|Listeria monocytogenes|Salmonella|Codex Alimentarius|Codex|CFR part|CFR|Regulation \(EC\))*$/;
const CHEESE =
  /^pick\.(gouda|edam|cheddar|colby|monterey|brick|muenster|gruyere|gorgonzola|parmesan|romano|limburger|mozzarella|provolone|neufchatel)$/;
// Words that the two languages share.
const SHARED = {
  es: ["{name}: {value}", "No", "no", "plan {span}", "Animal", "usual: {value}"],
  fr: [
    "Silence",
    "Menu",
    "Code",
    "Lot",
    "lot {lot}",
    "Note",
    "Notes",
    "note",
    "Version",
    "Version {n}",
    "Source",
    "Sources",
    "Animal",
    "Solution",
    "correction",
    "date",
    "signature",
    "Dose",
    "Dose {amount}",
    "Volume",
  ],
};

function names(text) {
  return (text.match(/\{\w+\}/g) ?? []).sort();
}

const RECIPES = new URL("../../server/recipes/", import.meta.url);

function recipeTexts(value) {
  if (value === null || typeof value !== "object") return [];
  if (typeof value.en === "string") return [value];
  return Object.values(value).flatMap(recipeTexts);
}

// "2,5" and "2.5" are one figure; so are 1,000 and 1 000.
function figures(text) {
  return (text.match(/\d+(?:[.,\u202f\u00a0 ]\d+)*/g) ?? []).map((one) =>
    one.replace(/[.,\s]/g, ""),
  );
}

for (const [code, { TEXTS, RECIPE }] of Object.entries(PACKS)) {
  test(`${code} has every key of English and no other`, () => {
    const missing = Object.keys(ENGLISH).filter((key) => !(key in TEXTS));
    const unknown = Object.keys(TEXTS).filter((key) => !(key in ENGLISH));
    assert.deepEqual({ missing, unknown }, { missing: [], unknown: [] });
  });

  test(`${code} fills the same figures into each text`, () => {
    const unlike = Object.keys(TEXTS).filter(
      (key) =>
        key in ENGLISH && String(names(TEXTS[key])) !== String(names(ENGLISH[key])),
    );
    assert.deepEqual(unlike, []);
  });

  test(`${code} says nothing in English`, () => {
    const left = Object.keys(TEXTS).filter(
      (key) =>
        TEXTS[key] === ENGLISH[key] &&
        !SAME.test(TEXTS[key]) &&
        !CHEESE.test(key) &&
        !SHARED[code].includes(TEXTS[key]),
    );
    assert.deepEqual(left, []);
  });

  test(`${code} leaves no text empty that English fills`, () => {
    assert.deepEqual(
      Object.keys(ENGLISH).filter((key) => ENGLISH[key].trim() && !TEXTS[key]?.trim()),
      [],
    );
  });

  test(`${code} has every file in its pack`, async () => {
    const folder = new URL(`../../static/js/messages/${code}/`, import.meta.url);
    for (const file of readdirSync(folder).filter(
      (name) => !["index.js", "prose.js", "reasons.js", "recipe.js"].includes(name),
    )) {
      const [texts] = Object.values(await import(new URL(file, folder)));
      assert.deepEqual(
        Object.keys(texts).filter((key) => TEXTS[key] !== texts[key]),
        [],
        file,
      );
    }
    assert.ok(Object.keys(RECIPE).length > 0);
  });
}

for (const [code, { RECIPE }] of Object.entries(PACKS)) {
  const files = readdirSync(RECIPES).filter((name) => name.endsWith(".json"));
  const texts = files.flatMap((name) =>
    recipeTexts(JSON.parse(readFileSync(new URL(name, RECIPES), "utf8"))),
  );

  test(`${code} has each text of the recipes, with its figures`, () => {
    const told = texts.map((text) => [text.en, text[code] ?? RECIPE[text.en]]);
    assert.deepEqual(
      told.filter(([, own]) => !own).map(([english]) => english),
      [],
    );
    const named = (text) => (text.match(/\{[^}]*\}/g) ?? []).sort();
    const unlike = told.filter(
      ([english, own]) =>
        String(figures(english)) !== String(figures(own)) ||
        String(named(english)) !== String(named(own)),
    );
    assert.deepEqual(unlike, []);
  });
}

// The names on the way to a figure that its screen leaves out: it stands below them.
const UNSAID = [
  "figure",
  "figures",
  "steps",
  "ingredients",
  "moulds",
  "by_treatment",
  "heat_treatment",
  "gates",
];

function figurePaths(value, path = []) {
  if (value === null || typeof value !== "object") return [];
  if ("value" in value && "unit" in value && "source" in value) return [path];
  return Object.entries(value).flatMap(([name, part]) =>
    figurePaths(part, [...path, name]),
  );
}

test("each figure of the recipes has a name in words", () => {
  const files = readdirSync(RECIPES).filter((name) => name.endsWith(".json"));
  const paths = files.flatMap((name) =>
    figurePaths(JSON.parse(readFileSync(new URL(name, RECIPES), "utf8"))),
  );
  const names = new Set(
    paths.flat().filter((name) => !/^\d+$/.test(name) && !UNSAID.includes(name)),
  );
  assert.ok(names.has("hold_floor_c"));
  assert.deepEqual(
    [...names].filter((name) => !ENGLISH[`figure_name.${name}`]),
    [],
  );
});

// A no-break space, or the sign would begin a line of its own.
const FRENCH_SIGN = /\S[ \u202f][;:!?»%]|«[ \u202f]/u;

test("French has its own apostrophe, and no sign that a line may begin with", () => {
  const told = [...Object.entries(fr.TEXTS), ...Object.entries(fr.RECIPE)];
  assert.deepEqual(
    told.filter(([, text]) => FRENCH_SIGN.test(text)),
    [],
  );
  assert.deepEqual(
    told.filter(([, text]) => /\p{L}'\p{L}/u.test(text)),
    [],
  );
  assert.match("prêt ;", FRENCH_SIGN);
});

// A screen says what is known of a figure, not how it came to be written down.
test("what a figure rests on is said without keys, and without us", () => {
  const files = readdirSync(RECIPES).filter((name) => name.endsWith(".json"));
  // New York's rules are cited by these letters everywhere.
  const keys = files
    .flatMap((name) =>
      Object.keys(JSON.parse(readFileSync(new URL(name, RECIPES), "utf8")).sources),
    )
    .filter((key) => key !== "NYCRR");
  assert.ok(keys.includes("EBOOK"));
  const told = Object.entries({ en: ENGLISH, es: es.TEXTS, fr: fr.TEXTS });
  const ours = {
    en: /\b(?:ours|our own|from memory|forum|mirror)\b/i,
    es: /\b(?:nuestr[ao]s?|de memoria|foro|espejo)\b/i,
    fr: /\bà nous\b|\bnôtres?\b|notre choix|de mémoire|\bforum\b|miroir/i,
  };
  for (const [code, texts] of told) {
    const rests = Object.entries(texts).filter(([key]) =>
      /^(?:source|retired|status|sums|note)\./.test(key),
    );
    assert.ok(rests.length > 400);
    const said = ([, text]) =>
      ours[code].test(text) ||
      /\bfigures\.\w/.test(text) ||
      keys.some((key) => new RegExp(`\\b${key}\\b`).test(text));
    assert.deepEqual(rests.filter(said), [], code);
  }
});

// Read with wet hands between two acts; what is longer says what no other text says.
const WORDS_AT_MOST = { en: 26, es: 36, fr: 36 };
const LONGER = ["certificate.root_ends_soon", "problem.hold_of_other_treatment"];

test("no text is longer than its job", () => {
  for (const [code, texts] of [
    ["en", ENGLISH],
    ["es", es.TEXTS],
    ["fr", fr.TEXTS],
  ]) {
    const long = Object.keys(texts).filter(
      (key) =>
        !/^(?:source|retired)\.|^word\.names$/.test(key) &&
        texts[key].split(/[ \u00a0]+/).filter((word) => /[\p{L}\d]/u.test(word))
          .length > WORDS_AT_MOST[code],
    );
    assert.deepEqual(
      long.filter((key) => !LONGER.includes(key)),
      [],
    );
    if (code === "en") assert.deepEqual(long.sort(), LONGER);
  }
});

test("a text within a sentence begins small, with its accents", () => {
  assert.equal(within("Écart de pH", [], "fr"), "écart de pH");
  assert.equal(within("Última lectura", [], "es"), "última lectura");
  assert.equal(within("A vat", [], "en"), "a vat");
  assert.equal(within("L’eau", [], "fr"), "l’eau");
  for (const kept of ["pH", "IMCU", "D-value", ""])
    assert.equal(within(kept, [], "en"), kept);
});

test("a text at the head of a line begins large, with its accents", () => {
  assert.equal(capital("écart", "fr"), "Écart");
  assert.equal(capital("pH", "fr"), "pH");
});

test("a name keeps its capital within a sentence", () => {
  for (const [code, texts] of [
    ["en", ENGLISH],
    ["es", es.TEXTS],
    ["fr", fr.TEXTS],
  ]) {
    const names = texts["word.names"].split(" ");
    const keys = Object.keys(texts).filter(
      (key) =>
        CHEESE.test(key) || ["pick.us", "pick.eu_uk", "pick.codex"].includes(key),
    );
    assert.deepEqual(
      keys.filter((key) => within(texts[key], names, code) !== texts[key]),
      [],
    );
    assert.equal(
      within(texts["pick.cow"], names, code),
      texts["pick.cow"].toLowerCase(),
    );
  }
});

test("a ready reason is known again in each language that it may be recorded in", () => {
  const keys = [
    ...Object.keys(ENGLISH).filter((key) => key.startsWith("reason.")),
    "undo.why",
  ];
  assert.ok(keys.length > 10);
  for (const texts of [ENGLISH, es.TEXTS, fr.TEXTS]) {
    assert.deepEqual(
      keys.filter((key) => WHY[texts[key]] !== key),
      [],
    );
  }
  assert.deepEqual(
    Object.values(WHY).filter((key) => !keys.includes(key)),
    [],
  );
});

test("a text with a count has both its forms", () => {
  const counted = Object.keys(ENGLISH).filter((key) => /\.(one|many)$/.test(key));
  const stems = [...new Set(counted.map((key) => key.replace(/\.\w+$/, "")))];
  assert.ok(stems.length > 5);
  for (const texts of [ENGLISH, es.TEXTS, fr.TEXTS]) {
    const half = stems.filter(
      (stem) => !(`${stem}.one` in texts && `${stem}.many` in texts),
    );
    assert.deepEqual(half, []);
  }
});
