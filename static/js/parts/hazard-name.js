import { tFirst, words } from "../messages/index.js";

/**
 * The name of a caution's hazard, as its sign is called.
 *
 * @param {string} id of the caution: a hazard, or hazard/step
 */
export function hazardName(id) {
  const [hazard] = id.split("/");
  return tFirst(["caution." + hazard, words(hazard)]);
}
