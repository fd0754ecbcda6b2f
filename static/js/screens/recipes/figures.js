// Every figure of a recipe with its path, so that each can be shown with its
// source and changed on its own.

/** @typedef {{path: (string | number)[], figure: Figure}} FigureAt */

/**
 * @param {unknown} value
 * @returns {value is Figure}
 */
function isFigure(value) {
  return (
    value !== null &&
    typeof value === "object" &&
    "value" in value &&
    value.value !== null && // it is its sum's alone: nothing to change here
    "unit" in value &&
    "source" in value
  );
}

/**
 * All figures below a part of a recipe: [{path: ["lasts"], figure}].
 *
 * @param {unknown} part
 * @param {(string | number)[]} [path]
 * @returns {FigureAt[]}
 */
export function figuresIn(part, path = []) {
  if (part === null || typeof part !== "object") return [];
  if (isFigure(part)) return [{ path, figure: part }];
  return Object.entries(part).flatMap(([name, value]) =>
    figuresIn(value, [...path, name]),
  );
}

/**
 * A copy of a recipe with the figure at one path changed.
 *
 * @param {Recipe} recipe
 * @param {(string | number)[]} path
 * @param {Figure} figure
 */
export function withFigure(recipe, path, figure) {
  const copy = structuredClone(recipe);
  const last = path[path.length - 1];
  const holder = path.slice(0, -1).reduce((part, name) => part[name], copy);
  holder[last] = figure;
  return copy;
}

/**
 * Parts of a recipe that figures are shown under.
 *
 * @param {Recipe} recipe
 * @returns {{key: string, title: Words | null, text?: any, figures: FigureAt[]}[]}
 */
export function groups(recipe) {
  /**
   * @param {string} name
   * @param {any} part
   * @param {number} index
   * @param {string} key
   */
  const under = (name, part, index, key) => ({
    key: `${name}.${key}`,
    title: part.title,
    text: part,
    figures: figuresIn(part, [name, index]),
  });
  return [
    {
      key: "whole",
      title: null,
      figures: [
        ...figuresIn(recipe.milk, ["milk"]),
        ...figuresIn(recipe.yield_frac, ["yield_frac"]),
        ...figuresIn(recipe.figures ?? {}, ["figures"]),
        ...figuresIn(recipe.gates ?? [], ["gates"]),
      ],
    },
    ...(recipe.ingredients ?? []).map((ingredient, index) =>
      under("ingredients", ingredient, index, ingredient.key),
    ),
    ...(recipe.moulds ?? []).map((mould, index) =>
      under("moulds", mould, index, mould.size),
    ),
    ...recipe.steps.map((step, index) => under("steps", step, index, step.key)),
  ];
}
