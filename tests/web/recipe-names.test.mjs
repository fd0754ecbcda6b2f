// Names that stand in recipes, beside a recipe that has none of the kind: the core
// takes one without moulds or ingredients where no step names any.
import assert from "node:assert/strict";
import { test } from "node:test";

import { phone } from "./page.mjs";

const PLAIN = { id: "plain", version: 1, title: { en: "Plain curd" }, steps: [] };
const WHEELS = {
  ...PLAIN,
  id: "wheels",
  moulds: [{ size: "small", title: { en: "Small wheel" } }],
  ingredients: [{ key: "salt_dry", title: { en: "Dry salt" } }],
};

const page = await phone().open([
  "messages/index",
  "parts/size-title",
  "screens/record/line-text",
]);
await page["messages/index"].loadRest();
page.state.recipes.value = [PLAIN, WHEELS];

test("a size of wheel has its name beside a recipe without wheels", () => {
  const { sizeTitle } = page["parts/size-title"];
  assert.equal(sizeTitle("small"), "Small wheel");
});

test("an entry names its ingredient beside a recipe without any", () => {
  const { lineText } = page["screens/record/line-text"];
  const data = { ingredient: "salt_dry", amount: 2, unit: "kg" };
  const line = { kind: "ingredient_added", step: null, data };
  assert.match(lineText(line, []), /Dry salt/);
});

test("a source that is cited no longer keeps its words and says so", () => {
  const { sourceWords } = page["messages/index"];
  // A make opened with an older version of a recipe has the id in its log.
  const told = sourceWords("published_brine_temp");
  assert.match(told, /10 to 15 °C.* \(no longer cited\)$/);
  assert.doesNotMatch(sourceWords("guelph_food_science_gouda"), /no longer|_/);
  assert.equal(sourceWords("Aunt Ida’s notebook"), "Aunt Ida’s notebook");
});
