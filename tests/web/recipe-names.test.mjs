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

const page = await phone().open(["parts/size-title", "screens/record/line-text"]);
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
