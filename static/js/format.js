// The only place where a number becomes text, and where typed text without a
// quantity of its own becomes a number. Nothing here is used to decide: the
// core decides on the number itself, and what is shown is rounded only here.

export {
  amount,
  amountBand,
  amountTyped,
  amountTypedDecimals,
  bandIn,
  inOwnUnit,
  inUnit,
} from "./format/amounts.js";
export { measured, measuredBand, measuredTyped } from "./format/measured.js";
export {
  bytes,
  count,
  number,
  plain,
  readNumber,
  typedText,
} from "./format/numbers.js";
export {
  band,
  bare,
  change,
  formOf,
  quantity,
  typedFrom,
  unitOf,
} from "./format/quantities.js";
export { asRead, point, setReads, unitRead } from "./format/reads.js";
export { decimalsTyped, sumRange, sumValue, typedValue } from "./format/sums.js";
export {
  age,
  clock,
  clockDay,
  clockSoon,
  clockSpan,
  day,
  fineSpan,
  span,
  ticks,
} from "./format/times.js";
export { unitName } from "./format/units.js";
