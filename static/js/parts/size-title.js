import { recipes } from "./source.js";
import { own, words } from "../messages/index.js";

/**
 * What a size of mould is called: as the recipes say, where they agree; else its key's words.
 *
 * @param {string} size
 */
export function sizeTitle(size) {
  const moulds = recipes.value
    .flatMap((recipe) => recipe.moulds ?? [])
    .filter((mould) => mould.size === size);
  const titles = [...new Set(moulds.map((mould) => own(mould.title)))];
  return titles.length === 1 ? titles[0] : words(size);
}
