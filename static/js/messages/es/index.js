// All of the Spanish texts: what this language's pack is made of.

import { ALARM } from "./alarm.js";
import { APART } from "./apart.js";
import { CAUTIONS } from "./cautions.js";
import { CERTIFICATE } from "./certificate.js";
import { DOSES } from "./doses.js";
import { EQUIPMENT } from "./equipment.js";
import { FACTS } from "./facts.js";
import { FIRST } from "./first.js";
import { HANDS } from "./hands.js";
import { HOLD } from "./hold.js";
import { LIVE } from "./live.js";
import { MATTERS } from "./matters.js";
import { MILK } from "./milk.js";
import { NOW } from "./now.js";
import { PIN } from "./pin.js";
import { RETIRED } from "./retired.js";
import { SCREENS } from "./screens.js";
import { SOURCES } from "./sources.js";
import { SUMS } from "./sums.js";
import { TRADE } from "./trade.js";
import { WAYS } from "./ways.js";
import { WORDS } from "./words.js";

export const TEXTS = {
  ...ALARM,
  ...APART,
  ...CAUTIONS,
  ...CERTIFICATE,
  ...DOSES,
  ...EQUIPMENT,
  ...FACTS,
  ...FIRST,
  ...HANDS,
  ...HOLD,
  ...LIVE,
  ...MATTERS,
  ...MILK,
  ...NOW,
  ...PIN,
  ...RETIRED,
  ...SCREENS,
  ...SOURCES,
  ...SUMS,
  ...TRADE,
  ...WAYS,
  ...WORDS,
};
export { RECIPE } from "./recipe.js";
export { WHY } from "../why.js";
