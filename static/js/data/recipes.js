// Whole recipes on the phone, so that a make can be opened without a network.

import { get } from "./api.js";
import { setSaved } from "./db.js";
import { recipes } from "./state.js";

const EVERY_MS = 600000;
/** @type {number | null} */
let askedMs = null;

/** Fetch what is new among the recipes, at most every ten minutes. */
export async function freshenRecipes({ now = false } = {}) {
  const steadyMs = performance.now();
  if (!now && askedMs !== null && steadyMs - askedMs < EVERY_MS) return;
  const listed = await get("/recipes");
  const known = new Map(
    recipes.value.map((recipe) => [`${recipe.id}/${recipe.version}`, recipe]),
  );
  /** @type {Recipe[]} */
  const whole = [];
  for (const { id, version } of listed) {
    whole.push(
      known.get(`${id}/${version}`) ?? (await get(`/recipes/${id}/${version}`)),
    );
  }
  askedMs = steadyMs;
  recipes.value = whole;
  await setSaved("recipes", whole);
}
