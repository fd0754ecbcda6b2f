// The English texts that the page does not bring with it: what this pack is made of.

import { EN_APART } from "../en-apart.js";
import { EN_CERTIFICATE } from "../en-certificate.js";
import { EN_PIN } from "../en-pin.js";
import { EN_SUMS } from "../en-sums.js";
import { EN_SCREENS } from "./screens.js";
import { SOURCES } from "./sources.js";

export const TEXTS = {
  ...EN_SCREENS,
  ...EN_SUMS,
  ...SOURCES,
  ...EN_APART,
  ...EN_CERTIFICATE,
  ...EN_PIN,
};
export { WHY } from "../why.js";
export const RECIPE = {};
