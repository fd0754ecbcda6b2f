// All of the French texts: what this language's pack is made of.

import { ALARM } from "./alarm.js";
import { APART } from "./apart.js";
import { CERTIFICATE } from "./certificate.js";
import { EQUIPMENT } from "./equipment.js";
import { FIRST } from "./first.js";
import { HANDS } from "./hands.js";
import { LIVE } from "./live.js";
import { NOW } from "./now.js";
import { PIN } from "./pin.js";
import { SCREENS } from "./screens.js";
import { SOURCES } from "./sources.js";
import { SUMS } from "./sums.js";
import { TRADE } from "./trade.js";
import { WORDS } from "./words.js";

export const TEXTS = {
  ...ALARM,
  ...APART,
  ...CERTIFICATE,
  ...EQUIPMENT,
  ...FIRST,
  ...HANDS,
  ...LIVE,
  ...NOW,
  ...PIN,
  ...SCREENS,
  ...SOURCES,
  ...SUMS,
  ...TRADE,
  ...WORDS,
};
export { RECIPE } from "./recipe.js";
export { WHY } from "../why.js";
