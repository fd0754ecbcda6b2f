// The English texts that the page does not bring with it: what this pack is made of.

import { APART } from "./apart.js";
import { CERTIFICATE } from "./certificate.js";
import { PIN } from "./pin.js";
import { SUMS } from "./sums.js";
import { SCREENS } from "./screens.js";
import { SOURCES } from "./sources.js";

export const TEXTS = {
  ...SCREENS,
  ...SUMS,
  ...SOURCES,
  ...APART,
  ...CERTIFICATE,
  ...PIN,
};
export { WHY } from "../why.js";
export const RECIPE = {};
