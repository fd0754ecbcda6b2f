// The English texts that the page does not bring with it: what this pack is made of.

import { ALARMS } from "./alarms.js";
import { APART } from "./apart.js";
import { CAUTIONS } from "./cautions.js";
import { CERTIFICATE } from "./certificate.js";
import { DEVICE } from "./device.js";
import { EQUIPMENT } from "./equipment.js";
import { FACTS } from "./facts.js";
import { FIGURE_FACTS } from "./figure-facts.js";
import { HOLD } from "./hold.js";
import { LIVE } from "./live.js";
import { MILK } from "./milk.js";
import { PIN } from "./pin.js";
import { RETIRED } from "./retired.js";
import { REASONS } from "./reasons.js";
import { RECORD } from "./record.js";
import { SCREENS } from "./screens.js";
import { SHEETS } from "./sheets.js";
import { SOURCES } from "./sources.js";
import { SUMS } from "./sums.js";
import { WAYS } from "./ways.js";

export const TEXTS = {
  ...SCREENS,
  ...SUMS,
  ...SOURCES,
  ...ALARMS,
  ...APART,
  ...CAUTIONS,
  ...CERTIFICATE,
  ...DEVICE,
  ...EQUIPMENT,
  ...FACTS,
  ...FIGURE_FACTS,
  ...HOLD,
  ...LIVE,
  ...MILK,
  ...PIN,
  ...RETIRED,
  ...REASONS,
  ...RECORD,
  ...SHEETS,
  ...WAYS,
};
export { WHY } from "../why.js";
export const RECIPE = {};
